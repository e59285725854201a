using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// Resolves <c>REGISTER.FIELD</c>, <c>REGISTER[3]</c>, <c>REGISTER[7:4]</c> and <c>REGISTER</c>; the register may be an element
/// of an array, <c>PINCFG[3]</c>.
/// </summary>
internal static class FieldReferences
{
    public static FieldReference? Read(ScalarNode node, ModelReading reading)
    {
        var text = node.Text;
        // An element of an array of registers is a register of its own: PINCFG[3].
        if (reading.Registers.TryGetValue(text, out var whole))
        {
            return new FieldReference(whole, 0, whole.WidthBits, text);
        }

        if (text.EndsWith(']') && text.LastIndexOf('[') is var open and > 0)
        {
            var register = FindRegister(node, text[..open], reading);
            if (register is null)
            {
                return null;
            }

            if (TryParseBits(text[(open + 1)..^1], out var low, out var width) && low + width <= register.WidthBits)
            {
                return new FieldReference(register, low, width, text);
            }

            reading.Errors.Add(node, $"'{text}' names no bits of {register.Name}, which has {register.WidthBits}");
            return null;
        }

        var dot = text.LastIndexOf('.');
        if (dot < 0)
        {
            FindRegister(node, text, reading);
            return null;
        }

        var owner = FindRegister(node, text[..dot], reading);
        if (owner is null)
        {
            return null;
        }

        if (owner.Fields.TryGetValue(text[(dot + 1)..], out var field))
        {
            return new FieldReference(owner, field.LowBit, field.WidthBits, text);
        }

        reading.Errors.Add(
            node,
            $"register {owner.Name} has no field '{text[(dot + 1)..]}'{NearestNames.Hint(text[(dot + 1)..], owner.Fields.Keys)}"
        );
        return null;
    }

    public static Register? FindRegister(ScalarNode node, string name, ModelReading reading)
    {
        if (reading.Registers.TryGetValue(name, out var register))
        {
            return register;
        }

        reading.Errors.Add(node, $"unknown register '{name}'{NearestNames.Hint(name, reading.Registers.Keys)}");
        return null;
    }

    /// <summary><c>3</c>, or <c>7:4</c> with the higher bit first.</summary>
    public static bool TryParseBits(string text, out int low, out int width)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var highText = colon < 0 ? text : text[..colon];
        var lowText = colon < 0 ? text : text[(colon + 1)..];
        width = 0;
        if (!TryParseBit(lowText, out low) || !TryParseBit(highText, out var high) || high < low)
        {
            return false;
        }

        width = high - low + 1;
        return true;
    }

    private static bool TryParseBit(string text, out int bit) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out bit) && bit < 64;
}
