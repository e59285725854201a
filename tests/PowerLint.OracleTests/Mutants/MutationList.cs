using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace PowerLint.OracleTests;

/// <summary>
/// Reads <c>tests/mutations/FAMILY/SCENARIO.txt</c>: which statements of the reference firmware in <c>tests/families</c> matter for
/// the supply current, and what leaving out or altering each of them must be found as. The lists are written from the data
/// sheets' and the rules' meaning, by hand, and not from what comes out. A file's name stands at the margin, a statement below it
/// two spaces in, and what is done to it four spaces in: <c>remove</c>; <c>clear 0..7</c> and <c>set 0..7</c> (one mutant a bit of
/// the value that is assigned, <c>{n}</c> in the subject); <c>replace STATEMENT</c>; <c>then STATEMENT</c> (behind it). After a
/// colon follow the rule and its subjects. <c>@2</c> before a statement means the second one that reads so.
/// </summary>
internal static partial class MutationList
{
    /// <summary>Where the lists lie.</summary>
    public static string Root { get; } = Testing.RepositoryRoot.Combine("tests", "mutations");

    /// <summary>The firmware that has a list, as <c>family/scenario</c>, in order.</summary>
    public static ImmutableArray<string> Firmwares() =>
        [
            .. Directory
                .EnumerateFiles(Root, "*.txt", SearchOption.AllDirectories)
                .Select(path => Path.ChangeExtension(Path.GetRelativePath(Root, path), null).Replace('\\', '/'))
                .Where(name => name.Contains('/', StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The mutations of a firmware, in the list's order.</summary>
    /// <exception cref="FormatException">A line is not understood.</exception>
    public static IReadOnlyList<Mutation> Read(string firmware)
    {
        var result = new List<Mutation>();
        var (file, statement, occurrence) = ("", "", 1);
        foreach (var line in File.ReadAllLines(Path.Combine(Root, firmware + ".txt")))
        {
            var text = line.Trim();
            if (text.Length == 0 || text[0] == '#')
            {
                continue;
            }

            switch (line.Length - line.TrimStart().Length)
            {
                case 0:
                    file = text;
                    break;
                case 2:
                    occurrence = text[0] == '@' ? text[1] - '0' : 1;
                    statement = text[0] == '@' ? text[2..].Trim() : text;
                    break;
                default:
                    result.AddRange(Expand(new Place(firmware, file, statement, occurrence), text));
                    break;
            }
        }

        return result;
    }

    private static IEnumerable<Mutation> Expand(Place place, string text)
    {
        var match = Alteration().Match(text);
        if (!match.Success)
        {
            throw new FormatException($"{place.Firmware}: not understood: {text}");
        }

        var kind = match.Groups["kind"].Value;
        var argument = match.Groups["argument"].Value.Trim();
        var rule = match.Groups["rule"].Value;
        var subjects = Subject().Matches(match.Groups["subjects"].Value).SelectMany(word => Names(word.Value));
        return kind switch
        {
            "remove" => [Make(";", subjects)],
            "replace" => [Make(argument, subjects)],
            "then" => [Make($"{place.Statement} {argument}", subjects)],
            _ => Bits(argument)
                .Select(bit =>
                {
                    var number = bit.ToString(CultureInfo.InvariantCulture);
                    return Make(
                        WithBit(place.Statement, kind, number),
                        subjects.Select(name => name.Replace("{n}", number, StringComparison.Ordinal)),
                        $"{kind} {number}"
                    );
                }),
        };

        Mutation Make(string replacement, IEnumerable<string> names, string? alteration = null) =>
            new(
                place.Firmware,
                place.File,
                place.Statement,
                place.Occurrence,
                alteration ?? $"{kind} {argument}".Trim(),
                replacement,
                rule,
                [.. names]
            );
    }

    private static string WithBit(string statement, string kind, string bit)
    {
        var equals = statement.IndexOf('=', StringComparison.Ordinal) + 1;
        var value = statement[equals..].TrimEnd(';').Trim();
        return kind == "clear"
            ? $"{statement[..equals]} ({value}) & ~(1UL << {bit});"
            : $"{statement[..equals]} ({value}) | (1UL << {bit});";
    }

    private static IEnumerable<int> Bits(string text) =>
        text.Split(',', StringSplitOptions.TrimEntries)
            .SelectMany(part =>
            {
                var ends = part.Split("..");
                var first = int.Parse(ends[0], CultureInfo.InvariantCulture);
                return Enumerable.Range(first, int.Parse(ends[^1], CultureInfo.InvariantCulture) - first + 1);
            });

    // PB0..PB3 stands for four pins; quotes hold a subject with spaces together.
    private static IEnumerable<string> Names(string word)
    {
        var range = Run().Match(word);
        if (!range.Success)
        {
            return [word.Trim('"')];
        }

        var first = int.Parse(range.Groups["first"].Value, CultureInfo.InvariantCulture);
        var last = int.Parse(range.Groups["last"].Value, CultureInfo.InvariantCulture);
        return Enumerable.Range(first, last - first + 1).Select(bit => range.Groups["port"].Value + bit);
    }

    [GeneratedRegex(
        @"^(?<kind>remove|clear|set|replace|then)\b(?<argument>.*?):\s+(?<rule>[a-z-]+)(?<subjects>(\s+\S+)*)$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Alteration();

    [GeneratedRegex(@"""[^""]*""|\S+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Subject();

    [GeneratedRegex(
        @"^(?<port>P[A-Z]?\d?\.?)(?<first>\d+)\.\.\k<port>(?<last>\d+)$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Run();

    private sealed record Place(string Firmware, string File, string Statement, int Occurrence);
}
