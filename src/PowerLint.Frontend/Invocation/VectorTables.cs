using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>
/// The functions that vector tables in assembly files name. The tables are found by the names that start-up files give them; the
/// rest of the file is not read.
/// </summary>
internal static partial class VectorTables
{
    private const int MostBytes = 4 * 1024 * 1024;

    // Words and labels that stand in tables but are no handlers of interrupts.
    private static readonly HashSet<string> NoHandlers = new(StringComparer.Ordinal)
    {
        "Reset_Handler",
        "_start",
        "__start",
        "__init",
        "__iar_program_start",
        "_estack",
        "__StackTop",
        "__initial_sp",
        "__stack",
    };

    /// <summary>The names in the tables of a file, in order, each once.</summary>
    public static IReadOnlyList<string> Read(string file)
    {
        try
        {
            return BoundedFile.Length(file) is > 0 and <= MostBytes ? Names(File.ReadLines(file)) : [];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The names in the tables of some lines.</summary>
    public static IReadOnlyList<string> Names(IEnumerable<string> lines)
    {
        var names = new List<string>();
        var isTable = false;
        foreach (var line in lines)
        {
            var text = Comment().Replace(line, "");
            if (SectionOrLabel().Match(text) is { Success: true } start)
            {
                // A label within a table, as for the end of its first part, does not end it.
                var isNamed =
                    start.Value.Contains("vect", StringComparison.OrdinalIgnoreCase)
                    || start.Value.Contains("isr", StringComparison.OrdinalIgnoreCase)
                    || start.Value.Contains("RESET", StringComparison.Ordinal);
                isTable = isNamed || (isTable && !start.Groups["section"].Success);
            }

            if (isTable && Entry().Match(text) is { Success: true } entry)
            {
                foreach (var word in entry.Groups["words"].Value.Split(',', StringSplitOptions.TrimEntries))
                {
                    if (
                        Name().IsMatch(word)
                        && !NoHandlers.Contains(word)
                        && !names.Contains(word, StringComparer.Ordinal)
                    )
                    {
                        names.Add(word);
                    }
                }
            }
        }

        return names;
    }

    [GeneratedRegex(@"(//|;|@|/\*).*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Comment();

    [GeneratedRegex(
        @"^\s*(?<section>(\.section|\.text|\.data|\.bss|AREA|SECTION|RSEG|\.sect)\b.*)$|^\s*(?<label>[A-Za-z_.$][\w.$]*)\s*:|^(?<label>__Vectors|__vector_table)\b",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex SectionOrLabel();

    [GeneratedRegex(
        @"(?:^|\s|:)(\.word|\.long|\.4byte|\.short|DCD|DC32|DC16|\.int|jmp|rjmp|B|b|LDR\s+PC,\s*=)\s+(?<words>[^""]+)$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Entry();

    [GeneratedRegex(@"^[A-Za-z_][\w]*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Name();
}
