using System.Numerics;

namespace PowerLint.Analysis;

/// <summary>
/// An immutable map from 64-bit keys, as a big-endian Patricia tree (Okasaki and Gill, "Fast Mergeable Integer Maps", 1998): a
/// copy is free, and merging or comparing two maps costs what differs, because shared subtrees are recognised by identity.
/// </summary>
internal sealed class PersistentMap<T>
    where T : class
{
    private readonly Node? _root;

    private PersistentMap(Node? root) => _root = root;

    public static PersistentMap<T> Empty { get; } = new(null);

    public bool IsEmpty => _root is null;

    public T? Find(ulong key)
    {
        var node = _root;
        while (node is Branch branch)
        {
            node = (key & branch.Bit) == 0 ? branch.Left : branch.Right;
        }

        return node is Leaf leaf && leaf.Key == key ? leaf.Value : null;
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

    /// <summary>Entries by ascending key.</summary>
    public IEnumerable<(ulong Key, T Value)> Entries() => Entries(_root);

    /// <summary>Entries whose upper bits equal those of the prefix.</summary>
    public IEnumerable<(ulong Key, T Value)> EntriesWithPrefix(ulong prefix, int freeBits)
    {
        var node = _root;
        while (node is Branch branch && branch.Bit >> freeBits != 0)
        {
            node = (prefix & branch.Bit) == 0 ? branch.Left : branch.Right;
        }

        return Entries(node).Where(entry => entry.Key >> freeBits == prefix >> freeBits);
    }

    private static IEnumerable<(ulong Key, T Value)> Entries(Node? root)
    {
        var stack = new Stack<Node>();
        if (root is not null)
        {
            stack.Push(root);
        }

        while (stack.TryPop(out var node))
        {
            if (node is Leaf leaf)
            {
                yield return (leaf.Key, leaf.Value);
            }
            else if (node is Branch branch)
            {
                stack.Push(branch.Right);
                stack.Push(branch.Left);
            }
        }
    }

    private PersistentMap<T> Wrap(Node? root) =>
        ReferenceEquals(root, _root) ? this
        : root is null ? Empty
        : new PersistentMap<T>(root);

    private static ulong KeyOf(Node node) => node is Leaf leaf ? leaf.Key : ((Branch)node).Prefix;

    private static Branch Join(Node a, Node b)
    {
        var (keyA, keyB) = (KeyOf(a), KeyOf(b));
        var bit = 1UL << (63 - BitOperations.LeadingZeroCount(keyA ^ keyB));
        return (keyA & bit) == 0 ? new Branch(keyA, bit, a, b) : new Branch(keyA, bit, b, a);
    }

    private static Node Set(Node? node, ulong key, T value)
    {
        switch (node)
        {
            case null:
                return new Leaf(key, value);
            case Leaf leaf when leaf.Key == key:
                return ReferenceEquals(leaf.Value, value) ? leaf : new Leaf(key, value);
            case Branch branch when branch.Matches(key):
                return (key & branch.Bit) == 0
                    ? Rebuild(branch, Set(branch.Left, key, value), branch.Right)!
                    : Rebuild(branch, branch.Left, Set(branch.Right, key, value))!;
            default:
                return Join(new Leaf(key, value), node);
        }
    }

    private static Node? RemovePrefix(Node? node, ulong prefix, int freeBits)
    {
        switch (node)
        {
            case null:
                return null;
            case Leaf leaf:
                return leaf.Key >> freeBits == prefix >> freeBits ? null : leaf;
        }

        var branch = (Branch)node;
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

    private static Node? Rebuild(Branch branch, Node? left, Node? right) =>
        ReferenceEquals(left, branch.Left) && ReferenceEquals(right, branch.Right) ? branch
        : left is null ? right
        : right is null ? left
        : new Branch(branch.Prefix, branch.Bit, left, right);

    private static Node? Merge(Node? a, Node? b, Func<ulong, T?, T?, T?> combine)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        if (a is null || b is null)
        {
            return MergeOneSide(a ?? b!, isLeft: b is null, combine);
        }

        if (a is Leaf leafA && b is Leaf leafB && leafA.Key == leafB.Key)
        {
            var value = combine(leafA.Key, leafA.Value, leafB.Value);
            return value is null ? null
                : ReferenceEquals(value, leafA.Value) ? leafA
                : ReferenceEquals(value, leafB.Value) ? leafB
                : new Leaf(leafA.Key, value);
        }

        if (a is Branch sameA && b is Branch sameB && sameA.Bit == sameB.Bit && sameA.Matches(sameB.Prefix))
        {
            var left = Merge(sameA.Left, sameB.Left, combine);
            var right = Merge(sameA.Right, sameB.Right, combine);
            return ReferenceEquals(left, sameB.Left) && ReferenceEquals(right, sameB.Right)
                ? sameB
                : Rebuild(sameA, left, right);
        }

        if (Encloses(a, b))
        {
            var outer = (Branch)a;
            return (KeyOf(b) & outer.Bit) == 0
                ? Rebuild(outer, Merge(outer.Left, b, combine), Merge(outer.Right, null, combine))
                : Rebuild(outer, Merge(outer.Left, null, combine), Merge(outer.Right, b, combine));
        }

        if (Encloses(b, a))
        {
            var outer = (Branch)b;
            return (KeyOf(a) & outer.Bit) == 0
                ? Rebuild(outer, Merge(a, outer.Left, combine), Merge(null, outer.Right, combine))
                : Rebuild(outer, Merge(null, outer.Left, combine), Merge(a, outer.Right, combine));
        }

        var onlyA = MergeOneSide(a, isLeft: true, combine);
        var onlyB = MergeOneSide(b, isLeft: false, combine);
        return onlyA is null ? onlyB
            : onlyB is null ? onlyA
            : Join(onlyA, onlyB);
    }

    private static Node? MergeOneSide(Node node, bool isLeft, Func<ulong, T?, T?, T?> combine)
    {
        if (node is Branch branch)
        {
            return Rebuild(
                branch,
                MergeOneSide(branch.Left, isLeft, combine),
                MergeOneSide(branch.Right, isLeft, combine)
            );
        }

        var leaf = (Leaf)node;
        var value = isLeft ? combine(leaf.Key, leaf.Value, null) : combine(leaf.Key, null, leaf.Value);
        return value is null ? null
            : ReferenceEquals(value, leaf.Value) ? leaf
            : new Leaf(leaf.Key, value);
    }

    private static bool Encloses(Node outer, Node inner) =>
        outer is Branch branch && branch.Matches(KeyOf(inner)) && (inner is Leaf || branch.Bit > ((Branch)inner).Bit);

    private static bool AllDifferences(Node? a, Node? b, Func<ulong, T?, T?, bool> holds)
    {
        if (ReferenceEquals(a, b))
        {
            return true;
        }

        if (a is null || b is null)
        {
            return (a ?? b) switch
            {
                Branch branch => AllDifferences(a is null ? null : branch.Left, b is null ? null : branch.Left, holds)
                    && AllDifferences(a is null ? null : branch.Right, b is null ? null : branch.Right, holds),
                Leaf leaf => a is null ? holds(leaf.Key, null, leaf.Value) : holds(leaf.Key, leaf.Value, null),
                _ => true,
            };
        }

        if (a is Leaf leafA && b is Leaf leafB && leafA.Key == leafB.Key)
        {
            return ReferenceEquals(leafA.Value, leafB.Value) || holds(leafA.Key, leafA.Value, leafB.Value);
        }

        if (a is Branch sameA && b is Branch sameB && sameA.Bit == sameB.Bit && sameA.Matches(sameB.Prefix))
        {
            return AllDifferences(sameA.Left, sameB.Left, holds) && AllDifferences(sameA.Right, sameB.Right, holds);
        }

        if (Encloses(a, b))
        {
            var outer = (Branch)a;
            var isLeft = (KeyOf(b) & outer.Bit) == 0;
            return AllDifferences(outer.Left, isLeft ? b : null, holds)
                && AllDifferences(outer.Right, isLeft ? null : b, holds);
        }

        if (Encloses(b, a))
        {
            var outer = (Branch)b;
            var isLeft = (KeyOf(a) & outer.Bit) == 0;
            return AllDifferences(isLeft ? a : null, outer.Left, holds)
                && AllDifferences(isLeft ? null : a, outer.Right, holds);
        }

        return AllDifferences(a, null, holds) && AllDifferences(null, b, holds);
    }

    private abstract class Node;

    private sealed class Leaf(ulong key, T value) : Node
    {
        public ulong Key { get; } = key;

        public T Value { get; } = value;
    }

    // Prefix is any key below the branch; only its bits above Bit count.
    private sealed class Branch(ulong prefix, ulong bit, Node left, Node right) : Node
    {
        public ulong Prefix { get; } = prefix;

        public ulong Bit { get; } = bit;

        public Node Left { get; } = left;

        public Node Right { get; } = right;

        public bool Matches(ulong key) => ((key ^ Prefix) & ~(Bit | (Bit - 1))) == 0;
    }
}
