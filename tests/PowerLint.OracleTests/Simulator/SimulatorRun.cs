namespace PowerLint.OracleTests;

/// <summary>The part at a sleep instruction.</summary>
/// <param name="Address">The instruction's byte address in the program memory.</param>
/// <param name="SleepEnabled">Whether the sleep-enable bit was set.</param>
/// <param name="Mode">The sleep mode selected.</param>
/// <param name="InterruptsOn">Whether interrupts were on globally.</param>
/// <param name="Registers">The I/O space from 0x20 to 0xff.</param>
/// <param name="Memory">The window of memory asked for.</param>
internal sealed record SleepVisit(
    int Address,
    bool SleepEnabled,
    string Mode,
    bool InterruptsOn,
    byte[] Registers,
    byte[] Memory
)
{
    /// <summary>The lowest address of <see cref="Registers"/>.</summary>
    public const ulong FirstRegister = 0x20;

    /// <summary>A register of one or more bytes, low byte first; null where it lies outside the window.</summary>
    public ulong? Read(ulong address, int widthBits)
    {
        var bytes = widthBits / 8;
        if (address < FirstRegister || address + (ulong)bytes > FirstRegister + (ulong)Registers.Length)
        {
            return null;
        }

        ulong value = 0;
        for (var index = 0; index < bytes; index++)
        {
            value |= (ulong)Registers[(int)(address - FirstRegister) + index] << (8 * index);
        }

        return value;
    }
}

/// <summary>What a simulation gave.</summary>
/// <param name="Visits">Every sleep instruction reached, in order.</param>
/// <param name="End">Why it ended: <c>asleep</c> for good, <c>sleeps</c> or <c>instructions</c> used up, anything else is a fault.</param>
/// <param name="Instructions">How many instructions ran.</param>
internal sealed record SimulatorRun(IReadOnlyList<SleepVisit> Visits, string End, long Instructions)
{
    /// <summary>Whether it ended as a healthy program does.</summary>
    public bool IsHealthy => End is "asleep" or "sleeps" or "instructions";
}

/// <summary>A simulation to run.</summary>
/// <param name="Device">The part.</param>
/// <param name="Elf">The executable.</param>
/// <param name="Seed">Decides the levels of inputs and when they change.</param>
internal sealed record SimulatorJob(string Device, string Elf, int Seed)
{
    /// <summary>The CPU clock in hertz.</summary>
    public int Hertz { get; init; } = 8_000_000;

    /// <summary>After how many sleep instructions to stop.</summary>
    public int MostSleeps { get; init; } = 24;

    /// <summary>After how many instructions to stop.</summary>
    public int MostInstructions { get; init; } = 3_000_000;

    /// <summary>First address of the window of memory to print.</summary>
    public int MemoryFrom { get; init; }

    /// <summary>Its length in bytes.</summary>
    public int MemoryBytes { get; init; }
}
