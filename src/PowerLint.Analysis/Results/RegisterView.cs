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
        var whole = Read(field.Register);
        var mask = field.Mask >> field.LowBit;
        return new KnownBits((whole.Known >> field.LowBit) & mask, (whole.Value >> field.LowBit) & mask);
    }

    public override KnownBits Read(Register register) =>
        JustWritten is { } written && ReferenceEquals(written.Register, register)
            ? written.Bits
            : WithoutStrobes(_file.Read(_state, register), register);

    private KnownBits WithoutStrobes(KnownBits bits, Register register) =>
        StrobesAreZero
            ? new KnownBits(bits.Known | register.HardwareChanged, bits.Value & ~register.HardwareChanged)
            : bits;

    public override ImmutableArray<Decision> DecisionsOf(FieldReference field)
    {
        var address = _file.Map.AddressOf(field.Register);
        IEnumerable<Decision> decisions = [];
        for (var bit = field.LowBit; bit < field.LowBit + field.WidthBits; bit++)
        {
            decisions = decisions.Concat(_file.ByteAt(_state, address + (ulong)(bit / 8)).DecidedBy(bit % 8).Decisions);
        }

        return [.. decisions.Distinct().OrderBy(decision => decision.Ordinal)];
    }
}
