using System.Globalization;

namespace PowerLint.Reports;

/// <summary>Writes currents for people.</summary>
public static class CurrentText
{
    /// <summary>Three digits with a unit that fits: <c>4.2 µA</c>, <c>1.35 mA</c>, <c>80 nA</c>.</summary>
    public static string Show(double microamps) =>
        Math.Abs(microamps) switch
        {
            0 => "0 µA",
            < 0.1 => Number(microamps * 1000) + " nA",
            < 1000 => Number(microamps) + " µA",
            _ => Number(microamps / 1000) + " mA",
        };

    private static string Number(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
