using System.Xml.Linq;

namespace PowerLint.Devices;

/// <summary>
/// Resolves <c>derivedFrom</c>: a name among the element's own siblings, or those of what encloses it, or a path such as
/// <c>TIM2.CR1.CEN</c> from any of these levels.
/// </summary>
internal sealed class SvdDerivation(SvdReading reading)
{
    private readonly Dictionary<XElement, SvdNode> _nodes = [];
    private readonly HashSet<XElement> _open = [];

    /// <summary>The element with everything that it is derived from.</summary>
    public SvdNode Resolve(XElement element)
    {
        if (_nodes.TryGetValue(element, out var known))
        {
            return known;
        }

        SvdNode? origin = null;
        if (element.Attribute("derivedFrom")?.Value.Trim() is { } path)
        {
            if (!_open.Add(element))
            {
                reading.Error(SvdNode.LineOf(element), $"'{Shown(path)}' is derived from itself");
                return new SvdNode(element, null);
            }

            origin = Find(element, path) is { } from ? Resolve(from) : null;
            _open.Remove(element);
        }

        return _nodes[element] = new SvdNode(element, origin);
    }

    private XElement? Find(XElement element, string path)
    {
        var kind = element.Name.LocalName;
        var steps = path.Split('.');
        for (var scope = ScopeOf(element); scope is not null; scope = ScopeOf(scope))
        {
            foreach (var found in Descend(scope, steps, 0))
            {
                var target = Target(found, kind);
                if (target is not null && !ReferenceEquals(target, element))
                {
                    return target;
                }
            }
        }

        if (kind is "enumeratedValues" && FindEnumeration(element, path) is { } enumeration)
        {
            return enumeration;
        }

        reading.Error(
            SvdNode.LineOf(element),
            $"derivedFrom names '{Shown(path)}', and there is no such {(kind is "enumeratedValues" ? "enumeration" : kind)}"
        );
        return null;
    }

    // A field's name stands for the enumeration in it.
    private static XElement? Target(XElement found, string kind) =>
        string.Equals(found.Name.LocalName, kind, StringComparison.Ordinal) ? found
        : kind is "enumeratedValues" && found.Name.LocalName is "field" ? found.Element(kind)
        : null;

    // An enumeration's bare name is looked for near by, then everywhere.
    private static XElement? FindEnumeration(XElement element, string path)
    {
        foreach (var scope in element.Ancestors())
        {
            if (scope.Name.LocalName is "field" or "fields")
            {
                continue;
            }

            var found = scope
                .Descendants("enumeratedValues")
                .FirstOrDefault(other =>
                    !ReferenceEquals(other, element)
                    && string.Equals(other.Element("name")?.Value.Trim(), path, StringComparison.Ordinal)
                );
            if (found is not null)
            {
                return found;
            }
        }

        return null;
    }

    // The element whose members surround this one.
    private static XElement? ScopeOf(XElement element)
    {
        var parent = element.Parent;
        return parent?.Name.LocalName is "peripherals" or "registers" or "fields" ? parent.Parent : parent;
    }

    private IEnumerable<XElement> Descend(XElement scope, string[] steps, int step)
    {
        // The scope itself is being resolved where the search goes upwards: its own members will do there.
        var members = _open.Contains(scope) ? new SvdNode(scope, null).Members() : Resolve(scope).Members();
        foreach (var member in members)
        {
            if (!IsCalled(member, steps[step]))
            {
                continue;
            }

            if (step == steps.Length - 1)
            {
                yield return member;
                continue;
            }

            foreach (var found in Descend(member, steps, step + 1))
            {
                yield return found;
            }
        }
    }

    private bool IsCalled(XElement member, string name)
    {
        var own = member.Element("name")?.Value.Trim();
        if (own is null)
        {
            return false;
        }

        if (string.Equals(own, name, StringComparison.Ordinal))
        {
            return true;
        }

        // One element of an array stands for its description.
        return own.Contains("%s", StringComparison.Ordinal)
            && name.StartsWith(
                own[
                    ..own.IndexOf(own.Contains("[%s]", StringComparison.Ordinal) ? '[' : '%', StringComparison.Ordinal)
                ],
                StringComparison.Ordinal
            )
            && (
                string.Equals(SvdDimension.Stem(own), name, StringComparison.Ordinal)
                || SvdDimension
                    .Expand(new SvdNode(member, null), own, reading)
                    .Any(item => string.Equals(item.Name, name, StringComparison.Ordinal))
            );
    }

    private static string Shown(string text) => SvdReading.Shortened(text);
}
