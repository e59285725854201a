using PowerLint.Devices;

namespace PowerLint.Reports;

/// <summary>Which heading a register stands under: its peripheral, its port, or the core.</summary>
internal sealed class RegisterGroups
{
    private readonly Dictionary<Register, string> _groups = [];

    /// <summary>Sorts a device's registers.</summary>
    internal RegisterGroups(DeviceModel device)
    {
        foreach (var peripheral in device.Peripherals)
        {
            foreach (var register in peripheral.Registers)
            {
                _groups.TryAdd(register, peripheral.Name);
            }
        }

        // A register that the pins of one port alone look at belongs to that port; a switch for all pins belongs to none.
        var ports = device
            .Pins.SelectMany(pin => Registers(pin).Select(register => (Register: register, pin.Port)))
            .GroupBy(use => use.Register);
        foreach (var uses in ports)
        {
            if (uses.Select(use => use.Port).Distinct(StringComparer.Ordinal).Take(2).Count() == 1)
            {
                _groups.TryAdd(uses.Key, "port " + uses.First().Port);
            }
        }
    }

    /// <summary>The heading of a register.</summary>
    internal string Of(Register register) =>
        register.Kind == RegisterKind.Option
            ? "options"
            : register.Peripheral ?? _groups.GetValueOrDefault(register, "core");

    private static IEnumerable<Register> Registers(Pin pin)
    {
        var conditions = (Condition[])[pin.Output, pin.OutputHigh, pin.PullUp, pin.PullDown, pin.InputBufferOff];
        var fields = conditions.SelectMany(condition => condition.Fields);
        return (pin.Level is { } level ? fields.Append(level) : fields).Select(field => field.Register).Distinct();
    }
}
