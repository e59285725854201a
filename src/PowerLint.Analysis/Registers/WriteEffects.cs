namespace PowerLint.Analysis;

/// <summary>What a write leaves in a byte of a register, where writing may act instead of storing.</summary>
internal static class WriteEffects
{
    private enum Act
    {
        Clear,
        Set,
        Toggle,
    }

    /// <summary>
    /// The byte's known bits and their values after the write, before anything fixed or hardware-changed is put back; and the
    /// bits that the write leaves alone for sure, flags that it may clear aside.
    /// </summary>
    public static (byte Known, byte Value, byte Left) Stored(RegisterSlot slot, KnownBits written, RegisterByte old)
    {
        var register = slot.Register;
        var ones = (byte)(written.Known & written.Value);
        var zeros = (byte)(written.Known & ~written.Value);
        var known = (byte)written.Known;
        var value = (byte)written.Value;
        byte untouched = 0;
        Apply(slot.Take(register.WriteOneToClear), ones, zeros, Act.Clear);
        untouched = 0;
        Apply(slot.Take(register.WriteOneToSet), ones, zeros, Act.Set);
        Apply(slot.Take(register.WriteOneToToggle), ones, zeros, Act.Toggle);
        Apply(slot.Take(register.WriteZeroToClear), zeros, ones, Act.Clear);
        Apply(slot.Take(register.WriteZeroToSet), zeros, ones, Act.Set);
        Apply(slot.Take(register.WriteZeroToToggle), zeros, ones, Act.Toggle);
        Apply(slot.Take(register.WriteToClear), byte.MaxValue, 0, Act.Clear);
        Apply(slot.Take(register.WriteToSet), byte.MaxValue, 0, Act.Set);
        return (known, value, untouched);

        // Of the bits in the mask some are acted on for sure and some are left alone for sure; where neither is known, a bit that
        // already has what the act would give keeps it.
        void Apply(byte mask, byte acted, byte left, Act act)
        {
            if (mask == 0)
            {
                return;
            }

            untouched |= (byte)(left & mask);
            var open = (byte)~(acted | left);
            var (actedKnown, actedValue, openKnown) = act switch
            {
                Act.Clear => ((byte)0xFF, (byte)0, (byte)(old.Known & ~old.Value)),
                Act.Set => ((byte)0xFF, (byte)0xFF, (byte)(old.Known & old.Value)),
                _ => (old.Known, (byte)~old.Value, (byte)0),
            };
            var newKnown = (byte)((acted & actedKnown) | (left & old.Known) | (open & openKnown));
            var newValue = (byte)((acted & actedValue) | (left & old.Value) | (open & old.Value));
            known = (byte)((known & ~mask) | (newKnown & mask));
            value = (byte)((value & ~mask) | (newValue & newKnown & mask));
        }
    }
}
