using System.Collections.Immutable;

namespace PowerLint.Analysis;

/// <summary>A place that a pointer can point to.</summary>
/// <param name="Region">The object.</param>
/// <param name="Offset">The offset in bytes, 32 bits, two's complement.</param>
internal readonly record struct PointerTarget(Region Region, IntegerValue Offset);

/// <summary>
/// A pointer into objects, and perhaps an absolute address beside them. A pointer that is only an absolute address is an
/// <see cref="IntegerValue"/>; one that may point anywhere is <see cref="AnyValue"/>.
/// </summary>
internal sealed class PointerValue : AbstractValue
{
    public const int OffsetBits = 32;

    // A table of handlers or ports has a few dozen rows at the most.
    private const int MaximumTargets = 32;

    private PointerValue(ImmutableArray<PointerTarget> targets, IntegerValue? address)
    {
        Targets = targets;
        Address = address;
    }

    /// <summary>The objects, ordered by region, one entry each.</summary>
    public ImmutableArray<PointerTarget> Targets { get; }

    /// <summary>The absolute addresses that it may be instead (null pointers are address 0), or null.</summary>
    public IntegerValue? Address { get; }

    public override Tristate IsTrue =>
        Address is null || Address.IsTrue == Tristate.Yes ? Tristate.Yes : Tristate.Maybe;

    public static PointerValue To(Region region, long offset = 0) =>
        new([new PointerTarget(region, IntegerValue.Constant(OffsetBits, (ulong)offset))], null);

    /// <summary>Whether two pointers point to the same places.</summary>
    public static bool AreSame(PointerValue a, PointerValue b)
    {
        if (a.Targets.Length != b.Targets.Length || a.Address is null != b.Address is null)
        {
            return false;
        }

        for (var i = 0; i < a.Targets.Length; i++)
        {
            if (
                !ReferenceEquals(a.Targets[i].Region, b.Targets[i].Region)
                || !IntegerValue.AreSame(a.Targets[i].Offset, b.Targets[i].Offset)
            )
            {
                return false;
            }
        }

        return a.Address is null || IntegerValue.AreSame(a.Address, b.Address!);
    }

    public static new AbstractValue Join(AbstractValue a, AbstractValue b) => Combine(a, b, IntegerValue.Join);

    public static new AbstractValue Widen(AbstractValue before, AbstractValue after) =>
        Combine(before, after, IntegerValue.Widen);

    public static bool IsIncluded(AbstractValue a, PointerValue b)
    {
        if (a is IntegerValue address)
        {
            return b.Address is not null && IntegerValue.IsIncluded(address, b.Address);
        }

        var pointer = (PointerValue)a;
        if (pointer.Address is not null && (b.Address is null || !IntegerValue.IsIncluded(pointer.Address, b.Address)))
        {
            return false;
        }

        foreach (var target in pointer.Targets)
        {
            if (b.Find(target.Region) is not { } offset || !IntegerValue.IsIncluded(target.Offset, offset))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The pointer moved by a number of bytes.</summary>
    public AbstractValue Move(IntegerValue bytes, Func<IntegerValue, IntegerValue, IntegerValue> add)
    {
        var delta = IntegerArithmetic.Convert(bytes, OffsetBits, sourceIsSigned: true);
        var moved = Targets.Select(t => t with { Offset = add(t.Offset, delta) }).ToImmutableArray();
        return new PointerValue(
            moved,
            Address is null ? null : add(Address, IntegerArithmetic.Convert(bytes, Address.Bits, sourceIsSigned: true))
        );
    }

    /// <summary>The targets that satisfy a predicate, without absolute addresses; null where there are none.</summary>
    public PointerValue? Where(Func<PointerTarget, bool> holds, IntegerValue? address)
    {
        var kept = Targets.Where(holds).ToImmutableArray();
        return kept.IsEmpty && address is null ? null : new PointerValue(kept, address);
    }

    public override string ToString() =>
        string.Join('|', Targets.Select(t => $"&{t.Region}+{t.Offset}")) + (Address is null ? "" : $"|{Address}");

    private IntegerValue? Find(Region region)
    {
        foreach (var target in Targets)
        {
            if (ReferenceEquals(target.Region, region))
            {
                return target.Offset;
            }
        }

        return null;
    }

    private static AbstractValue Combine(
        AbstractValue a,
        AbstractValue b,
        Func<IntegerValue, IntegerValue, IntegerValue> combine
    )
    {
        var (targetsA, addressA) = Split(a);
        var (targetsB, addressB) = Split(b);
        var address =
            addressA is null ? addressB
            : addressB is null ? addressA
            : combine(addressA, addressB);
        var merged = new SortedDictionary<int, PointerTarget>();
        foreach (var target in targetsA)
        {
            merged[target.Region.Id] = target;
        }

        foreach (var target in targetsB)
        {
            merged[target.Region.Id] = merged.TryGetValue(target.Region.Id, out var other)
                ? other with
                {
                    Offset = combine(other.Offset, target.Offset),
                }
                : target;
        }

        if (merged.Count > MaximumTargets)
        {
            return AnyValue.Instance;
        }

        var result = new PointerValue([.. merged.Values], address);
        return a is PointerValue pointer && IsIncluded(result, pointer) ? pointer : result;
    }

    private static (ImmutableArray<PointerTarget> Targets, IntegerValue? Address) Split(AbstractValue value) =>
        value is PointerValue pointer ? (pointer.Targets, pointer.Address) : ([], (IntegerValue)value);
}
