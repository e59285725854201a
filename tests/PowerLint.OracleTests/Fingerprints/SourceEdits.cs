using System.Text.RegularExpressions;

namespace PowerLint.OracleTests;

/// <summary>Edits of C sources that change nothing of what a finding is about.</summary>
internal static partial class SourceEdits
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(1);

    /// <summary>All edits, one after the other.</summary>
    public static string ApplyAll(string text) => All.Values.Aggregate(text, (edited, apply) => apply(edited));

    /// <summary>The edits by name.</summary>
    public static IReadOnlyDictionary<string, Func<string, string>> All { get; } =
        new SortedDictionary<string, Func<string, string>>(StringComparer.Ordinal)
        {
            ["lines inserted above"] = InsertLines,
            ["locals renamed"] = RenameLocals,
            ["laid out anew"] = Reformat,
            ["a function moved"] = MoveFunction,
        };

    private static string InsertLines(string text)
    {
        // The header of a case ends with its first line that is no comment.
        var header = Header().Match(text).Value;
        var rest = text[header.Length..];
        rest = FunctionStart().Replace(rest, "${start}    enum { inserted_for_a_test = 1 };\n");
        return header + "\n\n/* Inserted:\n   three lines. */\ntypedef int inserted_type;\n" + rest;
    }

    private static string RenameLocals(string text)
    {
        // A member of the same name cannot be told from the variable by its letters: such names stay.
        var members = Structure().Matches(text).Select(match => match.Value).ToArray();
        var names = Local()
            .Matches(text)
            .Select(match => match.Groups["name"].Value)
            .Distinct(StringComparer.Ordinal)
            .Where(name => !members.Any(body => Regex.IsMatch(body, $@"\b{name}\b", RegexOptions.None, Limit)))
            .ToArray();
        return string.Join(
            '\n',
            text.Split('\n')
                .Select(line =>
                {
                    var comment = line.IndexOf("//", StringComparison.Ordinal);
                    var code = comment < 0 ? line : line[..comment];
                    foreach (var name in names)
                    {
                        code = Regex.Replace(
                            code,
                            $@"(?<![.\w]|->){name}\b",
                            name + "_renamed",
                            RegexOptions.None,
                            Limit
                        );
                    }

                    return code + (comment < 0 ? "" : line[comment..]);
                })
        );
    }

    private static string Reformat(string text) =>
        string.Join(
            '\n',
            text.Split('\n')
                .Select(line =>
                {
                    if (
                        line.Contains('"', StringComparison.Ordinal)
                        || line.TrimStart().StartsWith('#')
                        || line.EndsWith('\\')
                        || line.StartsWith("//", StringComparison.Ordinal)
                    )
                    {
                        return line;
                    }

                    var comment = line.IndexOf("//", StringComparison.Ordinal);
                    var code = comment < 0 ? line : line[..comment];
                    code = Regex.Replace(
                        code,
                        "^( {4})+",
                        spaces => new string('\t', spaces.Length / 4),
                        RegexOptions.ExplicitCapture,
                        Limit
                    );
                    code = Regex.Replace(code, " (?<sign>[|&]?=) ", "  ${sign}\t", RegexOptions.ExplicitCapture, Limit);
                    code = code.Replace(", ", ",", StringComparison.Ordinal)
                        .Replace("for (", "for(", StringComparison.Ordinal);
                    return code + (comment < 0 ? "" : line[comment..]);
                })
        );

    // The first function that is not main goes to the end; its prototype stays.
    private static string MoveFunction(string text)
    {
        var function = Definition()
            .Matches(text)
            .FirstOrDefault(match => !match.Value.Contains(" main(", StringComparison.Ordinal));
        if (function is null)
        {
            return text;
        }

        var signature = function.Groups["signature"].Value;
        var isHandler =
            signature.StartsWith("ISR(", StringComparison.Ordinal)
            || !signature.Contains(' ', StringComparison.Ordinal);
        var left = isHandler ? "" : signature + ";\n";
        return string.Concat(text.AsSpan(0, function.Index), left, text.AsSpan(function.Index + function.Length))
            + "\n"
            + function.Value;
    }

    [GeneratedRegex(@"(struct|union)[^;{}()]*\{[^}]*\}", RegexOptions.ExplicitCapture | RegexOptions.Singleline, 1000)]
    private static partial Regex Structure();

    [GeneratedRegex(@"\A(//[^\n]*\n)+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Header();

    [GeneratedRegex(
        @"(?<start>^[A-Za-z_][^\n;]*\)\n\{\n)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        1000
    )]
    private static partial Regex FunctionStart();

    [GeneratedRegex(
        @"(?<=[(\n ] *)(?<!static )(?<!volatile )\b(uint8_t|uint16_t|int|unsigned char)\s+(?<name>[a-z]\w*)(?=\s*(=|;|,|\)))(?<=^ +.*|\(.*)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        1000
    )]
    private static partial Regex Local();

    [GeneratedRegex(
        @"^(?<signature>[A-Za-z_][^\n;={}]*\))\n\{\n.*?^\}\n",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.Singleline,
        1000
    )]
    private static partial Regex Definition();
}
