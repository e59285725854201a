namespace PowerLint.Frontend;

/// <summary>The macros of some files together, and what they expand to. Of several definitions the last one counts.</summary>
internal sealed class MacroTable
{
    private readonly Dictionary<string, MacroDefinition> _macros = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Weight?> _weights = new(StringComparer.Ordinal);

    public MacroTable(IEnumerable<SourceScan> files)
    {
        foreach (var definition in files.SelectMany(file => file.Definitions))
        {
            _macros[definition.Name] = definition;
        }

        foreach (var macro in _macros.Values)
        {
            var weight = WeightOf(macro);
            MostOwn = Math.Max(MostOwn, weight.Own);
            MostUses = Math.Max(MostUses, weight.Uses.DefaultIfEmpty(0).Max());
        }
    }

    public int Count => _macros.Count;

    /// <summary>How many tokens the longest macro expands to, its arguments left out.</summary>
    public double MostOwn { get; } = 1;

    /// <summary>How often a macro repeats an argument at most.</summary>
    public double MostUses { get; } = 1;

    /// <summary>About how many tokens a line expands to.</summary>
    public double Expanded(string line) => Weigh(MacroDefinition.Tokens(line), []).Own;

    private Weight WeightOf(MacroDefinition macro)
    {
        if (_weights.TryGetValue(macro.Name, out var known))
        {
            // A macro does not expand within itself.
            return known ?? new Weight(1, []);
        }

        _weights[macro.Name] = null;
        var weight = Weigh(macro.Body, macro.Parameters ?? []);
        _weights[macro.Name] = weight;
        return weight;
    }

    // How many tokens a run of tokens expands to, and how often each parameter is in it.
    private Weight Weigh(List<string> tokens, string[] parameters)
    {
        var own = 0.0;
        var uses = parameters.Length == 0 ? [] : new double[parameters.Length];
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

    private sealed record Weight(double Own, double[] Uses);
}
