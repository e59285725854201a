using System.Globalization;
using PowerLint.Devices;

namespace PowerLint.CommandLine;

/// <summary>Finds registers and fields by the names that people type: <c>DDRB</c>, <c>DDRB[3]</c>, <c>MCUCR.PUD</c>, <c>PUD</c>.</summary>
internal static class FieldNames
{
    /// <summary>The bits that a name means, or null.</summary>
    internal static FieldReference? Find(DeviceModel device, string name)
    {
        foreach (var register in device.Registers)
        {
            if (Same(register.Name, name))
            {
                return new FieldReference(register, 0, register.WidthBits, register.Name);
            }

            if (Bit(register, name) is { } bit)
            {
                return bit;
            }

            foreach (var field in register.Fields.Values)
            {
                if (Same(register.Name + "." + field.Name, name))
                {
                    return Reference(register, field);
                }
            }
        }

        return device
            .Registers.SelectMany(register =>
                register
                    .Fields.Values.Where(field => Same(field.Name, name))
                    .Select(field => Reference(register, field))
            )
            .FirstOrDefault();
    }

    /// <summary>Every name that can be given, for suggestions.</summary>
    internal static IEnumerable<string> All(DeviceModel device) =>
        device
            .Registers.Select(register => register.Name)
            .Concat(
                device.Registers.SelectMany(register =>
                    register.Fields.Values.Select(field => register.Name + "." + field.Name)
                )
            );

    private static FieldReference? Bit(Register register, string name)
    {
        var digits = name.AsSpan();
        if (
            !name.EndsWith(']')
            || name.Length < register.Name.Length + 3
            || name[register.Name.Length] != '['
            || !name.StartsWith(register.Name, StringComparison.OrdinalIgnoreCase)
        )
        {
            return null;
        }

        digits = digits[(register.Name.Length + 1)..^1];
        return
            int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var bit)
            && bit < register.WidthBits
            ? new FieldReference(register, bit, 1, name.ToUpperInvariant())
            : null;
    }

    private static FieldReference Reference(Register register, Field field) =>
        new(register, field.LowBit, field.WidthBits, register.Name + "." + field.Name);

    private static bool Same(string left, string right) =>
        string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
