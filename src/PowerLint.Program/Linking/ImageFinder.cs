namespace PowerLint.Program;

/// <summary>
/// Sorts the units of a build into images: one for each <c>main</c>. Where the build tells the target of an object file, an image
/// is its target's units and whatever they need of libraries; elsewhere it is what its main file needs, found by name as a
/// linker does, and files that nobody calls (interrupt handlers) go with the nearest main file.
/// </summary>
public static class ImageFinder
{
    /// <summary>Finds the images, in the order of their main files.</summary>
    /// <param name="units">All units.</param>
    /// <param name="entryName">The function that start-up code calls.</param>
    public static IReadOnlyList<ImageUnits> Find(IReadOnlyList<UnitToLink> units, string entryName = "main")
    {
        var homes = units.Where(unit => Defines(unit.Unit, entryName)).ToArray();
        if (homes.Length == 1)
        {
            return [new ImageUnits(NameOf(homes[0], homes), [.. units.Select(unit => unit.Unit)])];
        }

        var members = homes.Select(home => Collect(home, units, homes)).ToArray();
        PlaceOrphans(units, homes, members);
        return
        [
            .. homes.Select(
                (home, i) =>
                    new ImageUnits(NameOf(home, homes), [.. units.Where(members[i].Contains).Select(unit => unit.Unit)])
            ),
        ];
    }

    private static bool Defines(TranslationUnit unit, string name) =>
        unit.Functions.Any(function =>
            !function.Symbol.IsStatic && string.Equals(function.Name, name, StringComparison.Ordinal)
        );

    private static HashSet<UnitToLink> Collect(UnitToLink home, IReadOnlyList<UnitToLink> units, UnitToLink[] homes)
    {
        // A unit is what it is, whatever else is like it.
        var members = new HashSet<UnitToLink>(ReferenceEqualityComparer.Instance) { home };
        if (home.Target is { } target)
        {
            members.UnionWith(units.Where(unit => Same(unit.Target, target) && !homes.Contains(unit, Identity)));
        }

        // Of other targets only those without a main are libraries.
        var pool = units
            .Where(unit =>
                !members.Contains(unit)
                && !homes.Contains(unit, Identity)
                && (unit.Target is null || !Array.Exists(homes, other => Same(other.Target, unit.Target)))
            )
            .ToArray();
        var definitions = new Dictionary<string, UnitToLink>(StringComparer.Ordinal);
        foreach (var unit in pool)
        {
            foreach (var name in Definitions(unit.Unit, countWeak: true))
            {
                definitions.TryAdd(name, unit);
            }
        }

        var work = new Queue<UnitToLink>(members);
        var known = members
            .SelectMany(unit => Definitions(unit.Unit, countWeak: false))
            .ToHashSet(StringComparer.Ordinal);
        while (work.TryDequeue(out var unit))
        {
            foreach (var name in Mentions(unit.Unit))
            {
                if (!known.Contains(name) && definitions.TryGetValue(name, out var needed) && members.Add(needed))
                {
                    known.UnionWith(Definitions(needed.Unit, countWeak: false));
                    work.Enqueue(needed);
                }
            }
        }

        return members;
    }

    private static void PlaceOrphans(IReadOnlyList<UnitToLink> units, UnitToLink[] homes, HashSet<UnitToLink>[] members)
    {
        foreach (var unit in units.Where(unit => unit.Target is null && !Array.Exists(members, m => m.Contains(unit))))
        {
            var shared = homes.Select(home => SharedFolders(home.Unit.Source.Path, unit.Unit.Source.Path)).ToArray();
            for (var i = 0; i < homes.Length; i++)
            {
                if (shared[i] == shared.Max())
                {
                    members[i].Add(unit);
                }
            }
        }
    }

    private static int SharedFolders(string left, string right) =>
        left.Split('/', '\\').Zip(right.Split('/', '\\')).TakeWhile(pair => Same(pair.First, pair.Second)).Count();

    private static IEnumerable<string> Definitions(TranslationUnit unit, bool countWeak) =>
        unit
            .Functions.Where(function => !function.Symbol.IsStatic && (countWeak || !function.IsWeak))
            .Select(function => function.Name)
            .Concat(
                unit.Globals.Where(variable =>
                        variable is { IsExternal: true, IsDeclarationOnly: false } && (countWeak || !variable.IsWeak)
                    )
                    .Select(variable => variable.Name)
            );

    private static IEnumerable<string> Mentions(TranslationUnit unit) =>
        unit
            .Symbols.Where(symbol => !symbol.IsStatic)
            .Select(symbol => symbol.Name)
            .Concat(unit.Globals.Where(variable => variable.IsExternal).Select(variable => variable.Name));

    // The shortest name that no other image has.
    private static string NameOf(UnitToLink home, UnitToLink[] homes)
    {
        var path = home.Unit.Source.Path;
        var folder = Path.GetDirectoryName(path) ?? "";
        Func<UnitToLink, string?>[] ways =
        [
            unit => unit.Target,
            unit => Path.GetFileNameWithoutExtension(unit.Unit.Source.Path) is var stem && stem is "main" ? null : stem,
            unit => Path.GetFileName(Path.GetDirectoryName(unit.Unit.Source.Path)),
        ];
        foreach (var way in ways)
        {
            if (way(home) is { Length: > 0 } name && homes.Count(other => Same(way(other), name)) == 1)
            {
                return name;
            }
        }

        var root = homes.Select(other => Path.GetDirectoryName(other.Unit.Source.Path) ?? "").Aggregate(Common);
        return Path.GetRelativePath(root.Length == 0 ? folder : root, path);
    }

    private static string Common(string left, string right)
    {
        var parts = left.Split('/').Zip(right.Split('/')).TakeWhile(pair => Same(pair.First, pair.Second));
        return string.Join('/', parts.Select(pair => pair.First));
    }

    private static bool Same(string? left, string? right) => string.Equals(left, right, StringComparison.Ordinal);

    private static IEqualityComparer<UnitToLink> Identity => ReferenceEqualityComparer.Instance;
}
