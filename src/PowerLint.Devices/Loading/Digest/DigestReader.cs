using System.Text;

namespace PowerLint.Devices;

/// <summary>
/// Reads what <see cref="DigestWriter"/> wrote. This runs before the runtime has compiled anything: it is plain code without
/// generic helpers, closures or reflection.
/// </summary>
/// <param name="bytes">The bytes.</param>
/// <param name="options">Fuses and option bytes that differ from the factory's.</param>
internal sealed partial class DigestReader(byte[] bytes, OptionOverrides options)
{
    private const int ExpectedTexts = 512;

    private const int ExpectedObjects = 2048;

    private int _place;
    private string[] _texts = new string[ExpectedTexts];
    private int _textCount;
    private object[] _objects = new object[ExpectedObjects];
    private int _objectCount;

    /// <summary>Whether an option was given a value that its register cannot hold.</summary>
    internal bool HasOversizedOption { get; private set; }

    internal int Count() => (int)ReadUInt64();

    internal ulong ReadUInt64()
    {
        var value = 0UL;
        for (var shift = 0; ; shift += 7)
        {
            var part = bytes[_place++];
            value |= (ulong)(part & 0x7F) << shift;
            if (part < 0x80)
            {
                return value;
            }
        }
    }

    internal int ReadInt32()
    {
        var folded = (uint)ReadUInt64();
        return (int)(folded >> 1) ^ -(int)(folded & 1);
    }

    internal bool ReadBoolean() => bytes[_place++] != 0;

    internal double ReadDouble()
    {
        var value = BitConverter.ToDouble(bytes, _place);
        _place += sizeof(double);
        return value;
    }

    internal string? ReadString()
    {
        var mark = Count();
        if (mark != DigestWriter.New)
        {
            return mark == DigestWriter.Null ? null : _texts[mark - DigestWriter.FirstReference];
        }

        var length = Count();
        var text = Encoding.UTF8.GetString(bytes, _place, length);
        _place += length;
        if (_textCount == _texts.Length)
        {
            Array.Resize(ref _texts, 2 * _textCount);
        }

        _texts[_textCount++] = text;
        return text;
    }

    private bool IsNewObject(out object? known)
    {
        var mark = Count();
        known = mark < DigestWriter.FirstReference ? null : _objects[mark - DigestWriter.FirstReference];
        return mark == DigestWriter.New;
    }

    private void Keep(object made)
    {
        if (_objectCount == _objects.Length)
        {
            Array.Resize(ref _objects, 2 * _objectCount);
        }

        _objects[_objectCount++] = made;
    }

    // Every reference to the register is to what comes out here.
    private Register Adjusted(Register register)
    {
        if (register.Kind != RegisterKind.Option || options.IsEmpty)
        {
            return register;
        }

        var reset = options.Apply(register.Name, register.Reset, register.Fields);
        HasOversizedOption |= register.WidthBits < 64 && reset >> register.WidthBits != 0;
        return register.WithReset(reset);
    }
}
