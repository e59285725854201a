using System.Text.RegularExpressions;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.OracleTests.VendorHeaders;

/// <summary>
/// Holds the models of parts whose headers know peripheral blocks against avr-libc's headers. Source: Debian's avr-libc
/// 2.0.0.
/// </summary>
public sealed partial class XmegaDeviceTests
{
    private static readonly DeviceCatalog Catalog = DeviceCatalog.Open(RepositoryRoot.Combine("devices"));

    private static readonly Dictionary<string, string> SleepModeMacros = new(StringComparer.Ordinal)
    {
        ["idle"] = "SLEEP_SMODE_IDLE_gc",
        ["power-down"] = "SLEEP_SMODE_PDOWN_gc",
        ["power-save"] = "SLEEP_SMODE_PSAVE_gc",
        ["standby"] = "SLEEP_SMODE_STDBY_gc",
        ["extended-standby"] = "SLEEP_SMODE_ESTDBY_gc",
    };

    public static TheoryData<string> Parts =>
        [.. Catalog.Names.Where(name => name.StartsWith("atxmega", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Registers_lie_where_the_header_puts_them(string part)
    {
        var registers = Catalog.Load(part).Registers.Where(r => r.Kind != RegisterKind.Option).ToArray();
        var header = new AvrHeader(part);
        var addresses = header.Evaluate([.. registers.Select(r => $"&{r.Name}")]);
        var sizes = header.Evaluate([.. registers.Select(r => $"sizeof({r.Name})")]);
        Assert.Empty(
            registers
                .Where((r, i) => (int)r.Address != addresses[i] || r.WidthBits != 8 * sizes[i])
                .Select(r => $"{r.Name}: 0x{r.Address:X} in the model")
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Fields_lie_where_the_header_puts_them(string part)
    {
        var header = new AvrHeader(part);
        var expected = new List<(string Macro, int Value)>();
        foreach (
            var register in Catalog.Load(part).Registers.Where(r => r.Name.Contains('.', StringComparison.Ordinal))
        )
        {
            var block = BlockOf(register.Name, header);
            foreach (var field in register.Fields.Values)
            {
                var mask = ((1 << field.WidthBits) - 1) << field.LowBit;
                expected.Add(
                    header.Macros.ContainsKey($"{block}_{field.Name}_gm")
                        ? ($"{block}_{field.Name}_gm", mask)
                        : ($"{block}_{field.Name}_bm", mask)
                );
            }
        }

        Assert.NotEmpty(expected);
        Assert.Empty(
            expected.Where(e => !header.Macros.ContainsKey(e.Macro)).Select(e => $"{e.Macro}: not in the header")
        );
        var masks = header.Evaluate([.. expected.Select(e => e.Macro)]);
        Assert.Empty(
            expected.Where((e, i) => e.Value != masks[i]).Select(e => $"{e.Macro}: 0x{e.Value:X} in the model")
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Every_block_of_the_header_is_there(string part)
    {
        var model = Catalog.Load(part);
        var header = new AvrHeader(part);
        // Left out: the debugger, and the second view of a timer as two.
        var blocks = header
            .Macros.Where(m =>
                BlockMacro().Match(m.Value) is { Success: true } match
                && match.Groups["type"].Value is not ("OCD" or "TC2")
            )
            .Select(m => m.Key)
            .Where(name => !name.Contains('_', StringComparison.Ordinal));
        Assert.All(
            blocks,
            block => Assert.Contains(model.Registers, r => r.Name.StartsWith(block + ".", StringComparison.Ordinal))
        );
    }

    [Theory]
    [MemberData(nameof(Parts))]
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
        var expected = vectors.Zip(numbers, (name, number) => $"{number} {name}").Order(StringComparer.Ordinal);
        var modelled = model
            .Interrupts.SelectMany(i => i.OtherNames.Prepend(i.Name).Select(name => $"{i.Number} {name}"))
            .Order(StringComparer.Ordinal);
        Assert.Equal(expected, modelled);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Sleep_modes_are_selected_as_the_header_does(string part)
    {
        var model = Catalog.Load(part);
        // The header gives them as an enumeration.
        var values = new AvrHeader(part).Evaluate([.. model.SleepModes.Select(mode => SleepModeMacros[mode.Name])]);
        Assert.Equal(5, model.SleepModes.Length);
        for (var i = 0; i < values.Length; i++)
        {
            var selection = Assert.Single(Assert.Single(model.SleepModes[i].Selected.Alternatives));
            Assert.Equal(values[i], (int)(Assert.Single(selection.Values) << selection.Field.LowBit));
        }
    }

    // ADCA.CH0.MUXCTRL is a register of ADC_CH, TWIC.MASTER.CTRLA one of TWI_MASTER.
    private static string BlockOf(string register, AvrHeader header)
    {
        var parts = register.Split('.');
        var block = BlockMacro().Match(header.Macros[parts[0]]).Groups["type"].Value;
        foreach (var nested in parts[1..^1])
        {
            block += "_" + nested.TrimEnd('0', '1', '2', '3');
        }

        return block;
    }

    [GeneratedRegex(@"^\(\*\((?<type>\w+)_t \*\) 0x", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BlockMacro();
}
