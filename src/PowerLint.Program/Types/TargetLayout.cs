namespace PowerLint.Program;

/// <summary>What the target makes of C's basic types.</summary>
/// <param name="Architecture">The clang architecture name: <c>avr</c>, <c>msp430</c>, <c>arm</c>, <c>riscv32</c>.</param>
/// <param name="IntBits">Width of <c>int</c>.</param>
/// <param name="PointerBits">Width of a data pointer.</param>
/// <param name="IsLittleEndian">Byte order.</param>
public sealed record TargetLayout(string Architecture, int IntBits, int PointerBits, bool IsLittleEndian)
{
    /// <summary>The 8-bit AVR's layout.</summary>
    public static TargetLayout Avr { get; } = new("avr", 16, 16, IsLittleEndian: true);
}
