using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads the register table.</summary>
internal static class RegisterReader
{
    private static readonly Dictionary<string, RegisterKind> Kinds = new(StringComparer.Ordinal)
    {
        ["configuration"] = RegisterKind.Configuration,
        ["status"] = RegisterKind.Status,
        ["data"] = RegisterKind.Data,
        ["option"] = RegisterKind.Option,
        ["internal"] = RegisterKind.Internal,
    };

    // Where no bus reaches: an internal register is stored like any other, but no program has a pointer to it.
    private const ulong InternalBase = 1UL << 56;

    /// <summary>Whether the entry is a fuse or an option byte.</summary>
    public static bool IsOption(DeviceNode node) => (node as MapNode)?["kind"] is ScalarNode { Text: "option" };

    /// <summary>Whether the entry calls itself a further view of bytes that other registers may hold.</summary>
    public static bool IsView(DeviceNode node) => (node as MapNode)?["view"] is ScalarNode { Text: "true" };

    public static Register Read(ScalarNode name, DeviceNode node, OptionOverrides options, ModelReading reading)
    {
        var entry = MapReader.Of(node, $"register {name.Text}", reading.Errors);
        entry.Flag("view", otherwise: false);
        var kind = entry.Choice("kind", Kinds, RegisterKind.Configuration);
        var address = kind switch
        {
            RegisterKind.Option => null,
            RegisterKind.Internal => InternalBase + (8 * (ulong)reading.Registers.Count),
            _ => entry.NeedNumber("address"),
        };
        var width = (int)(entry.Number("width") ?? 8);
        if (width is not (8 or 16 or 32))
        {
            reading.Errors.Add(node, $"register {name.Text} is {width} bits wide: 8, 16 or 32 are possible");
            width = 8;
        }

        var all = width == 64 ? ulong.MaxValue : (1UL << width) - 1;
        var fields = ReadFields(entry, name.Text, width, reading, out var drawn);
        var reset = entry.Number("reset") ?? 0;
        var loaded = entry.Take("reset-from");
        if (loaded is not null)
        {
            reset = WithOptions(reset, loaded, name.Text, fields, reading);
        }

        // A row of names draws the whole register: what it leaves unnamed is reserved.
        var reserved = drawn ? fields.Values.Aggregate(all, (left, field) => left & ~Mask(field)) : 0;
        ulong Bits(string key) => ReadBits(entry.Take(key), key, fields, all, reading);
        var (readsAs, readsAsValue) = ReadsAs(entry, name.Text, fields, reading);
        var register = new Register
        {
            Name = name.Text,
            Peripheral = entry.Text("peripheral"),
            Address = address ?? 0,
            WidthBits = width,
            Kind = kind,
            Reset = kind == RegisterKind.Option ? options.Apply(name.Text, reset, fields) : reset,
            IsLoadedFromOptions = loaded is not null,
            ResetKnown = all & ~Bits("reset-unknown"),
            HardwareChanged = Bits("hardware-changed"),
            WriteOneToClear = Bits("write-one-to-clear"),
            WriteOneToSet = Bits("write-one-to-set"),
            WriteOneToToggle = Bits("write-one-to-toggle"),
            WriteZeroToClear = Bits("write-zero-to-clear"),
            WriteZeroToSet = Bits("write-zero-to-set"),
            WriteZeroToToggle = Bits("write-zero-to-toggle"),
            WriteToClear = Bits("write-to-clear"),
            WriteToSet = Bits("write-to-set"),
            ReadsZero = Bits("reads-zero") | reserved,
            ReadOnly = Bits("read-only"),
            ReadsAs = readsAs,
            ReadsAsValue = readsAsValue,
            Fields = fields,
        };
        entry.Finish();
        if (register.Reset > all)
        {
            reading.Errors.Add(node, $"the reset value of {name.Text} does not fit into its {width} bits");
        }

        return register;
    }

    // Fields that are loaded from option bits before the program starts.
    private static ulong WithOptions(
        ulong reset,
        DeviceNode node,
        string register,
        Dictionary<string, Field> fields,
        ModelReading reading
    )
    {
        foreach (
            var (name, value) in MapReader.Of(node, $"'reset-from' of register {register}", reading.Errors).Node.Entries
        )
        {
            var option = value is ScalarNode scalar ? FieldReferences.Read(scalar, reading) : null;
            if (!fields.TryGetValue(name.Text, out var field))
            {
                reading.Errors.Add(
                    name,
                    $"register {register} has no field '{name.Text}'{NearestNames.Hint(name.Text, fields.Keys)}"
                );
            }
            else if (
                option is not null
                && (option.Register.Kind != RegisterKind.Option || option.WidthBits != field.WidthBits)
            )
            {
                reading.Errors.Add(value, $"{option.Name} is no option as wide as {register}.{name.Text}");
            }
            else if (option is not null)
            {
                reset =
                    (reset & ~Mask(field)) | (((option.Register.Reset & option.Mask) >> option.LowBit) << field.LowBit);
            }
        }

        return reset;
    }

    // Fields that read as a value of their own, whatever was written: { KEY: 0x96 }.
    private static (ulong Mask, ulong Value) ReadsAs(
        MapReader entry,
        string register,
        Dictionary<string, Field> fields,
        ModelReading reading
    )
    {
        var (mask, value) = (0UL, 0UL);
        if (entry.Take("reads-as") is not { } node)
        {
            return (mask, value);
        }

        foreach (
            var (name, read) in MapReader.Of(node, $"'reads-as' of register {register}", reading.Errors).Node.Entries
        )
        {
            if (!fields.TryGetValue(name.Text, out var field))
            {
                reading.Errors.Add(
                    name,
                    $"register {register} has no field '{name.Text}'{NearestNames.Hint(name.Text, fields.Keys)}"
                );
            }
            else if (read is ScalarNode scalar && Numbers.TryParse(scalar.Text, out var number))
            {
                mask |= Mask(field);
                value |= (number << field.LowBit) & Mask(field);
            }
            else
            {
                reading.Errors.Add(read, "'reads-as' maps fields to numbers");
            }
        }

        return (mask, value);
    }

