using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Devices;
using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Prints what the model says of a part: what an engineer would page through the datasheet for.</summary>
public sealed class DeviceTextWriter(DeviceModel device, IAnsiConsole console)
{
    private const int MembersPerLine = 8;

    /// <summary>Prints which parts there are models of.</summary>
    public static void WriteList(
        IReadOnlyList<(string Family, ImmutableArray<string> Members)> families,
        IAnsiConsole console
    )
    {
        ArgumentNullException.ThrowIfNull(families);
        ArgumentNullException.ThrowIfNull(console);
        foreach (var (family, members) in families)
        {
            console.PrintLine(family, Styles.Heading);
            foreach (var row in members.Chunk(MembersPerLine))
            {
                console.PrintLine("  " + string.Join(' ', row));
            }
        }
    }

    /// <summary>Prints it all.</summary>
    public void Write()
    {
        console.Print(device.Name, Styles.Heading);
        console.PrintLine(
            $" ({device.Family}, {device.Core})"
                + (device.ResetClockHertz > 0 ? $", starts at {Frequency(device.ResetClockHertz)}" : "")
        );
        WritePins();
        WriteModes();
        WritePeripherals();
        WriteWakeSources();
        WriteRegulators();
        WriteCurrents();
        WriteWakeUpTimes();
        WriteSources();
    }

    private void WritePins()
    {
        Head("Pins by port and package");
        string[] headings = ["port", "pads", .. device.Packages];
        var table = new TextTable(2, headings);
        foreach (var port in device.Pins.GroupBy(pin => pin.Port, StringComparer.Ordinal))
        {
            string[] cells = [port.Key, Names(port), .. device.Packages.Select(package => Bonded([.. port], package))];
            table.Add(cells);
        }

        table.Print(console);
    }

    private static string Bonded(ImmutableArray<Pin> pins, string package)
    {
        var missing = pins.Where(pin => !pin.BondedIn.Contains(package, StringComparer.Ordinal)).ToArray();
        if (missing.Length == 0)
        {
            return "all";
        }

        return missing.Length == pins.Length ? "none" : "all but " + Names(missing);
    }

    private static string Names(IEnumerable<Pin> pins) => string.Join(' ', pins.Select(pin => pin.Name));

    private void WriteModes()
    {
        Head("Sleep modes, shallowest first");
        var table = new TextTable(2, "mode", "selected by", "notes");
        foreach (var mode in device.SleepModes)
        {
            var notes = new List<string>();
            if (!mode.Resumes)
            {
                notes.Add("ends in a reset");
            }

            if (mode.CutsInputBuffers)
            {
                notes.Add("cuts digital input buffers");
            }

            table.Add(mode.Name, mode.Selected.ToString(), string.Join(", ", notes));
        }

        table.Print(console);
    }

    private void WritePeripherals()
    {
        Head("Peripherals: * works there, - draws current but does not work there, blank stands still");
        string[] headings = ["peripheral", .. device.SleepModes.Select(mode => mode.Name), "on when"];
        var table = new TextTable(2, headings);
        foreach (var peripheral in device.Peripherals)
        {
            string[] cells =
            [
                peripheral.Name,
                .. device.SleepModes.Select(mode => Work(peripheral, mode.Name)),
                peripheral.On.ToString(),
            ];
            table.Add(cells);
        }

        table.Print(console);
        var conditions = device
            .Peripherals.SelectMany(peripheral =>
                peripheral
                    .WorksIn.Where(works => !IsAlways(works.When))
                    .Select(works =>
                        $"{peripheral.Name} works in {string.Join(", ", works.Modes)} only when {works.When}"
                    )
            )
            .ToArray();
        foreach (var condition in conditions)
        {
            console.PrintLine("  " + condition, Styles.Faint);
        }
    }

    private static string Work(Peripheral peripheral, string mode)
    {
        if (In(peripheral.WorksIn, mode) is { } works)
        {
            return IsAlways(works) ? "*" : "(*)";
        }

        return In(peripheral.DrawsIn, mode) is not null ? "-" : "";
    }

    private void WriteWakeSources()
    {
        Head("What wakes the CPU: * from there, (*) under a condition");
        string[] headings = ["interrupt", "peripheral", .. device.SleepModes.Select(mode => mode.Name), "enabled by"];
        var table = new TextTable(2, headings);
        foreach (var interrupt in device.Interrupts.Where(interrupt => !interrupt.Wakes.IsEmpty))
        {
            string[] cells =
            [
                interrupt.Name,
                interrupt.Peripheral ?? "",
                .. device.SleepModes.Select(mode =>
                    In(interrupt.Wakes, mode.Name) is not { } when ? ""
                    : IsAlways(when) ? "*"
                    : "(*)"
                ),
                interrupt.Enabled.ToString(),
            ];
            table.Add(cells);
        }

        table.Print(console);
    }

