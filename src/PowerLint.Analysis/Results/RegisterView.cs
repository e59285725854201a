using System.Collections.Immutable;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>The registers of a machine state, as later stages see them.</summary>
internal sealed class RegisterView : StateAtPoint
{
    private readonly RegisterFile _file;
    private readonly MachineState _state;

    public RegisterView(RegisterFile file, MachineState state)
    {
        _file = file;
        _state = state;
    }

    /// <summary>A register that is looked at as just written, before hardware changes any bit; or null.</summary>
    public (Register Register, KnownBits Bits)? JustWritten { get; init; }

    /// <summary>Whether bits that hardware changes count as 0: as at a moment when the program starts nothing.</summary>
    public bool StrobesAreZero { get; init; }

    public override ImmutableArray<(ulong Address, KnownBits Bits)> UnmodelledBytes =>
        [
            .. _state
                .Registers.Entries()
                .Where(entry => entry.Key < RegisterMap.SavedStatusBase && _file.Map.SlotAt(entry.Key) is null)
                .Select(entry => (entry.Key, new KnownBits(entry.Value.Known, entry.Value.Value))),
        ];

    public override ImmutableArray<string> UnknownCallees => _state.UnknownCallees;

    public override KnownBits Read(FieldReference field)
    {
        var whole = Read(field.Register, field.Mask);
        var mask = field.Mask >> field.LowBit;
        return new KnownBits((whole.Known >> field.LowBit) & mask, (whole.Value >> field.LowBit) & mask);
    }

    public override KnownBits Read(Register register) => Read(register, ulong.MaxValue);

    // Only the bits of the mask need to be right.
    private KnownBits Read(Register register, ulong needed) =>
        JustWritten is { } written && ReferenceEquals(written.Register, register)
            ? written.Bits
            : WithLookups(WithoutStrobes(_file.Read(_state, register), register), register, needed);

    // Bits that no register holds are what the row chosen holds; where several may be chosen, what all of them agree on.
    private KnownBits WithLookups(KnownBits bits, Register register, ulong needed)
    {
        foreach (var lookup in _file.Map.Lookups[register].Where(lookup => (lookup.Field.Mask & needed) != 0))
        {
            var (known, value) = (ulong.MaxValue, 0UL);
            var isFirst = true;
            foreach (var row in RowsOf(lookup))
            {
                var held = row ?? new KnownBits(0, 0);
                known &= isFirst ? held.Known : held.Known & ~(held.Value ^ value);
                value = isFirst ? held.Value : value;
                isFirst = false;
            }

            var mask = lookup.Field.Mask;
            bits = new KnownBits(
                (bits.Known & ~mask) | ((known << lookup.Field.LowBit) & mask),
                (bits.Value & ~mask) | ((value & known) << lookup.Field.LowBit) & mask
            );
        }

        return bits;
    }

    // Null stands for an index that has no row.
    private IEnumerable<KnownBits?> RowsOf(FieldLookup lookup)
    {
        var counts = Evaluate(lookup.When);
        if (counts != Tristate.Yes)
        {
            yield return new KnownBits(ulong.MaxValue, lookup.Otherwise);
        }

        if (counts == Tristate.No)
        {
            yield break;
        }

        foreach (var row in ChosenRows(lookup))
        {
            yield return row is null ? null : Read(row);
        }
    }

    private IEnumerable<FieldReference?> ChosenRows(FieldLookup lookup)
    {
        var index = Read(lookup.Index);
        for (var n = 0UL; n < 1UL << lookup.Index.WidthBits; n++)
        {
            if (((n ^ index.Value) & index.Known) == 0)
            {
                yield return n < (ulong)lookup.Rows.Length ? lookup.Rows[(int)n] : null;
            }
        }
    }

    private KnownBits WithoutStrobes(KnownBits bits, Register register) =>
        StrobesAreZero
            ? new KnownBits(bits.Known | register.HardwareChanged, bits.Value & ~register.HardwareChanged)
            : bits;

    public override ImmutableArray<Decision> DecisionsOf(FieldReference field)
    {
        var address = _file.Map.AddressOf(field.Register);
        var decisions = _file
            .Map.Lookups[field.Register]
            .Where(lookup => (lookup.Field.Mask & field.Mask) != 0)
            .SelectMany(lookup =>
                ChosenRows(lookup)
                    .OfType<FieldReference>()
                    .Append(lookup.Index)
                    .Concat(lookup.When.Fields)
                    .SelectMany(used => DecisionsOf(used))
            );
        for (var bit = field.LowBit; bit < field.LowBit + field.WidthBits; bit++)
        {
            decisions = decisions.Concat(_file.ByteAt(_state, address + (ulong)(bit / 8)).DecidedBy(bit % 8).Decisions);
        }

        return [.. decisions.Distinct().OrderBy(decision => decision.Ordinal)];
    }
}
