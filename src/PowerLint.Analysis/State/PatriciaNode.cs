namespace PowerLint.Analysis;

/// <summary>
/// A node of a <see cref="PersistentMap{T}"/>. Not generic, so that telling the kinds apart and making new ones costs no look-up of a
/// type at run time: the map is at the bottom of all that the analysis does.
/// </summary>
/// <param name="key">The key of a leaf, the prefix of a branch.</param>
/// <param name="bit">The bit of a branch; 0 tells a leaf.</param>
internal abstract class PatriciaNode(ulong key, ulong bit)
{
    public readonly ulong Key = key;

    public readonly ulong Bit = bit;
}

/// <summary>One entry.</summary>
internal sealed class PatriciaLeaf(ulong key, object value) : PatriciaNode(key, 0)
{
    public readonly object Value = value;
}

/// <summary>Two subtrees whose keys differ first in one bit.</summary>
/// <param name="prefix">Any key below the branch; only its bits above the bit count.</param>
/// <param name="bit">The bit.</param>
/// <param name="left">The keys without the bit.</param>
/// <param name="right">The keys with it.</param>
internal sealed class PatriciaBranch(ulong prefix, ulong bit, PatriciaNode left, PatriciaNode right)
    : PatriciaNode(prefix, bit)
{
    public ulong Prefix => Key;

    public readonly PatriciaNode Left = left;

    public readonly PatriciaNode Right = right;

    public bool Matches(ulong key) => ((key ^ Prefix) & ~(Bit | (Bit - 1))) == 0;
}
