using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>
/// The register states of <c>tests/states</c>, analysed and simulated. Oracle: libsimavr 1.6 through <c>harness.c</c>,
/// executables by avr-gcc.
/// </summary>
public sealed class StatesAgreeTests(StatesFixture fixture, ITestOutputHelper output) : IClassFixture<StatesFixture>
{
    public static TheoryData<string> Programs => new(StateProgram.All.Select(program => program.Name));

    [Theory]
    [MemberData(nameof(Programs))]
    public void The_analysis_agrees_with_the_simulator(string program)
    {
        var (firmware, run, lines) = fixture.Simulated(program);
        Assert.NotEmpty(run.Visits);
        var analysis = AbstractRun.Of(firmware, Models.Of(firmware.Device));
        var agreement = StateComparison.Compare(analysis, run, lines);
        string[] faults = [.. agreement.Faults, .. StateMarkChecks.Faults(firmware, analysis, run, lines)];
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{program}: {run.Visits.Count} sleeps simulated, {agreement.Points} points, {agreement.Known:P1} of {agreement.TotalBits} configuration bits known"
            )
        );
        output.WriteLine("unknown: " + string.Join(' ', agreement.Unknown));
        Assert.True(faults.Length == 0, string.Join('\n', faults));
        Assert.True(
            agreement.Known >= 0.95,
            $"only {agreement.Known:P1} known; unknown: {string.Join(' ', agreement.Unknown)}"
        );
    }

    [Fact]
    public void There_are_programs_enough()
    {
        Assert.True(StateProgram.All.Count >= 36, $"{StateProgram.All.Count} programs");
        var devices = StateProgram.All.Select(program => program.Device).Distinct(StringComparer.Ordinal);
        Assert.Equal("atmega1284p atmega328p attiny85", string.Join(' ', devices.Order(StringComparer.Ordinal)));
    }
}

/// <summary>Builds and simulates all programs once.</summary>
public sealed class StatesFixture
{
    private readonly Dictionary<string, (Firmware, SimulatorRun, Dictionary<int, SourceLine[]>)> _simulated = new(
        StringComparer.Ordinal
    );

    /// <summary>Builds and simulates.</summary>
    public StatesFixture()
    {
        var folder = SimulatorHarness.NewFolder();
        var elves = AvrCompiler.BuildAll(StateProgram.All, folder);
        var runs = SimulatorHarness.Run(
            StateProgram.All.Select((program, index) => new SimulatorJob(program.Device, elves[index], Seed: 1))
        );
        for (var index = 0; index < elves.Length; index++)
        {
            var program = StateProgram.All[index];
            var lines = SourceLineMap.Of(elves[index], runs[index].Visits.Select(visit => visit.Address));
            _simulated[program.Name] = (program, runs[index], lines);
        }

        Directory.Delete(folder, recursive: true);
    }

    internal (Firmware Firmware, SimulatorRun Run, Dictionary<int, SourceLine[]> Lines) Simulated(string program) =>
        _simulated[program];
}
