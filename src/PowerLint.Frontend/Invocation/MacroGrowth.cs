using System.Collections.Concurrent;
using System.Globalization;

namespace PowerLint.Frontend;

/// <summary>
/// Estimates how many tokens the lines of a unit expand to, before the parser does it: macros that name each other several times over
/// double with each level, and the parser knows no bound. Looks at a file and what it includes from the firmware's own folders,
/// each file once in a run. An estimate: conditional sections are all taken, and names that pasting makes are not seen.
/// </summary>
internal sealed class MacroGrowth
{
    // Beyond any table that people write, and still some 100 MB in the parser.
    private const double MostTokens = 1_000_000;
    private const int MostFiles = 1000;

    private static readonly string[] FolderFlags = ["-I", "-iquote"];

    private readonly ConcurrentDictionary<string, SourceScan?> _scans = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Headers> _headers = new(StringComparer.Ordinal);

    /// <summary>The first line that grows too far, or null.</summary>
    public SourceError? Excess(string file, IReadOnlyList<string> arguments, string directory)
    {
        if (Scan(file) is not { } main)
        {
            return null;
        }

        var headers = HeadersOf(main, IncludeSearch.Folders(arguments, directory, FolderFlags));
        if (main.Definitions.Count == 0 && headers.Table.Count == 0)
        {
            return null;
        }

        // The headers' table serves as it is where the unit's own macros are none of those that the headers' stand on.
        var isApart = main.Definitions.TrueForAll(definition => !headers.Names.Contains(definition.Name));
        if (isApart && headers.IsTame && main.Definitions.Count == 0)
        {
            return IsTame(main, headers.Table) ? null : FirstExcess([main], headers.Table);
        }

        var table = new MacroTable([.. headers.Files, main]);
        return (isApart && headers.IsTame) || headers.Files.TrueForAll(header => IsTame(header, table))
            ? IsTame(main, table)
                ? null
                : FirstExcess([main], table)
            : FirstExcess([.. headers.Files, main], table);
    }

    private static SourceError? FirstExcess(IEnumerable<SourceScan> files, MacroTable table)
    {
        foreach (var file in files)
        {
            foreach (var (line, text) in file.PlainLines())
            {
                if (table.Expanded(text) > MostTokens)
                {
                    return new SourceError(
                        file.Path,
                        line,
                        1,
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"The macros on this line expand to more than {MostTokens:N0} tokens. Leave the file out, or take the macros apart."
                        )
                    );
                }
            }
        }

        return null;
    }

    // A line without a call in a call grows at most by the longest macro in the place of each token, each repeated as an argument.
    private static bool IsTame(SourceScan file, MacroTable table) =>
        file.MostTokens * table.MostOwn * Math.Max(1, table.MostUses) <= MostTokens
        && file.NestedCalls.TrueForAll(line => table.Expanded(line.Text) <= MostTokens);

    private Headers HeadersOf(SourceScan main, IReadOnlyList<string> folders)
    {
        // What a unit includes follows from where it lies and what it names.
        var key = string.Join('\n', [Path.GetDirectoryName(main.Path) ?? "", .. folders, "", .. main.Includes]);
        if (_headers.TryGetValue(key, out var known))
        {
            return known;
        }

        var files = new List<SourceScan>();
        var seen = new HashSet<string>(StringComparer.Ordinal) { main.Path };
        Collect(main);
        var table = new MacroTable(files);
        var headers = new Headers(
            files,
            table,
            files
                .SelectMany(file => file.NamesInBodies.Concat(file.Definitions.Select(macro => macro.Name)))
                .ToHashSet(StringComparer.Ordinal),
            files.TrueForAll(file => IsTame(file, table))
        );
        _headers[key] = headers;
        return headers;

        // A loop over a list of work: includes may nest as deep as they like.
        void Collect(SourceScan from)
        {
            var work = new Stack<SourceScan>([from]);
            while (work.TryPop(out var including))
            {
                foreach (var name in including.Includes)
                {
                    foreach (var folder in folders.Prepend(Path.GetDirectoryName(including.Path) ?? ""))
                    {
                        var path = Path.GetFullPath(Path.Combine(folder, name));
                        if (seen.Contains(path))
                        {
                            break;
                        }

                        if (files.Count < MostFiles && Scan(path) is { } header)
                        {
                            seen.Add(path);
                            files.Add(header);
                            work.Push(header);
                            break;
                        }
                    }
                }
            }
        }
    }

    private SourceScan? Scan(string path) =>
        _scans.GetOrAdd(path, static file => File.Exists(file) ? SourceScan.Of(file) : null);

    private sealed record Headers(List<SourceScan> Files, MacroTable Table, HashSet<string> Names, bool IsTame);
}
