namespace PowerLint.OracleTests;

/// <summary>A small generator of pseudo-random numbers (SplitMix64), the same on every runtime.</summary>
internal sealed class RandomSource(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number from 0 to below a limit.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    /// <summary>A number from one limit to another, both included.</summary>
    public int Between(int low, int high) => low + Below(high - low + 1);

    /// <summary>True once in so many times.</summary>
    public bool OneIn(int times) => Below(times) == 0;

    /// <summary>One of some things.</summary>
    public T From<T>(IReadOnlyList<T> things) => things[Below(things.Count)];

    /// <summary>One of some things.</summary>
    public T Pick<T>(params ReadOnlySpan<T> things) => things[Below(things.Length)];

    private ulong Next()
    {
        _state += 0x9e3779b97f4a7c15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        return z ^ (z >> 31);
    }
}
