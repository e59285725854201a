using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>
/// Reads marks from source text: <c>// finding: floating-pin PB0..PB3 PB5 possible note {{words}}</c>. A mark speaks of its own
/// line, or with <c>finding@+1:</c> of the next, <c>finding@-2:</c> of the one two above. <c>// clean: floating-pin PB3</c>,
/// <c>// state: PORTB = 0b??01_1111</c>, <c>// related: floating-pin {{called here}}</c>.
/// </summary>
public static partial class ExpectationComments
{
    /// <summary>The marks of a text, in order.</summary>
    /// <exception cref="FormatException">A mark is not understood.</exception>
    public static ImmutableArray<ExpectationMark> Read(string text, string file)
    {
        var marks = ImmutableArray.CreateBuilder<ExpectationMark>();
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            foreach (Match match in Mark().Matches(lines[i]))
            {
                var offset = match.Groups["offset"].Value;
                var line = i + 1 + (offset.Length == 0 ? 0 : int.Parse(offset, CultureInfo.InvariantCulture));
                marks.Add(Parse(match.Groups["kind"].Value, match.Groups["rest"].Value.Trim(), file, line));
            }
        }

        return marks.ToImmutable();
    }

    private static ExpectationMark Parse(string kindText, string rest, string file, int line)
    {
        var kind = kindText switch
        {
            "finding" => MarkKind.Finding,
            "finding-wanted" => MarkKind.FindingWanted,
            "finding-unwanted" => MarkKind.FindingUnwanted,
            "related" => MarkKind.Related,
            "clean" => MarkKind.Clean,
            _ => MarkKind.State,
        };
        if (kind == MarkKind.State)
        {
            var state = StateText().Match(rest);
            return state.Success
                ? new ExpectationMark(kind, file, line, rest)
                {
                    Name = state.Groups["register"].Value,
                    Bits = state.Groups["bits"].Value.Replace("_", "", StringComparison.Ordinal),
                }
                : throw new FormatException($"{file}:{line}: write // state: PORTB = 0b??01_1111, not '{rest}'");
        }

        var words = Words().Matches(rest).Select(match => match.Groups["words"].Value).ToImmutableArray();
        var tokens = Words().Replace(rest, "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (tokens.Length == 0 || RuleCatalog.Find(tokens[0]) is null)
        {
            throw new FormatException($"{file}:{line}: no rule '{(tokens.Length == 0 ? "" : tokens[0])}' in '{rest}'");
        }

        var mark = new ExpectationMark(kind, file, line, rest) { Name = tokens[0], Words = words };
        var subjects = new List<string>();
        foreach (var token in tokens.Skip(1))
        {
            mark = token switch
            {
                "proven" => mark with { Certainty = Certainty.Proven },
                "board-dependent" => mark with { Certainty = Certainty.BoardDependent },
                "possible" => mark with { Certainty = Certainty.Possible },
                "note" => mark with { Level = Level.Note },
                "warning" => mark with { Level = Level.Warning },
                "error" => mark with { Level = Level.Error },
                _ => mark,
            };
            if (token is not ("proven" or "board-dependent" or "possible" or "note" or "warning" or "error"))
            {
                subjects.AddRange(Expand(token));
            }
        }

        return mark with
        {
            Subjects = [.. subjects],
        };
    }

    // PB0..PB3 stands for PB0 PB1 PB2 PB3.
    private static IEnumerable<string> Expand(string token)
    {
        var range = PinRange().Match(token);
        if (!range.Success)
        {
            return [token];
        }

        var first = int.Parse(range.Groups["first"].Value, CultureInfo.InvariantCulture);
        var last = int.Parse(range.Groups["last"].Value, CultureInfo.InvariantCulture);
        return Enumerable.Range(first, last - first + 1).Select(bit => range.Groups["port"].Value + bit);
    }

    [GeneratedRegex(
        @"(//|/\*)\s*(?<kind>finding-wanted|finding-unwanted|finding|related|clean|state)(@(?<offset>[+-]\d+))?:\s(?<rest>.*?)(\*/|(?=//)|$)",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Mark();

    [GeneratedRegex(@"\{\{(?<words>.*?)\}\}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Words();

    [GeneratedRegex(
        @"^(?<port>P[A-Z]?\d?\.?)(?<first>\d+)\.\.(\k<port>)(?<last>\d+)$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex PinRange();

    [GeneratedRegex(@"^(?<register>\S+)\s*=\s*0b(?<bits>[01?_-]+)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StateText();
}
