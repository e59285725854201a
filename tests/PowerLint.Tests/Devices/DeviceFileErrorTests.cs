using PowerLint.Devices;

namespace PowerLint.Tests.Devices;

/// <summary>Mistakes in a device file are told with file, line and what to do.</summary>
public sealed class DeviceFileErrorTests : IDisposable
{
    // A whole family in few lines; each test breaks one of them.
    private const string Sound = """
        family: toy
        core: avr
        members:
          toy1: { macros: __TOY1__, packages: [dip4] }
        documents:
          ds: D1, data sheet of the toy
        sources: { packages: ds, registers: ds, ports: ds, functions: ds, gates: ds, sleep: ds, modes: ds, oscillators: ds, peripherals: ds, interrupts: ds, protections: ds, regulators: ds }
        reset-clock: { hertz: 1e6, source: "ds, section 3" }
        packages:
          dip4: [PA0..PA1]
        registers:
          DIR: { address: 0x20, bits: DIR1 DIR0 }
          OUT: { address: 0x21, bits: OUT1 OUT0 }
          CTRL: { address: 0x22, bits: SM1 SM0 SE ADEN, fields: { SM: "3:2" } }
          PRR: { address: 0x23, bits: PRADC }
        gates:
          PRR.PRADC: { open: { PRR.PRADC: 0 }, peripherals: [ADC] }
        protections:
          SM: { kind: unlock-bit, key-register: CTRL, keys: 0x80, protects: CTRL.SM }
        ports:
          A:
            name: PA{bit}
            bits: 0..1
            output: { "DIR[{bit}]": 1 }
            high: { "OUT[{bit}]": 1 }
        functions:
          ADC:
            AN0: { pin: PA0, kind: analog, when: { CTRL.ADEN: 1 } }
        sleep: { enable-bit: CTRL.SE }
        modes:
          idle: { depth: 1, select: { CTRL.SM: 0 } }
          deep: { depth: 2, select: { CTRL.SM: 1..3 } }
        peripherals:
          ADC: { on: { CTRL.ADEN: 1 }, gate: PRR.PRADC, draws-in: all, works-in: idle }
        interrupts:
          ADC_vect: { number: 1, peripheral: ADC, enabled: { CTRL.ADEN: 1 }, wakes: idle }
        regulators:
          VREG: { modes: deep, low-power: { PRR.PRADC: 1 }, needed-by: [ADC] }
        currents:
          - { mode: deep, volts: 3, typical-microamps: 0.1, source: "ds, table 1" }
        oscillators: { main: { on: always, runs-in: idle } }
        wake-up-times:
          - { modes: idle, clock-cycles: 4, source: "ds, section 4" }
          - { modes: deep, when: { CTRL.SM: 1 }, clock-cycles: { main: 6, 32768: 3, cpu: 4 }, source: "ds, section 4" }
          - { modes: deep, typical-microseconds: 5, maximum-microseconds: 8, typical-nanocoulombs: 15.1, volts: 3, source: "ds, table 2" }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-devices").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_sound_file_loads()
    {
        var model = Load(Sound);
        Assert.Equal("PA0 PA1", string.Join(' ', model.Pins.Select(p => p.Name)));
        Assert.Equal("idle deep", string.Join(' ', model.SleepModes.Select(m => m.Name)));
        Assert.Equal("D1, data sheet of the toy, table 1", model.SupplyCurrents[0].Source.ToString());
        Assert.Equal(
            ["4 cycles of the CPU", "6 cycles of main and 3 of 32.768 kHz and 4 of the CPU", "5 µs (at most 8 µs)"],
            model.WakeUpTimes.Select(row => row.ToString())
        );
        Assert.Equal([null, null, 15.1], model.WakeUpTimes.Select(row => row.TypicalNanocoulombs));
        Assert.Equal([4.0, null, 5.0], model.WakeUpTimes.Select(row => row.Microseconds(1e6)));
        Assert.Equal([null, null, 5.0], model.WakeUpTimes.Select(row => row.Microseconds(null)));
    }

    [Fact]
    public void A_pattern_stands_for_every_combination_of_its_values()
    {
        var text = Sound.Replace(
            "  toy1: { macros: __TOY1__, packages: [dip4] }",
            "  toy1: { macros: __TOY1__, packages: [dip4] }\nmember-patterns:\n  toy{size}x{pins}: { macros: \"__TOY{size}X{pins}__\", values: { size: [2, 4], pins: { 4: { packages: \"dip{pins}\" } } } }",
            StringComparison.Ordinal
        );
        File.WriteAllText(Path.Combine(_folder, "toy.yaml"), text);
        var catalog = DeviceCatalog.Open(_folder);
        Assert.Equal(["toy1", "toy2x4", "toy4x4"], catalog.Names);
        Assert.Equal(["dip4"], catalog.Load("toy4x4").Packages);
    }

    [Theory]
    [InlineData("values: { size: [2] }", "the member pattern toy{size}x{pins} lacks the values of '{pins}'")]
    [InlineData(
        "values: { size: [2], pins: [4], flash: [8] }",
        "the member pattern toy{size}x{pins} has no place for '{flash}'"
    )]
    [InlineData("packages: dip4", "member pattern toy{size}x{pins} lacks 'values'")]
    public void A_mistake_in_a_pattern_is_told(string entry, string message)
    {
        var text = Sound.Replace(
            "documents:",
            $"member-patterns:\n  toy{{size}}x{{pins}}: {{ {entry} }}\ndocuments:",
            StringComparison.Ordinal
        );
        File.WriteAllText(Path.Combine(_folder, "toy.yaml"), text);
        var exception = Assert.Throws<DeviceModelException>(() => DeviceCatalog.Open(_folder));
        Assert.Equal(message, exception.Errors[0].Message);
    }

    [Theory]
    [InlineData("core: avr", "core: avr\nvoltage: 3", 3, "unknown section 'voltage'")]
    [InlineData(
        "bits: OUT1 OUT0 }",
        "bits: OUT1 OUT0, adress: 1 }",
        13,
        "unknown key 'adress' in register OUT; did you mean 'address'?"
    )]
    [InlineData("{ CTRL.SM: 0 }", "{ CTLR.SM: 0 }", 31, "unknown register 'CTLR'; did you mean 'CTRL'?")]
    [InlineData("{ CTRL.SM: 0 }", "{ CTRL.SN: 0 }", 31, "register CTRL has no field 'SN'; did you mean 'SE'?")]
    [InlineData("{ CTRL.SM: 0 }", "{ \"CTRL[9]\": 0 }", 31, "'CTRL[9]' names no bits of CTRL, which has 8")]
    [InlineData("{ CTRL.SM: 0 }", "{ CTRL.SM: 4 }", 31, "4 does not fit into CTRL.SM, which has 2 bits")]
    [InlineData("SM: \"3:2\"", "SX: \"3:3\", SM: \"3:2\"", 14, "fields SX and SM1 of register CTRL overlap")]
    [InlineData(
        "SM: \"3:2\"",
        "SM: \"3:1\", SX: \"2:1\", SY: \"1:0\"",
        14,
        "fields SY and SX of register CTRL overlap"
    )]
    [InlineData(
        "SM: \"3:2\"",
        "SM: \"8:7\"",
        14,
        "field CTRL.SM lies in no bits of its register: write a bit (3) or a range (7:4) below 8"
    )]
    [InlineData("address: 0x21", "address: 0x20", 13, "registers DIR and OUT overlap at 0x20")]
    [InlineData("address: 0x21, ", "", 13, "register OUT lacks 'address'")]
    [InlineData("[PA0..PA1]", "[PA0..PA2]", 10, "no port has a pin 'PA2'; did you mean 'PA0'?")]
    [InlineData("pin: PA0", "pin: PB0", 28, "no port has a pin 'PB0'; did you mean 'PA0'?")]
    [InlineData("deep: { depth: 2, ", "deep: { ", 32, "mode deep lacks 'depth'")]
    [InlineData("depth: 2", "depth: 1", 32, "modes idle and deep have the same depth 1")]
    [InlineData("works-in: idle", "works-in: idel", 34, "unknown sleep mode 'idel'; did you mean 'idle'?")]
    [InlineData(
        "gate: PRR.PRADC,",
        "gate: PRR.PRAC,",
        34,
        "peripheral ADC has the unknown gate 'PRR.PRAC'; did you mean 'PRR.PRADC'?"
    )]
    [InlineData(
        "enable-bit: CTRL.SE }",
        "enable-bit: CTRL.SE, debug-in-sleep: [PRR.PRADC, OUT.OUT7] }",
        29,
        "register OUT has no field 'OUT7'; did you mean 'OUT0'?"
    )]
    [InlineData(
        "enable-bit: CTRL.SE }",
        "enable-bit: CTRL.SE, debug-in-sleep: CTRL.SM }",
        29,
        "CTRL.SM has several bits: write { modes: …, when: { CTRL.SM: … } }"
    )]
    [InlineData(
        "enable-bit: CTRL.SE }",
        "enable-bit: CTRL.SE, debug-in-sleep: { modes: deep } }",
        29,
        "a mode list lacks 'when'"
    )]
    [InlineData("peripheral: ADC,", "peripheral: ADD,", 36, "unknown peripheral 'ADD'; did you mean 'ADC'?")]
    [InlineData("{ modes: deep, low", "{ low", 38, "regulator VREG lacks 'modes'")]
    [InlineData("low-power: { PRR.PRADC: 1 }, ", "", 38, "regulator VREG lacks 'low-power'")]
    [InlineData("{ modes: deep, low", "{ modes: depe, low", 38, "unknown sleep mode 'depe'; did you mean 'deep'?")]
    [InlineData(
        "low-power: {",
        "low-powr: {",
        38,
        "unknown key 'low-powr' in regulator VREG; did you mean 'low-power'?"
    )]
    [InlineData(
        "needed-by: [ADC]",
        "needed-by: [ADD]",
        38,
        "regulator VREG is needed by 'ADD', which is no peripheral and no oscillator; did you mean 'ADC'?"
    )]
    [InlineData(
        "needed-by: [ADC]",
        "needed-by: { ADC: { PRR.PRAD: 1 } }",
        38,
        "register PRR has no field 'PRAD'; did you mean 'PRADC'?"
    )]
    [InlineData(", regulators: ds", "", 37, "'sources' does not say where the section 'regulators' comes from")]
    [InlineData(", source: \"ds, table 1\"", "", 40, "a row of 'currents' lacks 'source'")]
    [InlineData(
        "source: \"ds, table 1\"",
        "source: table 1",
        40,
        "unknown document 'table 1': name one of 'documents', or write 'from memory'"
    )]
    [InlineData("modes: deep, typical", "modes: depe, typical", 45, "unknown sleep mode 'depe'; did you mean 'deep'?")]
    [InlineData("modes: deep, typical", "typical", 45, "a row of 'wake-up-times' lacks 'modes'")]
    [InlineData(", source: \"ds, table 2\"", "", 45, "a row of 'wake-up-times' lacks 'source'")]
    [InlineData(
        "typical-microseconds: 5, maximum-microseconds: 8, ",
        "",
        45,
        "a row of 'wake-up-times' needs 'clock-cycles', 'typical-microseconds' or 'maximum-microseconds'"
    )]
    [InlineData(
        "typical-microseconds: 5",
        "typical-microseconds: 9",
        45,
        "a row of 'wake-up-times' has a typical time above the maximum"
    )]
    [InlineData(
        "typical-microseconds: 5",
        "typical-micros: 5",
        45,
        "unknown key 'typical-micros' in a row of 'wake-up-times'; did you mean 'typical-microseconds'?"
    )]
    [InlineData(
        "modes: idle, clock-cycles",
        "modes: deep, clock-cycles",
        43,
        "no row of 'wake-up-times' says how long mode idle takes to end"
    )]
    [InlineData(
        "clock-cycles: 4",
        "clock-cycles: four",
        43,
        "'clock-cycles' is a number of CPU cycles, or a mapping of clocks to numbers: { main: 6, cpu: 4 }"
    )]
    [InlineData(
        "{ main: 6,",
        "{ mian: 6,",
        44,
        "'mian' is no clock: write 'cpu', hertz or an oscillator; did you mean 'main'?"
    )]
    [InlineData("{ main: 6,", "{ main: six,", 44, "the cycles of 'main' must be a number")]
    [InlineData(
        "regulators: ds }",
        "regulators: ds, lookups: ds }\nlookups: { CTRL.SM: { index: OUT, rows: [CTRL.SM] } }",
        8,
        "lookup CTRL.SM needs bits of an internal register, and rows of as many bits"
    )]
    [InlineData(
        "regulators: ds }",
        "regulators: ds, resets: ds }\nresets: { CTRL.SM: { registers: [OUT] } }",
        8,
        "reset CTRL.SM needs one bit, and registers that it puts back"
    )]
    [InlineData(
        "protects: CTRL.SM }",
        "protects: [USB.*] }",
        19,
        "no register to be set has a name that begins with 'USB.'"
    )]
    [InlineData(" gates: ds,", "", 16, "'sources' does not say where the section 'gates' comes from")]
    [InlineData("  PRR: {", "  DIR: { address: 0x24 }\n  PRR: {", 15, "'DIR' stands here twice: remove one of the two")]
    [InlineData("  deep: {", "  idle: {", 32, "'idle' stands here twice: remove one of the two")]
    [InlineData(
        "kind: unlock-bit",
        "kind: padlock",
        19,
        "'kind' of protection SM must be one of timed-key, unlock-bit, key-in-word, key-sequence, unlock-condition, unlock-later"
    )]
    [InlineData(
        "packages: [dip4]",
        "packages: [dip8]",
        4,
        "member toy1 comes in the unknown package 'dip8'; did you mean 'dip4'?"
    )]
    [InlineData("packages: [dip4]", "variants: tiny", 4, "unknown variant 'tiny'")]
    [InlineData(
        "core: avr",
        "core: avr\nextends: toys",
        3,
        "'extends' names the file toys.yaml, which does not exist; did you mean 'toy'?"
    )]
    [InlineData("family: toy", "family: boy", 1, "'family' must be the file's own name without .yaml")]
    [InlineData("name: PA{bit}", "name: PA{bti}", 22, "nothing fills '{bti}': give it in the instance")]
    public void A_mistake_is_told_with_its_line(string from, string to, int line, string message)
    {
        Assert.Contains(from, Sound, StringComparison.Ordinal);
        var broken = Sound.Replace(from, to, StringComparison.Ordinal);
        var exception = Assert.Throws<DeviceModelException>(() => Load(broken));
        Assert.Contains(new DeviceModelError(Path.Combine(_folder, "toy.yaml"), line, message), exception.Errors);
    }

    [Fact]
    public void A_lookup_that_looks_at_itself_is_told()
    {
        var exception = Assert.Throws<DeviceModelException>(() =>
            Load(
                Sound
                    .Replace("  PRR: {", "  IN: { kind: internal, bits: A B C }\n  PRR: {", StringComparison.Ordinal)
                    .Replace("regulators: ds }", "regulators: ds, lookups: ds }", StringComparison.Ordinal)
                    + "\nlookups: { IN.A: { index: PRR.PRADC, rows: [IN.B] }, IN.B: { index: IN.A, rows: [CTRL.SE] }, IN.C: { index: IN.A, rows: [IN.A] } }"
            )
        );
        Assert.Equal(
            ["lookup IN.A looks at itself", "lookup IN.B looks at itself"],
            exception.Errors.Select(error => error.Message)
        );
    }

    [Fact]
    public void Broken_yaml_is_told_once()
    {
        var exception = Assert.Throws<DeviceModelException>(() =>
            Load(Sound.Replace("idle: { depth: 1,", "idle: { depth: 1", StringComparison.Ordinal))
        );
        var error = Assert.Single(exception.Errors);
        Assert.Equal(31, error.Line);
        Assert.StartsWith("not valid YAML: ", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_range_of_all_values_of_a_word_takes_no_room()
    {
        var text = Sound
            .Replace("OUT1 OUT0 }", "OUT1 OUT0 }\n  WIDE: { address: 0x30, width: 32 }", StringComparison.Ordinal)
            .Replace("on: { CTRL.ADEN: 1 }", "on: { CTRL.ADEN: 1, WIDE: 1..0xFFFFFFFF }", StringComparison.Ordinal);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var on = Load(text).Peripherals.Single().On;
        Assert.Equal("CTRL.ADEN = 1 and WIDE = 1..4294967295", on.ToString());
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 16 << 20);
    }

    [Fact]
    public void An_unknown_part_names_the_nearest()
    {
        Load(Sound);
        var exception = Assert.Throws<DeviceModelException>(() => DeviceCatalog.Open(_folder).Load("toy2"));
        Assert.Equal("no model of a device 'toy2'; did you mean 'toy1'?", Assert.Single(exception.Errors).Message);
    }

    private DeviceModel Load(string text)
    {
        File.WriteAllText(Path.Combine(_folder, "toy.yaml"), text);
        return DeviceCatalog.Open(_folder).Load("toy1");
    }
}
