using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>
/// How C code in one source file writes bits of a register. A name is used only where its value, as the header defines it, is
/// the very bit or value that is meant; else there are numbers.
/// </summary>
internal sealed class BitSpelling
{
    // More names than this are no longer read; a mask says the same shorter.
    private const int MostNames = 6;

    private static readonly string[] MaskEndings = ["", "_bm", "_gm", "_Msk"];

    private readonly VisibleNames _names;
    private readonly bool _usesBitMacro;
    private readonly string _one;

    public BitSpelling(VisibleNames names)
    {
        _names = names;
        _usesBitMacro =
            names.IsFunctionMacro("_BV") && Count(@"\b_BV\s*\(") > Count(@"\(\s*\(?\s*(uint\w+_t\)\s*)?1[uUlL]*\s*<<");
        _one = Count(@"\b1[uU]\s*<<") > Count(@"\b1\s*<<") ? "1u" : "1";
    }

    /// <summary>Whether the file writes masks with <c>_BV()</c> rather than with shifts.</summary>
    public bool UsesBitMacro => _usesBitMacro;

    /// <summary>The bits of a register that are set in a mask, as an expression that can be an operand of <c>|</c>.</summary>
    public string Mask(Register register, ulong mask)
    {
        var whole = register.Fields.Values.Where(field => FieldMask(field) == mask && field.WidthBits > 1);
        foreach (var field in whole.OrderBy(field => field.Name, StringComparer.Ordinal))
        {
            if (MaskName(register, field) is { } name)
            {
                return name;
            }
        }

        var bits = Enumerable.Range(0, register.WidthBits).Where(bit => (mask >> bit & 1) != 0).ToArray();
        var named = bits.Select(bit => Bit(register, bit)).ToArray();
        return named.Length <= MostNames && named.All(name => name is not null)
            ? string.Join(" | ", named)
            : Number(mask, register, bits);
    }

    /// <summary>A value of a field, in place: <c>PORT_OPC_PULLUP_gc</c>, <c>(1 &lt;&lt; SM1)</c>.</summary>
    public string Value(FieldReference field, ulong value)
    {
        var placed = value << field.LowBit;
        if (
            field.WidthBits > 1
            && NamedField(field) is { } named
            && ValueName(field.Register, named, placed) is { } name
        )
        {
            return name;
        }

        return Mask(field.Register, placed);
    }

    /// <summary>
    /// A name that differs from another one in its end only and stands for another value of the same field:
    /// <c>SLEEP_SMODE_PDOWN_gc</c> for <c>SLEEP_SMODE_IDLE_gc</c>.
    /// </summary>
    public string? Sibling(string name, ulong placed)
    {
        for (var cut = name.LastIndexOf('_'); cut > 0; cut = cut > 1 ? name.LastIndexOf('_', cut - 1) : 0)
        {
            var beginning = name[..(cut + 1)];
            var found = _names
                .Constants.Where(other =>
                    other.StartsWith(beginning, StringComparison.Ordinal)
                    && _names.ValueOf(other) == placed
                    && other.EndsWith("_gc", StringComparison.Ordinal) == name.EndsWith("_gc", StringComparison.Ordinal)
                )
                .OrderBy(other => other.Length)
                .ThenBy(other => other, StringComparer.Ordinal)
                .FirstOrDefault();
            // A beginning of one short word says nothing: any other register's names may share it.
            if (found is not null && beginning.Count(letter => letter == '_') > 1)
            {
                return found;
            }
        }

        return null;
    }

    private int Count(string pattern) =>
        Regex.Count(_names.OwnText, pattern, RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));

    private string? Bit(Register register, int bit)
    {
        foreach (
            var field in register
                .Fields.Values.Where(field => field.WidthBits == 1 && field.LowBit == bit)
                .OrderBy(field => field.Name, StringComparer.Ordinal)
        )
        {
            // A bit's number and its mask are never equal: the value tells which of the two the name is.
            if (_names.ValueOf(field.Name) == (ulong)bit)
            {
                return _usesBitMacro ? $"_BV({field.Name})" : $"({One(bit)} << {field.Name})";
            }

            if (MaskName(register, field) is { } name)
            {
                return name;
            }
        }

        return null;
    }

    private string? MaskName(Register register, Field field) =>
        Names(register, field.Name, MaskEndings).FirstOrDefault(name => _names.ValueOf(name) == FieldMask(field));

    private string? ValueName(Register register, Field field, ulong placed)
    {
        var word = field.ValueNames.GetValueOrDefault(placed >> field.LowBit);
        return Prefixes(register)
            .SelectMany(prefix =>
                _names
                    .Constants.Where(name =>
                        name.StartsWith($"{prefix}_{field.Name}_", StringComparison.Ordinal)
                        && name.EndsWith("_gc", StringComparison.Ordinal)
                        && _names.ValueOf(name) == placed
                    )
                    .OrderBy(name => word is null || !name.Contains(word, StringComparison.OrdinalIgnoreCase))
                    .ThenBy(name => name.Length)
                    .ThenBy(name => name, StringComparer.Ordinal)
            )
            .FirstOrDefault();
    }

    // A field that would be called like a type has an underscore behind its name, its mask has not.
    private static IEnumerable<string> Names(Register register, string field, string[] endings) =>
        Prefixes(register)
            .Select(prefix => prefix + "_" + field.TrimEnd('_'))
            .Prepend(field)
            .SelectMany(name => endings.Select(ending => name + ending));

    // ADCA.CTRLA: ADCA_CTRLA, ADC_CTRLA, ADCA, ADC: headers name bits by block type, or by block and register.
    private static IEnumerable<string> Prefixes(Register register)
    {
        var parts = register.Name.Split('.');
        if (parts.Length < 2)
        {
            yield break;
        }

        for (var length = parts[0].Length; length > 1; length--)
        {
            yield return $"{parts[0][..length]}_{parts[1]}";
            yield return parts[0][..length];
        }
    }

    private Field? NamedField(FieldReference field) =>
        field
            .Register.Fields.Values.Where(other => other.LowBit == field.LowBit && other.WidthBits == field.WidthBits)
            .OrderBy(other => other.Name, StringComparer.Ordinal)
            .FirstOrDefault();

    private static ulong FieldMask(Field field) => ((1UL << field.WidthBits) - 1) << field.LowBit;

    private string Number(ulong mask, Register register, int[] bits) =>
        bits.Length == 1
            ? $"({One(bits[0])} << {bits[0].ToString(CultureInfo.InvariantCulture)})"
            : "0x"
                + mask.ToString("X" + (register.WidthBits / 4), CultureInfo.InvariantCulture)
                + (register.WidthBits > 16 ? "u" : "");

    // An int of 16 bits holds bit 15 in its sign, one of 32 bits bit 31.
    private string One(int bit) =>
        bit >= 16 ? "1UL"
        : bit == 15 ? "1u"
        : _one;
}
