using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>When code runs.</summary>
public enum RunContext
{
    /// <summary>Before the endless loop of <c>main</c>.</summary>
    StartUp,

    /// <summary>In the endless loop of <c>main</c>, its callees included.</summary>
    EndlessLoop,

    /// <summary>In an interrupt handler, its callees included.</summary>
    Handler,
}

/// <summary>Why a write had no effect.</summary>
public enum LostWriteReason
{
    /// <summary>The register is change-protected and no valid unlock was in force.</summary>
    Locked,

    /// <summary>The peripheral's clock gate was closed.</summary>
    Gated,
}

/// <summary>A write that did nothing.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Register">The register written.</param>
/// <param name="Decision">The write: its place, calls and values.</param>
/// <param name="Protection">The change protection, or null.</param>
/// <param name="Gate">The closed gate, or null.</param>
/// <param name="Certainty">Yes where it is lost on every execution.</param>
public sealed record LostWrite(
    LostWriteReason Reason,
    Register Register,
    Decision Decision,
    ChangeProtection? Protection,
    ClockGate? Gate,
    Tristate Certainty
);

/// <summary>How cycles are burnt.</summary>
public enum WaitKind
{
    /// <summary>A loop that only counts.</summary>
    CountedLoop,

    /// <summary>A compiler intrinsic that burns cycles.</summary>
    CycleIntrinsic,

    /// <summary>A library's delay function or macro.</summary>
    LibraryDelay,

    /// <summary>A loop that waits for a variable that a periodic handler counts.</summary>
    TickCount,
}

/// <summary>A wait of fixed length that keeps the CPU running. One a place in the user's own source.</summary>
/// <param name="Kind">How.</param>
/// <param name="Range">The loop or call in the user's own source.</param>
/// <param name="Function">The function that holds it.</param>
/// <param name="Callee">The delay's name (<c>_delay_ms</c>), or null for a loop.</param>
/// <param name="Context">When it runs; the most demanding one where there are several.</param>
/// <param name="Cycles">CPU cycles of the longest execution seen; null where unknown.</param>
/// <param name="Seconds">The time, where it does not depend on the CPU clock alone or the clock is known; null where unknown.</param>
/// <param name="ClockHertz">The CPU clock assumed, or null.</param>
/// <param name="ClockBasis">Where the clock comes from, for people: <c>F_CPU</c>, <c>configuration</c>, <c>reset clock</c>.</param>
public sealed record BusyWait(
    WaitKind Kind,
    SourceRange Range,
    string Function,
    string? Callee,
    RunContext Context,
    double? Cycles,
    double? Seconds,
    double? ClockHertz,
    string ClockBasis
);

/// <summary>A loop without effects that spins on register bits.</summary>
/// <param name="Range">The loop.</param>
/// <param name="Function">The function that holds it.</param>
/// <param name="Context">When it runs.</param>
/// <param name="Register">The register spun on.</param>
/// <param name="Mask">The bits that the condition looks at.</param>
/// <param name="Calls">The calls that led there.</param>
public sealed record PollingLoop(
    SourceRange Range,
    string Function,
    RunContext Context,
    Register Register,
    ulong Mask,
    ImmutableArray<CallSite> Calls
);

/// <summary>A periodic interrupt that ends sleeps.</summary>
/// <param name="Interrupt">The interrupt.</param>
/// <param name="WakesPerWork">
/// Wake-ups from one after which the program does more than count to the next such; 1 where each makes it work.
/// </param>
public sealed record PeriodicWake(Interrupt Interrupt, int WakesPerWork);

/// <summary>The endless loop that <c>main</c> ends in.</summary>
/// <param name="Range">The loop statement (its head).</param>
/// <param name="Function">The function that holds it.</param>
/// <param name="HasSleep">Whether some path through it reaches a sleep instruction.</param>
/// <param name="SkippedSleeps">Passes that come round without sleep and without work until a handler comes, by their test.</param>
public sealed record EndlessLoop(
    SourceRange Range,
    string Function,
    bool HasSleep,
    ImmutableArray<SkippedSleep> SkippedSleeps
);

/// <summary>A pass of the endless loop that goes round without sleeping and without work.</summary>
/// <param name="Test">The test that skips the sleep.</param>
/// <param name="Function">The function that holds it.</param>
/// <param name="Variables">The variables that it looks at and that handlers change.</param>
/// <param name="Handlers">Those handlers.</param>
/// <param name="IsCertain">Whether no other test that was left open stands on that pass.</param>
public sealed record SkippedSleep(
    SourceRange Test,
    string Function,
    ImmutableArray<string> Variables,
    ImmutableArray<string> Handlers,
    bool IsCertain
);

/// <summary>A test of what handlers write that decides whether a sleep instruction is reached.</summary>
/// <param name="Sleep">The sleep instruction.</param>
/// <param name="Test">The test.</param>
/// <param name="Variables">The variables that it looks at and that handlers change.</param>
/// <param name="Handlers">Those handlers.</param>
/// <param name="IsExposed">Whether one of them could run after the test and before the sleep.</param>
public sealed record GuardedSleep(
    SourceRange Sleep,
    SourceRange Test,
    ImmutableArray<string> Variables,
    ImmutableArray<string> Handlers,
    Tristate IsExposed
);

/// <summary>Something that the analysis cut short or could not know; reported as a tool notification.</summary>
/// <param name="Id">Stable identifier: <c>step-budget</c>, <c>function-without-body</c>, <c>unknown-assembly</c>.</param>
/// <param name="Message">What happened and what to do.</param>
/// <param name="Range">Where, or null.</param>
/// <param name="IsIncomplete">Whether results may be missing because of it (exit status 3).</param>
public sealed record AnalysisLimit(string Id, string Message, SourceRange? Range, bool IsIncomplete);
