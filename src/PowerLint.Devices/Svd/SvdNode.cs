using System.Xml;
using System.Xml.Linq;

namespace PowerLint.Devices;

/// <summary>An element of the file together with the element that it is derived from, whose parts it takes where it has none.</summary>
/// <param name="element">The element.</param>
/// <param name="origin">What it is derived from, or null.</param>
internal sealed class SvdNode(XElement element, SvdNode? origin)
{
    public XElement Element { get; } = element;

    /// <summary>Line of the element itself, from 1.</summary>
    public int Line => LineOf(Element);

    public static int LineOf(XObject at) => ((IXmlLineInfo)at).LineNumber;

    /// <summary>The part of that name, its own or its origin's.</summary>
    public XElement? Child(string name) => Element.Element(name) ?? origin?.Child(name);

    /// <summary>The part's text, or null where there is none.</summary>
    public string? Text(string name) => Child(name)?.Value.Trim();

    /// <summary>The first of some parts that belong together: its own, else its origin's; never one's and the other's.</summary>
    public SvdNode? HolderOfAny(params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (Element.Element(name) is not null)
            {
                return this;
            }
        }

        return origin?.HolderOfAny(names);
    }

    /// <summary>All parts of that name: its own where it has any, else its origin's.</summary>
    public IReadOnlyList<XElement> Children(string name)
    {
        XElement[] own = [.. Element.Elements(name)];
        return own.Length > 0 || origin is null ? own : origin.Children(name);
    }

    /// <summary>
    /// The clusters, registers or fields in it: its origin's, each replaced by its own of the same name, then its further own.
    /// </summary>
    public IReadOnlyList<XElement> Members()
    {
        XElement[] own = [.. MembersOf(Element)];
        if (origin is null)
        {
            return own;
        }

        var byKey = own.ToLookup(KeyOf, StringComparer.Ordinal);
        var used = new HashSet<string>(StringComparer.Ordinal);
        var merged = new List<XElement>();
        foreach (var inherited in origin.Members())
        {
            var key = KeyOf(inherited);
            if (!byKey.Contains(key))
            {
                merged.Add(inherited);
            }
            else if (used.Add(key))
            {
                merged.AddRange(byKey[key]);
            }
        }

        merged.AddRange(own.Where(member => !used.Contains(KeyOf(member))));
        return merged;
    }

    private static IEnumerable<XElement> MembersOf(XElement element) =>
        element.Name.LocalName switch
        {
            "device" => element.Element("peripherals")?.Elements("peripheral") ?? [],
            "peripheral" => element.Element("registers")?.Elements().Where(IsRegisterOrCluster) ?? [],
            "cluster" => element.Elements().Where(IsRegisterOrCluster),
            "register" => element.Element("fields")?.Elements("field") ?? [],
            "field" => element.Elements("enumeratedValues"),
            _ => [],
        };

    private static bool IsRegisterOrCluster(XElement element) => element.Name.LocalName is "register" or "cluster";

    // Alternate registers may bear one name in different groups.
    private static string KeyOf(XElement element) =>
        $"{element.Element("name")?.Value.Trim()}/{element.Element("alternateGroup")?.Value.Trim()}/{element.Element("usage")?.Value.Trim()}";
}
