using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.OracleTests;

/// <summary>Holds the <c>// state:</c> marks of a program against the simulator and against the analysis.</summary>
internal static class StateMarkChecks
{
    /// <summary>What is wrong, each a line for people.</summary>
    public static IEnumerable<string> Faults(
        Firmware firmware,
        AnalysisResult analysis,
        SimulatorRun run,
        IReadOnlyDictionary<int, SourceLine[]> lines
    )
    {
        var points = analysis.RestingPoints;
        foreach (var mark in firmware.Files.SelectMany(StateMark.In))
        {
            if (Find(analysis.Device, mark.Name) is not { } field)
            {
                yield return $"{mark.Place}: the model has no {mark.Name}";
                continue;
            }

            // A mark on a whole register is about what the program wrote there, not about its flags.
            var register = field.Register;
            var own = ~(register.HardwareChanged | register.WriteOneToClear);
            var known = mark.Known & ((field.Mask & own) >> field.LowBit);
            var visits = run.Visits.Where(visit => lines[visit.Address].Contains(mark.Place)).ToArray();
            if (visits.Length == 0)
            {
                yield return $"{mark.Place}: the simulator never slept here";
            }

            foreach (var visit in visits)
            {
                var actual = visit.Read(register.Address, register.WidthBits) >> field.LowBit;
                if (((actual ^ mark.Value) & known) is not (null or 0))
                {
                    yield return Text(mark, $"simulated 0x{actual:x}");
                    break;
                }
            }

            var here = StateComparison.At(points, [mark.Place]).ToArray();
            if (here.Length == 0)
            {
                yield return $"{mark.Place}: the analysis has no resting point here";
            }

            foreach (var point in here)
            {
                var bits = point.State.Read(field);
                if (((bits.Value ^ mark.Value) & known) != 0 || (bits.Known & known) != known)
                {
                    yield return Text(mark, $"analysed {Bits(bits, field.WidthBits)}");
                }
            }
        }
    }

    private static string Text(StateMark mark, FormattableString found) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{mark.Place}: {mark.Name} should be 0x{mark.Value:x} where 0x{mark.Known & 0xffff:x} is set, {found.ToString(CultureInfo.InvariantCulture)}"
        );

    private static string Bits(KnownBits bits, int width) =>
        "0b"
        + string.Concat(
            Enumerable
                .Range(0, width)
                .Reverse()
                .Select(bit =>
                    (bits.Known >> bit & 1) == 0 ? "?"
                    : (bits.Value >> bit & 1) == 1 ? "1"
                    : "0"
                )
        );

    private static FieldReference? Find(DeviceModel model, string name)
    {
        if (model.Registers.FirstOrDefault(r => Same(r.Name, name)) is { } whole)
        {
            return new FieldReference(whole, 0, whole.WidthBits, name);
        }

        var dot = name.LastIndexOf('.');
        return
            dot > 0
            && model.Registers.FirstOrDefault(r => Same(r.Name, name[..dot])) is { } register
            && register.Fields.TryGetValue(name[(dot + 1)..], out var field)
            ? new FieldReference(register, field.LowBit, field.WidthBits, name)
            : null;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.Ordinal);
}
