using System.Collections.Immutable;

namespace PowerLint.Testing;

/// <summary>
/// The device styles that a rule's page has no example of, with the reason. What is neither here nor on the page fails
/// <c>RulePagesTests</c>, and so does what is both.
/// </summary>
public static class StylesLeftOut
{
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
    public static ImmutableArray<(string Rule, string Style, string Reason)> Single { get; } =
    [
        ("brown-out-always-on", "XMEGA", "fuses alone decide what the detector does in sleep"),
        ("brown-out-always-on", "nRF52", "the detector cannot be stopped"),
        ("debug-kept-on", "Newer AVR", "the debugger keeps clocks on, no setting of the program or of a fuse"),
        ("debug-kept-on", "XMEGA", "the debugger keeps clocks on, no setting of the program or of a fuse"),
        ("debug-kept-on", "MSP430", "the debugger keeps clocks on, no setting of the program or of a fuse"),
        ("debug-kept-on", "nRF52", "the debugger keeps clocks on, no setting of the program or of a fuse"),
        ("debug-kept-on", "SAM", "the debugger keeps clocks on, no setting of the program or of a fuse"),
        ("full-power-regulator", "Classic AVR", "the program has no say in how the core is supplied"),
        ("full-power-regulator", "XMEGA", "the program has no say in how the core is supplied"),
        ("gated-write", "Newer AVR", "peripherals have no clock gates"),
        ("gated-write", "MSP430", "peripherals have no clock gates"),
        ("gated-write", "nRF52", "peripherals have no clock gates"),
        ("peripheral-clock-left-on", "Newer AVR", "peripherals have no clock gates"),
        ("peripheral-clock-left-on", "MSP430", "peripherals have no clock gates"),
        ("peripheral-clock-left-on", "nRF52", "peripherals have no clock gates"),
        ("sleep-disabled", "MSP430", "no bit lets the sleep instruction do its work"),
        ("sleep-disabled", "STM32", "no bit lets the sleep instruction do its work"),
        ("sleep-disabled", "nRF52", "no bit lets the sleep instruction do its work"),
        ("sleep-disabled", "SAM", "no bit lets the sleep instruction do its work"),
    ];
}
