using PowerLint.Analysis;
using PowerLint.Devices;
using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Prints the register state at every resting point for people: a table by peripheral.</summary>
public sealed class StateTextWriter(AnalysisResult result, ReportPaths paths, IAnsiConsole console)
{
    private readonly SourceLines _sources = new();
    private readonly RegisterGroups _groups = new(result.Device);

    // Each way of reaching a point apart: people ask what holds in this mode, not in all of them together.
    private IEnumerable<RestingPoint> Points =>
        result.RestingPoints.SelectMany(point => point.Contexts.IsEmpty ? [point] : point.Contexts);

    /// <summary>The image's name, where there are several; else null.</summary>
    public string? Image { get; init; }

    /// <summary>Prints every resting point.</summary>
    /// <param name="all">Whether registers that still hold their reset value are shown too.</param>
    public void Write(bool all)
    {
        WriteImage();
        if (result.RestingPoints.IsEmpty)
        {
            console.PrintLine("The CPU rests nowhere: no sleep instruction and no endless loop is reached.");
        }

        foreach (var point in Points)
        {
            WriteHeading(point);
            WriteRegisters(point.State, all);
            console.PrintLine();
        }
    }

    private void WriteImage()
    {
        if (Image is not null)
        {
            console.PrintLine($"Image {Image}", Styles.Heading);
        }
    }

    /// <summary>Prints, at every resting point, what bits hold and which writes decided it.</summary>
    public void Explain(FieldReference field)
    {
        ArgumentNullException.ThrowIfNull(field);
        WriteImage();
        foreach (var point in Points)
        {
            WriteHeading(point);
            console.PrintLine(
                $"  {field.Name} = {BitText.Show(point.State.Read(field), field.WidthBits)} "
                    + $"({field.Register.Name} {BitText.Show(point.State.Read(field.Register), field.Register.WidthBits)})"
            );
            WriteDecisions(point.State.DecisionsOf(field));
            console.PrintLine();
        }
    }

    private void WriteDecisions(IReadOnlyCollection<Decision> decisions)
    {
        if (decisions.Count == 0)
        {
            console.PrintLine("    decided by reset alone", Styles.Faint);
        }

        foreach (var decision in decisions)
        {
            var where = $"{paths.Show(decision.Range.File.Path)}:{decision.Range.Line}";
            var handler = decision.Handler is { } name ? $", in the handler {name}" : "";
            console.Print("    " + where, Styles.Place);
            console.PrintLine($" {decision.Function}(){handler}: {FlowText.Show(decision, result.Device, _sources)}");
            foreach (var call in decision.Calls)
            {
                console.PrintLine(
                    $"      called at {paths.Show(call.Range.File.Path)}:{call.Range.Line} in {call.Caller}()",
                    Styles.Faint
                );
            }
        }
    }

    private void WriteHeading(RestingPoint point)
    {
        var what = point.Kind == RestingKind.Sleep ? "sleep" : "endless loop, no sleep";
        console.Print($"{paths.Show(point.Range.File.Path)}:{point.Range.Line}", Styles.Heading);
        console.PrintLine($" {what} in {point.Function}(){Mode(point)}");
        foreach (var call in point.Calls)
        {
            console.PrintLine(
                $"  called at {paths.Show(call.Range.File.Path)}:{call.Range.Line} in {call.Caller}()",
                Styles.Faint
            );
        }

        if (!point.State.UnknownCallees.IsEmpty)
        {
            console.PrintLine(
                "  less certain: ran without being seen into: " + string.Join(", ", point.State.UnknownCallees),
                Styles.Faint
            );
        }
    }

    private string Mode(RestingPoint point)
    {
        if (point.Kind != RestingKind.Sleep)
        {
            return "";
        }

        var possible = result
            .Device.SleepModes.Where(mode => point.State.Evaluate(mode.Selected) != Tristate.No)
            .Select(mode => mode.Name)
            .ToArray();
        var modes = possible.Length == 0 ? "no sleep mode selected" : string.Join(" or ", possible);
        return point.SleepEnabled switch
        {
            Tristate.No => $": {modes}, but sleep is not enabled",
            Tristate.Maybe => $": {modes}, sleep perhaps not enabled",
            _ => $": {modes}",
        };
    }

