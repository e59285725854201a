using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>
/// What holds at a resting point, in device concepts. Looks at the steady state: what holds on every pass after the first
/// counts as proven, and what only the first pass shows is over before it costs anything.
/// </summary>
internal sealed class PointFacts
{
    private readonly DeviceModel _device;

    public PointFacts(AnalysisResult result, RestingPoint point)
    {
        _device = result.Device;
        Point = point;
        SleepEnabled = State.Evaluate(_device.Sleep.Enable);
        Sleeps = point.Kind == RestingKind.Sleep && SleepEnabled != Tristate.No;
        Modes = Sleeps
            ?
            [
                .. _device
                    .SleepModes.Select(mode => new ModeInUse(mode, State.Evaluate(mode.Selected)))
                    .Where(mode => mode.InUse != Tristate.No),
            ]
            : [];
    }

    /// <summary>All points of an image, in order of first visit, each way of reaching one apart.</summary>
    public static ImmutableArray<PointFacts> Of(AnalysisResult result) =>
        [
            .. result
                .RestingPoints.SelectMany(point => point.Contexts.IsEmpty ? [point] : point.Contexts)
                .Select(point => new PointFacts(result, point)),
        ];

    /// <summary>The point.</summary>
    public RestingPoint Point { get; }

    /// <summary>The registers there.</summary>
    public StateAtPoint State => Point.SteadyState;

    /// <summary>Whether the sleep instruction works there.</summary>
    public Tristate SleepEnabled { get; }

    /// <summary>Whether the CPU sleeps there at all; otherwise it goes on at full speed.</summary>
    public bool Sleeps { get; }

    /// <summary>The sleep modes that may be in use, shallowest first; none where the CPU does not sleep.</summary>
    public ImmutableArray<ModeInUse> Modes { get; }

    /// <summary>Whether the CPU sleeps there in modes only that end in a reset: the program starts anew then.</summary>
    public bool EndsInReset => !Modes.IsEmpty && Modes.All(mode => !mode.Mode.Resumes);

    /// <summary>Whether something without a body ran on the way here, so that nothing is quite certain.</summary>
    public bool IsTainted => !State.UnknownCallees.IsEmpty;

    /// <summary>The mode in use for people: <c>power-down</c>, <c>idle or power-down</c>; null where it does not sleep.</summary>
    public string? ModeName => Modes.IsEmpty ? null : string.Join(" or ", Modes.Select(mode => mode.Mode.Name));

    /// <summary>Whether something holds in the mode in use; no where the CPU does not sleep.</summary>
    public Tristate InMode(ImmutableArray<ModesWhen> modes) => InEveryMode(mode => Holds(modes, mode));

    // One answer for all modes that may be in use; no where there is none.
    private Tristate InEveryMode(Func<SleepMode, Tristate> ask)
    {
        var answers = Modes.Select(mode => ask(mode.Mode)).Distinct().ToArray();
        return answers.Length switch
        {
            0 => Tristate.No,
            1 => answers[0],
            _ => Tristate.Maybe,
        };
    }

    /// <summary>Whether something would hold in a mode, with the registers as they are here.</summary>
    public Tristate Holds(ImmutableArray<ModesWhen> modes, SleepMode mode) =>
        modes
            .Where(entry => entry.Modes.Contains(mode.Name, StringComparer.Ordinal))
            .Select(entry => State.Evaluate(entry.When))
            .Any();

    /// <summary>Whether the peripheral is enabled.</summary>
    public Tristate IsOn(Peripheral peripheral) => State.Evaluate(peripheral.On);

    /// <summary>Whether the peripheral, enabled, draws current in the mode in use.</summary>
    public Tristate Draws(Peripheral peripheral)
    {
        var draws = IsOn(peripheral).And(InMode(peripheral.DrawsIn));
        return peripheral.DrawsWhenGated ? draws : draws.And(IsClocked(peripheral));
    }

    /// <summary>Whether the peripheral's clock gate is open; yes where it has none.</summary>
    public Tristate IsClocked(Peripheral peripheral) =>
        _device.Gates.FirstOrDefault(gate => string.Equals(gate.Name, peripheral.Gate, StringComparison.Ordinal))
            is { } gate
            ? State.Evaluate(gate.Open)
            : Tristate.Yes;

    /// <summary>Whether the peripheral would do its work in the mode in use.</summary>
    public Tristate Works(Peripheral peripheral) => InMode(peripheral.WorksIn);

    /// <summary>Whether the interrupt's own enable bits are set.</summary>
    public Tristate IsEnabled(Interrupt interrupt) => State.Evaluate(interrupt.Enabled);

    /// <summary>Whether the interrupt ends the mode in use, should it come.</summary>
    public Tristate CanWake(Interrupt interrupt) => InMode(interrupt.Wakes);

    /// <summary>Whether the interrupt is enabled and ends the mode in use.</summary>
    public Tristate IsWakeSource(Interrupt interrupt) => IsEnabled(interrupt).And(CanWake(interrupt));

    /// <summary>The interrupts of a peripheral.</summary>
    public IEnumerable<Interrupt> InterruptsOf(Peripheral peripheral) =>
        _device.Interrupts.Where(interrupt =>
            string.Equals(interrupt.Peripheral, peripheral.Name, StringComparison.Ordinal)
        );

    /// <summary>Whether anything can end the sleep: an enabled wake source, with the global enable where waking needs it.</summary>
    public Tristate CanWakeAtAll() => InEveryMode(CanWakeFrom);

    private Tristate CanWakeFrom(SleepMode mode)
    {
        var interruptsWake = mode.WakingNeedsGlobalEnable
            ? InterruptsOn
            : InterruptsOn.Or(State.Evaluate(_device.Sleep.MaskedInterruptsWake()));
        return _device
            .Interrupts.Select(interrupt =>
                IsEnabled(interrupt)
                    .And(Holds(interrupt.Wakes, mode))
                    .And(interrupt.HasVector || mode.WakingNeedsGlobalEnable ? interruptsWake : Tristate.Yes)
            )
            .Any();
    }

    /// <summary>Whether interrupts are on globally.</summary>
    private Tristate InterruptsOn =>
        _device.Sleep.GlobalInterruptEnable is { } enable && Point.InterruptsOn == Tristate.Maybe
            ? State.Evaluate(new FieldCondition(enable, [1]))
            : Point.InterruptsOn;

    /// <summary>How sure a finding is that rests on an answer at this point; null where it does not hold.</summary>
    public Certainty? CertaintyOf(Tristate holds) =>
        holds switch
        {
            Tristate.No => null,
            Tristate.Yes when !IsTainted => Certainty.Proven,
            _ => Certainty.Possible,
        };
}

/// <summary>A sleep mode that may be in use.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="InUse">Yes where it is for sure.</param>
internal sealed record ModeInUse(SleepMode Mode, Tristate InUse);
