using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>What holds for a pad at a resting point.</summary>
internal sealed class PinFacts(RuleContext context, PointFacts point, Pin pin)
{
    private AnalysisResult Result => context.Result;

    private StateAtPoint State => point.State;

    /// <summary>Whether the digital input buffer is on, as far as registers say.</summary>
    public Tristate BufferOn => State.Evaluate(pin.InputBufferOff).Not();

    /// <summary>Whether the sleep mode in use cuts the buffer, so that only awake time counts.</summary>
    public bool BufferIsCutInSleep =>
        !point.Modes.IsEmpty
        && point.SleepEnabled == Tristate.Yes
        && point.Modes.All(mode => mode.Mode.CutsInputBuffers)
        && State.Evaluate(pin.BufferKeptInSleep) == Tristate.No;

    /// <summary>Whether nothing gives the pin a level, as far as the program goes.</summary>
    public Tristate Floats =>
        State
            .Evaluate(pin.Output)
            .Or(State.Evaluate(pin.PullUp))
            .Or(State.Evaluate(pin.PullDown))
            .Or(State.Evaluate(pin.InputBufferOff))
            .Or(pin.Functions.Select(IsInUse).Any())
            .Not();

    /// <summary>Whether the package brings the pad out; where none is known to, it is inside only.</summary>
    public bool IsBonded =>
        pin.BondedIn.Contains(context.Board.Package ?? context.Device.Packages[0], StringComparer.Ordinal);

    /// <summary>What the board file says of the pin, or null.</summary>
    public BoardPin? Board => context.Board.Pins.GetValueOrDefault(pin.Name);

    /// <summary>Whether the board file gives the pin a level.</summary>
    public bool IsSettledByBoard => IsBonded && Board is { Driven: not null } or { Pull: not null };

    /// <summary>
    /// Whether the program expects a level from outside: it reads the pin, gives it an interrupt, or lends it to a peripheral
    /// as an input at some time.
    /// </summary>
    public bool IsReadByProgram =>
        (pin.Level is { } level && Result.Reads(level))
        || Result.RestingPoints.Any(other => other.State.Evaluate(pin.InterruptEnabled) != Tristate.No)
        || pin.Functions.Any(function => function.Kind == PinFunctionKind.Input && WasEverInUse(function));

    /// <summary>Whether the pin is in use as an analog input or for a crystal, converter off or not.</summary>
    public Tristate IsAnalogInUse => AnalogFunctions.Select(IsInUse).Any();

    /// <summary>Its analog functions.</summary>
    public IEnumerable<PinFunction> AnalogFunctions =>
        pin.Functions.Where(function => function.Kind == PinFunctionKind.Analog);

    /// <summary>
    /// Whether a function has the pin. What only reset selects, for a peripheral that the program never touches, is no use
    /// (a comparator that comes out of reset enabled, say), unless an option such as a fuse wired it up.
    /// </summary>
    public Tristate IsInUse(PinFunction function)
    {
        // What a latched function waits for is an event (a conversion starts); the state at rest does not show it.
        var holds = function.Latched ? Result.EverHeld(function.When) : State.Evaluate(function.When);

        return holds != Tristate.No && IsOnlyFromReset(function) ? Tristate.No : holds;
    }

    /// <summary>
    /// The writes that decide that the pin floats, by ordinal: to its own bits, and to global switches where they stand in the
    /// way, but not the choice of the sleep mode. Where paths differ in who wrote a bit, those count that leave it as it must not be.
    /// </summary>
    public ImmutableArray<Decision> DecidingWrites(PinSwitches switches) =>
        [
            .. Conditions
                .SelectMany(condition =>
                    condition
                        .Alternatives.SelectMany(alternative => alternative)
                        .Where(part => !switches.SelectMode(part.Field))
                        .Where(part => !switches.AreShared(part.Field) || StandsInTheWay(condition, part))
                )
                .SelectMany(part => Spoiling(part, State.DecisionsOf(part.Field)))
                .Distinct()
                .OrderBy(decision => decision.Ordinal),
        ];

    // A switch for many pins that takes no buffer away (a lock that the program has opened) does what it should.
    private bool StandsInTheWay(Condition condition, FieldCondition part) =>
        !ReferenceEquals(condition, pin.InputBufferOff) && State.Evaluate(part) != Tristate.Yes;

    private static IEnumerable<Decision> Spoiling(FieldCondition part, ImmutableArray<Decision> decisions) =>
        decisions.Length > 1 && decisions.Any(decision => !EnablingStatement.Allows(decision, part))
            ? decisions.Where(decision => !EnablingStatement.Allows(decision, part))
            : decisions;

    /// <summary>The conditions that give the pin a level or take its buffer away.</summary>
    public IEnumerable<Condition> Conditions => [pin.Output, pin.PullUp, pin.PullDown, pin.InputBufferOff];

    private bool WasEverInUse(PinFunction function) =>
        !IsOnlyFromReset(function)
        && (
            function.Latched
                ? Result.EverHeld(function.When) != Tristate.No
                : Result.RestingPoints.Any(other => other.State.Evaluate(function.When) != Tristate.No)
        );

    private bool IsOnlyFromReset(PinFunction function) =>
        function.Kind != PinFunctionKind.Reserved
        && function.Peripheral is { } name
        && context.Device.Peripherals.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal))
            is { } peripheral
        && !Result.Uses(peripheral);
}

/// <summary>
/// Tells a pin's own bits from switches that many pins share (a global pull switch), and both from those that select the sleep mode
/// (pulls may be in force in some modes only).
/// </summary>
internal sealed class PinSwitches
{
    private readonly HashSet<(Register Register, ulong Mask)> _shared;
    private readonly HashSet<(Register Register, ulong Mask)> _modes;

    public PinSwitches(DeviceModel device)
    {
        _modes =
        [
            .. device.SleepModes.SelectMany(mode => mode.Selected.Fields).Select(field => (field.Register, field.Mask)),
        ];
        _shared =
        [
            .. device
                .Pins.SelectMany(pin =>
                    new[] { pin.Output, pin.PullUp, pin.PullDown, pin.InputBufferOff }
                        .SelectMany(condition => condition.Fields)
                        .Select(field => (field.Register, field.Mask))
                        .Distinct()
                )
                .GroupBy(bits => bits)
                .Where(users => users.Skip(1).Any())
                .Select(users => users.Key),
        ];
    }

    /// <summary>Whether the bits select the sleep mode.</summary>
    public bool SelectMode(FieldReference field) => _modes.Contains((field.Register, field.Mask));

    /// <summary>Whether several pins hang on the bits.</summary>
    public bool AreShared(FieldReference field) => _shared.Contains((field.Register, field.Mask));
}
