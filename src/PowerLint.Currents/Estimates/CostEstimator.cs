using System.Globalization;
using PowerLint.Devices;
using PowerLint.Rules;

namespace PowerLint.Currents;

/// <summary>
/// Estimates what findings cost from the model's datasheet figures. Says <c>unknown</c>, and why, where there is no figure:
/// a guess would look like a measurement.
/// </summary>
public sealed class CostEstimator(DeviceModel device, OperatingPoint point, BoardFacts board)
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
            "shallow-sleep" => Deeper(finding),
            "load-driven-in-sleep" => Loads(finding),
            "pull-against-level" => Pulls(finding),
            "output-against-level" => ExternalPulls(finding),
            "peripheral-clock-left-on" => Unknown("the model has no figure for a clock that nothing uses"),
            "asleep-in-mode" => Unknown("the peripheral stands still: a fault in function, not in current"),
            "woken-too-often" => Woken(finding),
            "no-wake-source" => Unknown("a fault in function, not in current"),
            "locked-write" or "gated-write" => Unknown("whatever the lost write was to save"),
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

    /// <summary>The mode in use against the one that would do; the subject is <c>idle → power-down</c>.</summary>
    private CostEstimate Deeper(Finding finding)
    {
        var modes = finding.Subjects.IsEmpty ? [] : finding.Subjects[0].Split(" → ");
        return modes.Length == 2 && _figures.InMode(modes[0]) is { } used && _figures.InMode(modes[1]) is { } possible
            ? Known("while it sleeps: ", used.Less(possible))
            : Unknown("the model has no supply currents to compare");
    }

    /// <summary>
    /// What a wake-up costs depends on what the program does then; what it costs at least is the start, at the current of the
    /// running CPU where the datasheet does not give the charge.
    /// </summary>
    private CostEstimate Woken(Finding finding)
    {
        const string each =
            "the run current for as long as each wake-up takes, start of the oscillator included: measure one";
        if (
            finding.SleepMode is not { } mode
            || WakeUp.RowOf(device, finding.Point?.SteadyState, mode) is not { } row
            || row.Microseconds(point.CpuHertz ?? device.ResetClockHertz) is not { } time
        )
        {
            return Unknown(each);
        }

        var charge = row.TypicalNanocoulombs ?? (_figures.Running()?.Microamps * time / 1000);
        return Unknown(
            $"{each}; the start alone takes {WakeUpTime.Time(time)}"
                + (
                    charge is { } nanocoulombs
                        ? string.Create(CultureInfo.InvariantCulture, $" and some {nanocoulombs:0.##} nC")
                        : ""
                )
                + $"; {row.Source}"
        );
    }

    /// <summary>What the board file says that the loads draw.</summary>
    private CostEstimate Loads(Finding finding)
    {
        var milliamps = finding
            .Subjects.Where(IsPin)
            .Select(pin => board.Pins.GetValueOrDefault(pin)?.Milliamps)
            .ToArray();
        return milliamps.Length > 0 && milliamps.All(value => value is not null)
            ? new CostEstimate(milliamps.Sum(value => value!.Value) * 1000, "the loads' milliamps in powerlint.yaml")
            : Unknown("powerlint.yaml does not say what the load draws: give its milliamps");
    }

    /// <summary>Supply over the internal pull in the middle of its range, with the external resistor in line where there is one.</summary>
    private CostEstimate Pulls(Finding finding)
    {
        if (device.PinElectrics is not { } pins)
        {
            return Unknown("the model does not give the pull's resistance");
        }

        var middle = (pins.PullUpOhmsMinimum + pins.PullUpOhmsMaximum) / 2;
        var microamps = finding
            .Subjects.Where(IsPin)
            .Sum(pin => point.Volts * 1e6 / (middle + (board.Pins.GetValueOrDefault(pin)?.PullOhms ?? 0)));
        return new CostEstimate(
            microamps,
            string.Create(
                CultureInfo.InvariantCulture,
                $"supply over resistance: {point.Volts} V, internal pull {pins.PullUpOhmsMinimum / 1000} to {pins.PullUpOhmsMaximum / 1000} kΩ, its middle taken; {pins.Source}"
            )
        );
    }

    /// <summary>What flows through the board's own resistors.</summary>
    private CostEstimate ExternalPulls(Finding finding)
    {
        var pins = finding.Subjects.Select(pin => board.Pins.GetValueOrDefault(pin)).ToArray();
        return pins.All(pin => pin is { PullOhms: > 0, Driven: null })
            ? new CostEstimate(
                pins.Sum(pin => point.Volts * 1e6 / pin!.PullOhms!.Value),
                string.Create(CultureInfo.InvariantCulture, $"supply over resistance: {point.Volts} V; the board file")
            )
            : Unknown("what the board's driver gives against the pin, or the ohms of its pull, are not known");
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
