namespace PowerLint.Analysis;

/// <summary>
/// What a scalar can be. Laws, for all values a, b: a ⊑ Join(a, b); b ⊑ Join(a, b); Join(a, b) = Join(b, a) as sets; every
/// chain of widenings is finite. The concrete value of an expression is always among those its abstract value stands for.
/// </summary>
internal abstract class AbstractValue
{
    /// <summary>Whether the value is different from zero: a condition's truth.</summary>
    public virtual Tristate IsTrue => Tristate.Maybe;

    /// <summary>Whether two values stand for the same and came from the same place.</summary>
    public static bool AreSame(AbstractValue a, AbstractValue b) =>
        ReferenceEquals(a, b)
        || (a, b) switch
        {
            (IntegerValue x, IntegerValue y) => IntegerValue.AreSame(x, y),
            (FloatingValue x, FloatingValue y) => Equals(x.Number, y.Number),
            (PointerValue x, PointerValue y) => PointerValue.AreSame(x, y),
            _ => false,
        };

    /// <summary>The values of either.</summary>
    public static AbstractValue Join(AbstractValue a, AbstractValue b)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        return (a, b) switch
        {
            (IntegerValue x, IntegerValue y) => IntegerValue.Join(x, y),
            (FloatingValue x, FloatingValue y) => FloatingValue.Join(x, y),
            (AggregateValue x, AggregateValue y) => AggregateValue.Join(x, y),
            (PointerValue, PointerValue or IntegerValue) or (IntegerValue, PointerValue) => PointerValue.Join(a, b),
            _ => AnyValue.Instance,
        };
    }

    /// <summary>An upper bound of both that makes every growing chain end.</summary>
    public static AbstractValue Widen(AbstractValue before, AbstractValue after)
    {
        if (ReferenceEquals(before, after))
        {
            return before;
        }

        return (before, after) switch
        {
            (IntegerValue x, IntegerValue y) => IntegerValue.Widen(x, y),
            (PointerValue, PointerValue or IntegerValue) or (IntegerValue, PointerValue) => PointerValue.Widen(
                before,
                after
            ),
            _ => Join(before, after),
        };
    }

    /// <summary>An upper bound of both that makes growing chains end soon, at the price of their bounds.</summary>
    public static AbstractValue WidenFar(AbstractValue before, AbstractValue after) =>
        (before, after) is (IntegerValue x, IntegerValue y) && !ReferenceEquals(x, y)
            ? IntegerValue.WidenFar(x, y)
            : Widen(before, after);

    /// <summary>Whether all values of the first are values of the second.</summary>
    public static bool IsIncluded(AbstractValue a, AbstractValue b)
    {
        if (ReferenceEquals(a, b) || b is AnyValue)
        {
            return true;
        }

        return (a, b) switch
        {
            (IntegerValue x, IntegerValue y) => IntegerValue.IsIncluded(x, y),
            (FloatingValue x, FloatingValue y) => y.Number is null || Equals(x.Number, y.Number),
            (PointerValue or IntegerValue, PointerValue y) => PointerValue.IsIncluded(a, y),
            _ => false,
        };
    }
}

/// <summary>Anything at all: an integer, an address, an address of a function.</summary>
internal sealed class AnyValue : AbstractValue
{
    public static AnyValue Instance { get; } = new();

    public override string ToString() => "any";
}

/// <summary>A floating-point number, or any where <see cref="Number"/> is null.</summary>
internal sealed class FloatingValue(double? number) : AbstractValue
{
    public static FloatingValue Unknown { get; } = new(null);

    public double? Number { get; } = number;

    public override Tristate IsTrue =>
        Number switch
        {
            null => Tristate.Maybe,
            0 => Tristate.No,
            _ => Tristate.Yes,
        };

    public static FloatingValue Join(FloatingValue a, FloatingValue b) => Equals(a.Number, b.Number) ? a : Unknown;

    public override string ToString() =>
        Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "any float";
}
