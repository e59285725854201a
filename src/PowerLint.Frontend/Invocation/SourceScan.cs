using System.Text;

namespace PowerLint.Frontend;

/// <summary>
/// What a file's text says of macros, without preprocessing it: its definitions, the files that it includes, and the lines
/// whose growth cannot be bounded by a glance.
/// </summary>
internal sealed class SourceScan
{
    // A line that long is data.
    private const int LongestLine = 100_000;

    private readonly string _text;

    private SourceScan(string path, string text)
    {
        Path = path;
        _text = text;
    }

    public string Path { get; }

    /// <summary>The definitions, in order.</summary>
    public List<MacroDefinition> Definitions { get; } = [];

    /// <summary>The names in <c>#include</c>, without their quotes or brackets.</summary>
    public List<string> Includes { get; } = [];

    /// <summary>Lines in which what looks like a call stands in the arguments of another.</summary>
    public List<(int Line, string Text)> NestedCalls { get; } = [];

    /// <summary>About how many tokens the longest line has.</summary>
    public int MostTokens { get; private set; }

    /// <summary>Every name in a definition's body.</summary>
    public HashSet<string> NamesInBodies { get; } = new(StringComparer.Ordinal);

    /// <summary>Scans a file; what cannot be read is empty.</summary>
    public static SourceScan Of(string path)
    {
        // One character a byte: only ASCII matters here.
        var scan = new SourceScan(path, Encoding.Latin1.GetString(BoundedFile.Read(path) ?? []));
        foreach (var (line, logical) in scan.Lines())
        {
            scan.Take(line, logical);
        }

        return scan;
    }

    /// <summary>The lines that are not directives, joined where a backslash ends one.</summary>
    public IEnumerable<(int Line, string Text)> PlainLines() =>
        Lines().Where(line => !line.Text.AsSpan().TrimStart().StartsWith("#"));

    private IEnumerable<(int Line, string Text)> Lines()
    {
        var line = 1;
        for (var start = 0; start < _text.Length; )
        {
            var first = line;
            var end = EndOfLine(start);
            if (end == start || _text[end - 1] is not ('\\' or '\r'))
            {
                yield return (first, _text[start..end]);
                line++;
                start = end + 1;
                continue;
            }

            var logical = new StringBuilder();
            while (true)
            {
                var part = _text.AsSpan(start, end - start).TrimEnd('\r');
                var goesOn = part.EndsWith("\\") && logical.Length < LongestLine;
                logical.Append(goesOn ? part[..^1] : part).Append(goesOn ? " " : "");
                line++;
                start = end + 1;
                if (!goesOn || start >= _text.Length)
                {
                    break;
                }

                end = EndOfLine(start);
            }

            yield return (first, logical.ToString());
        }
    }

    private int EndOfLine(int start)
    {
        var length = _text.AsSpan(start).IndexOf('\n');
        return length < 0 ? _text.Length : start + length;
    }

    private void Take(int line, string text)
    {
        var trimmed = text.AsSpan().TrimStart();
        if (trimmed.StartsWith("#"))
        {
            var directive = trimmed[1..].TrimStart();
            if (directive.StartsWith("define"))
            {
                var definition = MacroDefinition.Read(directive["define".Length..].TrimStart().ToString());
                Definitions.Add(definition);
                NamesInBodies.UnionWith(definition.Body);
            }
            else if (directive.StartsWith("include"))
            {
                var parts = directive.ToString().Split('"', '<', '>');
                if (parts.Length == 3)
                {
                    Includes.Add(parts[1]);
                }
            }

            return;
        }

        var (tokens, depth) = Measure(trimmed);
        MostTokens = Math.Max(MostTokens, tokens);
        if (depth > 1)
        {
            NestedCalls.Add((line, text));
        }
    }

    // How many tokens at most, and how deep names with an opening parenthesis nest.
    private static (int Tokens, int Depth) Measure(ReadOnlySpan<char> text)
    {
        var tokens = 0;
        var isInWord = false;
        var depth = 0;
        var deepest = 0;
        Span<bool> calls = stackalloc bool[64];
        var open = 0;
        foreach (var character in text)
        {
            if (char.IsAsciiLetterOrDigit(character) || character is '_' or '$')
            {
                tokens += isInWord ? 0 : 1;
                isInWord = true;
                continue;
            }

            if (character == '(')
            {
                if (open >= calls.Length)
                {
                    return (text.Length, int.MaxValue);
                }

                calls[open++] = isInWord;
                depth += isInWord ? 1 : 0;
                deepest = Math.Max(deepest, depth);
            }
            else if (character == ')' && open > 0)
            {
                depth -= calls[--open] ? 1 : 0;
            }

            if (character is not (' ' or '\t'))
            {
                tokens++;
                isInWord = false;
            }
        }

        return (tokens, deepest);
    }
}