    private void WriteRegulators()
    {
        if (device.Regulators.IsEmpty)
        {
            return;
        }

        Head("Regulators: what to select before sleeping");
        var table = new TextTable(2, "regulator", "in", "low power when", "full power needed by", "on the board");
        foreach (var regulator in device.Regulators)
        {
            table.Add(
                regulator.Name,
                Listed(regulator.Modes.Select(modes => Under(string.Join(", ", modes.Modes), modes.When))),
                regulator.LowPower.ToString(),
                Listed(regulator.NeededBy.Select(consumer => Under(consumer.Name, consumer.When))),
                regulator.BoardNeeds ?? ""
            );
        }

        table.Print(console);

        static string Listed(IEnumerable<string> items) => string.Join(", ", items);
    }

    private static string Under(string what, Condition when) => IsAlways(when) ? what : $"{what} when {when}";

    private void WriteCurrents()
    {
        Head("Supply current");
        if (device.SupplyCurrents.IsEmpty && device.Adders.IsEmpty)
        {
            console.PrintLine("  the model holds no figures");
        }

        var table = new TextTable(2, "mode", "with", "clock", "supply", "typical", "maximum", "source");
        foreach (var row in device.SupplyCurrents)
        {
            table.Add(
                row.Mode,
                string.Join(", ", row.With),
                row.Hertz is { } hertz ? Frequency(hertz) : row.ClockSource ?? "",
                Volts(row.SupplyVolts),
                CurrentText.Show(row.TypicalMicroamps),
                row.MaximumMicroamps is { } maximum ? CurrentText.Show(maximum) : "",
                row.Source.ToString()
            );
        }

        table.Print(console);
        var adders = new TextTable(2, "adds", "clock", "supply", "typical", "source");
        foreach (var adder in device.Adders)
        {
            adders.Add(
                adder.Name,
                adder.Hertz is { } hertz ? Frequency(hertz) : "",
                Volts(adder.SupplyVolts),
                CurrentText.Show(adder.TypicalMicroamps),
                adder.Source.ToString()
            );
        }

        adders.Print(console);
    }

    private void WriteWakeUpTimes()
    {
        Head(
            "Wake-up time, from the event until the CPU runs; of a mode's rows, the first whose condition holds counts"
        );
        if (device.WakeUpTimes.IsEmpty)
        {
            console.PrintLine("  the model holds no figures");
            return;
        }

        var table = new TextTable(2, "mode", "time", "charge", "supply", "when", "source");
        foreach (var row in device.WakeUpTimes)
        {
            table.Add(
                string.Join(", ", row.Modes),
                row.ToString(),
                row.TypicalNanocoulombs is { } charge
                    ? charge.ToString("0.###", CultureInfo.InvariantCulture) + " nC"
                    : "",
                row.SupplyVolts is { } volts ? Volts(volts) : "",
                IsAlways(row.When) ? "" : row.When.ToString(),
                row.Source.ToString()
            );
        }

        table.Print(console);
    }

    private void WriteSources()
    {
        if (device.Sources.IsEmpty)
        {
            return;
        }

        Head("Sources; where they differ from this, the datasheet is right");
        foreach (var source in device.Sources)
        {
            console.PrintLine("  " + source);
        }
    }

    private void Head(string text)
    {
        console.PrintLine();
        console.PrintLine(text, Styles.Heading);
    }

    private static Condition? In(ImmutableArray<ModesWhen> modes, string mode) =>
        modes.FirstOrDefault(entry => entry.Modes.Contains(mode, StringComparer.Ordinal))?.When;

    private static bool IsAlways(Condition condition) => condition.Alternatives.Any(parts => parts.IsEmpty);

    private static string Volts(double volts) => volts.ToString("0.0##", CultureInfo.InvariantCulture) + " V";

    private static string Frequency(double hertz) =>
        hertz switch
        {
            >= 1e6 => (hertz / 1e6).ToString("0.####", CultureInfo.InvariantCulture) + " MHz",
            >= 1e3 => (hertz / 1e3).ToString("0.####", CultureInfo.InvariantCulture) + " kHz",
            _ => hertz.ToString("0.####", CultureInfo.InvariantCulture) + " Hz",
        };
}