    private static Dictionary<string, Field> ReadFields(
        MapReader entry,
        string register,
        int width,
        ModelReading reading,
        out bool drawn
    )
    {
        var fields = new Dictionary<string, Field>(StringComparer.Ordinal);
        drawn = false;
        if (entry.Take("bits") is { } row)
        {
            drawn = true;
            if (row is ScalarNode scalar)
            {
                ReadRow(scalar, register, width, fields, reading);
            }
            else
            {
                reading.Errors.Add(row, $"'bits' of register {register} is a row of names, highest bit first");
            }
        }

        if (entry.Take("fields") is { } table)
        {
            foreach (
                var (name, value) in MapReader
                    .Of(table, $"'fields' of register {register}", reading.Errors)
                    .Node.Entries
            )
            {
                ReadField(name, value, register, width, fields, reading);
            }
        }

        return fields;
    }

    // One name a bit as the datasheet draws a register, highest bit first; "-" is a bit without a name, A7..A0 a run of names.
    private static void ReadRow(
        ScalarNode row,
        string register,
        int width,
        Dictionary<string, Field> fields,
        ModelReading reading
    )
    {
        var names = NameRanges.Expand(row.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToArray();
        if (names.Length > width)
        {
            reading.Errors.Add(row, $"'bits' of register {register} has {names.Length} names for {width} bits");
            return;
        }

        for (var i = 0; i < names.Length; i++)
        {
            if (names[i] is not "-")
            {
                Add(row, register, new Field(names[i], names.Length - 1 - i, 1, NoNames), fields, reading);
            }
        }
    }

    private static readonly ImmutableDictionary<ulong, string> NoNames = ImmutableDictionary<ulong, string>.Empty;

    private static void ReadField(
        ScalarNode name,
        DeviceNode value,
        string register,
        int width,
        Dictionary<string, Field> fields,
        ModelReading reading
    )
    {
        string? bits;
        IReadOnlyDictionary<ulong, string> names = NoNames;
        if (value is MapNode)
        {
            var entry = MapReader.Of(value, $"field {register}.{name.Text}", reading.Errors);
            bits = entry.NeedText("bits");
            names = entry.Take("values") is { } table ? ReadValueNames(table, reading) : NoNames;
            entry.Finish();
        }
        else
        {
            bits = (value as ScalarNode)?.Text;
        }

        if (
            bits is null
            || !FieldReferences.TryParseBits(bits, out var low, out var fieldWidth)
            || low + fieldWidth > width
        )
        {
            reading.Errors.Add(
                value,
                $"field {register}.{name.Text} lies in no bits of its register: write a bit (3) or a range (7:4) below {width}"
            );
            return;
        }

        Add(name, register, new Field(name.Text, low, fieldWidth, names), fields, reading);
    }

    private static Dictionary<ulong, string> ReadValueNames(DeviceNode table, ModelReading reading)
    {
        var names = new Dictionary<ulong, string>();
        foreach (var (value, name) in MapReader.Of(table, "'values'", reading.Errors).Node.Entries)
        {
            if (Numbers.TryParse(value.Text, out var number) && name is ScalarNode scalar)
            {
                names[number] = scalar.Text;
            }
            else
            {
                reading.Errors.Add(value, "'values' maps numbers to names");
            }
        }

        return names;
    }

    private static void Add(
        DeviceNode at,
        string register,
        Field field,
        Dictionary<string, Field> fields,
        ModelReading reading
    )
    {
        var mask = Mask(field);
        foreach (var other in fields.Values)
        {
            var shared = mask & Mask(other);
            // A bit of a wider field may have its own name too; anything else is a slip.
            if (shared != 0 && (mask == Mask(other) || (shared != mask && shared != Mask(other))))
            {
                reading.Errors.Add(at, $"fields {field.Name} and {other.Name} of register {register} overlap");
            }
        }

        if (!fields.TryAdd(field.Name, field))
        {
            reading.Errors.Add(at, $"register {register} has the field {field.Name} twice");
        }
    }

    private static ulong Mask(Field field) => ((1UL << field.WidthBits) - 1) << field.LowBit;

    /// <summary>Bits as a number, <c>all</c>, or field names and bit ranges.</summary>
    private static ulong ReadBits(
        DeviceNode? node,
        string key,
        Dictionary<string, Field> fields,
        ulong all,
        ModelReading reading
    )
    {
        ulong mask = 0;
        foreach (var scalar in node is null ? [] : MapReader.ScalarsOf(node, $"'{key}'", reading.Errors))
        {
            if (scalar.Text is "all")
            {
                mask |= all;
            }
            else if (fields.TryGetValue(scalar.Text, out var field))
            {
                mask |= Mask(field);
            }
            else if (
                scalar.Text.StartsWith("0x", StringComparison.Ordinal) && Numbers.TryParse(scalar.Text, out var number)
            )
            {
                mask |= number;
            }
            else
            {
                reading.Errors.Add(
                    scalar,
                    $"'{scalar.Text}' names no bits{NearestNames.Hint(scalar.Text, fields.Keys)}: write field names, a mask such as 0x0F, or all"
                );
            }
        }

        if ((mask & ~all) != 0)
        {
            reading.Errors.Add(node!, $"'{key}' has bits that the register does not have");
        }

        return mask & all;
    }
}
