using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>How a register is protected against stray writes.</summary>
public enum ProtectionKind
{
    /// <summary>A key written to a key register opens the protected registers for some instructions.</summary>
    TimedKey,

    /// <summary>An enable bit written 1 in the register itself opens its protected bits for some cycles.</summary>
    UnlockBit,

    /// <summary>Every write must carry a key in some of its own bits.</summary>
    KeyInWord,

    /// <summary>Keys written one after the other to a key register open the protected registers until they are locked again.</summary>
    KeySequence,

    /// <summary>A bit elsewhere must be set (or clear) for the write to count; it stays open.</summary>
    UnlockCondition,

    /// <summary>What is written waits: it takes effect once a condition holds.</summary>
    UnlockLater,
}

/// <summary>A change protection.</summary>
public sealed class ChangeProtection
{
    /// <summary>For people.</summary>
    public required string Name { get; init; }

    /// <summary>How it works.</summary>
    public required ProtectionKind Kind { get; init; }

    /// <summary>Where the key goes; the register itself for <see cref="ProtectionKind.UnlockBit"/> and <see cref="ProtectionKind.KeyInWord"/>.</summary>
    public Register? KeyRegister { get; init; }

    /// <summary>Bits of the key register that the key fills.</summary>
    public ulong KeyMask { get; init; } = ulong.MaxValue;

    /// <summary>The key, or the keys in order.</summary>
    public ImmutableArray<ulong> Keys { get; init; } = [];

    /// <summary>How long the lock stays open, in CPU cycles; 0 for until it is locked again.</summary>
    public int WindowCycles { get; init; }

    /// <summary>For <see cref="ProtectionKind.UnlockCondition"/> and <see cref="ProtectionKind.UnlockLater"/>: when writes count.</summary>
    public Condition Open { get; init; } = Condition.Never;

    /// <summary>The bits that are protected.</summary>
    public required ImmutableArray<FieldReference> Protects { get; init; }

    /// <summary>Whether protected bits can always be written 0 to 1 or 1 to 0 without a key, by bit: 1 in the mask means setting needs no key.</summary>
    public bool SettingNeedsNoKey { get; init; }

    /// <summary>For <see cref="ProtectionKind.KeyInWord"/>: a write of key and protected bits with a wrong key resets the part.</summary>
    public bool WrongKeyResets { get; init; }

    /// <summary>C statements that open the lock, in the vendor header's names, for fixes: <c>CCP = CCP_IOREG_gc;</c>.</summary>
    public string? UnlockCode { get; init; }
}
