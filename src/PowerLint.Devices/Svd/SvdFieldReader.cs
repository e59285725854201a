using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;

namespace PowerLint.Devices;

/// <summary>Reads the fields of a register.</summary>
internal sealed class SvdFieldReader(SvdDerivation derivation, SvdReading reading)
{
    private static readonly Dictionary<string, SvdWriteEffect> WriteEffects = new(StringComparer.OrdinalIgnoreCase)
    {
        ["oneToClear"] = SvdWriteEffect.OneToClear,
        ["oneToSet"] = SvdWriteEffect.OneToSet,
        ["oneToToggle"] = SvdWriteEffect.OneToToggle,
        ["zeroToClear"] = SvdWriteEffect.ZeroToClear,
        ["zeroToSet"] = SvdWriteEffect.ZeroToSet,
        ["zeroToToggle"] = SvdWriteEffect.ZeroToToggle,
        ["clear"] = SvdWriteEffect.Clear,
        ["set"] = SvdWriteEffect.Set,
        ["modify"] = SvdWriteEffect.Modify,
    };

    // Whether a read changes what is read.
    private static readonly Dictionary<string, bool> ReadActions = new(StringComparer.OrdinalIgnoreCase)
    {
        ["clear"] = true,
        ["set"] = true,
        ["modify"] = true,
        ["modifyExternal"] = false,
    };

    public SvdWriteEffect? WriteEffectOf(SvdNode node, string whose) =>
        reading.Word(node, "modifiedWriteValues", whose, WriteEffects);

    public bool? ReadActionOf(SvdNode node, string whose) => reading.Word(node, "readAction", whose, ReadActions);

    /// <summary>The fields of a register, each name once, none beyond the register's bits.</summary>
    public ImmutableArray<SvdField> Read(
        SvdNode register,
        string registerName,
        int sizeBits,
        SvdAccess access,
        SvdWriteEffect effect,
        bool changedByReading
    )
    {
        var fields = ImmutableArray.CreateBuilder<SvdField>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var element in register.Members())
        {
            var node = derivation.Resolve(element);
            if (reading.Name(node) is not { } name)
            {
                continue;
            }

            var whose = $"field {registerName}.{name}";
            if (!TryReadBits(node, whose, out var low, out var width))
            {
                continue;
            }

            var fieldAccess = SvdProperties.AccessOf(node, whose, reading) ?? access;
            var fieldEffect = WriteEffectOf(node, whose) ?? effect;
            var fieldRead = ReadActionOf(node, whose) ?? changedByReading;
            var values = ReadValues(node, whose, width);
            foreach (var item in SvdDimension.Expand(node, name, reading))
            {
                if (item.Offset > 64 || low + (int)item.Offset + width > sizeBits)
                {
                    reading.Notice(
                        node.Line,
                        $"field {registerName}.{item.Name} lies beyond the {sizeBits} bits of its register: left out"
                    );
                    continue;
                }

                if (fields.FirstOrDefault(other => Clashes(other, low + (int)item.Offset, width)) is { } clash)
                {
                    reading.Notice(
                        node.Line,
                        $"field {registerName}.{item.Name} lies across, or on, the bits of {clash.Name}: left out"
                    );
                    continue;
                }

                fields.Add(
                    new SvdField(
                        node.Line,
                        Unique(item.Name, names, registerName, node.Line),
                        low + (int)item.Offset,
                        width,
                        fieldAccess,
                        fieldEffect,
                        fieldRead,
                        values
                    )
                );
            }
        }

