using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>A source line.</summary>
internal readonly record struct SourceLine(string File, int Line)
{
    public override string ToString() => $"{Path.GetFileName(File)}:{Line}";
}

/// <summary>Program addresses to source lines, from the executable's debug information.</summary>
internal static class SourceLineMap
{
    /// <summary>For each address the lines that hold it: innermost first, then where it was inlined.</summary>
    public static Dictionary<int, SourceLine[]> Of(string elf, IEnumerable<int> addresses)
    {
        var wanted = addresses.Distinct().ToArray();
        if (wanted.Length == 0)
        {
            return [];
        }

        var output = ExternalTool.Run(
            "avr-addr2line",
            ["-a", "-i", "-e", elf, .. wanted.Select(a => "0x" + a.ToString("x", CultureInfo.InvariantCulture))]
        );
        var map = new Dictionary<int, SourceLine[]>();
        foreach (var line in output.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.StartsWith("0x", StringComparison.Ordinal))
            {
                map[wanted[map.Count]] = [];
                continue;
            }

            // FILE:LINE, sometimes with " (discriminator N)" behind.
            var text = line.Split(" (", 2)[0];
            var colon = text.LastIndexOf(':');
            if (int.TryParse(text[(colon + 1)..], CultureInfo.InvariantCulture, out var number))
            {
                var address = wanted[map.Count - 1];
                map[address] = [.. map[address], new SourceLine(Path.GetFullPath(text[..colon]), number)];
            }
        }

        return map;
    }
}
