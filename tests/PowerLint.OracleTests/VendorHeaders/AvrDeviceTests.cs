using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// Holds every AVR model against avr-libc's headers: addresses, widths, bits, vectors, sleep modes. Source: Debian's
/// avr-libc 2.0.0.
/// </summary>
public sealed partial class AvrDeviceTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    /// <summary>
    /// Registers that the headers name and the models leave out: debugging, identification, analog trimming. None decides
    /// what a part draws.
    /// </summary>
    private static readonly string[] LeftOut = ["OCDR", "MONDR", "DEVID", "EIND", "RAMPX", "RAMPY", "RAMPD", "CCP"];

    /// <summary>Bits that the data sheet (8271H, sections MCUCR and SPMCSR) has and the part's header leaves out.</summary>
    private static readonly Dictionary<string, string[]> HeaderLacks = new(StringComparer.Ordinal)
    {
        ["atmega48pb"] = ["SPMEN"],
        ["atmega88a"] = ["IVSEL", "IVCE"],
        ["atmega168a"] = ["IVSEL", "IVCE"],
    };

    /// <summary>Parts that Debian's compiler and headers do not know; PublishedRegistersTests holds them against another source.</summary>
    private static readonly string[] WithoutHeader = ["atmega328pb"];

    private static readonly Dictionary<string, string> SleepModeMacros = new(StringComparer.Ordinal)
    {
        ["idle"] = "SLEEP_MODE_IDLE",
        ["adc-noise-reduction"] = "SLEEP_MODE_ADC",
        ["power-down"] = "SLEEP_MODE_PWR_DOWN",
        ["power-save"] = "SLEEP_MODE_PWR_SAVE",
        ["standby"] = "SLEEP_MODE_STANDBY",
        ["extended-standby"] = "SLEEP_MODE_EXT_STANDBY",
    };

    public static TheoryData<string> ClassicParts =>
        [
            .. Catalog
                .Families.Where(family =>
                    family.Family.StartsWith("atmega", StringComparison.Ordinal)
                    || family.Family.StartsWith("attiny", StringComparison.Ordinal)
                )
                .SelectMany(family => family.Members)
                .Except(WithoutHeader, StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(ClassicParts))]
    public void Registers_lie_where_the_header_puts_them(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        var registers = model.Registers.Where(r => r.Kind != RegisterKind.Option).ToArray();
        Assert.Empty(
            registers.Where(r => !header.Macros.ContainsKey(r.Name)).Select(r => $"{r.Name}: not in the header")
        );
        var addresses = header.Evaluate([.. registers.Select(r => $"&{r.Name}")]);
        var sizes = header.Evaluate([.. registers.Select(r => $"sizeof({r.Name})")]);
        Assert.Empty(
            registers
                .Where((r, i) => (int)r.Address != addresses[i] || r.WidthBits != 8 * sizes[i])
                .Select((r, _) => $"{r.Name}: 0x{r.Address:X} in the model")
        );
    }

    [Theory]
    [MemberData(nameof(ClassicParts))]
    public void Bits_lie_where_the_header_puts_them(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        var expected = new List<(string Macro, int Bit)>();
        foreach (var register in model.Registers.Where(r => r.Kind != RegisterKind.Option))
        {
            foreach (var field in register.Fields.Values)
            {
                // A field of several bits has no macro of its own; its bits are the name and a number.
                expected.AddRange(
                    field.WidthBits == 1
                        ? [(field.Name, field.LowBit)]
                        : Enumerable
                            .Range(0, field.WidthBits)
                            .Select(i => (field.Name + i.ToString(CultureInfo.InvariantCulture), field.LowBit + i))
                );
            }
        }

        expected.RemoveAll(e => HeaderLacks.GetValueOrDefault(part, []).Contains(e.Macro, StringComparer.Ordinal));
        Assert.Empty(
            expected.Where(e => !header.Macros.ContainsKey(e.Macro)).Select(e => $"{e.Macro}: not in the header")
        );
        var bits = header.Evaluate([.. expected.Select(e => e.Macro)]);
        Assert.Empty(expected.Where((e, i) => e.Bit != bits[i]).Select(e => $"{e.Macro}: {e.Bit} in the model"));
    }

    [Theory]
    [MemberData(nameof(ClassicParts))]
    public void No_register_of_the_header_is_missing(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        var addresses = model
            .Registers.Where(r => r.Kind != RegisterKind.Option)
            .Select(r => (int)r.Address)
            .ToHashSet();
        var named = header
            .Macros.Where(m => RegisterMacro().IsMatch(m.Value))
            .Select(m => m.Key)
            .Where(name => !LeftOut.Any(l => name.StartsWith(l, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal)
            .ToArray();
        var where = header.Evaluate([.. named.Select(name => $"&{name}")]);
        Assert.Empty(named.Where((_, i) => !addresses.Contains(where[i])));
    }

    [Theory]
    [MemberData(nameof(ClassicParts))]
    public void Vectors_have_the_numbers_of_the_header(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        var vectors = header
            .Macros.Keys.Where(m => m.EndsWith("_vect_num", StringComparison.Ordinal))
            .Select(m => m[..^"_num".Length])
            .Order(StringComparer.Ordinal)
            .ToArray();
        var numbers = header.Evaluate([.. vectors.Select(v => v + "_num")]);
        var byName = vectors.Zip(numbers).ToDictionary(v => v.First, v => v.Second, StringComparer.Ordinal);
        foreach (var interrupt in model.Interrupts)
        {
            var known = interrupt.OtherNames.Prepend(interrupt.Name).Where(byName.ContainsKey).ToArray();
            Assert.True(known.Length > 0, $"{interrupt.Name} is not in the header");
            Assert.All(known, name => Assert.Equal(byName[name], interrupt.Number));
        }

        var modelled = model.Interrupts.Select(i => i.Number).ToHashSet();
        Assert.Empty(byName.Where(v => !modelled.Contains(v.Value)).Select(v => v.Key));
    }

    [Theory]
    [MemberData(nameof(ClassicParts))]
    public void Sleep_modes_are_selected_as_the_header_does(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        foreach (var mode in model.SleepModes)
        {
            var macro = SleepModeMacros[mode.Name];
            Assert.True(header.Macros.ContainsKey(macro), $"the header has no {macro}");
            var value = (ulong)header.Evaluate([macro])[0];
            Assert.Equal([mode.Name], model.SleepModes.Where(m => IsSelected(m, value)).Select(m => m.Name));
        }
    }

    private static bool IsSelected(SleepMode mode, ulong register) =>
        mode.Selected.Alternatives.Any(all =>
            all.All(field => field.Values.Contains((register & field.Field.Mask) >> field.Field.LowBit))
        );

    [GeneratedRegex(@"^_SFR_(?:IO|MEM)8\s*\(", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RegisterMacro();
}