    private void WriteRegisters(StateAtPoint state, bool all)
    {
        var rows = new List<RegisterRow>();
        foreach (var register in result.Device.Registers)
        {
            var bits = state.Read(register);
            if (all || DiffersFromReset(register, bits))
            {
                rows.Add(Row(register, bits, state));
            }
        }

        foreach (var (address, bits) in state.UnmodelledBytes)
        {
            rows.Add(new RegisterRow("not in the model", BitText.Address(address), BitText.Binary(bits, 8), "", ""));
        }

        if (rows.Count == 0)
        {
            console.PrintLine("  every register holds its reset value");
            return;
        }

        var name = rows.Max(row => row.Register.Length);
        var value = rows.Max(row => row.Value.Length);
        var fields = Math.Min(rows.Max(row => row.Fields.Length), 48);
        foreach (var group in rows.GroupBy(row => row.Group, StringComparer.Ordinal))
        {
            console.PrintLine("  " + group.Key, Styles.Heading);
            foreach (var row in group)
            {
                var line =
                    $"    {row.Register.PadRight(name)}  {row.Value.PadRight(value)}  {row.Fields.PadRight(fields)}  ";
                console.Print(row.DecidedBy.Length == 0 ? line.TrimEnd() : line);
                console.PrintLine(row.DecidedBy, Styles.Place);
            }
        }
    }

    private RegisterRow Row(Register register, KnownBits bits, StateAtPoint state)
    {
        var decisions = state.DecisionsOf(new FieldReference(register, 0, register.WidthBits, register.Name));
        var last = decisions.IsEmpty
            ? ""
            : $"{paths.Show(decisions[^1].Range.File.Path)}:{decisions[^1].Range.Line} {decisions[^1].Function}()";
        return new RegisterRow(
            _groups.Of(register),
            register.Name,
            BitText.Binary(bits, register.WidthBits),
            Fields(register, bits),
            last
        );
    }

    /// <summary>The fields that are not known to be 0, highest first.</summary>
    private static string Fields(Register register, KnownBits bits)
    {
        var shown = new List<string>();
        foreach (var field in Widest(register).OrderByDescending(field => field.LowBit))
        {
            var mask = BitText.Mask(field.WidthBits);
            var value = (bits.Value >> field.LowBit) & mask;
            if ((bits.Known >> field.LowBit & mask) != mask)
            {
                shown.Add(field.Name + "=?");
            }
            else if (value != 0)
            {
                var text = field.ValueNames.TryGetValue(value, out var known)
                    ? known
                    : value.ToString(System.Globalization.CultureInfo.InvariantCulture);
                shown.Add($"{field.Name}={text}");
            }
        }

        return string.Join(' ', shown);
    }

    /// <summary>Fields without those that are part of a wider one.</summary>
    private static IEnumerable<Field> Widest(Register register) =>
        register.Fields.Values.Where(field =>
            !register.Fields.Values.Any(other =>
                other.WidthBits > field.WidthBits
                && other.LowBit <= field.LowBit
                && other.LowBit + other.WidthBits >= field.LowBit + field.WidthBits
            )
        );

    /// <summary>Whether any bit that only the program changes is not known to hold its reset value.</summary>
    private static bool DiffersFromReset(Register register, KnownBits bits)
    {
        var steady = BitText.Mask(register.WidthBits) & ~register.HardwareChanged & register.ResetKnown;
        var lost = steady & ~bits.Known;
        var other = steady & bits.Known & (bits.Value ^ register.Reset);
        var learnt = BitText.Mask(register.WidthBits) & ~register.ResetKnown & bits.Known & ~register.HardwareChanged;
        return (lost | other | learnt) != 0;
    }

    private sealed record RegisterRow(string Group, string Register, string Value, string Fields, string DecidedBy);
}
