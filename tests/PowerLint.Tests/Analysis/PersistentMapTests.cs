using FsCheck.Xunit;
using PowerLint.Analysis;

namespace PowerLint.Tests.Analysis;

/// <summary>The persistent map against the framework's dictionary.</summary>
public sealed class PersistentMapTests
{
    [Property]
    public void It_holds_what_was_set_and_not_removed((ushort Key, bool IsRemoved)[] operations)
    {
        var map = PersistentMap<string>.Empty;
        var expected = new SortedDictionary<ulong, string>();
        foreach (var (key, isRemoved) in operations)
        {
            if (isRemoved)
            {
                map = map.Remove(key);
                expected.Remove(key);
            }
            else
            {
                map = map.Set(key, $"v{key}");
                expected[key] = $"v{key}";
            }
        }

        Assert.Equal(expected.Select(e => (e.Key, e.Value)), map.Entries());
    }

    [Property]
    public void Merging_sees_every_key_of_either_side_once(byte[] left, byte[] right)
    {
        var a = left.Aggregate(PersistentMap<string>.Empty, (map, key) => map.Set(key, "a"));
        var b = right.Aggregate(PersistentMap<string>.Empty, (map, key) => map.Set(key, "b"));
        var merged = PersistentMap<string>.Merge(a, b, (_, inA, inB) => $"{inA}{inB}");
        var expected = left.Union(right)
            .Order()
            .Select(key => ((ulong)key, (left.Contains(key) ? "a" : "") + (right.Contains(key) ? "b" : "")));
        Assert.Equal(expected, merged.Entries());
    }

    [Property]
    public void Differences_are_those_keys_whose_values_are_not_the_same_object(byte[] shared, byte[] changed)
    {
        var a = shared.Aggregate(PersistentMap<string>.Empty, (map, key) => map.Set(key, "same"));
        var b = changed.Aggregate(a, (map, key) => map.Set(key, "other"));
        var seen = new List<ulong>();
        PersistentMap<string>.AllDifferences(
            a,
            b,
            (key, _, _) =>
            {
                seen.Add(key);
                return true;
            }
        );
        Assert.Equal(changed.Distinct().Order().Select(key => (ulong)key), seen.Order());
    }

    [Property]
    public void Removing_a_prefix_removes_exactly_the_keys_under_it(ushort[] keys, byte prefix)
    {
        var map = keys.Aggregate(PersistentMap<string>.Empty, (m, key) => m.Set(key, "x"));
        var expected = keys.Distinct().Where(key => key >> 8 != prefix).Order().Select(key => (ulong)key);
        Assert.Equal(expected, map.RemovePrefix((ulong)prefix << 8, 8).Entries().Select(e => e.Key));
        Assert.Equal(
            keys.Distinct().Where(key => key >> 8 == prefix).Order().Select(key => (ulong)key),
            map.EntriesWithPrefix((ulong)prefix << 8, 8).Select(e => e.Key)
        );
    }
}
