using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Reports;

/// <summary>Says what a deciding write did: <c>DDRB 0x00 → 0x20: DDRB |= 1 &lt;&lt; 5</c>.</summary>
public static class FlowText
{
    /// <summary>The register, its value before and after, and the expression as written.</summary>
    public static string Show(Decision decision, DeviceModel device, SourceLines sources)
    {
        ArgumentNullException.ThrowIfNull(decision);
        ArgumentNullException.ThrowIfNull(sources);
        var change =
            $"{BitText.RegisterAt(device, decision.Address)} {BitText.Show(decision.Before, decision.WidthBits)} → "
            + BitText.Show(decision.After, decision.WidthBits);
        return sources.Quote(decision.Range) is { } quote ? $"{change}: {quote}" : change;
    }
}
