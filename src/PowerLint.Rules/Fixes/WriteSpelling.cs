using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>Writes register fields as C statements, one a register, in the words of one source file.</summary>
internal sealed class WriteSpelling(VisibleNames names)
{
    private readonly RegisterSpelling _registers = new(names);
    private readonly BitSpelling _bits = new(names);

    /// <summary>How bits are written.</summary>
    public BitSpelling Bits => _bits;

    /// <summary>The statements, or null where a register has no name in the file.</summary>
    public IReadOnlyList<string>? Statements(ImmutableArray<FieldCondition> writes)
    {
        var statements = new List<string>();
        foreach (var register in writes.GroupBy(write => write.Field.Register))
        {
            if (_registers.Of(register.Key) is not { } name)
            {
                return null;
            }

            statements.Add(Statement(name, register.Key, [.. register]));
        }

        return statements;
    }

    /// <summary>Code that a device model gives, in the way that the file writes masks.</summary>
    public string? Given(string code)
    {
        var words = Regex.Matches(code, @"\b[A-Za-z_]\w*", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        if (
            words.Any(word =>
                !names.IsMacro(word.Value)
                && names.ValueOf(word.Value) is null
                && !names.IsMember(word.Value)
                && !names.IsDeclared(word.Value)
            )
        )
        {
            return null;
        }

        return _bits.UsesBitMacro
            ? Regex.Replace(
                code,
                @"\(1 << (?<name>\w+)\)",
                "_BV(${name})",
                RegexOptions.ExplicitCapture,
                TimeSpan.FromSeconds(1)
            )
            : code;
    }

    private string Statement(string name, Register register, FieldCondition[] writes)
    {
        var all = writes.Aggregate(0UL, (mask, write) => mask | write.Field.Mask);
        var set = writes.Aggregate(0UL, (value, write) => value | (write.Values[0] << write.Field.LowBit));
        if (set == 0)
        {
            return $"{name} &= {Inverted(Text(register, writes, all), register)};";
        }

        var values = Text(writes.Where(write => write.Values[0] != 0).ToArray(), register, set);
        if (set == all)
        {
            return $"{name} |= {values};";
        }

        var cleared = writes.Where(write => (write.Values[0] << write.Field.LowBit) != write.Field.Mask).ToArray();
        var clear = cleared.Aggregate(0UL, (mask, write) => mask | write.Field.Mask);
        return $"{name} = ({name} & {Inverted(Text(register, cleared, clear), register)}) | {values};";
    }

    // The fields one by one where each has a name, else the mask as a whole.
    private string Text(Register register, FieldCondition[] writes, ulong mask) =>
        writes.All(write => write.Field.WidthBits > 1)
            ? string.Join(" | ", writes.Select(write => _bits.Mask(register, write.Field.Mask)))
            : _bits.Mask(register, mask);

    private string Text(FieldCondition[] writes, Register register, ulong set) =>
        writes.All(write => write.Field.WidthBits > 1)
            ? string.Join(" | ", writes.Select(write => _bits.Value(write.Field, write.Values[0])))
            : _bits.Mask(register, set);

    private string Inverted(string mask, Register register)
    {
        var text = IsOneOperand(mask) ? "~" + mask : $"~({mask})";
        var cast = string.Create(CultureInfo.InvariantCulture, $"(uint{register.WidthBits}_t)");
        return names.OwnText.Contains(cast + "~", StringComparison.Ordinal) ? cast + text : text;
    }

    private static bool IsOneOperand(string text)
    {
        if (!text.Contains(' ', StringComparison.Ordinal))
        {
            return true;
        }

        return text[0] == '(' && text.IndexOf(')', StringComparison.Ordinal) == text.Length - 1;
    }
}
