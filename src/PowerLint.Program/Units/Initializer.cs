namespace PowerLint.Program;

/// <summary>An initial value: zeros, then the entries in order (a later one overrides an earlier one).</summary>
/// <param name="Entries">The parts that are given.</param>
public sealed record Initializer(IReadOnlyList<InitializerEntry> Entries);

/// <summary>One part of an initial value.</summary>
/// <param name="OffsetBytes">Where it starts in the object.</param>
public abstract record InitializerEntry(long OffsetBytes);

/// <summary>A scalar or a whole aggregate.</summary>
/// <param name="OffsetBytes">Where it starts in the object.</param>
/// <param name="Value">The value, of the part's type.</param>
/// <param name="BitField">The bit-field it fills, or null.</param>
public sealed record ValueEntry(long OffsetBytes, Expression Value, BitField? BitField) : InitializerEntry(OffsetBytes);

/// <summary>Bytes as they are: strings, and long arrays of integer constants.</summary>
/// <param name="OffsetBytes">Where they start in the object.</param>
/// <param name="Bytes">The bytes in the target's order.</param>
/// <param name="ElementBytes">Size of the elements that they make up: 1, 2, 4 or 8.</param>
public sealed record BytesEntry(long OffsetBytes, byte[] Bytes, int ElementBytes) : InitializerEntry(OffsetBytes);
