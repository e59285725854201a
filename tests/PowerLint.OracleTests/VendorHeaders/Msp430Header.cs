using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// What Debian's MSP430 headers and linker scripts say of one part. The host's compiler only expands macros and evaluates
/// constants. Source: Debian's msp430mcu 20120406.
/// </summary>
internal sealed partial class Msp430Header
{
    private const string Folder = "/usr/msp430";

    private readonly string _part;
    private readonly Dictionary<string, int> _widths;
    private readonly Dictionary<string, int> _addresses;

    public Msp430Header(string part)
    {
        _part = part;
        Macros = MacroLine()
            .Matches(Run(["-E", "-dM", "-x", "c", "-"], "#include <msp430.h>\n"))
            .GroupBy(m => m.Groups["name"].Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Groups["text"].Value.Trim(), StringComparer.Ordinal);
        _widths = Declaration()
            .Matches(Run(["-E", "-P", "-x", "c", "-"], "#include <msp430.h>\n"))
            .ToDictionary(m => m.Groups["name"].Value, m => WidthOf(m.Groups["type"].Value), StringComparer.Ordinal);
        _addresses = AddressLine()
            .Matches(File.ReadAllText(Path.Combine(Folder, "lib", "ldscripts", part, "periph.x")))
            .GroupBy(m => m.Groups["name"].Value, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g =>
                    int.Parse(
                        g.First().Groups["address"].Value,
                        NumberStyles.AllowHexSpecifier,
                        CultureInfo.InvariantCulture
                    ),
                StringComparer.Ordinal
            );
    }

    /// <summary>Macros without arguments, with their text.</summary>
    public IReadOnlyDictionary<string, string> Macros { get; }

    /// <summary>The registers that the header declares under a name of their own.</summary>
    public IEnumerable<string> Registers => _widths.Keys;

    /// <summary>Whether the package has a header for the part.</summary>
    public static bool Knows(string part) => File.Exists(Path.Combine(Folder, "include", part + ".h"));

    /// <summary>Where a register lies and how wide it is, by its own name or a macro that stands for it; null where it is neither.</summary>
    public (int Address, int WidthBits)? Find(string register)
    {
        var name = register;
        for (var i = 0; i < 4; i++)
        {
            if (_widths.TryGetValue(name, out var width) && _addresses.TryGetValue(name, out var address))
            {
                return (address, width);
            }

            if (!Macros.TryGetValue(name, out var text))
            {
                return null;
            }

            name = text.Trim('(', ')', ' ');
        }

        return null;
    }

    /// <summary>Evaluates macros that stand for numbers.</summary>
    public Dictionary<string, int> Evaluate(IEnumerable<string> macros)
    {
        var names = macros.Distinct(StringComparer.Ordinal).ToArray();
        var code = new StringBuilder("#include <msp430.h>\n");
        foreach (var name in names)
        {
            code.Append(CultureInfo.InvariantCulture, $"VALUE \"{name}\" ({name})\n");
        }

        // The compiler sees the expanded constants only: the header itself is for another one.
        var expanded = ValueLine().Matches(Run(["-E", "-P", "-x", "c", "-"], code.ToString()));
        var constants = new StringBuilder();
        for (var i = 0; i < expanded.Count; i++)
        {
            constants.Append(
                CultureInfo.InvariantCulture,
                $"const unsigned int value_{i} = (unsigned short)({expanded[i].Groups["text"].Value});\n"
            );
        }

        var values = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (Match match in Constant().Matches(Run(["-S", "-o", "-", "-x", "c", "-"], constants.ToString())))
        {
            var index = int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture);
            values[expanded[index].Groups["name"].Value] = match.Groups["value"].Success
                ? int.Parse(match.Groups["value"].Value, CultureInfo.InvariantCulture)
                : 0;
        }

        return values;
    }

    private static int WidthOf(string type) =>
        type.Contains("char", StringComparison.Ordinal) ? 8
        : type.Contains("long", StringComparison.Ordinal) ? 32
        : 16;

    private string Run(IEnumerable<string> arguments, string input)
    {
        var start = new ProcessStartInfo("gcc")
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add("-w");
        start.ArgumentList.Add($"-I{Folder}/include");
        start.ArgumentList.Add($"-D__{_part.ToUpperInvariant()}__");
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
        Assert.True(process.ExitCode == 0, $"gcc for {_part}: {errors.Result}");
        return output.Result;
    }

    [GeneratedRegex(
        @"^#define (?<name>\w+)[ \t]+(?<text>.*)$",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex MacroLine();

    [GeneratedRegex(
        @"extern (?:const )?volatile (?<type>[\w ]+?) (?<name>\w+) __asm__\(",
        RegexOptions.None,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex Declaration();

    [GeneratedRegex(
        @"^__(?<name>\w+) = 0x(?<address>[0-9A-Fa-f]+);",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex AddressLine();

    [GeneratedRegex(
        "^VALUE \"(?<name>\\w+)\" \\((?<text>.*)\\)$",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex ValueLine();

    [GeneratedRegex(
        @"^value_(?<index>\d+):\s+(?:\.long\s+(?<value>-?\d+)|\.zero\s+4)",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10000
    )]
    private static partial Regex Constant();
}
