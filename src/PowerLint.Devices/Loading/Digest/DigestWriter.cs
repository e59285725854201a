using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace PowerLint.Devices;

/// <summary>
/// Writes a model as bytes. Numbers take as many bytes as they need; a text or an object that was written before is a reference to its
/// first place. What each type of the model needs is generated.
/// </summary>
internal sealed partial class DigestWriter
{
    /// <summary>Nothing, or something that was not written before; other numbers count back references from here.</summary>
    internal const int Null = 0;

    internal const int New = 1;

    internal const int FirstReference = 2;

    private readonly MemoryStream _bytes = new();
    private readonly Dictionary<string, int> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<object, int> _objects = new(ReferenceEqualityComparer.Instance);

    /// <summary>What was written.</summary>
    internal byte[] ToArray() => _bytes.ToArray();

    internal void Count(int value) => Write((ulong)value);

    internal void Write(ulong value)
    {
        while (value >= 0x80)
        {
            _bytes.WriteByte((byte)(value | 0x80));
            value >>= 7;
        }

        _bytes.WriteByte((byte)value);
    }

    // Small negative numbers stay small.
    internal void Write(int value) => Write((ulong)(uint)((value << 1) ^ (value >> 31)));

    internal void Write(bool value) => _bytes.WriteByte(value ? (byte)1 : (byte)0);

    internal void Write(double value) => _bytes.Write(BitConverter.GetBytes(value));

    internal void Write(string? value)
    {
        if (value is null)
        {
            Count(Null);
        }
        else if (_texts.TryGetValue(value, out var index))
        {
            Count(FirstReference + index);
        }
        else
        {
            _texts.Add(value, _texts.Count);
            Count(New);
            var text = Encoding.UTF8.GetBytes(value);
            Count(text.Length);
            _bytes.Write(text);
        }
    }

    private bool IsNewObject([NotNullWhen(true)] object? value)
    {
        if (value is null)
        {
            Count(Null);
            return false;
        }

        if (_objects.TryGetValue(value, out var index))
        {
            Count(FirstReference + index);
            return false;
        }

        Count(New);
        return true;
    }

    // An object is known once it is whole, as the reader can only then have it.
    private void Keep(object value) => _objects.Add(value, _objects.Count);
}
