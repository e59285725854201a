using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Analysis;

namespace PowerLint.OracleTests;

/// <summary>What comparing the results of a program's expressions gave.</summary>
/// <param name="Faults">Results that differ, each a line for people.</param>
/// <param name="Unknown">Results of which the analysis does not know all bits, though it should.</param>
/// <param name="Open">Results that it may leave open: their line ends in <c>// open: reason</c>.</param>
/// <param name="Results">How many results there are.</param>
internal sealed record ResultAgreement(
    IReadOnlyList<string> Faults,
    IReadOnlyList<string> Unknown,
    IReadOnlyList<string> Open,
    int Results
);

/// <summary>
/// Compares what expressions give: the program stores each <c>R(expression);</c> in 32 bits of plain memory and sleeps; the
/// analysis lists that memory as bytes outside the model.
/// </summary>
internal static partial class ResultComparison
{
    /// <summary>Where the first result goes; <c>RESULTS</c> in <c>result.h</c>.</summary>
    public const int FirstAddress = 0x500;

    /// <summary>The most results of a program.</summary>
    public const int MostResults = 64;

    private const int BytesEach = 4;

    /// <summary>The simulation to compare with.</summary>
    public static SimulatorJob Job(Firmware firmware, string elf) =>
        new(firmware.Device, elf, Seed: 1)
        {
            MostSleeps = 1,
            MostInstructions = 20_000_000,
            MemoryFrom = FirstAddress,
            MemoryBytes = BytesEach * MostResults,
        };

    /// <summary>Compares with a simulation.</summary>
    public static ResultAgreement Compare(string source, AnalysisResult analysis, SimulatorRun run)
    {
        if (run.Visits is not [var visit])
        {
            return new ResultAgreement([$"the simulation ended with {run.End}"], [], [], 0);
        }

        var actual = Enumerable
            .Range(0, MostResults)
            .Select(index =>
                Enumerable
                    .Range(0, BytesEach)
                    .Aggregate(0u, (word, part) => word | (uint)visit.Memory[(BytesEach * index) + part] << (8 * part))
            )
            .ToArray();
        return Compare(source, analysis, FirstAddress, actual);
    }

    /// <summary>Compares with the results that compiled code gave.</summary>
    public static ResultAgreement Compare(
        string source,
        AnalysisResult analysis,
        ulong firstAddress,
        IReadOnlyList<uint> results
    )
    {
        var lines = ResultLine().Matches(source);
        var expressions = lines.Select(match => match.Groups["expression"].Value).ToArray();
        if (expressions.Length is 0 or > MostResults)
        {
            throw new InvalidOperationException($"{expressions.Length} results, 1 to {MostResults} are possible.");
        }

        var bytes = analysis
            .RestingPoints.SelectMany(point => point.State.UnmodelledBytes)
            .GroupBy(entry => entry.Address)
            .ToDictionary(group => group.Key, group => group.First().Bits);
        var faults = new List<string>();
        var unknown = new List<string>();
        var open = new List<string>();
        for (var index = 0; index < expressions.Length; index++)
        {
            var (known, value, actual) = (0u, 0u, results[index]);
            for (var part = 0; part < BytesEach; part++)
            {
                var bits = bytes.GetValueOrDefault(firstAddress + (ulong)((BytesEach * index) + part));
                known |= (uint)(bits.Known & 0xff) << (8 * part);
                value |= (uint)(bits.Value & 0xff) << (8 * part);
            }

            if (((value ^ actual) & known) != 0)
            {
                faults.Add(Text($"{expressions[index]}: analysed 0x{value:x8}, compiled code gives 0x{actual:x8}"));
            }
            else if (known != uint.MaxValue)
            {
                var list = lines[index].Groups["open"].Success ? open : unknown;
                list.Add(Text($"{expressions[index]}: 0x{~known:x8} unknown, compiled code gives 0x{actual:x8}"));
            }
        }

        return new ResultAgreement(faults, unknown, open, expressions.Length);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^\s*R\((?<expression>.*)\);(?<open>\s*// open: .+)?$",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 5000
    )]
    private static partial Regex ResultLine();
}
