namespace PowerLint.Devices;

/// <summary>What registers inherit from their cluster, peripheral and device where they do not say it themselves.</summary>
/// <param name="Size">Bits.</param>
/// <param name="Access">Who may access.</param>
/// <param name="Reset">Value after reset.</param>
/// <param name="ResetMask">Its defined bits.</param>
/// <param name="Protection">Which software may access, or null.</param>
internal sealed record SvdProperties(
    ulong Size,
    SvdAccess Access,
    ulong Reset,
    ulong ResetMask,
    SvdProtection? Protection
)
{
    private static readonly Dictionary<string, SvdAccess> AccessWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["read-write"] = SvdAccess.ReadWrite,
        ["read-only"] = SvdAccess.ReadOnly,
        ["write-only"] = SvdAccess.WriteOnly,
        ["writeOnce"] = SvdAccess.WriteOnce,
        ["read-writeOnce"] = SvdAccess.ReadWriteOnce,
    };

    private static readonly Dictionary<string, SvdProtection> ProtectionWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["s"] = SvdProtection.Secure,
        ["n"] = SvdProtection.NonSecure,
        ["p"] = SvdProtection.Privileged,
    };

    /// <summary>What holds where no level says anything: the standard names no size, 32 bits is what its parts have.</summary>
    public static SvdProperties Default { get; } = new(32, SvdAccess.ReadWrite, 0, ulong.MaxValue, null);

    /// <summary>What holds in an element: its own, or its origin's, over these.</summary>
    public SvdProperties In(SvdNode node, string whose, SvdReading reading) =>
        new(
            reading.OptionalNumber(node, "size", whose) ?? Size,
            AccessOf(node, whose, reading) ?? Access,
            reading.OptionalNumber(node, "resetValue", whose) ?? Reset,
            reading.OptionalNumber(node, "resetMask", whose) ?? ResetMask,
            reading.Word(node, "protection", whose, ProtectionWords) ?? Protection
        );

    public static SvdAccess? AccessOf(SvdNode node, string whose, SvdReading reading) =>
        reading.Word(node, "access", whose, AccessWords);
}
