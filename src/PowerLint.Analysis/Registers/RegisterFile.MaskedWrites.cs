using PowerLint.Devices;

namespace PowerLint.Analysis;

internal sealed partial class RegisterFile
{
    // The ones that are written send another register's value to the targets of their bits.
    private void ApplyMaskedWrites(
        MachineState state,
        RegisterSlot slot,
        KnownBits written,
        DecisionSet decided,
        bool isCertain
    )
    {
        foreach (var masked in Map.MaskedWrites[slot.Register])
        {
            var value = Read(state, masked.Value);
            for (var bit = 0; bit < 8; bit++)
            {
                var n = (8 * slot.ByteIndex) + bit;
                var isKnown = (written.Known >> bit & 1) != 0;
                var isOne = (written.Value >> bit & 1) != 0;
                if (n >= masked.Targets.Length || (isKnown && !isOne))
                {
                    continue;
                }

                var target = masked.Targets[n];
                var address = Map.AddressOf(target);
                var old = ByteAt(state, address);
                StoreRegisterByte(
                    state,
                    new RegisterSlot(target, 0),
                    address,
                    Combined(masked.Effect, old, value),
                    Kept(masked.Effect, value),
                    decided,
                    isCertain && isKnown,
                    byte.MaxValue
                );
            }
        }
    }

    private static KnownBits Combined(AliasEffect effect, RegisterByte old, KnownBits value)
    {
        ulong known = old.Known;
        ulong bits = old.Value;
        return effect switch
        {
            AliasEffect.Set => new KnownBits(
                (known & value.Known) | (value.Known & value.Value) | (known & bits),
                bits | value.Value
            ),
            AliasEffect.Clear => new KnownBits(
                (known & value.Known) | (value.Known & value.Value) | (known & ~bits),
                bits & ~value.Value
            ),
            AliasEffect.Toggle => new KnownBits(known & value.Known, bits ^ value.Value),
            _ => value,
        };
    }

    // Bits that the value leaves alone, so that whoever decided them before still has.
    private static byte Kept(AliasEffect effect, KnownBits value) =>
        effect == AliasEffect.Same ? (byte)0 : (byte)(value.Known & ~value.Value);
}
