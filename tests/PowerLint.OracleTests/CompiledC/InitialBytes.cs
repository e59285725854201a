using System.Collections;
using PowerLint.Program;

namespace PowerLint.OracleTests;

/// <summary>The bytes that an initial value gives an object, as far as they are constant; addresses are left out.</summary>
internal sealed class InitialBytes
{
    private readonly byte[] _bytes;
    private readonly BitArray _known;

    private InitialBytes(int size)
    {
        _bytes = new byte[size];
        _known = new BitArray(size, defaultValue: true);
    }

    /// <summary>How many bytes are known.</summary>
    public int KnownCount => _known.Cast<bool>().Count(known => known);

    public static InitialBytes Of(GlobalVariable global, int size)
    {
        var bytes = new InitialBytes(size);
        foreach (var entry in global.Initializer?.Entries ?? [])
        {
            bytes.Write(entry);
        }

        return bytes;
    }

    /// <summary>The first byte that differs, for people; null where none does.</summary>
    public string? Difference(ReadOnlySpan<byte> compiled)
    {
        for (var i = 0; i < _bytes.Length; i++)
        {
            if (_known[i] && _bytes[i] != compiled[i])
            {
                return $"byte {i} is {_bytes[i]:x2}, compiled {compiled[i]:x2}";
            }
        }

        return null;
    }

    private void Write(InitializerEntry entry)
    {
        switch (entry)
        {
            case BytesEntry bytes:
                bytes.Bytes.CopyTo(_bytes, entry.OffsetBytes);
                break;
            case ValueEntry { Value: IntegerConstant constant } value:
                WriteBits(value, constant.Value);
                break;
            case ValueEntry { Value: FloatingConstant constant } value:
                WriteBits(value, BitConverter.SingleToUInt32Bits((float)constant.Value));
                break;
            case ValueEntry value:
                for (var i = 0; i < value.Value.Type.SizeBytes; i++)
                {
                    _known[(int)entry.OffsetBytes + i] = false;
                }

                break;
        }
    }

    private void WriteBits(ValueEntry entry, ulong value)
    {
        var field = entry.BitField ?? new BitField(0, (int)entry.Value.Type.SizeBytes * 8, 64);
        for (var bit = 0; bit < field.BitWidth; bit++)
        {
            var place = ((int)entry.OffsetBytes * 8) + field.BitOffset + bit;
            var mask = (byte)(1 << (place % 8));
            _bytes[place / 8] = (byte)((value >> bit & 1) == 1 ? _bytes[place / 8] | mask : _bytes[place / 8] & ~mask);
        }
    }
}
