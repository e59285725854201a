using System.Globalization;
using PowerLint.Analysis;

namespace PowerLint.Testing;

/// <summary>An analysis' outcome as lines of text, to hold two runs against each other.</summary>
public static class AnalysisDigest
{
    /// <summary>What the run found: the registers at every resting point and who decided them, waits, lost writes, limits.</summary>
    public static IReadOnlyList<string> Lines(AnalysisResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var lines = new List<string>();
        foreach (var point in result.RestingPoints)
        {
            Add(point, "");
            foreach (var context in point.Contexts)
            {
                Add(context, "  ");
            }
        }

        lines.AddRange(
            result.BusyWaits.Select(wait =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"wait {wait.Range} {wait.Kind} {wait.Context} {wait.Seconds}"
                )
            )
        );
        lines.AddRange(
            result.PollingLoops.Select(poll => $"poll {poll.Range} {poll.Context} {poll.Register.Name} {poll.Mask:X}")
        );
        lines.AddRange(
            result.LostWrites.Select(lost => $"lost {lost.Decision.Range} {lost.Reason} {lost.Register.Name}")
        );
        lines.AddRange(result.Limits.Select(limit => $"limit {limit.Id} {limit.Message}"));
        return lines;

        void Add(RestingPoint point, string indent)
        {
            lines.Add(
                $"{indent}{point.Kind} {point.Range} {point.SleepEnabled} {point.InterruptsOn} {point.IsInEndlessLoop}"
            );
            foreach (var register in result.Device.Registers.Where(r => r.Kind != Devices.RegisterKind.Option))
            {
                var (all, steady) = (point.State.Read(register), point.SteadyState.Read(register));
                var whole = new Devices.FieldReference(register, 0, register.WidthBits, register.Name);
                var decided = point
                    .State.DecisionsOf(whole)
                    .Select(decision => $"{decision.Range} {decision.Before} {decision.After}");
                lines.Add($"{indent}  {register.Name} {all} {steady} by {string.Join(", ", decided)}");
            }
        }
    }
}
