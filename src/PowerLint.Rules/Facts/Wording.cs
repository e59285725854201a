using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>How messages put things.</summary>
internal static class Wording
{
    /// <summary><c>PB0</c>; <c>PB0 and PB1</c>; <c>PB0, PB1 and PB2</c>.</summary>
    public static string List(IReadOnlyList<string> items) =>
        items.Count < 2 ? string.Concat(items) : string.Join(", ", items.SkipLast(1)) + " and " + items[^1];

    /// <summary>The form of a word that goes with a number of things.</summary>
    public static string Number(int count, string one, string many) => count == 1 ? one : many;

    /// <summary>A register's bits: <c>0b??01_1111</c>, a question mark where a bit can be either.</summary>
    public static string Bits(KnownBits bits, int widthBits)
    {
        if (widthBits > 16 && bits.Knows((widthBits >= 64 ? 0 : 1UL << widthBits) - 1))
        {
            return "0x" + bits.Value.ToString("X" + (widthBits / 4), CultureInfo.InvariantCulture);
        }

        var text = new StringBuilder("0b");
        for (var bit = widthBits - 1; bit >= 0; bit--)
        {
            text.Append(
                (bits.Known >> bit & 1) == 0 ? '?'
                : (bits.Value >> bit & 1) == 0 ? '0'
                : '1'
            );
            if (bit % 4 == 0 && bit > 0)
            {
                text.Append('_');
            }
        }

        return text.ToString();
    }

    /// <summary>The registers of some fields with what they hold: <c>DDRB = 0b0010_0000, PORTB = 0b0000_0000</c>.</summary>
    public static string Registers(StateAtPoint state, IEnumerable<FieldReference> fields)
    {
        var registers = fields
            .Select(field => field.Register)
            .Where(register => register.Kind != RegisterKind.Option)
            .Distinct()
            .ToArray();
        const int most = 4;
        var text = string.Join(
            ", ",
            registers
                .Take(most)
                .Select(register => $"{register.Name} = {Bits(state.Read(register), register.WidthBits)}")
        );
        return registers.Length > most ? text + ", …" : text;
    }

    /// <summary>Fields with what they hold: <c>ADCSRA.ADEN = 1</c>.</summary>
    public static string Fields(StateAtPoint state, Condition condition) =>
        string.Join(
            ", ",
            condition
                .Fields.Where(field => field.Register.Kind != RegisterKind.Option)
                .Select(field => $"{field.Name} = {FieldValue(state.Read(field), field.WidthBits)}")
        );

    /// <summary>What to write: <c>ADCSRA.ADEN = 0</c>.</summary>
    public static string Writes(ImmutableArray<FieldCondition> writes) =>
        string.Join(
            ", ",
            writes.Select(write =>
                string.Create(CultureInfo.InvariantCulture, $"{write.Field.Name} = {write.Values[0]}")
            )
        );

    /// <summary>A time: <c>20 ms</c>, <c>1.5 s</c>.</summary>
    public static string Time(double seconds) =>
        seconds switch
        {
            >= 1 => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.###} s"),
            >= 1e-3 => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e3:0.###} ms"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{seconds * 1e6:0.###} µs"),
        };

    /// <summary>A frequency: <c>8 MHz</c>, <c>32.768 kHz</c>.</summary>
    public static string Frequency(double hertz) =>
        hertz switch
        {
            >= 1e6 => string.Create(CultureInfo.InvariantCulture, $"{hertz / 1e6:0.######} MHz"),
            >= 1e3 => string.Create(CultureInfo.InvariantCulture, $"{hertz / 1e3:0.###} kHz"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{hertz:0.###} Hz"),
        };

    /// <summary>Where the CPU rests: <c>in power-down</c>, <c>while the endless loop runs</c>.</summary>
    public static string Where(PointFacts point) =>
        point switch
        {
            { Point.Kind: RestingKind.EndlessLoop } => "while the endless loop runs",
            { ModeName: { } mode } => "in " + mode,
            { Sleeps: true } => "in sleep",
            _ => "at a sleep instruction that does nothing",
        };

    /// <summary>A sentence's end for a finding that is not proven.</summary>
    public static string Doubt(Certainty certainty, PointFacts point) =>
        certainty != Certainty.Possible ? ""
        : point.IsTainted
            ? $" {List([.. point.State.UnknownCallees.Take(3)])} could change this: the analysis cannot look inside."
        : " This depends on the path that the program takes.";

    private static string FieldValue(KnownBits bits, int widthBits) =>
        bits.Knows(widthBits >= 64 ? ulong.MaxValue : (1UL << widthBits) - 1)
            ? bits.Value.ToString(CultureInfo.InvariantCulture)
            : Bits(bits, widthBits);
}
