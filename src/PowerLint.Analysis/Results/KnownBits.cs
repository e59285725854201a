namespace PowerLint.Analysis;

/// <summary>
/// What each bit of a word can be: a bit set in <see cref="Known"/> has the value that <see cref="Value"/> gives, any other can
/// be either. <see cref="Value"/> is 0 where <see cref="Known"/> is 0.
/// </summary>
/// <param name="Known">Bits that are known.</param>
/// <param name="Value">Their values.</param>
public readonly record struct KnownBits(ulong Known, ulong Value)
{
    /// <summary>Nothing known.</summary>
    public static KnownBits Unknown => default;

    /// <summary>All bits known.</summary>
    public static KnownBits Exact(ulong value) => new(ulong.MaxValue, value);

    /// <summary>Bits that can be 1.</summary>
    public ulong MayBeOne => Value | ~Known;

    /// <summary>Whether all bits of a mask are known.</summary>
    public bool Knows(ulong mask) => (Known & mask) == mask;
}

/// <summary>An answer that may be open.</summary>
public enum Tristate
{
    /// <summary>No, on every path.</summary>
    No,

    /// <summary>Yes, on every path.</summary>
    Yes,

    /// <summary>It depends on the path or on what is not known.</summary>
    Maybe,
}
