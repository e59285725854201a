using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// What avr-libc's headers say of one part, as avr-gcc evaluates it. Source: Debian's avr-libc
/// 2.0.0 with gcc-avr.
/// </summary>
internal sealed partial class AvrHeader
{
    private const string Includes = "#include <avr/io.h>\n#include <avr/sleep.h>\n";

    private readonly string _part;

    /// <summary>Reads what the compiler and, where asked for, the headers define.</summary>
    public AvrHeader(string part, bool headers = true)
    {
        _part = part;
        Macros = MacroLine()
            .Matches(Run(["-E", "-dM", "-x", "c", "-"], headers ? Includes : ""))
            .GroupBy(m => m.Groups["name"].Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Groups["text"].Value.Trim(), StringComparer.Ordinal);
    }

    /// <summary>Macros without arguments, with their text.</summary>
    public IReadOnlyDictionary<string, string> Macros { get; }

    /// <summary>Evaluates C constant expressions with the part's headers.</summary>
    public int[] Evaluate(IReadOnlyList<string> expressions)
    {
        var code = new StringBuilder(Includes);
        for (var i = 0; i < expressions.Count; i++)
        {
            code.Append(
                CultureInfo.InvariantCulture,
                $"const unsigned int value_{i} = (unsigned int)({expressions[i]});\n"
            );
        }

        var values = new int[expressions.Count];
        foreach (Match match in ValueLine().Matches(Run(["-S", "-o", "-", "-x", "c", "-"], code.ToString())))
        {
            values[int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture)] = match.Groups["value"].Success
                ? int.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture) & 0xFFFF
                : 0;
        }

        return values;
    }

    private string Run(IEnumerable<string> arguments, string input)
    {
        var start = new ProcessStartInfo("avr-gcc")
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add($"-mmcu={_part}");
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"avr-gcc -mmcu={_part}: {errors.Result}");
        return output.Result;
    }

    [GeneratedRegex(
        @"^#define (?<name>\w+)[ \t]+(?<text>.*)$",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex MacroLine();

    [GeneratedRegex(
        @"^value_(?<index>\d+):\s+(?:\.word\s+(?<value>-?\d+)|\.zero\s+2)",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex ValueLine();
}
