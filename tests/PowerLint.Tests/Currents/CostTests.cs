using System.Collections.Immutable;
using PowerLint.Currents;
using PowerLint.Devices;
using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Tests;

/// <summary>
/// Costs over a part made up for the test, so that each expected number can be worked out by hand from the rows beside it.
/// </summary>
public sealed class CostTests
{
    private static readonly BoardFacts Board = new(
        ImmutableDictionary
            .Create<string, BoardPin>(StringComparer.Ordinal)
            .Add("PB0", new BoardPin("lamp", WireLevel.High, 2.5, WireLevel.Low, 15_000)),
        null,
        null
    );

    private static readonly Citation Sheet = new("sheet 1", "table 2");

    [Fact]
    public void A_superloop_costs_the_running_current_less_the_deepest_sleep()
    {
        // 4 MHz at 3 V is in the table: 1700 - 0.1.
        var cost = Cost(new OperatingPoint(3.0, 4e6), "superloop-without-sleep");
        Assert.Equal(1699.9, cost.Microamps!.Value, 1e-9);
        Assert.Equal(
            "all the time it could sleep: active 1700 µA at 3 V and 4 MHz, less power-down 0.1 µA at 3 V; sheet 1, table 2",
            cost.Basis
        );
    }

    [Theory]
    // 8 cycles at 4 MHz and 3 µs at 1700 µA: 5 µs and 8.5 nC.
    [InlineData("idle", "; the start alone takes 5 µs and some 8.5 nC; sheet 1, table 2")]
    // Where the sheet gives the charge, it counts.
    [InlineData("power-down", "; the start alone takes 60 µs and some 16.5 nC; sheet 1, table 2")]
    [InlineData("standby", "included: measure one")]
    public void A_wake_up_costs_its_start_at_least(string mode, string end)
    {
        var cost = Cost(new OperatingPoint(3.0, 4e6), "woken-too-often", mode);
        Assert.Null(cost.Microamps);
        Assert.EndsWith(end, cost.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_two_rows_the_clock_decides()
    {
        // 6 MHz lies half way between 4 MHz (1700) and 8 MHz (3700): 2700; idle 300 and 700: 500.
        var cost = Cost(new OperatingPoint(3.0, 6e6), "polling-wait");
        Assert.Equal(2200, cost.Microamps!.Value, 1e-9);
        Assert.Contains("between ", cost.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Beyond_the_rows_it_goes_in_proportion()
    {
        // 1 MHz is a quarter of 4 MHz: 1700 / 4 - 300 / 4.
        var cost = Cost(new OperatingPoint(3.0, 1e6), "busy-wait-delay");
        Assert.Equal(350, cost.Microamps!.Value, 1e-9);
        Assert.Contains("in proportion to the clock from ", cost.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void The_nearest_supply_is_taken() =>
        Assert.Equal(5000 - 0.1, Cost(new OperatingPoint(4.7, 4e6), "superloop-without-sleep").Microamps!.Value, 1e-9);

    [Fact]
    public void The_clock_after_reset_counts_where_nobody_says() =>
        Assert.Equal(1400, Cost(new OperatingPoint(3.0, null), "polling-wait").Microamps!.Value, 1e-9);

    [Fact]
    public void A_peripheral_costs_its_adder()
    {
        var cost = Cost(new OperatingPoint(3.0, 4e6), "peripheral-on-in-sleep", "power-down", "ADC");
        Assert.Equal(200, cost.Microamps!.Value, 1e-9);
        Assert.Contains("sheet 1, table 2", cost.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_adder_the_mode_with_and_without_it_tells() =>
        Assert.Equal(
            4.2 - 0.1,
            Cost(new OperatingPoint(3.0, 4e6), "peripheral-on-in-sleep", "power-down", "WDT").Microamps!.Value,
            1e-9
        );

    [Fact]
    public void Adders_of_several_subjects_are_added_up() =>
        Assert.Equal(
            200 + 4.1,
            Cost(new OperatingPoint(3.0, 4e6), "peripheral-on-in-sleep", "power-down", "ADC", "WDT").Microamps!.Value,
            1e-9
        );

    [Fact]
    public void A_deeper_mode_saves_the_difference() =>
        Assert.Equal(
            300 - 0.1,
            Cost(new OperatingPoint(3.0, 4e6), "shallow-sleep", "idle", "idle → power-down").Microamps!.Value,
            1e-9
        );

    [Fact]
    public void A_load_costs_what_the_board_file_says() =>
        Assert.Equal(
            2500,
            Cost(new OperatingPoint(3.0, 4e6), "load-driven-in-sleep", "power-down", "PB0").Microamps!.Value,
            1e-9
        );

    // 3 V over 35 kΩ (half way between 20 and 50) and the 15 kΩ outside: 60 µA.
    [Fact]
    public void A_pull_costs_the_supply_over_the_resistances() =>
        Assert.Equal(
            60,
            Cost(new OperatingPoint(3.0, 4e6), "pull-against-level", "power-down", "PB0").Microamps!.Value,
            1e-9
        );

    [Theory]
    [InlineData("load-driven-in-sleep", "PB1")]
    [InlineData("shallow-sleep", "standby → power-down")]
    [InlineData("locked-write", "CLKPR")]
    [InlineData("peripheral-on-in-sleep", "USART0")]
    [InlineData("peripheral-on-in-sleep", "ADC USART0")]
    [InlineData("clock-output-on", "CLKO PB0")]
    [InlineData("floating-pin", "PB0")]
    [InlineData("analog-pin-buffer-on", "PB0")]
    [InlineData("asleep-in-mode", "ADC")]
    public void Without_a_figure_it_is_unknown_and_says_why(string rule, string subjects)
    {
        var cost = Cost(new OperatingPoint(3.0, 4e6), rule, "power-down", subjects.Split(' '));
        Assert.Null(cost.Microamps);
        Assert.StartsWith("unknown: ", cost.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void A_model_without_figures_gives_no_number() =>
        Assert.Null(
            new CostEstimator(Device(withFigures: false), new OperatingPoint(3.0, 1e6), BoardFacts.None)
                .Estimate(Finding("superloop-without-sleep", mode: null, []))
                .Cost.Microamps
        );

    [Fact]
    public void A_cost_that_the_rule_has_set_stays()
    {
        var own = new CostEstimate(7, "the rule's own");
        var finding = Finding("polling-wait", mode: null, []) with { Cost = own };
        Assert.Equal(
            own,
            new CostEstimator(Device(), new OperatingPoint(3.0, 1e6), BoardFacts.None).Estimate(finding).Cost
        );
    }

    private static CostEstimate Cost(
        OperatingPoint point,
        string rule,
        string? mode = null,
        params string[] subjects
    ) => new CostEstimator(Device(), point, Board).Estimate(Finding(rule, mode, subjects)).Cost;

    private static Finding Finding(string rule, string? mode, string[] subjects) =>
        new()
        {
            RuleId = rule,
            Level = Level.Warning,
            Certainty = Certainty.Proven,
            Subjects = [.. subjects],
            Message = "",
            Range = SourceRange.None,
            SleepMode = mode,
        };

    private static DeviceModel Device(bool withFigures = true) =>
        new()
        {
            Name = "made-up",
            Family = "made-up",
            Core = "avr",
            Packages = ["one"],
            Registers = [],
            Pins = [Pin("PB0", 0), Pin("PB1", 1)],
            SleepModes = [Mode("idle", 1), Mode("power-down", 2)],
            Sleep = new SleepControl(Condition.Always, null, null, []),
            Peripherals = [],
            Interrupts = [],
            ResetClockHertz = 4e6,
            SupplyCurrents = withFigures
                ?
                [
                    Row("active", 4e6, 3, 1700),
                    Row("active", 8e6, 3, 3700),
                    Row("active", 4e6, 5, 5000),
                    Row("idle", 4e6, 3, 300),
                    Row("idle", 8e6, 3, 700),
                    Row("power-down", null, 3, 0.1),
                    Row("power-down", null, 3, 4.2, "WDT"),
                ]
                : [],
            PinElectrics = new PinElectrics(20_000, 50_000, 1, Sheet),
            WakeUpTimes = withFigures
                ?
                [
                    new WakeUpTime(
                        ["idle"],
                        Condition.Always,
                        [new ClockCycles(null, null, 8)],
                        3,
                        null,
                        null,
                        null,
                        Sheet
                    ),
                    new WakeUpTime(["power-down"], Condition.Always, [], 60, 90, 16.5, null, Sheet),
                ]
                : [],
            Adders = withFigures ? [new CurrentAdder("ADC", 3, null, 200, Sheet)] : [],
        };

    private static Pin Pin(string name, int bit) =>
        new()
        {
            Name = name,
            Port = "B",
            Bit = bit,
            BondedIn = ["one"],
            Output = Condition.Never,
            OutputHigh = Condition.Never,
            PullUp = Condition.Never,
        };

    private static SleepMode Mode(string name, int depth) =>
        new()
        {
            Name = name,
            Depth = depth,
            Selected = Condition.Never,
        };

    private static SupplyCurrentRow Row(
        string mode,
        double? hertz,
        double volts,
        double typical,
        params string[] with
    ) => new(mode, null, hertz, volts, typical, null, [.. with], Sheet);
}
