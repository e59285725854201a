using System.Globalization;

namespace PowerLint.Devices;

/// <summary>
/// Resolves <c>REGISTER.FIELD</c>, <c>REGISTER[3]</c>, <c>REGISTER[7:4]</c> and <c>REGISTER</c>; the register may be an element
/// of an array, <c>PINCFG[3]</c>.
/// </summary>
internal static class FieldReferences
{
    public static FieldReference? Read(ScalarNode node, ModelReading reading) =>
        ReadWhereWritten(node, reading) is { } field ? InHolder(node, field, reading) : null;

    private static FieldReference? ReadWhereWritten(ScalarNode node, ModelReading reading)
    {
        var text = node.Text;
        // An element of an array of registers is a register of its own: PINCFG[3].
        if (reading.Registers.TryGetValue(text, out var whole) || reading.Views.TryGetValue(text, out whole))
        {
            return new FieldReference(whole, 0, whole.WidthBits, text);
        }

        if (text.EndsWith(']') && text.LastIndexOf('[') is var open and > 0)
        {
            var register = FindNamed(node, text[..open], reading);
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
            FindNamed(node, text, reading);
            return null;
        }

        var owner = FindNamed(node, text[..dot], reading);
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

    /// <summary>The register of that name; for a view, the register that it is a view of.</summary>
    public static Register? FindRegister(ScalarNode node, string name, ModelReading reading)
    {
        var register = FindNamed(node, name, reading);
        if (register is null || !reading.Views.ContainsKey(register.Name))
        {
            return register;
        }

        if (HolderOf(register, reading) is { } holder)
        {
            return holder;
        }

        reading.Errors.Add(
            node,
            $"{name} is a view of parts of other registers, and cannot be meant as a whole here: name those"
        );
        return null;
    }

    /// <summary>The register that a view shows, whole; null where it shows parts.</summary>
    public static Register? HolderOf(Register view, ModelReading reading) =>
        reading.HolderOf(view.Address) is { } holder
        && holder.Address == view.Address
        && holder.WidthBits == view.WidthBits
            ? holder
            : null;

    // Bits of a view are bits of the register that holds them.
    private static FieldReference? InHolder(ScalarNode node, FieldReference field, ModelReading reading)
    {
        if (!reading.Views.ContainsKey(field.Register.Name))
        {
            return field;
        }

        var holder = reading.HolderOf(field.Register.Address + (ulong)(field.LowBit / 8));
        var low = holder is null ? 0 : field.LowBit + (8 * (int)((long)field.Register.Address - (long)holder.Address));
        if (holder is not null && low + field.WidthBits <= holder.WidthBits)
        {
            return new FieldReference(holder, low, field.WidthBits, Spelled(holder, low, field.WidthBits));
        }

        reading.Errors.Add(node, $"'{field.Name}' lies in a view of several registers: name the bits of one of them");
        return null;
    }

    private static string Spelled(Register register, int low, int width)
    {
        var named = register.Fields.Values.FirstOrDefault(field => field.LowBit == low && field.WidthBits == width);
        return named is not null
            ? $"{register.Name}.{named.Name}"
            : string.Create(CultureInfo.InvariantCulture, $"{register.Name}[{low + width - 1}:{low}]");
    }

    private static Register? FindNamed(ScalarNode node, string name, ModelReading reading)
    {
        if (reading.Registers.TryGetValue(name, out var register) || reading.Views.TryGetValue(name, out register))
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