        return fields.ToImmutable();
    }

    // A bit of a wider field may have a name of its own; anything else a model does not take.
    private static bool Clashes(SvdField other, int low, int width)
    {
        var (start, end) = (Math.Max(other.LowBit, low), Math.Min(other.LowBit + other.WidthBits, low + width));
        var shared = end - start;
        return shared > 0
            && ((shared == width && shared == other.WidthBits) || (shared != width && shared != other.WidthBits));
    }

    private string Unique(string name, HashSet<string> names, string register, int line)
    {
        if (names.Add(name))
        {
            return name;
        }

        for (var i = 2; ; i++)
        {
            var other = string.Create(CultureInfo.InvariantCulture, $"{name}_{i}");
            if (names.Add(other))
            {
                reading.Notice(line, $"register {register} has a second field {name}: called {other}");
                return other;
            }
        }
    }

    private bool TryReadBits(SvdNode node, string whose, out int low, out int width)
    {
        (low, width) = (0, 0);
        if (node.HolderOfAny("bitRange", "lsb", "msb", "bitOffset") is not { } holder)
        {
            reading.Error(node.Line, $"{whose} lacks its place: bitRange, lsb and msb, or bitOffset and bitWidth");
            return false;
        }

        ulong? first;
        ulong? last;
        if (holder.Element.Element("bitRange") is { } range)
        {
            if (!TryReadRange(range.Value.Trim(), out first, out last))
            {
                reading.Error(
                    SvdNode.LineOf(range),
                    $"'bitRange' of {whose} is '{SvdReading.Shortened(range.Value.Trim())}': write [7:4], the higher bit first"
                );
                return false;
            }
        }
        else if (holder.Element.Element("bitOffset") is not null)
        {
            first = reading.Number(holder, "bitOffset", whose);
            // Without a width the standard leaves a single bit.
            last = first + (reading.OptionalNumber(node, "bitWidth", whose) ?? 1) - 1;
        }
        else
        {
            first = reading.Number(node, "lsb", whose);
            last = reading.Number(node, "msb", whose);
        }

        if (first is null || last is null)
        {
            return false;
        }

        if (last < first || last > 63)
        {
            reading.Error(node.Line, $"{whose} lies in no bits: from {first} to {last}");
            return false;
        }

        low = (int)first;
        width = (int)(last - first) + 1;
        return true;
    }

    private static bool TryReadRange(string text, out ulong? first, out ulong? last)
    {
        (first, last) = (null, null);
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (
            colon < 0
            || text[0] != '['
            || text[^1] != ']'
            || !SvdNumber.TryParse(text[1..colon].Trim(), out var high)
            || !SvdNumber.TryParse(text[(colon + 1)..^1].Trim(), out var low)
        )
        {
            return false;
        }

        (first, last) = (low, high);
        return true;
    }

    // Names for reading and for writing may differ; a program writes, so those come first.
    private ImmutableSortedDictionary<ulong, string> ReadValues(SvdNode field, string whose, int width)
    {
        var values = ImmutableSortedDictionary.CreateBuilder<ulong, string>();
        foreach (var container in field.Members().OrderBy(IsForReading))
        {
            foreach (var element in derivation.Resolve(container).Children("enumeratedValue"))
            {
                ReadValue(element, whose, values);
            }
        }

        ulong[] tooLarge = [.. values.Keys.Where(value => width < 64 && value >> width != 0)];
        if (tooLarge.Length > 0)
        {
            values.RemoveRange(tooLarge);
            reading.Notice(
                field.Line,
                $"values of {whose} do not fit into its {width} bits: {string.Join(", ", tooLarge)} left out"
            );
        }

        return values.ToImmutable();
    }

    private bool IsForReading(XElement container) => derivation.Resolve(container).Text("usage") is "read";

    private void ReadValue(XElement element, string whose, ImmutableSortedDictionary<ulong, string>.Builder values)
    {
        var node = new SvdNode(element, null);
        if (node.Text("value") is not { } text)
        {
            if (node.Text("isDefault") is not ("true" or "1"))
            {
                reading.Error(node.Line, $"an enumerated value of {whose} lacks 'value'");
            }

            return;
        }

        if (!SvdNumber.TryParseValues(text, out var numbers))
        {
            reading.Error(
                node.Line,
                $"'value' of {whose} is '{SvdReading.Shortened(text)}', which is no number: write 3, 0x3, #11 or #1x"
            );
            return;
        }

        if (numbers.Length == 0)
        {
            reading.Notice(node.Line, $"the value '{text}' of {whose} leaves too many bits open to be named");
        }

        // Where a value is not called anything, its number must do.
        var name = node.Text("name") is { Length: > 0 } given ? given : text;
        foreach (var number in numbers)
        {
            values.TryAdd(number, name);
        }
    }
}
