namespace PowerLint.Devices;

/// <summary>What access and write effects of a register's fields come to, as masks.</summary>
internal sealed class SkeletonBehaviour
{
    private readonly Dictionary<SvdWriteEffect, ulong> _effects = [];

    private SkeletonBehaviour() { }

    /// <summary>The register's kind, or null for a configuration register.</summary>
    public string? Kind { get; private set; }

    /// <summary>Bits whose value a write does not settle.</summary>
    public ulong HardwareChanged { get; private set; }

    public ulong ReadOnly { get; private set; }

    public ulong MaskOf(SvdWriteEffect effect) => _effects.GetValueOrDefault(effect);

    public static SkeletonBehaviour Of(SvdRegister register)
    {
        var behaviour = new SkeletonBehaviour();
        var all = (1UL << register.SizeBits) - 1;
        var rest = all;
        foreach (var field in register.Fields)
        {
            var mask = (((1UL << field.WidthBits) - 1) << field.LowBit) & all;
            behaviour.Add(mask & rest, field.Access, field.WriteEffect, field.ChangedByReading);
            rest &= ~mask;
        }

        // Bits without a field behave as the register says, unless they are there beside fields: then they are reserved.
        if (register.Fields.IsEmpty)
        {
            behaviour.Add(all, register.Access, register.WriteEffect, register.ChangedByReading);
        }

        var fields = register.Fields.IsEmpty ? all : all & ~rest;
        behaviour.Kind =
            behaviour.ReadOnly == fields ? "status"
            : register.Access is SvdAccess.WriteOnly or SvdAccess.WriteOnce ? "data"
            : behaviour.HardwareChanged == fields ? "status"
            : null;
        return behaviour;
    }

    private void Add(ulong mask, SvdAccess access, SvdWriteEffect effect, bool changedByReading)
    {
        if (access == SvdAccess.ReadOnly)
        {
            ReadOnly |= mask;
        }
        else if (effect != SvdWriteEffect.Modify)
        {
            _effects[effect] = _effects.GetValueOrDefault(effect) | mask;
        }

        // A bit that writing only clears is one that hardware sets; what cannot be read back is known to nobody.
        var isFlag = effect is SvdWriteEffect.OneToClear or SvdWriteEffect.ZeroToClear or SvdWriteEffect.Clear;
        if (isFlag || changedByReading || access is SvdAccess.ReadOnly or SvdAccess.WriteOnly or SvdAccess.WriteOnce)
        {
            HardwareChanged |= mask;
        }
    }
}
