using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace PowerLint.Analysis;

/// <summary>
/// An immutable map from 64-bit keys, as a big-endian Patricia tree (Okasaki and Gill, "Fast Mergeable Integer Maps", 1998): a
/// copy is free, and merging or comparing two maps costs what differs, because shared subtrees are recognised by identity.
/// </summary>
internal sealed class PersistentMap<T>
    where T : class
{
    private readonly PatriciaNode? _root;

    private PersistentMap(PatriciaNode? root) => _root = root;

    public static PersistentMap<T> Empty { get; } = new(null);

    public bool IsEmpty => _root is null;

    public T? Find(ulong key)
    {
        var node = _root;
        while (IsBranch(node))
        {
            var branch = Branch(node);
            node = (key & branch.Bit) == 0 ? branch.Left : branch.Right;
        }

        return node is not null && node.Key == key ? ValueOf(Leaf(node)) : null;
    }

    public PersistentMap<T> Set(ulong key, T value) => Wrap(Set(_root, key, value));

    public PersistentMap<T> Remove(ulong key) => Wrap(RemovePrefix(_root, key, 0));

    /// <summary>Removes all keys whose upper bits equal those of the prefix, the lowest <paramref name="freeBits"/> aside.</summary>
    public PersistentMap<T> RemovePrefix(ulong prefix, int freeBits) => Wrap(RemovePrefix(_root, prefix, freeBits));

    /// <summary>
    /// Merges two maps. Subtrees that are the same object are kept untouched, so <paramref name="combine"/> must give x for (x, x).
    /// It sees null for a key that one side lacks, and drops the key by giving null.
    /// </summary>
    public static PersistentMap<T> Merge(PersistentMap<T> left, PersistentMap<T> right, Func<ulong, T?, T?, T?> combine)
    {
        var root = Merge(left._root, right._root, combine);
        return ReferenceEquals(root, right._root) ? right : left.Wrap(root);
    }

    /// <summary>Whether a predicate holds for every key on which the maps differ; shared subtrees are skipped.</summary>
    public static bool AllDifferences(PersistentMap<T> left, PersistentMap<T> right, Func<ulong, T?, T?, bool> holds) =>
        AllDifferences(left._root, right._root, holds);

    /// <summary>
    /// Whether a predicate holds for every key on which the maps differ among those whose upper bits equal the prefix's; the rest is not
    /// looked at.
    /// </summary>
    public static bool AllDifferences(
        PersistentMap<T> left,
        PersistentMap<T> right,
        ulong prefix,
        int freeBits,
        Func<ulong, T?, T?, bool> holds
    ) => AllDifferences(Below(left._root, prefix, freeBits), Below(right._root, prefix, freeBits), holds);

    /// <summary>Entries by ascending key.</summary>
    public IEnumerable<(ulong Key, T Value)> Entries() => Entries(_root);

    /// <summary>Entries whose upper bits equal those of the prefix.</summary>
    public IEnumerable<(ulong Key, T Value)> EntriesWithPrefix(ulong prefix, int freeBits)
    {
        var node = _root;
        while (node is not null && node.Bit >> freeBits != 0)
        {
            var branch = Branch(node);
            node = (prefix & branch.Bit) == 0 ? branch.Left : branch.Right;
        }

        return Entries(node).Where(entry => entry.Key >> freeBits == prefix >> freeBits);
    }

    private static IEnumerable<(ulong Key, T Value)> Entries(PatriciaNode? root)
    {
        var stack = new Stack<PatriciaNode>();
        if (root is not null)
        {
            stack.Push(root);
        }

        while (stack.TryPop(out var node))
        {
            if (!IsBranch(node))
            {
                yield return (node.Key, ValueOf(Leaf(node)));
            }
            else
            {
                var branch = Branch(node);
                stack.Push(branch.Right);
                stack.Push(branch.Left);
            }
        }
    }

    private static PatriciaNode? Below(PatriciaNode? node, ulong prefix, int freeBits)
    {
        while (node is not null && node.Bit >> freeBits != 0)
        {
            var branch = Branch(node);
            node = (prefix & branch.Bit) == 0 ? branch.Left : branch.Right;
        }

        return node is not null && node.Key >> freeBits == prefix >> freeBits ? node : null;
    }

    private PersistentMap<T> Wrap(PatriciaNode? root) =>
        ReferenceEquals(root, _root) ? this
        : root is null ? Empty
        : new PersistentMap<T>(root);

    // What a node is its bit tells; asking the runtime costs more.
    private static bool IsBranch([NotNullWhen(true)] PatriciaNode? node) => node is not null && node.Bit != 0;

    private static PatriciaBranch Branch(PatriciaNode node) => Unsafe.As<PatriciaBranch>(node);

    private static PatriciaLeaf Leaf(PatriciaNode node) => Unsafe.As<PatriciaLeaf>(node);

    private static PatriciaBranch Join(PatriciaNode a, PatriciaNode b)
    {
        var (keyA, keyB) = (a.Key, b.Key);
        var bit = 1UL << (63 - BitOperations.LeadingZeroCount(keyA ^ keyB));
        return (keyA & bit) == 0 ? new PatriciaBranch(keyA, bit, a, b) : new PatriciaBranch(keyA, bit, b, a);
    }

    private static PatriciaNode Set(PatriciaNode? node, ulong key, T value)
    {
        if (node is null)
        {
            return new PatriciaLeaf(key, value);
        }

        if (!IsBranch(node))
        {
            return node.Key != key ? Join(new PatriciaLeaf(key, value), node)
                : ReferenceEquals(Leaf(node).Value, value) ? node
                : new PatriciaLeaf(key, value);
        }

        var branch = Branch(node);
        return !branch.Matches(key) ? Join(new PatriciaLeaf(key, value), node)
            : (key & branch.Bit) == 0 ? Rebuild(branch, Set(branch.Left, key, value), branch.Right)!
            : Rebuild(branch, branch.Left, Set(branch.Right, key, value))!;
    }

    private static PatriciaNode? RemovePrefix(PatriciaNode? node, ulong prefix, int freeBits)
    {
        if (!IsBranch(node))
        {
            return node is null || node.Key >> freeBits == prefix >> freeBits ? null : node;
        }

        var branch = Branch(node);
        if (branch.Bit >> freeBits == 0)
        {
            return branch.Prefix >> freeBits == prefix >> freeBits ? null : branch;
        }

        if (!branch.Matches(prefix))
        {
            return branch;
        }

        return (prefix & branch.Bit) == 0
            ? Rebuild(branch, RemovePrefix(branch.Left, prefix, freeBits), branch.Right)
            : Rebuild(branch, branch.Left, RemovePrefix(branch.Right, prefix, freeBits));
    }

    private static PatriciaNode? Rebuild(PatriciaBranch branch, PatriciaNode? left, PatriciaNode? right) =>
        ReferenceEquals(left, branch.Left) && ReferenceEquals(right, branch.Right) ? branch
        : left is null ? right
        : right is null ? left
        : new PatriciaBranch(branch.Prefix, branch.Bit, left, right);

    private static PatriciaNode? Merge(PatriciaNode? a, PatriciaNode? b, Func<ulong, T?, T?, T?> combine)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        if (a is null || b is null)
        {
            return MergeOneSide(a ?? b!, isLeft: b is null, combine);
        }

        if (!IsBranch(a) && !IsBranch(b) && a.Key == b.Key)
        {
            var (leafA, leafB) = (Leaf(a), Leaf(b));
            var value = combine(leafA.Key, ValueOf(leafA), ValueOf(leafB));
            return value is null ? null
                : ReferenceEquals(value, ValueOf(leafA)) ? leafA
                : ReferenceEquals(value, ValueOf(leafB)) ? leafB
                : new PatriciaLeaf(leafA.Key, value);
        }

        if (IsBranch(a) && a.Bit == b.Bit && Branch(a).Matches(b.Key))
        {
            var (sameA, sameB) = (Branch(a), Branch(b));
            var left = Merge(sameA.Left, sameB.Left, combine);
            var right = Merge(sameA.Right, sameB.Right, combine);
            return ReferenceEquals(left, sameB.Left) && ReferenceEquals(right, sameB.Right)
                ? sameB
                : Rebuild(sameA, left, right);
        }

        if (Encloses(a, b))
        {
            var outer = Branch(a);
            return (b.Key & outer.Bit) == 0
                ? Rebuild(outer, Merge(outer.Left, b, combine), Merge(outer.Right, null, combine))
                : Rebuild(outer, Merge(outer.Left, null, combine), Merge(outer.Right, b, combine));
        }

        if (Encloses(b, a))
        {
            var outer = Branch(b);
            return (a.Key & outer.Bit) == 0
                ? Rebuild(outer, Merge(a, outer.Left, combine), Merge(null, outer.Right, combine))
                : Rebuild(outer, Merge(null, outer.Left, combine), Merge(a, outer.Right, combine));
        }

        var onlyA = MergeOneSide(a, isLeft: true, combine);
        var onlyB = MergeOneSide(b, isLeft: false, combine);
        return onlyA is null ? onlyB
            : onlyB is null ? onlyA
            : Join(onlyA, onlyB);
    }

    private static PatriciaNode? MergeOneSide(PatriciaNode node, bool isLeft, Func<ulong, T?, T?, T?> combine)
    {
        if (IsBranch(node))
        {
            var branch = Branch(node);
            return Rebuild(
                branch,
                MergeOneSide(branch.Left, isLeft, combine),
                MergeOneSide(branch.Right, isLeft, combine)
            );
        }

        var leaf = Leaf(node);
        var value = isLeft ? combine(leaf.Key, ValueOf(leaf), null) : combine(leaf.Key, null, ValueOf(leaf));
        return value is null ? null
            : ReferenceEquals(value, ValueOf(leaf)) ? leaf
            : new PatriciaLeaf(leaf.Key, value);
    }

    private static bool Encloses(PatriciaNode outer, PatriciaNode inner) =>
        outer.Bit > inner.Bit && Branch(outer).Matches(inner.Key);

    private static bool AllDifferences(PatriciaNode? a, PatriciaNode? b, Func<ulong, T?, T?, bool> holds)
    {
        if (ReferenceEquals(a, b))
        {
            return true;
        }

        if (a is null || b is null)
        {
            if (a is null && b is null)
            {
                return true;
            }

            var one = a ?? b!;
            if (!IsBranch(one))
            {
                return a is null ? holds(one.Key, null, ValueOf(Leaf(one))) : holds(one.Key, ValueOf(Leaf(one)), null);
            }

            var branch = Branch(one);
            return AllDifferences(a is null ? null : branch.Left, b is null ? null : branch.Left, holds)
                && AllDifferences(a is null ? null : branch.Right, b is null ? null : branch.Right, holds);
        }

        if (!IsBranch(a) && !IsBranch(b) && a.Key == b.Key)
        {
            var (leafA, leafB) = (Leaf(a), Leaf(b));
            return ReferenceEquals(ValueOf(leafA), ValueOf(leafB)) || holds(leafA.Key, ValueOf(leafA), ValueOf(leafB));
        }

        if (IsBranch(a) && a.Bit == b.Bit && Branch(a).Matches(b.Key))
        {
            var (sameA, sameB) = (Branch(a), Branch(b));
            return AllDifferences(sameA.Left, sameB.Left, holds) && AllDifferences(sameA.Right, sameB.Right, holds);
        }

        if (Encloses(a, b))
        {
            var outer = Branch(a);
            var isLeft = (b.Key & outer.Bit) == 0;
            return AllDifferences(outer.Left, isLeft ? b : null, holds)
                && AllDifferences(outer.Right, isLeft ? null : b, holds);
        }

        if (Encloses(b, a))
        {
            var outer = Branch(b);
            var isLeft = (a.Key & outer.Bit) == 0;
            return AllDifferences(isLeft ? a : null, outer.Left, holds)
                && AllDifferences(isLeft ? null : a, outer.Right, holds);
        }

        return AllDifferences(a, null, holds) && AllDifferences(null, b, holds);
    }

    // Only values of type T are put in.
    private static T ValueOf(PatriciaLeaf leaf) => Unsafe.As<T>(leaf.Value);
}
