using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>Bits that put registers back to what they are after reset.</summary>
internal sealed partial class RegisterFile
{
    private void ApplyResets(
        MachineState state,
        RegisterSlot slot,
        KnownBits written,
        DecisionSet decided,
        bool isCertain
    )
    {
        foreach (var reset in Map.Resets[slot.Register])
        {
            var bit = slot.Take(reset.Trigger.Mask);
            if (bit == 0 || (written.Known & ~written.Value & bit) != 0)
            {
                continue;
            }

            var isSure = isCertain && (written.Known & bit) != 0;
            foreach (var target in reset.Targets)
            {
                for (var i = 0; i < target.WidthBits / 8; i++)
                {
                    var address = Map.AddressOf(target) + (ulong)i;
                    var initial = Map.InitialByte(address);
                    var old = ByteAt(state, address);
                    Put(state, address, old, old.With(initial.Known, initial.Value, byte.MaxValue, decided), isSure);
                }

                ApplyFollowers(state, target);
            }
        }
    }
}
