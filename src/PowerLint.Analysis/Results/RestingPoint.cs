using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>How the CPU rests.</summary>
public enum RestingKind
{
    /// <summary>It executes the sleep instruction.</summary>
    Sleep,

    /// <summary>It goes round the endless loop of an image that never sleeps.</summary>
    EndlessLoop,
}

/// <summary>A place where the CPU rests. One for each sleep instruction in the source (and each place that reaches it with a call, see <see cref="Calls"/>).</summary>
public sealed class RestingPoint
{
    /// <summary>How it rests.</summary>
    public required RestingKind Kind { get; init; }

    /// <summary>The sleep instruction's place in the user's own source (the macro or call that holds it), or the loop.</summary>
    public required SourceRange Range { get; init; }

    /// <summary>The function that holds <see cref="Range"/>.</summary>
    public required string Function { get; init; }

    /// <summary>The calls that led there.</summary>
    public required ImmutableArray<CallSite> Calls { get; init; }

    /// <summary>The state over all visits.</summary>
    public required StateAtPoint State { get; init; }

    /// <summary>
    /// The state over the visits after the first pass of the endless loop; equal to <see cref="State"/> where there is none.
    /// What holds here on every path counts as proven.
    /// </summary>
    public required StateAtPoint SteadyState { get; init; }

    /// <summary>Whether the sleep-enable condition held: no means that the instruction does nothing.</summary>
    public required Tristate SleepEnabled { get; init; }

    /// <summary>Whether interrupts were on globally.</summary>
    public required Tristate InterruptsOn { get; init; }

    /// <summary>
    /// The same point apart by the calls that reach it and by what the mode's fields hold there, where there are several: a
    /// function that goes to sleep in the mode it is told is one point in the source and several ways to rest. Empty where there
    /// is only one way.
    /// </summary>
    public ImmutableArray<RestingPoint> Contexts { get; init; } = [];

    /// <summary>Whether it stands in the endless loop of <c>main</c> (or is reached again and again).</summary>
    public required bool IsInEndlessLoop { get; init; }
}
