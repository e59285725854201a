using System.Globalization;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>Builds our harness over libsimavr once and runs jobs through it.</summary>
internal static class SimulatorHarness
{
    private static readonly Lazy<string> Executable = new(Build);

    /// <summary>A folder for what the oracles build, emptied by the operating system.</summary>
    public static string NewFolder() => Directory.CreateTempSubdirectory("powerlint-oracle-").FullName;

    /// <summary>Runs jobs; the results come in their order.</summary>
    public static IReadOnlyList<SimulatorRun> Run(IEnumerable<SimulatorJob> jobs)
    {
        var lines = jobs.Select(job =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{job.Device} {job.Hertz} {job.Seed} {job.MostSleeps} {job.MostInstructions} {job.MemoryFrom} {job.MemoryBytes} {job.Elf}\n"
                )
            )
            .ToArray();
        var output = ExternalTool.Run(Executable.Value, [], string.Concat(lines));
        var runs = Parse(output);
        return runs.Count == lines.Length
            ? runs
            : throw new InvalidOperationException($"The harness ran {runs.Count} of {lines.Length} jobs.");
    }

    private static string Build()
    {
        var executable = Path.Combine(NewFolder(), "harness");
        ExternalTool.Run(
            "gcc",
            [
                "-std=gnu11",
                "-O2",
                "-o",
                executable,
                RepositoryRoot.Combine("tests", "PowerLint.OracleTests", "Simulator", "harness.c"),
                "-lsimavr",
            ]
        );
        return executable;
    }

    private static List<SimulatorRun> Parse(string output)
    {
        var runs = new List<SimulatorRun>();
        var visits = new List<SleepVisit>();
        foreach (var line in output.Split('\n'))
        {
            var words = line.Split(' ');
            switch (words[0])
            {
                case "S":
                    visits.Add(
                        new SleepVisit(
                            int.Parse(words[1], NumberStyles.HexNumber, CultureInfo.InvariantCulture),
                            string.Equals(words[2], "1", StringComparison.Ordinal),
                            words[3],
                            string.Equals(words[4], "1", StringComparison.Ordinal),
                            Convert.FromHexString(words[5]),
                            string.Equals(words[6], "-", StringComparison.Ordinal)
                                ? []
                                : Convert.FromHexString(words[6])
                        )
                    );
                    break;
                case "E":
                    runs.Add(
                        new SimulatorRun([.. visits], words[1], long.Parse(words[2], CultureInfo.InvariantCulture))
                    );
                    visits.Clear();
                    break;
            }
        }

        return runs;
    }
}
