using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>How long sleep modes take to end, as the models tell it.</summary>
public sealed class WakeUpTimeTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    public static TheoryData<string> Parts => [.. Catalog.Names];

    /// <summary>Sleep tables are complete: how long each mode takes to end is told, with fuses and registers as they are after reset.</summary>
    [Theory]
    [MemberData(nameof(Parts))]
    public void A_part_says_how_long_each_mode_takes_to_end(string part)
    {
        var model = Catalog.Load(part);
        Assert.All(
            model.SleepModes,
            mode =>
                Assert.Contains(
                    model.WakeUpTimes,
                    row => row.Modes.Contains(mode.Name, StringComparer.Ordinal) && HoldsAfterReset(row.When)
                )
        );
        // Nothing takes no time, and nothing that resumes takes a minute.
        Assert.All(
            model.WakeUpTimes,
            row => Assert.InRange(row.Microseconds(model.ResetClockHertz) ?? 1, double.Epsilon, 60e6)
        );
    }

    private static bool HoldsAfterReset(Condition condition) =>
        condition.Alternatives.Any(parts =>
            parts.All(part =>
                part.Values.Contains((part.Field.Register.Reset & part.Field.Mask) >> part.Field.LowBit)
                || (~part.Field.Register.ResetKnown & part.Field.Mask) != 0
            )
        );
}
