using System.Globalization;
using System.Numerics;
using System.Text;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.OracleTests;

/// <summary>What holding an analysis against a simulation found.</summary>
/// <param name="Faults">Contradictions and missing resting points, each a line for people.</param>
/// <param name="KnownBits">Configuration bits known, over all resting points.</param>
/// <param name="TotalBits">Configuration bits, over all resting points.</param>
/// <param name="Visits">Sleep instructions simulated.</param>
/// <param name="Points">Sleep points that the analysis found.</param>
internal sealed record Agreement(
    IReadOnlyList<string> Faults,
    int KnownBits,
    int TotalBits,
    int Visits,
    int Points,
    IReadOnlyList<string> Unknown
)
{
    /// <summary>Share of configuration bits known, from 0 to 1.</summary>
    public double Known => TotalBits == 0 ? 1 : (double)KnownBits / TotalBits;
}

/// <summary>Holds the states of an analysis against those that a simulator reached.</summary>
internal static class StateComparison
{
    /// <summary>
    /// Registers to compare: those whose bits stay as the program wrote them. Flags, data and counters change by themselves.
    /// </summary>
    public static IEnumerable<Register> Compared(DeviceModel model) =>
        model.Registers.Where(register =>
            register.Kind == RegisterKind.Configuration
            && register.Address >= SleepVisit.FirstRegister
            && register.Address <= 0xff
        );

    /// <summary>Compares.</summary>
    /// <param name="analysis">Our result.</param>
    /// <param name="run">The simulation.</param>
    /// <param name="lines">Where the instructions come from.</param>
    public static Agreement Compare(
        AnalysisResult analysis,
        SimulatorRun run,
        IReadOnlyDictionary<int, SourceLine[]> lines
    )
    {
        var faults = new List<string>();
        if (!run.IsHealthy)
        {
            faults.Add($"the simulation ended with {run.End}");
        }

        var points = analysis.RestingPoints.Where(point => point.Kind == RestingKind.Sleep).ToArray();
        var registers = Compared(analysis.Device).ToArray();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var visit in run.Visits)
        {
            var candidates = At(points, lines[visit.Address]).ToArray();
            if (candidates.Length == 0)
            {
                var place = string.Join(" in ", lines[visit.Address]);
                if (seen.Add(place))
                {
                    faults.Add($"{place}: the simulator slept here, the analysis has no resting point");
                }

                continue;
            }

            // The instruction does not tell the calls that led to it: one of the points on its line must agree.
            var best = candidates
                .Select(point => Contradictions(point, registers, visit).ToArray())
                .MinBy(contradictions => contradictions.Length)!;
            faults.AddRange(best.Where(seen.Add));
        }

        var (known, total, unknown) = Count(points, registers);
        return new Agreement(faults, known, total, run.Visits.Count, points.Length, unknown);
    }

    /// <summary>The points on the line of an instruction: the innermost line that has any.</summary>
    public static IEnumerable<RestingPoint> At(IReadOnlyList<RestingPoint> points, IEnumerable<SourceLine> frames) =>
        frames
            .Select(frame =>
                points.Where(point =>
                    string.Equals(Path.GetFullPath(point.Range.File.Path), frame.File, StringComparison.Ordinal)
                    && point.Range.Start.Line <= frame.Line
                    && frame.Line <= point.Range.End.Line
                )
            )
            .FirstOrDefault(found => found.Any())
        ?? [];

    private static IEnumerable<string> Contradictions(RestingPoint point, Register[] registers, SleepVisit visit)
    {
        foreach (var register in registers)
        {
            if (visit.Read(register.Address, register.WidthBits) is not { } actual)
            {
                continue;
            }

            var bits = point.State.Read(register);
            var wrong = (actual ^ bits.Value) & bits.Known & Mask(register);
            while (wrong != 0)
            {
                var bit = BitOperations.TrailingZeroCount(wrong);
                wrong &= wrong - 1;
                yield return Describe(point, register, bit, actual);
            }
        }

        if (
            point.SleepEnabled is Tristate.Yes or Tristate.No
            && point.SleepEnabled == Tristate.Yes != visit.SleepEnabled
        )
        {
            yield return $"{point.Range}: sleep enabled is {point.SleepEnabled}, simulated {visit.SleepEnabled}";
        }

        if (
            point.InterruptsOn is Tristate.Yes or Tristate.No
            && point.InterruptsOn == Tristate.Yes != visit.InterruptsOn
        )
        {
            yield return $"{point.Range}: interrupts on is {point.InterruptsOn}, simulated {visit.InterruptsOn}";
        }
    }

    private static string Describe(RestingPoint point, Register register, int bit, ulong actual)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"{point.Range}: {register.Name} bit {bit} is known to be {(actual >> bit & 1) ^ 1}, simulated {actual >> bit & 1} (0x{actual:x2})"
        );
        var decisions = point.State.DecisionsOf(
            new FieldReference(register, bit, 1, string.Create(CultureInfo.InvariantCulture, $"{register.Name}[{bit}]"))
        );
        foreach (var decision in decisions)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n    decided by {decision.Range} in {decision.Function}()");
        }

        return text.ToString();
    }

    private static (int Known, int Total, IReadOnlyList<string> Unknown) Count(
        RestingPoint[] points,
        Register[] registers
    )
    {
        var (known, total) = (0, 0);
        var unknown = new List<string>();
        foreach (var point in points)
        {
            foreach (var register in registers)
            {
                // Bits that hardware changes are no configuration, whatever register they stand in.
                var mask = Mask(register) & ~register.HardwareChanged & ~register.WriteOneToClear;
                var open = mask & ~point.State.Read(register).Known;
                total += BitOperations.PopCount(mask);
                known += BitOperations.PopCount(mask & ~open);
                if (open != 0)
                {
                    unknown.Add(
                        string.Create(CultureInfo.InvariantCulture, $"{point.Range.Line}:{register.Name}&0x{open:x}")
                    );
                }
            }
        }

        return (known, total, unknown);
    }

    private static ulong Mask(Register register) => ulong.MaxValue >> (64 - register.WidthBits);
}
