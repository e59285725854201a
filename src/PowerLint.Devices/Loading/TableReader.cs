using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads bits that a table decides, and bits that put registers back to their reset values.</summary>
internal sealed class TableReader(MapNode document, ModelReading reading)
{
    public ImmutableArray<FieldLookup> ReadLookups()
    {
        var lookups = ImmutableArray.CreateBuilder<FieldLookup>();
        foreach (var (name, value) in reading.Section(document, "lookups"))
        {
            var entry = MapReader.Of(value, $"lookup {name.Text}", reading.Errors);
            var field = FieldReferences.Read(name, reading);
            var index = entry.Need("index") is ScalarNode by ? FieldReferences.Read(by, reading) : null;
            ImmutableArray<FieldReference> rows =
            [
                .. entry.Scalars("rows").Select(row => FieldReferences.Read(row, reading)).OfType<FieldReference>(),
            ];
            var when = entry.Take("when") is { } node ? ConditionReader.Read(node, reading) : Condition.Always;
            var otherwise = entry.Number("otherwise") ?? 0;
            entry.Finish();
            if (field is null || index is null)
            {
                continue;
            }

            if (
                field.Register.Kind != RegisterKind.Internal
                || rows.IsEmpty
                || rows.Any(row => row.WidthBits != field.WidthBits)
            )
            {
                reading.Errors.Add(
                    value,
                    $"lookup {name.Text} needs bits of an internal register, and rows of as many bits"
                );
                continue;
            }

            lookups.Add(new FieldLookup(field, index, rows, when, otherwise));
        }

        var all = lookups.ToImmutable();
        foreach (var lookup in all.Where(lookup => LooksAtItself(lookup, lookup, all, [])))
        {
            reading.Errors.Add(document["lookups"]!, $"lookup {lookup.Field.Name} looks at itself");
        }

        return all;
    }

    private static bool LooksAtItself(
        FieldLookup start,
        FieldLookup lookup,
        ImmutableArray<FieldLookup> all,
        HashSet<FieldLookup> seen
    ) =>
        seen.Add(lookup)
        && all.Where(other =>
                lookup
                    .Rows.Append(lookup.Index)
                    .Concat(lookup.When.Fields)
                    .Any(used =>
                        ReferenceEquals(used.Register, other.Field.Register) && (used.Mask & other.Field.Mask) != 0
                    )
            )
            .Any(other => ReferenceEquals(other, start) || LooksAtItself(start, other, all, seen));

    public ImmutableArray<RegisterReset> ReadResets(SleepReader sleep)
    {
        var resets = ImmutableArray.CreateBuilder<RegisterReset>();
        foreach (var (name, value) in reading.Section(document, "resets"))
        {
            var entry = MapReader.Of(value, $"reset {name.Text}", reading.Errors);
            var trigger = FieldReferences.Read(name, reading);
            ImmutableArray<Register> targets = [.. sleep.RegistersOf(entry).Distinct()];
            entry.Finish();
            if (trigger is null)
            {
                continue;
            }

            if (trigger.WidthBits != 1 || targets.IsEmpty)
            {
                reading.Errors.Add(value, $"reset {name.Text} needs one bit, and registers that it puts back");
                continue;
            }

            resets.Add(new RegisterReset(trigger, targets));
        }

        return resets.ToImmutable();
    }
}
