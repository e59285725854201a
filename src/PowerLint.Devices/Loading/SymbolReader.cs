using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>Reads the names under which headers declare registers as external symbols.</summary>
internal sealed class SymbolReader(MapNode document, ModelReading reading)
{
    /// <summary>The own name of every register and view, the names of its bytes where the family's headers have such, and the further names given.</summary>
    public ImmutableArray<RegisterSymbol> Read()
    {
        var symbols = new SortedDictionary<string, ulong>(StringComparer.Ordinal);
        var entry = document["symbols"] is { } node ? MapReader.Of(node, "'symbols'", reading.Errors) : null;
        var names = entry?.Take("names");
        var suffixes = entry?.Scalars("byte-suffixes").Select(suffix => suffix.Text).ToArray() ?? [];
        entry?.Finish();
        // A view is no register of the model, but headers may declare it and its bytes.
        var declared = reading.Registers.Values.Concat(reading.Views.Values).Where(r => r.IsAddressable).ToArray();
        foreach (var register in declared)
        {
            symbols[register.Name] = register.Address;
        }

        foreach (var register in declared)
        {
            for (var i = 0; i < suffixes.Length && 8 * i < register.WidthBits; i++)
            {
                symbols.TryAdd(register.Name + suffixes[i], register.Address + (ulong)i);
            }
        }

        foreach (
            var (name, value) in names is null
                ? []
                : MapReader.Of(names, "'names' of 'symbols'", reading.Errors).Node.Entries
        )
        {
            if (
                value is ScalarNode scalar
                && FieldReferences.FindRegister(scalar, scalar.Text, reading) is { } register
            )
            {
                symbols[name.Text] = register.Address;
                for (var i = 0; i < suffixes.Length && 8 * i < register.WidthBits; i++)
                {
                    symbols.TryAdd(name.Text + suffixes[i], register.Address + (ulong)i);
                }
            }
        }

        return [.. symbols.Select(symbol => new RegisterSymbol(symbol.Key, symbol.Value))];
    }
}
