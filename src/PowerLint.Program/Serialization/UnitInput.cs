using System.Text;

namespace PowerLint.Program;

/// <summary>Reads what <see cref="UnitOutput"/> writes, and trusts none of it.</summary>
/// <param name="bytes">The bytes.</param>
internal sealed class UnitInput(byte[] bytes)
{
    private readonly List<string> _strings = [];
    private int _position;

    public bool IsAtEnd => _position == bytes.Length;

    public byte Byte() => _position < bytes.Length ? bytes[_position++] : throw Broken();

    public bool Flag() =>
        Byte() switch
        {
            0 => false,
            1 => true,
            _ => throw Broken(),
        };

    /// <summary>A number of things that follow, each of at least one byte.</summary>
    public int Count()
    {
        var value = Number();
        return value <= bytes.Length - _position ? value : throw Broken();
    }

    /// <summary>A number from 0 up.</summary>
    public int Number()
    {
        var value = Unsigned();
        return value <= int.MaxValue ? (int)value : throw Broken();
    }

    public long Signed()
    {
        var value = Unsigned();
        return unchecked((long)(value >> 1) ^ -(long)(value & 1));
    }

    public int SignedNumber()
    {
        var value = Signed();
        return value is >= int.MinValue and <= int.MaxValue ? (int)value : throw Broken();
    }

    public ulong Unsigned()
    {
        var value = 0UL;
        for (var shift = 0; shift < 64; shift += 7)
        {
            var part = Byte();
            value |= (ulong)(part & 0x7F) << shift;
            if (part < 0x80)
            {
                return value;
            }
        }

        throw Broken();
    }

    public double Double()
    {
        var value = BitConverter.ToDouble(Take(8));
        return value;
    }

    public byte[] Bytes() => Take(Count()).ToArray();

    public string? String()
    {
        var number = Number();
        switch (number)
        {
            case 0:
                return null;
            case 1:
                var text = Encoding.UTF8.GetString(Take(Count()));
                _strings.Add(text);
                return text;
            default:
                return number - 2 < _strings.Count ? _strings[number - 2] : throw Broken();
        }
    }

    public string Name() => String() ?? throw Broken();

    public static InvalidDataException Broken() => new("The bytes are not a unit's.");

    private ReadOnlySpan<byte> Take(int count)
    {
        if (count > bytes.Length - _position)
        {
            throw Broken();
        }

        var part = bytes.AsSpan(_position, count);
        _position += count;
        return part;
    }
}
