using System.Collections.Immutable;
using System.Xml.Linq;

namespace PowerLint.Devices;

/// <summary>Reads a CMSIS-SVD file: everything derived and expanded, at absolute addresses.</summary>
internal static class SvdReader
{
    /// <summary>The device, or null with the reasons among the errors.</summary>
    /// <param name="path">The file.</param>
    /// <param name="shown">The file as messages name it.</param>
    /// <param name="errors">Takes what makes the file unusable.</param>
    /// <param name="notices">Flaws that were mended.</param>
    public static SvdDevice? Read(
        string path,
        string shown,
        DeviceModelErrors errors,
        out ImmutableArray<SvdNotice> notices
    )
    {
        notices = [];
        if (SvdFile.Read(path, shown, errors) is not { } root)
        {
            return null;
        }

        var reading = new SvdReading(shown, errors);
        var device = ReadDevice(root, reading);
        notices = [.. reading.Notices];
        return errors.Any ? null : device;
    }

    private static SvdDevice ReadDevice(XElement root, SvdReading reading)
    {
        var derivation = new SvdDerivation(reading);
        var registers = new SvdRegisterReader(derivation, reading);
        var node = new SvdNode(root, null);
        var name = reading.Name(node) ?? "";
        var properties = SvdProperties.Default.In(node, $"device {name}", reading);
        var unit = reading.OptionalNumber(node, "addressUnitBits", $"device {name}") ?? 8;
        if (unit != 8)
        {
            reading.Error(
                node.Line,
                $"addresses of device {name} count {unit} bits: only bytes, 8 bits, can be modelled"
            );
        }

        var peripherals = ImmutableArray.CreateBuilder<SvdPeripheral>();
        var interrupts = new SvdInterruptReader(reading);
        var names = new HashSet<string>(StringComparer.Ordinal);
        var members = node.Members();
        if (members.Count == 0)
        {
            reading.Error(node.Line, $"device {name} has no peripherals");
        }

        foreach (var element in members)
        {
            var peripheral = derivation.Resolve(element);
            if (reading.Name(peripheral) is not { } called)
            {
                continue;
            }

            if (!names.Add(called))
            {
                reading.Error(peripheral.Line, $"a second peripheral is called {called}");
                continue;
            }

            if (reading.Number(peripheral, "baseAddress", $"peripheral {called}") is { } address)
            {
                var own = properties.In(peripheral, $"peripheral {called}", reading);
                foreach (var item in SvdDimension.Expand(peripheral, called, reading))
                {
                    var at = address + item.Offset;
                    peripherals.Add(
                        new SvdPeripheral(
                            item.Name,
                            at,
                            Distinct(registers.Read(peripheral, item.Name, at, own), reading)
                        )
                    );
                }
            }

            interrupts.Read(peripheral, called);
        }

        return new SvdDevice(
            name,
            node.Text("version"),
            ReadCpu(node, derivation, reading),
            peripherals.ToImmutable(),
            interrupts.Lines()
        );
    }

    private static SvdCpu? ReadCpu(SvdNode device, SvdDerivation derivation, SvdReading reading)
    {
        if (device.Child("cpu") is not { } element)
        {
            return null;
        }

        var cpu = derivation.Resolve(element);
        return reading.Name(cpu) is { } name
            ? new SvdCpu(name, (int?)reading.OptionalNumber(cpu, "nvicPrioBits", $"cpu {name}"))
            : null;
    }

    // The standard asks for one name a register; files do not always keep to it.
    private static ImmutableArray<SvdRegister> Distinct(ImmutableArray<SvdRegister> registers, SvdReading reading)
    {
        var seen = new Dictionary<string, SvdRegister>(StringComparer.Ordinal);
        var kept = ImmutableArray.CreateBuilder<SvdRegister>(registers.Length);
        foreach (var register in registers)
        {
            var named = register;
            for (var i = 2; !seen.TryAdd(named.Name, named); i++)
            {
                named = register with { Name = $"{register.Name}_{i}" };
            }

            if (!ReferenceEquals(named, register))
            {
                reading.Notice(register.Line, $"there is a second register {register.Name}: called {named.Name}");
            }

            kept.Add(named);
        }

        return kept.ToImmutable();
    }
}
