using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Devices;

namespace PowerLint.Currents;

/// <summary>A current with where it comes from.</summary>
/// <param name="Microamps">The current.</param>
/// <param name="Basis">What was taken and how, for people.</param>
/// <param name="Sources">Where the figures stand.</param>
public sealed record SupplyFigure(double Microamps, string Basis, ImmutableArray<Citation> Sources)
{
    /// <summary>This figure less another, never below zero.</summary>
    public SupplyFigure Less(SupplyFigure other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new SupplyFigure(
            Math.Max(0, Microamps - other.Microamps),
            $"{Basis}, less {other.Basis}",
            Sources.AddRange(other.Sources)
        );
    }
}

/// <summary>Looks supply currents up in a model's datasheet rows.</summary>
public sealed class SupplyFigures(DeviceModel device, OperatingPoint point)
{
    private const string Active = "active";

    /// <summary>The clock that active and idle currents are taken at.</summary>
    private double Hertz => point.CpuHertz ?? device.ResetClockHertz;

    /// <summary>The current of the running CPU, or null where the model has no figure.</summary>
    public SupplyFigure? Running() => InMode(Active);

    /// <summary>The current in a mode with nothing extra switched on, or null where the model has no figure.</summary>
    public SupplyFigure? InMode(string mode) => Find(mode, with: null);

    /// <summary>What a peripheral, oscillator or output adds in a mode, or null where the model has no figure.</summary>
    public SupplyFigure? Added(string name, string? mode)
    {
        var adder = device
            .Adders.Where(adder => string.Equals(adder.Name, name, StringComparison.Ordinal))
            .OrderBy(adder => Math.Abs(adder.SupplyVolts - point.Volts))
            .ThenBy(adder => Math.Abs((adder.Hertz ?? Hertz) - Hertz))
            .FirstOrDefault();
        if (adder is not null)
        {
            return new SupplyFigure(
                adder.TypicalMicroamps,
                $"{name} adds {Number(adder.TypicalMicroamps)} µA at {Number(adder.SupplyVolts)} V",
                [adder.Source]
            );
        }

        // Some datasheets give no adder but the mode's current with and without the block.
        return mode is not null && Find(mode, name) is { } with && InMode(mode) is { } without
            ? with.Less(without)
            : null;
    }

    private SupplyFigure? Find(string mode, string? with)
    {
        var rows = device
            .SupplyCurrents.Where(row =>
                string.Equals(row.Mode, mode, StringComparison.Ordinal)
                && (
                    with is null
                        ? row.With.IsEmpty
                        : row.With.Length == 1 && string.Equals(row.With[0], with, StringComparison.Ordinal)
                )
            )
            .ToArray();
        if (rows.Length == 0)
        {
            return null;
        }

        var volts = rows.MinBy(row => Math.Abs(row.SupplyVolts - point.Volts))!.SupplyVolts;
        return AtClock([.. rows.Where(row => Same(row.SupplyVolts, volts)).OrderBy(row => row.Hertz ?? 0)]);
    }

    /// <summary>
    /// The figure at the CPU clock: a row for that clock, else a straight line between the rows on both sides, else the nearest
    /// row in proportion to the clock. A row without a clock holds for all.
    /// </summary>
    private SupplyFigure AtClock(SupplyCurrentRow[] rows)
    {
        if (rows.FirstOrDefault(row => row.Hertz is null || Same(row.Hertz.Value, Hertz)) is { } exact)
        {
            return new SupplyFigure(exact.TypicalMicroamps, Describe(exact), [exact.Source]);
        }

        var below = rows.LastOrDefault(row => row.Hertz < Hertz);
        var above = rows.FirstOrDefault(row => row.Hertz > Hertz);
        if (below is not null && above is not null)
        {
            var share = (Hertz - below.Hertz!.Value) / (above.Hertz!.Value - below.Hertz.Value);
            return new SupplyFigure(
                below.TypicalMicroamps + (share * (above.TypicalMicroamps - below.TypicalMicroamps)),
                $"between {Describe(below)} and {Describe(above)}, by the clock",
                [below.Source, above.Source]
            );
        }

        var nearest = below ?? above!;
        return Hertz > 0
            ? new SupplyFigure(
                nearest.TypicalMicroamps * Hertz / nearest.Hertz!.Value,
                $"in proportion to the clock from {Describe(nearest)}",
                [nearest.Source]
            )
            : new SupplyFigure(nearest.TypicalMicroamps, Describe(nearest), [nearest.Source]);
    }

    private static string Describe(SupplyCurrentRow row)
    {
        var clock = row.Hertz is { } hertz ? $" and {Number(hertz / 1e6)} MHz" : "";
        var with = row.With.IsEmpty ? "" : $" with {string.Join(", ", row.With)}";
        return $"{row.Mode}{with} {Number(row.TypicalMicroamps)} µA at {Number(row.SupplyVolts)} V{clock}";
    }

    private static bool Same(double left, double right) => Math.Abs(left - right) <= 1e-6 * Math.Max(1, Math.Abs(left));

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
