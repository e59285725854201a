namespace PowerLint.OracleTests;

/// <summary>
/// What generated firmware may do with a part. Registers are those whose every bit stays as written whatever the rest of the
/// part does, and whose writes start nothing (datasheets of ATmega328P, ATtiny85, ATmega1284P: register summaries).
/// </summary>
/// <param name="Name">As its compiler names it.</param>
/// <param name="Ports">Letters of the ports.</param>
/// <param name="Bytes">Further plain 8-bit registers.</param>
/// <param name="Words">Plain 16-bit registers.</param>
/// <param name="Gates">The power-reduction register.</param>
/// <param name="GateBits">Bits of it whose module the other lists leave alone.</param>
/// <param name="DeepModes">Sleep modes other than idle that the watchdog ends.</param>
internal sealed record GeneratedPart(
    string Name,
    IReadOnlyList<char> Ports,
    IReadOnlyList<string> Bytes,
    IReadOnlyList<string> Words,
    string Gates,
    IReadOnlyList<string> GateBits,
    IReadOnlyList<string> DeepModes
)
{
    /// <summary>The parts.</summary>
    public static IReadOnlyList<GeneratedPart> All { get; } =
    [
        new(
            "atmega328p",
            ['B', 'C', 'D'],
            ["OCR0A", "OCR0B", "OCR2B", "DIDR0", "DIDR1", "ADMUX", "PCMSK0", "PCMSK1", "PCMSK2", "EICRA"],
            ["OCR1A", "OCR1B", "ICR1"],
            "PRR",
            ["PRTWI", "PRSPI", "PRUSART0"],
            ["SLEEP_MODE_PWR_DOWN", "SLEEP_MODE_PWR_SAVE", "SLEEP_MODE_STANDBY", "SLEEP_MODE_EXT_STANDBY"]
        ),
        new(
            "attiny85",
            ['B'],
            ["OCR0A", "OCR0B", "OCR1A", "OCR1B", "OCR1C", "DIDR0", "ADMUX", "PCMSK"],
            [],
            "PRR",
            ["PRUSI"],
            ["SLEEP_MODE_PWR_DOWN"]
        ),
        new(
            "atmega1284p",
            ['A', 'B', 'C', 'D'],
            ["OCR0A", "OCR0B", "OCR2B", "DIDR0", "DIDR1", "ADMUX", "PCMSK0", "PCMSK1", "PCMSK2", "PCMSK3", "EICRA"],
            ["OCR1A", "OCR1B", "OCR3A", "OCR3B", "ICR1"],
            "PRR0",
            ["PRTWI", "PRSPI", "PRUSART0", "PRUSART1"],
            ["SLEEP_MODE_PWR_DOWN", "SLEEP_MODE_PWR_SAVE", "SLEEP_MODE_STANDBY", "SLEEP_MODE_EXT_STANDBY"]
        ),
    ];

    /// <summary>All plain 8-bit registers, those of the ports first.</summary>
    public IReadOnlyList<string> Registers { get; } =
    [.. Ports.SelectMany(port => new[] { $"DDR{port}", $"PORT{port}" }), .. Bytes];

    /// <summary>Whether it is a small part with few vectors and differently named registers.</summary>
    public bool IsTiny => string.Equals(Name, "attiny85", StringComparison.Ordinal);

    /// <summary>The watchdog's control register.</summary>
    public string Watchdog => IsTiny ? "WDTCR" : "WDTCSR";
}
