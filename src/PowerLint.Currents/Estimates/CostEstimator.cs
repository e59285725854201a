using PowerLint.Devices;
using PowerLint.Rules;

namespace PowerLint.Currents;

/// <summary>
/// Estimates what findings cost from the model's datasheet figures. Says <c>unknown</c>, and why, where there is no figure:
/// a guess would look like a measurement.
/// </summary>
public sealed class CostEstimator(DeviceModel device, OperatingPoint point)
{
    private readonly SupplyFigures _figures = new(device, point);

    /// <summary>The finding with its cost; as it is where the rule has set one.</summary>
    public Finding Estimate(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Cost == CostEstimate.Unknown ? finding with { Cost = Cost(finding) } : finding;
    }

    private CostEstimate Cost(Finding finding) =>
        finding.RuleId switch
        {
            "floating-pin" => Unknown(
                "no datasheet gives the current of an input between its levels; common practice, no source: from below "
                    + "1 µA to some 100 µA a pin, changing with temperature and with what is near"
            ),
            "analog-pin-buffer-on" => Unknown(
                "depends on the voltage at the pin; common practice, no source: up to some 100 µA a pin near half the supply"
            ),
            "clock-output-on" => Added(
                finding,
                "clock × supply × the capacitance of pin and trace, which is the board's"
            ),
            "peripheral-on-in-sleep" => Added(finding, "the model has no figure for it"),
            "oscillator-kept-on" or "brown-out-always-on" => Added(finding, "the model has no figure for it"),
            "busy-wait-delay" or "polling-wait" => Waiting(),
            "superloop-without-sleep" or "sleep-disabled" or "skipped-sleep" => Awake(finding),
            "asleep-in-mode" => Unknown("the peripheral stands still: a fault in function, not in current"),
            _ => CostEstimate.Unknown,
        };

    /// <summary>What the subjects add; unknown unless every one of them has a figure.</summary>
    private CostEstimate Added(Finding finding, string otherwise)
    {
        var figures = new List<SupplyFigure>();
        foreach (var subject in finding.Subjects.Where(subject => !IsPin(subject)))
        {
            if (_figures.Added(subject, finding.SleepMode) is not { } figure)
            {
                return Unknown(otherwise);
            }

            figures.Add(figure);
        }

        return figures.Count == 0 ? Unknown(otherwise) : Known("", [.. figures]);
    }

    /// <summary>While the CPU waits running, against waiting in the shallowest sleep mode that has a figure.</summary>
    private CostEstimate Waiting()
    {
        var mode = device.SleepModes.FirstOrDefault(mode => _figures.InMode(mode.Name) is not null);
        return Difference(mode?.Name, "while it waits: ");
    }

    /// <summary>All the time, against the sleep mode in use or the deepest one that comes back.</summary>
    private CostEstimate Awake(Finding finding)
    {
        var mode =
            finding.SleepMode
            ?? device.SleepModes.LastOrDefault(mode => mode.Resumes && _figures.InMode(mode.Name) is not null)?.Name;
        return Difference(mode, "all the time it could sleep: ");
    }

    private CostEstimate Difference(string? mode, string when) =>
        mode is not null && _figures.Running() is { } running && _figures.InMode(mode) is { } asleep
            ? Known(when, running.Less(asleep))
            : Unknown("the model has no supply currents to compare");

    private bool IsPin(string subject) =>
        device.Pins.Any(pin => string.Equals(pin.Name, subject, StringComparison.Ordinal));

    /// <summary>The figures added up, with each source named once.</summary>
    private static CostEstimate Known(string when, params SupplyFigure[] figures) =>
        new(
            figures.Sum(figure => figure.Microamps),
            $"{when}{string.Join("; ", figures.Select(figure => figure.Basis))}; "
                + string.Join("; ", figures.SelectMany(figure => figure.Sources).Distinct())
        );

    private static CostEstimate Unknown(string why) => new(null, "unknown: " + why);
}
