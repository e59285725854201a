using System.Globalization;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// Holds every MSP430 and CC430 model against the header of that very part: addresses, widths, bits, vectors, sleep modes.
/// Source: Debian's msp430mcu 20120406.
/// </summary>
public sealed class Msp430DeviceTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    private static readonly Dictionary<string, int> Passwords = new(StringComparer.Ordinal)
    {
        ["WDTPW"] = 0x5A,
        ["FWKEY"] = 0xA5,
        ["PMMPW"] = 0xA5,
        ["CSKEY"] = 0xA5,
        ["FWPW"] = 0xA5,
    };

    /// <summary>
    /// Fields of several bits that the headers know only bit by bit, under names that do not go on from one another; and what no
    /// document tells, which stands in registers of ours.
    /// </summary>
    private static readonly string[] OurOwn = ["P2CA321", "BUFFER_OFF"];

    public static TheoryData<string> Parts =>
        [
            .. Catalog.Names.Where(name =>
                (
                    name.StartsWith("msp430", StringComparison.Ordinal)
                    || name.StartsWith("cc430", StringComparison.Ordinal)
                ) && Msp430Header.Knows(name)
            ),
        ];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Registers_lie_where_the_header_puts_them(string part)
    {
        var header = new Msp430Header(part);
        var registers = Catalog.Load(part).Registers.Where(r => r.IsAddressable).ToArray();
        Assert.NotEmpty(registers);
        Assert.Empty(
            registers
                .Where(r => !IsLaterThanDraft(part, r.Name))
                .Where(r =>
                    header.Find(NameIn(part, r.Name)) is not { } found || found != ((int)r.Address, r.WidthBits)
                )
                .Select(r => $"{r.Name}: {r.WidthBits} bits at 0x{r.Address:X} in the model, {header.Find(r.Name)}")
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Symbols_lie_where_the_linker_script_puts_them(string part)
    {
        var header = new Msp430Header(part);
        // A name that this part's header lacks does no harm: no program for it can use it.
        Assert.Empty(
            Catalog
                .Load(part)
                .Symbols.Where(symbol => !IsLaterThanDraft(part, symbol.Name))
                .Where(symbol => header.Find(symbol.Name) is { } found && found.Address != (int)symbol.Address)
                .Select(symbol => $"{symbol.Name}: 0x{symbol.Address:X} in the model")
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Every_name_that_the_header_declares_for_a_register_is_a_symbol(string part)
    {
        var model = Catalog.Load(part);
        var header = new Msp430Header(part);
        var symbols = model.Symbols.Select(symbol => symbol.Name).ToHashSet(StringComparer.Ordinal);
        var addresses = model
            .Registers.Where(r => r.IsAddressable)
            .SelectMany(r => Enumerable.Range((int)r.Address, r.WidthBits / 8))
            .ToHashSet();
        string[] unknown =
        [
            .. header.Registers.Where(name =>
                header.Find(name) is { } found && addresses.Contains(found.Address) && !symbols.Contains(name)
            ),
        ];
        Assert.Empty(unknown);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Bits_lie_where_the_header_puts_them(string part)
    {
        var header = new Msp430Header(part);
        var expected = Catalog
            .Load(part)
            .Registers.SelectMany(r => r.Fields.Values.Select(field => (r.Name, Field: field)))
            .Where(f => !OurOwn.Contains(f.Field.Name, StringComparer.Ordinal))
            .Select(f => (f.Name, f.Field, Macros: MacrosOf(part, f.Field, header)))
            .ToArray();
        Assert.Empty(expected.Where(f => f.Macros.Length == 0).Select(f => $"{f.Name}.{f.Field.Name}: not there"));
        var values = header.Evaluate(expected.SelectMany(f => f.Macros).Select(m => m.Name));
        Assert.Empty(
            expected.SelectMany(f =>
                f.Macros.Where(m => values[m.Name] != m.Value)
                    .Select(m => $"{f.Name}.{m.Name}: 0x{m.Value:X} in the model, 0x{values[m.Name]:X}")
            )
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Vectors_have_the_numbers_of_the_header(string part)
    {
        var header = new Msp430Header(part);
        var vectors = header.Evaluate(
            header.Macros.Keys.Where(m =>
                m.EndsWith("_VECTOR", StringComparison.Ordinal)
                && m is not ("RESET_VECTOR" or "TRAPINT_VECTOR")
                && !m.StartsWith("RESERVED", StringComparison.Ordinal)
            )
        );
        var modelled = Catalog
            .Load(part)
            .Interrupts.Where(i => i.HasVector)
            .SelectMany(i => i.OtherNames.Prepend(i.Name).Select(name => $"{2 * i.Number:X} {name}"))
            .ToHashSet(StringComparer.Ordinal);
        Assert.NotEmpty(modelled);
        // The model may know names of one vector that only other versions of the header have.
        string[] missing = [.. vectors.Select(v => $"{v.Value:X} {v.Key}").Where(v => !modelled.Contains(v))];
        Assert.Empty(missing);
        var offsets = vectors
            .Values.Select(v => v.ToString("X", CultureInfo.InvariantCulture))
            .ToHashSet(StringComparer.Ordinal);
        string[] misplaced = [.. modelled.Where(m => !offsets.Contains(m.Split(' ')[0]))];
        Assert.Empty(misplaced);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Sleep_modes_are_selected_as_the_header_does(string part)
    {
        var model = Catalog.Load(part);
        var header = new Msp430Header(part);
        var modes = model
            .SleepModes.Where(m => m.Resumes && m.Name.StartsWith("lpm", StringComparison.Ordinal))
            .ToArray();
        Assert.Equal(5, modes.Length);
        var values = header.Evaluate(modes.Select(m => $"{m.Name.ToUpperInvariant()}_bits"));
        foreach (var mode in modes)
        {
            var status = (ulong)values[$"{mode.Name.ToUpperInvariant()}_bits"];
            Assert.Equal([mode.Name], modes.Where(m => IsSelected(m, status)).Select(m => m.Name));
        }
    }

    /// <summary>
    /// The package has no header of the families with ferroelectric memory and a display; their display's controller is that of the
    /// metering family, of which it has one.
    /// </summary>
    [Fact]
    public void The_display_controller_is_that_of_the_family_with_a_header()
    {
        const string Other = "msp430f6726";
        var header = new Msp430Header(Other);
        var registers = Catalog
            .Load("msp430fr6989")
            .Registers.Where(r => r.Name.StartsWith("LCDC", StringComparison.Ordinal))
            .ToArray();
        Assert.Equal(10, registers.Length);
        Assert.All(
            registers,
            r => Assert.Equal((r.Name, ((int)r.Address, r.WidthBits)), (r.Name, header.Find(r.Name)))
        );
        var expected = registers
            .SelectMany(r => r.Fields.Values.Select(field => (Field: field, Macros: MacrosOf(Other, field, header))))
            .ToArray();
        Assert.DoesNotContain(expected, f => f.Macros.Length == 0);
        var values = header.Evaluate(expected.SelectMany(f => f.Macros).Select(m => m.Name));
        Assert.All(expected.SelectMany(f => f.Macros), m => Assert.Equal((m.Name, m.Value), (m.Name, values[m.Name])));
    }

    /// <summary>
    /// The macros that tell where a field lies: its own for one bit; for several the numbered bits, or else the values, which
    /// the headers write after an underscore.
    /// </summary>
    private static (string Name, int Value)[] MacrosOf(string part, Field field, Msp430Header header)
    {
        var name = NameIn(part, field.Name);
        if (field.WidthBits == 1)
        {
            return header.Macros.ContainsKey(name) ? [(name, 1 << field.LowBit)] : [];
        }

        var bits = Enumerable
            .Range(0, field.WidthBits)
            .Select(i => (Name: name + i.ToString(CultureInfo.InvariantCulture), Value: 1 << (field.LowBit + i)))
            .ToArray();
        if (bits.All(bit => header.Macros.ContainsKey(bit.Name)))
        {
            return bits;
        }

        (string Name, int Value)[] values =
        [
            .. Enumerable
                .Range(1, (1 << field.WidthBits) - 1)
                .Select(value => ($"{name}_{value}", value << field.LowBit))
                .Where(value => header.Macros.ContainsKey(value.Item1)),
        ];
        // Passwords are a macro with the field's name and one value.
        return values.Length > 0 || !Passwords.TryGetValue(field.Name, out var password)
            ? values
            : [(name, password << field.LowBit)];
    }

    // The header of this part is a draft (version 0.9): its comparator still has the name of the generation before.
    private static string NameIn(string part, string name) =>
        part is "msp430fr5969" && name.StartsWith("CE", StringComparison.Ordinal) ? "CB" + name[2..] : name;

    // The draft has these elsewhere, or narrower, than the released headers and the part (offsets in a later header: PxSELC 0x16).
    private static bool IsLaterThanDraft(string part, string name) =>
        part is "msp430fr5969"
        && (
            name.Contains("SELC", StringComparison.Ordinal)
            || (name.StartsWith("UCA", StringComparison.Ordinal) && name.EndsWith("STATW", StringComparison.Ordinal))
        );

    // The status register decides; what else a mode asks for is not in the header's macro.
    private static bool IsSelected(SleepMode mode, ulong status) =>
        mode.Selected.Alternatives.Any(all =>
            all.Where(field => field.Field.Register.Kind == RegisterKind.Internal)
                .All(field => field.Values.Contains((status & field.Field.Mask) >> field.Field.LowBit))
        );
}
