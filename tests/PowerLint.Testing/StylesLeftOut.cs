using System.Collections.Immutable;

namespace PowerLint.Testing;

/// <summary>
/// The device styles that a rule's page has no example of, with the reason. What is neither here nor on the page fails
/// <c>RulePagesTests</c>, and so does what is both.
/// </summary>
public static class StylesLeftOut
{
    /// <summary>Pages whose examples are still of one style only, to be written.</summary>
    public static ImmutableArray<string> NotYetWritten { get; } =
    [
        "asleep-in-mode",
        "brown-out-always-on",
        "busy-wait-delay",
        "check-then-sleep-race",
        "clock-output-on",
        "debug-kept-on",
        "full-power-regulator",
        "gated-write",
        "locked-write",
        "no-wake-source",
        "oscillator-kept-on",
        "pending-wake",
        "peripheral-clock-left-on",
        "peripheral-on-in-sleep",
        "polling-wait",
        "shallow-sleep",
        "skipped-sleep",
        "sleep-disabled",
        "superloop-without-sleep",
        "woken-too-often",
    ];

    /// <summary>Pages with one example for all styles.</summary>
    public static ImmutableDictionary<string, string> AlikeOnAll { get; } =
        ImmutableDictionary.CreateRange(
            StringComparer.Ordinal,
            [
                KeyValuePair.Create("suppression-without-reason", "a comment is the same on every device"),
                KeyValuePair.Create("unused-suppression", "a comment is the same on every device"),
            ]
        );

    /// <summary>Single styles left out: the rule, the style, and what its devices have not.</summary>
    public static ImmutableArray<(string Rule, string Style, string Reason)> Single { get; } = [];
}
