using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>Registers that are windows on tables: a field chooses the row, the other bits are the row's.</summary>
internal sealed partial class RegisterFile
{
    // The window holds what the chosen row holds, so that a read needs nothing of its own.
    private void ApplyWindow(MachineState state, RegisterSlot first, int bytes, DecisionSet decided, bool isCertain)
    {
        if (!Map.Windows.TryGetValue(first.Register, out var window))
        {
            return;
        }

        var last = Math.Min(first.ByteIndex + bytes, window.Window.WidthBits / 8) - 1;
        var index = window.Index.Mask;
        var onlyChooses = true;
        for (var i = first.ByteIndex; i <= last; i++)
        {
            onlyChooses &= (index >> (8 * i) & 0xFF) != 0;
        }

        var rows = ChosenRows(state, window);
        if (onlyChooses && window.Window.WidthBits / 8 > last - first.ByteIndex + 1)
        {
            ShowRows(state, window, rows, decided);
            return;
        }

        foreach (var row in rows)
        {
            for (var i = first.ByteIndex; i <= last; i++)
            {
                var shown = ByteAt(state, Map.AddressOf(window.Window) + (ulong)i);
                var address = Map.AddressOf(row) + (ulong)i;
                var old = ByteAt(state, address);
                var mask = (byte)~(index >> (8 * i));
                var next = old.With(
                    (byte)((old.Known & ~mask) | (shown.Known & mask)),
                    (byte)((old.Value & ~mask) | (shown.Value & mask)),
                    mask,
                    decided
                );
                Put(state, address, old, next, isCertain && rows.Length == 1);
            }
        }

        if (rows.Length > 1)
        {
            return;
        }

        // A write to a part of the register went to the row that was chosen before: the rest of it stays in view.
        ShowRows(state, window, rows, decided);
    }

    private void ShowRows(MachineState state, RegisterWindow window, Register[] rows, DecisionSet decided)
    {
        for (var i = 0; i < window.Window.WidthBits / 8; i++)
        {
            var address = Map.AddressOf(window.Window) + (ulong)i;
            var old = ByteAt(state, address);
            var mask = (byte)~(window.Index.Mask >> (8 * i));
            RegisterByte? shown = null;
            foreach (var row in rows)
            {
                var part = ByteAt(state, Map.AddressOf(row) + (ulong)i);
                var next =
                    mask == byte.MaxValue
                        ? part
                        : old.With(
                            (byte)((old.Known & ~mask) | (part.Known & mask)),
                            (byte)((old.Value & ~mask) | (part.Value & mask)),
                            mask,
                            decided
                        );
                shown = shown is null ? next : RegisterByte.Join(shown, next, log);
            }

            Put(state, address, old, shown ?? old, isCertain: true);
        }
    }

    private Register[] ChosenRows(MachineState state, RegisterWindow window)
    {
        var bits = Read(state, window.Window);
        var low = window.Index.LowBit;
        var known = (bits.Known & window.Index.Mask) >> low;
        var value = (bits.Value & window.Index.Mask) >> low;
        return [.. window.Rows.Where((_, row) => ((ulong)row & known) == (value & known))];
    }
}
