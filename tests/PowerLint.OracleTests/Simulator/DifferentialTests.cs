using System.Collections.Concurrent;
using System.Globalization;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// Generated firmware, analysed and simulated. <c>POWERLINT_DIFFERENTIAL_SEEDS</c> says how many programs (200),
/// <c>POWERLINT_DIFFERENTIAL_START</c> with which seed to begin (1). Oracle: libsimavr 1.6, executables by avr-gcc.
/// </summary>
public sealed class DifferentialTests(ITestOutputHelper output)
{
    private const int BatchSize = 100;

    [Fact]
    public void Generated_firmware_never_contradicts_the_simulator()
    {
        var count = Number("POWERLINT_DIFFERENTIAL_SEEDS", 200);
        var start = Number("POWERLINT_DIFFERENTIAL_START", 1);
        var outcomes = new List<Outcome>();
        foreach (var batch in Enumerable.Range(start, count).Chunk(BatchSize))
        {
            outcomes.AddRange(Run(batch));
        }

        foreach (var level in outcomes.GroupBy(outcome => outcome.Program.Level).OrderBy(group => group.Key))
        {
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"level {level.Key}: {level.Count()} programs, {level.Sum(o => o.Visits)} sleeps, {Share(level):P2} of {level.Sum(o => o.Total)} configuration bits known"
                )
            );
        }

        var failed = outcomes.Where(outcome => outcome.Faults.Count > 0).ToArray();
        foreach (var outcome in failed.Take(5))
        {
            output.WriteLine(
                $"seed {outcome.Program.Seed}:\n{string.Join('\n', outcome.Faults)}\n{Numbered(outcome.Program.Text)}"
            );
        }

        Assert.True(
            failed.Length == 0,
            $"{failed.Length} programs disagree; seeds {string.Join(' ', failed.Select(f => f.Program.Seed).Take(50))}\n"
                + string.Join('\n', failed.Take(20).Select(f => $"seed {f.Program.Seed}: {f.Faults[0]}"))
        );
        Assert.True(outcomes.Count(outcome => outcome.Visits == 0) <= count / 100, "Too many programs never sleep.");
        Assert.All(
            outcomes.GroupBy(outcome => outcome.Program.Level),
            level => Assert.True(Share(level) >= (level.Key <= 3 ? 0.99 : 0.95), Poor(level))
        );
    }

    [Fact]
    public void Generated_firmware_comes_out_the_same_when_no_call_is_done_from_memory()
    {
        var folder = SimulatorHarness.NewFolder();
        try
        {
            var seeds = Enumerable.Range(
                Number("POWERLINT_DIFFERENTIAL_START", 1),
                Number("POWERLINT_DIFFERENTIAL_SEEDS", 200) / 2
            );
            Parallel.ForEach(
                seeds.ToArray(),
                new ParallelOptions { MaxDegreeOfParallelism = 2 },
                seed =>
                {
                    var program = FirmwareGenerator.Generate(seed);
                    var image = Write(program, folder);
                    var model = Models.Of(program.Device);
                    Assert.Equal(
                        AnalysisDigest.Lines(AbstractRun.Of(image, model, repeatsCalls: false)),
                        AnalysisDigest.Lines(AbstractRun.Of(image, model))
                    );
                }
            );
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_program() =>
        Assert.Equal(FirmwareGenerator.Generate(4711).Text, FirmwareGenerator.Generate(4711).Text);

    private static Outcome[] Run(int[] seeds)
    {
        var folder = SimulatorHarness.NewFolder();
        try
        {
            var programs = seeds.Select(FirmwareGenerator.Generate).ToArray();
            var images = programs.Select(program => Write(program, folder)).ToArray();
            var elves = AvrCompiler.BuildAll(images, folder);
            var runs = SimulatorHarness.Run(
                programs.Select(
                    (program, index) =>
                        new SimulatorJob(program.Device, elves[index], program.Seed)
                        {
                            MostInstructions = 2_000_000,
                            MostSleeps = 48,
                        }
                )
            );
            var outcomes = new ConcurrentDictionary<int, Outcome>();
            Parallel.For(
                0,
                seeds.Length,
                new ParallelOptions { MaxDegreeOfParallelism = 2 },
                index => outcomes[index] = Compare(programs[index], images[index], runs[index], elves[index])
            );
            return [.. Enumerable.Range(0, seeds.Length).Select(index => outcomes[index])];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Outcome Compare(GeneratedProgram program, Firmware image, SimulatorRun run, string elf)
    {
        try
        {
            var analysis = AbstractRun.Of(image, Models.Of(program.Device));
            var lines = SourceLineMap.Of(elf, run.Visits.Select(visit => visit.Address));
            var agreement = StateComparison.Compare(analysis, run, lines);
            // Handlers that take all the time can keep a program from a sleep that it guards.
            string[] faults =
                run.Visits.Count == 0 && !string.Equals(run.End, "instructions", StringComparison.Ordinal)
                    ? [.. agreement.Faults, $"no sleep reached: {run.End}"]
                    : [.. agreement.Faults];
            return new Outcome(
                program,
                faults,
                agreement.Visits,
                agreement.KnownBits,
                agreement.TotalBits,
                agreement.Unknown
            );
        }
        catch (InvalidOperationException error)
        {
            return new Outcome(program, [error.Message], 0, 0, 0, []);
        }
    }

    private static Firmware Write(GeneratedProgram program, string folder)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"seed{program.Seed}");
        var file = Path.Combine(folder, name + ".c");
        File.WriteAllText(file, program.Text);
        return new Firmware(name, program.Device, ["-DF_CPU=8000000UL"], [file]);
    }

    private static double Share(IEnumerable<Outcome> outcomes)
    {
        var (known, total) = (0L, 0L);
        foreach (var outcome in outcomes)
        {
            known += outcome.Known;
            total += outcome.Total;
        }

        return total == 0 ? 1 : (double)known / total;
    }

    private static string Poor(IGrouping<int, Outcome> level) =>
        string.Create(CultureInfo.InvariantCulture, $"level {level.Key}: only {Share(level):P2} known; poorest ")
        + string.Join(
            "; ",
            level
                .OrderBy(outcome => (double)outcome.Known / Math.Max(1, outcome.Total))
                .Take(5)
                .Select(outcome => $"seed {outcome.Program.Seed}: {string.Join(' ', outcome.Unknown.Take(20))}")
        );

    private static string Numbered(string text) =>
        string.Join(
            '\n',
            text.Split('\n')
                .Select((line, index) => string.Create(CultureInfo.InvariantCulture, $"{index + 1, 4} {line}"))
        );

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var value)
            ? value
            : otherwise;

    private sealed record Outcome(
        GeneratedProgram Program,
        IReadOnlyList<string> Faults,
        int Visits,
        int Known,
        int Total,
        IReadOnlyList<string> Unknown
    );
}
