using System.Text;

namespace PowerLint.Program;

/// <summary>A growing run of bytes. Numbers take seven bits a byte; strings are written once and then by their number.</summary>
internal sealed class UnitOutput
{
    private readonly Dictionary<string, int> _strings = new(StringComparer.Ordinal);
    private byte[] _bytes = new byte[4096];
    private int _length;

    public byte[] ToArray() => _bytes[.._length];

    public void Byte(byte value)
    {
        Reserve(1);
        _bytes[_length++] = value;
    }

    public void Flag(bool value) => Byte(value ? (byte)1 : (byte)0);

    public void Count(int value) => Unsigned((uint)value);

    public void Signed(long value) => Unsigned(unchecked((ulong)((value << 1) ^ (value >> 63))));

    public void Unsigned(ulong value)
    {
        Reserve(10);
        while (value >= 0x80)
        {
            _bytes[_length++] = (byte)(value | 0x80);
            value >>= 7;
        }

        _bytes[_length++] = (byte)value;
    }

    public void Double(double value)
    {
        Reserve(8);
        BitConverter.TryWriteBytes(_bytes.AsSpan(_length), value);
        _length += 8;
    }

    public void Bytes(ReadOnlySpan<byte> value)
    {
        Count(value.Length);
        Reserve(value.Length);
        value.CopyTo(_bytes.AsSpan(_length));
        _length += value.Length;
    }

    /// <summary>0 for null, 1 for a new string that follows, else two more than the string's number.</summary>
    public void String(string? value)
    {
        if (value is null)
        {
            Count(0);
        }
        else if (_strings.TryGetValue(value, out var number))
        {
            Count(number + 2);
        }
        else
        {
            _strings.Add(value, _strings.Count);
            Count(1);
            Bytes(Encoding.UTF8.GetBytes(value));
        }
    }

    private void Reserve(int count)
    {
        if (_length + count > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(_length + count, _bytes.Length * 2));
        }
    }
}
