using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads the registers and clusters of a peripheral.</summary>
internal sealed class SvdRegisterReader(SvdDerivation derivation, SvdReading reading)
{
    // Clusters that are derived from what encloses them would never end.
    private const int DeepestCluster = 16;

    private readonly SvdFieldReader _fields = new(derivation, reading);

    /// <summary>Where the members of an element lie, and what they inherit.</summary>
    /// <param name="Prefix">What goes in front of their names: <c>DMA.CH0.</c></param>
    /// <param name="Suffix">What the peripheral appends to the names of its registers.</param>
    /// <param name="Address">What their offsets count from.</param>
    /// <param name="Properties">What they inherit.</param>
    /// <param name="IsAlternate">Whether what encloses them is another view.</param>
    /// <param name="Depth">Clusters around them.</param>
    private sealed record Place(
        string Prefix,
        string Suffix,
        ulong Address,
        SvdProperties Properties,
        bool IsAlternate,
        int Depth
    );

    /// <summary>The registers of one peripheral.</summary>
    /// <param name="peripheral">Its description.</param>
    /// <param name="name">Its name, an index filled in.</param>
    /// <param name="address">Its base address.</param>
    /// <param name="properties">What it gives to its registers.</param>
    public ImmutableArray<SvdRegister> Read(SvdNode peripheral, string name, ulong address, SvdProperties properties)
    {
        var registers = ImmutableArray.CreateBuilder<SvdRegister>();
        ReadMembers(
            peripheral,
            new Place(
                $"{name}.{Affix(peripheral, "prependToName", name)}",
                Affix(peripheral, "appendToName", name),
                address,
                properties,
                peripheral.Child("alternatePeripheral") is not null,
                0
            ),
            registers
        );
        return registers.ToImmutable();
    }

    // Many files prepend the peripheral's own name, which stands in front of the dot already.
    private static string Affix(SvdNode peripheral, string part, string name)
    {
        var text = peripheral.Text(part) ?? "";
        var bare = text.Trim('_');
        return
            bare.Length == 0
            || name.StartsWith(bare, StringComparison.Ordinal)
            || string.Equals(peripheral.Text("groupName"), bare, StringComparison.Ordinal)
            ? ""
            : text;
    }

    private void ReadMembers(SvdNode owner, Place place, ImmutableArray<SvdRegister>.Builder registers)
    {
        foreach (var element in owner.Members())
        {
            var node = derivation.Resolve(element);
            if (reading.IsFull || reading.Name(node) is not { } name)
            {
                continue;
            }

            var whose = $"{element.Name.LocalName} {place.Prefix}{name}";
            if (reading.Number(node, "addressOffset", whose) is not { } offset)
            {
                continue;
            }

            if (node.Text("alternateGroup") is { Length: > 0 } group)
            {
                name = $"{name}_{group}";
            }

            var properties = place.Properties.In(node, whose, reading);
            foreach (var item in SvdDimension.Expand(node, name, reading))
            {
                var address = place.Address + offset + item.Offset;
                if (element.Name.LocalName is "cluster")
                {
                    ReadCluster(node, item.Name, address, properties, place, registers);
                }
                else if (ReadRegister(node, item.Name, address, properties, place) is { } register)
                {
                    registers.Add(register);
                }
            }
        }
    }

    private void ReadCluster(
        SvdNode node,
        string name,
        ulong address,
        SvdProperties properties,
        Place place,
        ImmutableArray<SvdRegister>.Builder registers
    )
    {
        if (place.Depth >= DeepestCluster)
        {
            reading.Error(node.Line, $"clusters are nested more than {DeepestCluster} deep at {place.Prefix}{name}");
            return;
        }

        ReadMembers(
            node,
            place with
            {
                Prefix = $"{place.Prefix}{name}.",
                Address = address,
                Properties = properties,
                IsAlternate = place.IsAlternate || node.Child("alternateCluster") is not null,
                Depth = place.Depth + 1,
            },
            registers
        );
    }

    private SvdRegister? ReadRegister(SvdNode node, string name, ulong address, SvdProperties properties, Place place)
    {
        var full = $"{place.Prefix}{name}{place.Suffix}";
        reading.Registers++;
        if (reading.IsFull)
        {
            reading.Error(
                node.Line,
                $"the file expands to more than {SvdReading.MostRegisters} registers: it is not read further"
            );
            return null;
        }

        if (properties.Size is 0 or > 64)
        {
            reading.Error(node.Line, $"register {full} is {properties.Size} bits wide: 1 to 64 are possible");
            return null;
        }

        var size = (int)properties.Size;
        var all = size == 64 ? ulong.MaxValue : (1UL << size) - 1;
        var effect = _fields.WriteEffectOf(node, $"register {full}") ?? SvdWriteEffect.Modify;
        var changedByReading = _fields.ReadActionOf(node, $"register {full}") ?? false;
        return new SvdRegister
        {
            Line = node.Line,
            Name = full,
            Address = address,
            SizeBits = size,
            Access = properties.Access,
            WriteEffect = effect,
            ChangedByReading = changedByReading,
            Reset = properties.Reset & all,
            ResetMask = properties.ResetMask & all,
            Protection = properties.Protection,
            IsAlternate =
                place.IsAlternate
                || node.Child("alternateRegister") is not null
                || node.Child("alternateGroup") is not null,
            Fields = _fields.Read(node, full, size, properties.Access, effect, changedByReading),
        };
    }
}
