using System.Collections.Immutable;
using System.Globalization;

namespace PowerLint.Devices;

/// <summary>Gathers the interrupt lines that peripherals list; several may list one, each under its own name.</summary>
internal sealed class SvdInterruptReader(SvdReading reading)
{
    // More lines than any interrupt controller of these processors has.
    private const ulong MostLines = 1024;

    private readonly SortedDictionary<ulong, List<(string Name, string Peripheral, int Line)>> _lines = [];

    public void Read(SvdNode peripheral, string called)
    {
        foreach (var element in peripheral.Children("interrupt"))
        {
            var node = new SvdNode(element, null);
            if (
                reading.Name(node) is not { } name
                || reading.Number(node, "value", $"interrupt {name}") is not { } number
            )
            {
                continue;
            }

            if (number >= MostLines)
            {
                reading.Error(node.Line, $"interrupt {name} has the number {number}: it must be below {MostLines}");
                continue;
            }

            if (!_lines.TryGetValue(number, out var list))
            {
                _lines[number] = list = [];
            }

            list.Add((name, called, node.Line));
        }
    }

    /// <summary>The lines by number, each with a name of its own.</summary>
    public ImmutableArray<SvdInterrupt> Lines()
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var lines = ImmutableArray.CreateBuilder<SvdInterrupt>();
        foreach (var (number, named) in _lines)
        {
            var names = new List<string>();
            foreach (var (name, _, line) in named.DistinctBy(n => n.Name, StringComparer.Ordinal))
            {
                if (taken.Add(name))
                {
                    names.Add(name);
                    continue;
                }

                var other = string.Create(CultureInfo.InvariantCulture, $"{name}_{number}");
                reading.Notice(line, $"interrupt {name} has a second number, {number}: called {other} there");
                if (taken.Add(other))
                {
                    names.Add(other);
                }
            }

            lines.Add(
                new SvdInterrupt(
                    names[0],
                    [.. names.Skip(1)],
                    (int)number,
                    [.. named.Select(n => n.Peripheral).Distinct(StringComparer.Ordinal)]
                )
            );
        }

        return lines.ToImmutable();
    }
}
