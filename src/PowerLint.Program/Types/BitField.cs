namespace PowerLint.Program;

/// <summary>A bit-field inside the storage unit that an access reads or writes.</summary>
/// <param name="BitOffset">Offset of its lowest bit from the lowest bit of the unit at the access's address.</param>
/// <param name="BitWidth">Its width in bits.</param>
/// <param name="StorageBits">Width in bits of the unit that the access covers (8, 16, 32 or 64).</param>
public sealed record BitField(int BitOffset, int BitWidth, int StorageBits);
