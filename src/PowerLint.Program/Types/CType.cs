namespace PowerLint.Program;

/// <summary>
/// A type as the target sees it: what is left of C's types once sizes, offsets and conversions are written out in the
/// expressions. Pointers do not know what they point to; every access carries the type it reads or writes.
/// </summary>
public abstract record CType
{
    /// <summary>Size in bytes of an object of this type; 0 for void.</summary>
    public abstract long SizeBytes { get; }
}

/// <summary>An integer, enumeration, character or boolean type.</summary>
/// <param name="Bits">Width in bits: 1 for a boolean, else 8, 16, 24, 32 or 64.</param>
/// <param name="IsSigned">Whether it is signed (two's complement).</param>
public sealed record IntegerType(int Bits, bool IsSigned) : CType
{
    /// <summary>The boolean type: conversion to it asks whether the value is not zero.</summary>
    public static IntegerType Boolean { get; } = new(1, IsSigned: false);

    /// <inheritdoc/>
    public override long SizeBytes => (Bits + 7) / 8;

    /// <inheritdoc/>
    public override string ToString() => Bits == 1 ? "bool" : $"{(IsSigned ? 'i' : 'u')}{Bits}";
}

/// <summary>A floating-point type.</summary>
/// <param name="Bits">Width in bits: 32 or 64 (a 4-byte <c>double</c>, as on 8-bit parts, is 32).</param>
public sealed record FloatingType(int Bits) : CType
{
    /// <inheritdoc/>
    public override long SizeBytes => Bits / 8;

    /// <inheritdoc/>
    public override string ToString() => $"f{Bits}";
}

/// <summary>A pointer to data or to a function.</summary>
/// <param name="Bits">Width in bits.</param>
public sealed record PointerType(int Bits) : CType
{
    /// <inheritdoc/>
    public override long SizeBytes => Bits / 8;

    /// <inheritdoc/>
    public override string ToString() => $"p{Bits}";
}

/// <summary>A structure, union or array.</summary>
/// <param name="Bytes">Size in bytes.</param>
public sealed record AggregateType(long Bytes) : CType
{
    /// <inheritdoc/>
    public override long SizeBytes => Bytes;

    /// <inheritdoc/>
    public override string ToString() => $"[{Bytes}]";
}

/// <summary>No value.</summary>
public sealed record VoidType : CType
{
    /// <summary>The one instance that is needed.</summary>
    public static VoidType Instance { get; } = new();

    /// <inheritdoc/>
    public override long SizeBytes => 0;

    /// <inheritdoc/>
    public override string ToString() => "void";
}
