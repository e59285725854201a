using System.Numerics;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>When a change protection lets a write through.</summary>
internal static class ProtectionRules
{
    public static bool IsOpen(
        ChangeProtection protection,
        Register register,
        KnownBits written,
        ulong covered,
        OpenLock? openLock,
        Func<Condition, Tristate> evaluate
    ) =>
        protection.Kind switch
        {
            // A key whose bits are not known may be right: only a proven wrong one loses the write.
            ProtectionKind.KeyInWord => ((Aligned(protection) ^ written.Value) & protection.KeyMask & written.Known)
                == 0,
            ProtectionKind.UnlockCondition => evaluate(protection.Open) != Tristate.No
                || BringsKey(protection, register, written, covered),
            // Nothing is lost: whether the lock ever opens shows at the resting points.
            ProtectionKind.UnlockLater => true,
            ProtectionKind.KeySequence => openLock is { } sequence
                && HaveOneKey(sequence.Protection, protection)
                && sequence.KeysSeen >= protection.Keys.Length,
            ProtectionKind.UnlockBit => IsTimedOpen(protection, openLock)
                // The enable bit must be written 0 with the new value where the part asks for it; the model's key says so.
                && (
                    protection.Keys.Length < 2
                    || ((protection.Keys[1] ^ written.Value) & protection.KeyMask & written.Known) == 0
                ),
            _ => IsTimedOpen(protection, openLock),
        };

    /// <summary>
    /// Whether a write that is not let through would have changed something. <paramref name="isWhole"/> tells that the protection
    /// covers every bit of the register that a write can change.
    /// </summary>
    public static bool LosesSomething(
        ChangeProtection protection,
        ulong mask,
        bool isWhole,
        KnownBits before,
        KnownBits written
    )
    {
        if (protection.Kind == ProtectionKind.UnlockBit && IsKey(protection, written))
        {
            return false;
        }

        // A write to bits that are all locked does nothing, even where it asks for what is there already.
        if (isWhole)
        {
            return true;
        }

        var changes = mask & before.Known & written.Known & (before.Value ^ written.Value);
        return (protection.SettingNeedsNoKey ? changes & ~written.Value : changes) != 0;
    }

    /// <summary>
    /// Whether a write whose wrong key resets the part is a slip: it asks for something, yet its key is none at all or the one that
    /// a read gives. Any other wrong key is how programs reset themselves.
    /// </summary>
    public static bool IsForgottenKey(ChangeProtection protection, Register register, ulong mask, KnownBits written)
    {
        var key = written.Value & protection.KeyMask;
        var isReadBack =
            (register.ReadsAs & protection.KeyMask) != 0 && key == (register.ReadsAsValue & protection.KeyMask);
        return written.Knows(protection.KeyMask)
            && (isReadBack || (key == 0 && (written.Value & mask & ~protection.KeyMask) != 0));
    }

    /// <summary>The lock after a write to a key register.</summary>
    public static OpenLock? AfterKeyWrite(ChangeProtection protection, KnownBits written, OpenLock? current)
    {
        switch (protection.Kind)
        {
            case ProtectionKind.TimedKey or ProtectionKind.UnlockBit:
                return IsKey(protection, written) || IsPossiblyKey(protection, written)
                        ? new OpenLock(protection, protection.WindowCycles, 1)
                    : HaveOneKey(current?.Protection, protection) ? null
                    : current;
            case ProtectionKind.KeySequence:
                var isMine = current is not null && HaveOneKey(current.Protection, protection);
                var seen = isMine ? current!.KeysSeen : 0;
                if (seen < protection.Keys.Length && Matches(protection.Keys[seen], protection.KeyMask, written))
                {
                    return new OpenLock(protection, 0, seen + 1);
                }

                // A wrong key closes the lock, unless it is the first one of the next sequence.
                if (Matches(protection.Keys[0], protection.KeyMask, written))
                {
                    return seen == protection.Keys.Length ? current : new OpenLock(protection, 0, 1);
                }

                return isMine ? null : current;
            default:
                return current;
        }
    }

    /// <summary>Whether one key opens both: parts of a register may be protected in different ways behind it.</summary>
    public static bool HaveOneKey(ChangeProtection? a, ChangeProtection b) =>
        ReferenceEquals(a, b)
        || (
            a is not null
            && a.Kind == b.Kind
            && ReferenceEquals(a.KeyRegister, b.KeyRegister)
            && a.KeyMask == b.KeyMask
            && a.Keys.SequenceEqual(b.Keys)
        );

    // Where the key opens for good, the write that brings it may bring the rest of its register along.
    private static bool BringsKey(ChangeProtection protection, Register register, KnownBits written, ulong covered) =>
        ReferenceEquals(protection.KeyRegister, register)
        && protection.Keys.Length > 0
        && (protection.KeyMask & ~covered) == 0
        && Matches(Aligned(protection), protection.KeyMask, written);

    private static bool IsTimedOpen(ChangeProtection protection, OpenLock? openLock) =>
        openLock is { } open
        && HaveOneKey(open.Protection, protection)
        && (protection.WindowCycles == 0 || open.CyclesLeft >= 0);

    private static bool IsKey(ChangeProtection protection, KnownBits written) =>
        protection.Keys.Length > 0
        && Matches(protection.Keys[0], protection.KeyMask, written)
        && written.Knows(protection.KeyMask);

    private static bool IsPossiblyKey(ChangeProtection protection, KnownBits written) =>
        protection.Keys.Length > 0
        && !written.Knows(protection.KeyMask & written.Known)
        && Matches(protection.Keys[0], protection.KeyMask, written);

    private static bool Matches(ulong key, ulong mask, KnownBits written) =>
        ((key ^ written.Value) & mask & written.Known) == 0;

    private static ulong Aligned(ChangeProtection protection) =>
        protection.KeyMask == ulong.MaxValue
        || protection.Keys[0] > (protection.KeyMask >> BitOperations.TrailingZeroCount(protection.KeyMask))
            ? protection.Keys[0]
            : protection.Keys[0] << BitOperations.TrailingZeroCount(protection.KeyMask);
}
