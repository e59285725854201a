namespace PowerLint.Currents;

/// <summary>How the part is run, as far as currents depend on it.</summary>
/// <param name="SupplyVolts">The supply, or null where nobody said.</param>
/// <param name="CpuHertz">The CPU clock, or null where nobody said.</param>
public sealed record OperatingPoint(double? SupplyVolts, double? CpuHertz)
{
    /// <summary>The supply that figures are taken at where nobody said: that of a fresh lithium coin cell or two alkaline cells.</summary>
    public const double AssumedSupplyVolts = 3.0;

    /// <summary>The supply to look figures up at.</summary>
    public double Volts => SupplyVolts ?? AssumedSupplyVolts;
}
