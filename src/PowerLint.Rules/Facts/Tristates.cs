using PowerLint.Analysis;

namespace PowerLint.Rules;

/// <summary>Three-valued logic, after Kleene: an open answer stays open unless the other side decides.</summary>
internal static class Tristates
{
    /// <summary>Both hold.</summary>
    public static Tristate And(this Tristate left, Tristate right) =>
        (left, right) switch
        {
            (Tristate.No, _) or (_, Tristate.No) => Tristate.No,
            (Tristate.Yes, Tristate.Yes) => Tristate.Yes,
            _ => Tristate.Maybe,
        };

    /// <summary>At least one holds.</summary>
    public static Tristate Or(this Tristate left, Tristate right) =>
        (left, right) switch
        {
            (Tristate.Yes, _) or (_, Tristate.Yes) => Tristate.Yes,
            (Tristate.No, Tristate.No) => Tristate.No,
            _ => Tristate.Maybe,
        };

    /// <summary>The opposite.</summary>
    public static Tristate Not(this Tristate value) =>
        value switch
        {
            Tristate.No => Tristate.Yes,
            Tristate.Yes => Tristate.No,
            _ => Tristate.Maybe,
        };

    /// <summary>Whether any holds; no for none.</summary>
    public static Tristate Any(this IEnumerable<Tristate> values) => values.Aggregate(Tristate.No, Or);

    /// <summary>A plain answer.</summary>
    public static Tristate From(bool value) => value ? Tristate.Yes : Tristate.No;
}
