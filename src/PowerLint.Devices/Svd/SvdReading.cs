namespace PowerLint.Devices;

/// <summary>What the readers of one SVD file share: its complaints, what they noticed, and how much they may make of it.</summary>
/// <param name="file">The file as the user knows it.</param>
/// <param name="errors">Takes what makes the file unusable.</param>
internal sealed class SvdReading(string file, DeviceModelErrors errors)
{
    /// <summary>Registers that one file may expand to; dimensions multiply.</summary>
    public const int MostRegisters = 200_000;

    private readonly List<SvdNotice> _notices = [];

    public DeviceModelErrors Errors { get; } = errors;

    /// <summary>Flaws that could be mended, by line.</summary>
    public IEnumerable<SvdNotice> Notices => _notices.OrderBy(notice => notice.Line);

    public int Registers { get; set; }

    public bool IsFull => Registers > MostRegisters;

    public void Error(int line, string message) => Errors.Add(file, line, message);

    public void Notice(int line, string message)
    {
        var notice = new SvdNotice(file, line, message);
        if (!_notices.Contains(notice))
        {
            _notices.Add(notice);
        }
    }

    /// <summary>A number that must be there.</summary>
    public ulong? Number(SvdNode node, string name, string whose)
    {
        if (node.Child(name) is null)
        {
            Error(node.Line, $"{whose} lacks '{name}'");
            return null;
        }

        return OptionalNumber(node, name, whose);
    }

    /// <summary>A number that may be there.</summary>
    public ulong? OptionalNumber(SvdNode node, string name, string whose)
    {
        if (node.Child(name) is not { } child)
        {
            return null;
        }

        if (SvdNumber.TryParse(child.Value.Trim(), out var number))
        {
            return number;
        }

        Error(
            SvdNode.LineOf(child),
            $"'{name}' of {whose} is '{Shortened(child.Value.Trim())}', which is no number: write 36, 0x24 or #100100"
        );
        return null;
    }

    /// <summary>The name that every element must have.</summary>
    public string? Name(SvdNode node)
    {
        if (node.Text("name") is { Length: > 0 } name)
        {
            if (name.Length <= 200 && name.All(letter => letter is > ' ' and not '\u007f'))
            {
                return name;
            }

            Error(node.Line, $"'{Shortened(name)}' is no name: one word of up to 200 letters");
            return null;
        }

        Error(node.Line, $"this {node.Element.Name.LocalName} lacks 'name'");
        return null;
    }

    /// <summary>One of some words, or null where the part is not there or none of them.</summary>
    public T? Word<T>(SvdNode node, string name, string whose, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (node.Child(name) is not { } child)
        {
            return null;
        }

        if (words.TryGetValue(child.Value.Trim(), out var word))
        {
            return word;
        }

        Error(
            SvdNode.LineOf(child),
            $"'{name}' of {whose} is '{Shortened(child.Value.Trim())}': it must be one of {string.Join(", ", words.Keys)}"
        );
        return null;
    }

    public static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
