using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>Macros that later stages ask for: the clock, and what names the part.</summary>
internal static partial class MacroCollection
{
    public static IReadOnlyDictionary<string, string> Collect(ParserInvocation invocation, IReadOnlyList<OwnFile> files)
    {
        var macros = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var definition in invocation.Definitions)
        {
            var equals = definition.IndexOf('=', StringComparison.Ordinal);
            var name = equals < 0 ? definition : definition[..equals];
            if (IsOfInterest(name))
            {
                macros[name] = equals < 0 ? "1" : definition[(equals + 1)..];
            }
        }

        // What compilers define when they optimise, with the debugger's level left out: it keeps more of the code.
        var level = invocation.Command.Flags.LastOrDefault(flag => flag.StartsWith("-O", StringComparison.Ordinal));
        if (level is not null and not ("-O0" or "-Og"))
        {
            macros.TryAdd("__OPTIMIZE__", "1");
        }

        if (invocation is { Part: { } part } && PartFlags.MacroOf(invocation.Target, part) is { } macro)
        {
            macros.TryAdd(macro, "1");
        }

        foreach (var file in files)
        {
            if (file.Content.AsSpan().IndexOf("F_CPU"u8) < 0)
            {
                continue;
            }

            // A definition on the command line wins, as sources guard theirs with #ifndef, unless they take it back.
            var text = Encoding.UTF8.GetString(file.Content);
            foreach (Match match in Definition().Matches(text))
            {
                var (name, value) = (match.Groups["name"].Value, match.Groups["value"].Value.Trim());
                if (TakenBack().IsMatch(text.AsSpan(0, match.Index)))
                {
                    macros[name] = value;
                }
                else
                {
                    macros.TryAdd(name, value);
                }
            }
        }

        return macros;
    }

    private static bool IsOfInterest(string name) =>
        name is "F_CPU"
        || name.StartsWith("__AVR_", StringComparison.Ordinal)
        || name.StartsWith("__MSP430", StringComparison.Ordinal)
        || name.StartsWith("__CC430", StringComparison.Ordinal)
        || name.StartsWith("STM32", StringComparison.Ordinal)
        || name.StartsWith("NRF5", StringComparison.Ordinal)
        || name.StartsWith("__SAM", StringComparison.Ordinal)
        || name.StartsWith("EFM32", StringComparison.Ordinal)
        || name.StartsWith("CPU_", StringComparison.Ordinal)
        || name.StartsWith("MCU_", StringComparison.Ordinal);

    [GeneratedRegex(
        @"^[ \t]*#[ \t]*define[ \t]+(?<name>F_CPU)[ \t]+(?<value>[^\r\n/]+)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        matchTimeoutMilliseconds: 2000
    )]
    private static partial Regex Definition();

    [GeneratedRegex(
        @"^[ \t]*#[ \t]*undef[ \t]+F_CPU\b",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline,
        matchTimeoutMilliseconds: 2000
    )]
    private static partial Regex TakenBack();
}
