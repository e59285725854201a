using System.Globalization;

namespace PowerLint.Frontend;

/// <summary>
/// Estimates how many tokens the lines of a file expand to, before the parser does it: macros that name each other several times over
/// double with each level, and the parser knows no bound. Looks at a file and the files that it includes by a quoted name beside
/// it. An estimate: conditional sections are all taken, and names that pasting makes are not seen.
/// </summary>
internal sealed class MacroGrowth
{
    // Beyond any table that people write, and still some 100 MB in the parser.
    private const double MostTokens = 1_000_000;
    private const int MostFiles = 100;

    private readonly Dictionary<string, Macro> _macros = new(StringComparer.Ordinal);
    private readonly HashSet<string> _files = new(StringComparer.Ordinal);
    private readonly List<(string File, int Line, List<string> Tokens)> _uses = [];

    /// <summary>The first line that grows too far, or null.</summary>
    public static SourceError? Excess(string file)
    {
        var growth = new MacroGrowth();
        growth.Scan(file);

        // Growth by a million needs some levels of macros.
        if (growth._macros.Count < 3)
        {
            return null;
        }

        foreach (var (path, line, tokens) in growth._uses)
        {
            if (growth.Weigh(tokens, []).Own > MostTokens)
            {
                return new SourceError(
                    path,
                    line,
                    1,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The macros on this line expand to more than {MostTokens:N0} tokens. Leave the file out, or take the macros apart."
                    )
                );
            }
        }

        return null;
    }

    private void Scan(string file)
    {
        if (_files.Count >= MostFiles || !_files.Add(file) || !File.Exists(file))
        {
            return;
        }

        var number = 0;
        var logical = "";
        var first = 0;
        foreach (var line in File.ReadLines(file))
        {
            number++;
            first = logical.Length == 0 ? number : first;
            logical += line;
            if (logical.EndsWith('\\') && logical.Length < 100_000)
            {
                logical = logical[..^1] + " ";
                continue;
            }

            Take(file, first, logical);
            logical = "";
        }
    }

    private void Take(string file, int line, string text)
    {
        var trimmed = text.AsSpan().TrimStart();
        if (trimmed.Length == 0)
        {
            return;
        }

        if (trimmed[0] != '#')
        {
            // Only lines that name a macro can grow; most do not.
            var tokens = Tokens(text);
            if (tokens.Exists(_macros.ContainsKey))
            {
                _uses.Add((file, line, tokens));
            }

            return;
        }

        var directive = trimmed[1..].TrimStart();
        if (directive.StartsWith("include"))
        {
            var parts = directive.ToString().Split('"');
            if (parts.Length == 3)
            {
                Scan(Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file) ?? "", parts[1])));
            }
        }
        else if (directive.StartsWith("define"))
        {
            Define(directive["define".Length..].TrimStart().ToString());
        }
    }

    private void Define(string text)
    {
        var end = 0;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] == '_'))
        {
            end++;
        }

        var name = text[..end];
        string[]? parameters = null;
        if (end < text.Length && text[end] == '(' && text.IndexOf(')', end) is > 0 and var close)
        {
            parameters = text[(end + 1)..close].Split(',', StringSplitOptions.TrimEntries);
            end = close + 1;
        }

        // Of several definitions the last one counts.
        _macros[name] = new Macro(parameters, Tokens(text[end..]));
    }

    private Weight WeightOf(Macro macro)
    {
        if (macro.Known is { } known)
        {
            return known;
        }

        if (macro.IsActive)
        {
            // A macro does not expand within itself.
            return new Weight(1, []);
        }

        macro.IsActive = true;
        var weight = Weigh(macro.Body, macro.Parameters ?? []);
        macro.IsActive = false;
        macro.Known = weight;
        return weight;
    }

    // How many tokens a run of tokens expands to, and how often each parameter is in it.
    private Weight Weigh(List<string> tokens, string[] parameters)
    {
        var own = 0.0;
        var uses = new double[parameters.Length];
        for (var i = 0; i < tokens.Count; i++)
        {
            var parameter = Array.IndexOf(parameters, tokens[i]);
            if (parameter >= 0)
            {
                uses[parameter]++;
            }
            else if (!_macros.TryGetValue(tokens[i], out var macro))
            {
                own++;
            }
            else if (macro.Parameters is null)
            {
                own += WeightOf(macro).Own;
            }
            else if (i + 1 < tokens.Count && tokens[i + 1] == "(")
            {
                var inner = WeightOf(macro);
                own += inner.Own;
                var arguments = Arguments(tokens, i + 1, out i);
                for (var j = 0; j < arguments.Count; j++)
                {
                    // Arguments beyond the parameters are those of the ellipsis, the last one.
                    var times = inner.Uses.Length == 0 ? 1 : inner.Uses[Math.Min(j, inner.Uses.Length - 1)];
                    var argument = Weigh(arguments[j], parameters);
                    own += times * argument.Own;
                    for (var k = 0; k < uses.Length; k++)
                    {
                        uses[k] += times * argument.Uses[k];
                    }
                }
            }
            else
            {
                own++;
            }
        }

        return new Weight(own, uses);
    }

    private static List<List<string>> Arguments(List<string> tokens, int open, out int close)
    {
        var arguments = new List<List<string>> { new() };
        var depth = 0;
        for (close = open; close < tokens.Count; close++)
        {
            var token = tokens[close];
            depth += token is "(" ? 1 : 0;
            depth -= token is ")" ? 1 : 0;
            if (depth == 0)
            {
                break;
            }

            if (depth == 1 && token is ",")
            {
                arguments.Add([]);
            }
            else if (close > open)
            {
                arguments[^1].Add(token);
            }
        }

        return arguments;
    }

    private static List<string> Tokens(string text)
    {
        var tokens = new List<string>();
        for (var i = 0; i < text.Length; )
        {
            var start = i;
            var character = text[i];
            if (char.IsWhiteSpace(character))
            {
                i++;
                continue;
            }

            if (character == '/' && i + 1 < text.Length && text[i + 1] == '/')
            {
                break;
            }

            if (char.IsLetterOrDigit(character) || character == '_')
            {
                while (i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] == '_'))
                {
                    i++;
                }
            }
            else if (character is '"' or '\'')
            {
                for (i++; i < text.Length && text[i] != character; i++)
                {
                    i += text[i] == '\\' ? 1 : 0;
                }

                i = Math.Min(i + 1, text.Length);
            }
            else
            {
                i++;
            }

            tokens.Add(text[start..i]);
        }

        return tokens;
    }

    private sealed class Macro(string[]? parameters, List<string> body)
    {
        public string[]? Parameters { get; } = parameters;

        public List<string> Body { get; } = body;

        public bool IsActive { get; set; }

        public Weight? Known { get; set; }
    }

    private sealed record Weight(double Own, double[] Uses);
}
