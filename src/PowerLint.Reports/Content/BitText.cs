using System.Globalization;
using System.Text;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Reports;

/// <summary>Writes register bits and addresses for people.</summary>
public static class BitText
{
    /// <summary>The mask of a word's bits.</summary>
    public static ulong Mask(int widthBits) => widthBits >= 64 ? ulong.MaxValue : (1UL << widthBits) - 1;

    /// <summary><c>0x20</c> where every bit is known, else every bit: <c>0b??01_1111</c>.</summary>
    public static string Show(KnownBits bits, int widthBits) =>
        bits.Knows(Mask(widthBits)) ? Hex(bits.Value & Mask(widthBits), widthBits) : Binary(bits, widthBits);

    /// <summary>Every bit, highest first, in groups of four; <c>?</c> where it can be either.</summary>
    public static string Binary(KnownBits bits, int widthBits)
    {
        var text = new StringBuilder("0b");
        for (var bit = widthBits - 1; bit >= 0; bit--)
        {
            text.Append(((bits.Known >> bit) & 1) == 0 ? '?' : (char)('0' + (int)((bits.Value >> bit) & 1)));
            if (bit > 0 && bit % 4 == 0)
            {
                text.Append('_');
            }
        }

        return text.ToString();
    }

    /// <summary>A hexadecimal number with as many digits as the width has.</summary>
    public static string Hex(ulong value, int widthBits) =>
        "0x"
        + value.ToString(
            "x" + Math.Max(1, (widthBits + 3) / 4).ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );

    /// <summary>The register that covers a byte address, or the address itself where the model has none.</summary>
    public static string RegisterAt(DeviceModel device, ulong address)
    {
        ArgumentNullException.ThrowIfNull(device);
        foreach (var register in device.Registers)
        {
            if (
                register.Kind != RegisterKind.Option
                && address >= register.Address
                && address < register.Address + (ulong)(register.WidthBits / 8)
            )
            {
                return register.Name;
            }
        }

        return Address(address);
    }

    /// <summary>An address with four digits or more.</summary>
    public static string Address(ulong address) => "0x" + address.ToString("x4", CultureInfo.InvariantCulture);
}
