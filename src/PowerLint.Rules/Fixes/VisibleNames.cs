using System.Collections.Immutable;
using System.Text.RegularExpressions;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>The names that C code in one source file can use: macros and enumerators of the file and of all that it includes.</summary>
internal sealed partial class VisibleNames
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly HashSet<string> _members = new(StringComparer.Ordinal);
    private readonly HashSet<string> _declared = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ulong?> _values = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);
    private readonly HashSet<string> _functions = new(StringComparer.Ordinal);

    /// <summary>Reads the files of a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="sources">Where their texts come from.</param>
    public VisibleNames(TranslationUnit unit, SourceTexts sources)
    {
        foreach (var path in unit.Included)
        {
            Read(string.Join('\n', sources.Lines(path)));
        }

        var own = unit.Included.Where(path => IsOwn(unit, path)).SelectMany(sources.Lines);
        OwnText = Comment().Replace(string.Join('\n', own), "");
    }

    /// <summary>The text of the firmware's own files among them: what is written there is the style of the house.</summary>
    public string OwnText { get; }

    /// <summary>Structures and unions that the files define.</summary>
    public StructureTexts Structures { get; } = new();

    /// <summary>All names that stand for a constant.</summary>
    public IEnumerable<string> Constants => _texts.Keys;

    /// <summary>Whether a macro without parameters has that name.</summary>
    public bool IsMacro(string name) => _texts.ContainsKey(name);

    /// <summary>Whether a macro with parameters has that name.</summary>
    public bool IsFunctionMacro(string name) => _functions.Contains(name);

    /// <summary>Whether some structure has a member of that name.</summary>
    public bool IsMember(string name) => _members.Contains(name);

    /// <summary>Whether an object of that name is declared.</summary>
    public bool IsDeclared(string name) => _declared.Contains(name);

    /// <summary>What a macro stands for, as written, or null.</summary>
    public string? TextOf(string name) => _texts.GetValueOrDefault(name);

    /// <summary>The value of a macro or enumerator, or null where it is no integer constant.</summary>
    public ulong? ValueOf(string name)
    {
        if (_values.TryGetValue(name, out var known))
        {
            return known;
        }

        if (!_texts.TryGetValue(name, out var text) || !_open.Add(name))
        {
            return null;
        }

        var value = ConstantText.Evaluate(text, ValueOf);
        _open.Remove(name);
        _values[name] = value;
        return value;
    }

    private static bool IsOwn(TranslationUnit unit, string path) =>
        string.Equals(path, unit.Source.Path, StringComparison.Ordinal)
        || path.StartsWith(
            Path.GetDirectoryName(unit.Source.Path) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    private void Read(string text)
    {
        Structures.Read(text);
        foreach (Match match in Definition().Matches(text))
        {
            var name = match.Groups["name"].Value;
            if (match.Groups["parameters"].Success)
            {
                _functions.Add(name);
            }
            else
            {
                // With several branches of a condition the first one that stands is taken, unless they disagree.
                var value = Comment().Replace(match.Groups["value"].Value, "").Trim();
                if (_texts.TryGetValue(name, out var other) && !string.Equals(other, value, StringComparison.Ordinal))
                {
                    _values[name] = null;
                }

                _texts.TryAdd(name, value);
            }
        }

        ReadMembers(text);
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.Contains('=') && Enumerator().Match(line.ToString()) is { Success: true } match)
            {
                _texts.TryAdd(match.Groups["name"].Value, match.Groups["value"].Value.Trim());
            }
        }

        foreach (Match match in Declaration().Matches(text).Concat(RegisterDeclaration().Matches(text)))
        {
            _declared.Add(match.Groups["name"].Value);
        }
    }

    // What stands before a semicolon, and before the commas in front of it, the length of an array aside. Register headers have tens
    // of thousands of them.
    private void ReadMembers(ReadOnlySpan<char> text)
    {
        for (int from = 0, next; (next = text[from..].IndexOf(';')) >= 0; from += next + 1)
        {
            var before = text[from..(from + next)];
            while (true)
            {
                before = before.TrimEnd();
                if (before is [.., ']'])
                {
                    var open = before[..^1].LastIndexOfAny('[', ']', '\n');
                    before = open >= 0 && before[open] == '[' ? before[..open].TrimEnd() : [];
                }

                var start = before.Length;
                while (start > 0 && (char.IsAsciiLetterOrDigit(before[start - 1]) || before[start - 1] == '_'))
                {
                    start--;
                }

                if (start == before.Length || char.IsAsciiDigit(before[start]))
                {
                    break;
                }

                _members.Add(before[start..].ToString());
                before = before[..start].TrimEnd();
                if (before is not [.., ','])
                {
                    break;
                }

                before = before[..^1];
            }
        }
    }

    [GeneratedRegex(
        @"^[ \t]*#[ \t]*define[ \t]+(?<name>\w+)((?<parameters>\()|[ \t]+(?<value>[^\r\n]*)|[ \t]*$)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        5000
    )]
    private static partial Regex Definition();

    [GeneratedRegex(@"/\*.*?(\*/|$)|//.*$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, 5000)]
    private static partial Regex Comment();

    [GeneratedRegex(
        @"^[ \t]*(?<name>[A-Za-z_]\w*)[ \t]*=[ \t]*(?<value>[^,;{}""/\n]+?)[ \t]*(,|/|\}|$)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        5000
    )]
    private static partial Regex Enumerator();

    [GeneratedRegex(
        @"^[ \t]*extern\b[^;(\n]*?\b(?<name>\w+)[ \t]*(__asm__[^;\n]*)?;",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        5000
    )]
    private static partial Regex Declaration();

    // Headers that declare a register by a macro of their own: sfrw(NAME, ADDRESS); SFR_16BIT(NAME);
    [GeneratedRegex(
        @"^[ \t]*(sfr[a-z]*|SFR_\w+)[ \t]*\([ \t]*(?<name>[A-Za-z_]\w*)[ \t]*(,[^()\n]*)?\)[ \t]*;",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        5000
    )]
    private static partial Regex RegisterDeclaration();
}
