using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// The nRF52 models held against published register descriptions (<c>/work/shared/svd</c>, skipped where that is absent). These files
/// are complete enough to ask more than <see cref="PublishedRegistersTests"/> does: names, resets, and interrupt lines.
/// </summary>
public sealed class PublishedNrf52Tests
{
    private const string Published = "/work/shared/svd";

    // Line 0 follows 16 exceptions of the processor's own.
    private const int FirstLine = 16;

    private const ulong Peripherals = 0x40000000;
    private const ulong BehindPeripherals = 0x60000000;

    public static TheoryData<string, string> Parts =>
        new()
        {
            { "nrf52832_xxaa", "nrf52.svd" },
            { "nrf52832_xxab", "nrf52.svd" },
            { "nrf52840_xxaa", "nrf52840.svd" },
        };

    [Theory]
    [MemberData(nameof(Parts))]
    public void Registers_have_the_names_and_resets_of_the_description(string part, string file)
    {
        var published = Read(file).Peripherals.SelectMany(p => p.Registers).ToLookup(register => register.Address);
        var differences = new List<string>();
        var held = 0;
        foreach (var register in Model(part).Registers.Where(IsOfPeripheral))
        {
            var same = published[register.Address]
                .Where(other => string.Equals(other.Name, register.Name, StringComparison.Ordinal))
                .ToArray();
            if (same.Length == 0)
            {
                var there = string.Join(", ", published[register.Address].Select(other => other.Name));
                differences.Add($"{register.Name} at 0x{register.Address:X}: published {there}");
                continue;
            }

            held++;
            differences.AddRange(
                from other in same
                where register.Kind == RegisterKind.Configuration && other.Access != SvdAccess.WriteOnly
                let known = register.ResetKnown & other.ResetMask
                where (other.Reset & known) != (register.Reset & known)
                select $"{register.Name}: reset 0x{register.Reset:X}, published 0x{other.Reset:X}"
            );
            differences.AddRange(
                from other in same
                from field in other.Fields
                where register.Fields.ContainsKey(field.Name)
                let own = register.Fields[field.Name]
                where (own.LowBit, own.WidthBits) != (field.LowBit, field.WidthBits)
                select $"{register.Name}.{field.Name}: from bit {own.LowBit}, published from bit {field.LowBit}"
            );
        }

        Assert.Equal("", string.Join('\n', differences));
        Assert.True(held >= 500, $"only {held} registers are in the description");
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Fields_are_in_the_description(string part, string file)
    {
        var published = Read(file).Peripherals.SelectMany(p => p.Registers).ToLookup(register => register.Address);
        var missing =
            from register in Model(part).Registers.Where(IsOfPeripheral)
            let known = published[register.Address].SelectMany(other => other.Fields).Select(field => field.Name)
            from field in register.Fields.Keys.Except(known, StringComparer.Ordinal)
            select $"{register.Name}.{field}";
        Assert.Equal("", string.Join('\n', missing));
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Interrupt_lines_are_those_of_the_description(string part, string file)
    {
        var published = Read(file)
            .Interrupts.Select(line => $"{line.Number + FirstLine} {line.Name}_IRQHandler")
            .ToHashSet(StringComparer.Ordinal);
        var modelled = Model(part)
            .Interrupts.Where(interrupt => interrupt.Number >= FirstLine)
            .Select(interrupt => $"{interrupt.Number} {interrupt.Name}")
            .ToArray();

        // Left out: the memory watch unit, which only debugging uses.
        Assert.Equal(["48 MWU_IRQHandler"], published.Except(modelled, StringComparer.Ordinal));
        Assert.Empty(modelled.Except(published, StringComparer.Ordinal));
    }

    private static bool IsOfPeripheral(Register register) =>
        register.Kind is not (RegisterKind.Option or RegisterKind.Internal)
        && register.Address is >= Peripherals and < BehindPeripherals;

    private static DeviceModel Model(string part) => DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load(part);

    private static SvdDevice Read(string file)
    {
        if (!Directory.Exists(Published))
        {
            Assert.Skip("the published files are not here");
        }

        var errors = new DeviceModelErrors();
        var device = SvdReader.Read(Path.Combine(Published, file), file, errors, out _);
        Assert.False(errors.Any);
        return device!;
    }
}
