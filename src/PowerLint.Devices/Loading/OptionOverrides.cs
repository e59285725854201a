namespace PowerLint.Devices;

/// <summary>Fuses and option bytes that the configuration sets: whole (<c>LFUSE</c>) or by field (<c>LFUSE.CKOUT</c>).</summary>
internal sealed class OptionOverrides(IReadOnlyDictionary<string, ulong>? values)
{
    private readonly (string Key, ulong Set)[] _values =
        values is null || values.Count == 0
            ? []
            : [.. values.Select(v => (v.Key, v.Value)).OrderBy(v => v.Key, StringComparer.Ordinal)];

    private readonly HashSet<string> _used = new(StringComparer.Ordinal);

    /// <summary>Whether the factory's settings stay as they are.</summary>
    public bool IsEmpty { get; } = values is null || values.Count == 0;

    /// <summary>Settings that fit no option of the part.</summary>
    public IEnumerable<string> Unused => _values.Select(value => value.Key).Where(key => !_used.Contains(key));

    /// <summary>The option's value with what the configuration sets.</summary>
    public ulong Apply(string register, ulong factory, IReadOnlyDictionary<string, Field> fields)
    {
        var value = factory;
        // In ordinal order the whole register comes before its fields.
        foreach (var (key, set) in _values)
        {
            if (string.Equals(key, register, StringComparison.Ordinal))
            {
                value = set;
                _used.Add(key);
            }
            else if (
                key.Length > register.Length
                && key[register.Length] == '.'
                && key.StartsWith(register, StringComparison.Ordinal)
                && fields.TryGetValue(key[(register.Length + 1)..], out var field)
            )
            {
                var mask = ((1UL << field.WidthBits) - 1) << field.LowBit;
                value = (value & ~mask) | ((set << field.LowBit) & mask);
                _used.Add(key);
            }
        }

        return value;
    }
}
