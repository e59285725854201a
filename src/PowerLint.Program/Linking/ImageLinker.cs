namespace PowerLint.Program;

/// <summary>Links units into one image as a linker would: strong over weak, static names apart, extern bound to definitions.</summary>
public static class ImageLinker
{
    /// <summary>Links the units.</summary>
    /// <param name="units">The units of one image.</param>
    /// <param name="entryName">The function that start-up code calls.</param>
    /// <returns>The image; null where no unit defines the entry.</returns>
    public static Image? Link(IEnumerable<TranslationUnit> units, string entryName = "main")
    {
        var given = units.ToArray();
        var home = given.FirstOrDefault(unit => unit.Functions.Any(function => IsEntry(function)));
        if (home is null)
        {
            return null;
        }

        var ordered = given.OrderBy(unit => unit.Source.Path, new PathOrder(home.Source.Path)).ToArray();
        var conflicts = new List<LinkConflict>();
        var definitions = CollectFunctions(ordered, conflicts);
        if (!definitions.TryGetValue(entryName, out var entry))
        {
            return null;
        }

        var kept = ordered.SelectMany(unit => unit.Functions).Where(IsKept).ToArray();
        return new Image(
            ordered,
            entry,
            [.. kept.Where(f => f.StartupSection is not null).OrderBy(f => f.StartupSection, StringComparer.Ordinal)],
            [
                .. kept.Where(f => f.Handler is not null)
                    .OrderBy(f => f.Handler!.VectorNumber ?? int.MaxValue)
                    .ThenBy(f => f.Name, StringComparer.Ordinal),
            ],
            conflicts,
            BindFunctions(ordered, definitions),
            BindGlobals(ordered, conflicts)
        );

        bool IsEntry(Function function) =>
            !function.Symbol.IsStatic && string.Equals(function.Name, entryName, StringComparison.Ordinal);

        bool IsKept(Function function) => function.Symbol.IsStatic || definitions[function.Name] == function;
    }

    private static Dictionary<string, Function> CollectFunctions(TranslationUnit[] units, List<LinkConflict> conflicts)
    {
        var definitions = new Dictionary<string, Function>(StringComparer.Ordinal);
        foreach (var function in units.SelectMany(unit => unit.Functions).Where(f => !f.Symbol.IsStatic))
        {
            if (!definitions.TryGetValue(function.Name, out var other) || (other.IsWeak && !function.IsWeak))
            {
                definitions[function.Name] = function;
            }
            else if (!function.IsWeak)
            {
                conflicts.Add(new LinkConflict(function.Name, other.Range, function.Range));
            }
        }

        return definitions;
    }

    private static Dictionary<FunctionSymbol, Function> BindFunctions(
        TranslationUnit[] units,
        Dictionary<string, Function> definitions
    )
    {
        var bound = new Dictionary<FunctionSymbol, Function>();
        foreach (var symbol in units.SelectMany(unit => unit.Symbols))
        {
            var body = symbol.IsStatic ? symbol.Definition : definitions.GetValueOrDefault(symbol.Name);
            if (body is not null)
            {
                bound[symbol] = body;
            }
        }

        return bound;
    }

    private static Dictionary<GlobalVariable, GlobalVariable> BindGlobals(
        TranslationUnit[] units,
        List<LinkConflict> conflicts
    )
    {
        var definitions = new Dictionary<string, GlobalVariable>(StringComparer.Ordinal);
        foreach (var variable in units.SelectMany(unit => unit.Globals).Where(g => g.IsExternal))
        {
            if (!definitions.TryGetValue(variable.Name, out var other) || Strength(other) < Strength(variable))
            {
                definitions[variable.Name] = variable;
            }
            else if (Strength(variable) == Strongest && Strength(other) == Strongest)
            {
                conflicts.Add(new LinkConflict(variable.Name, other.Range, variable.Range));
            }
        }

        var bound = new Dictionary<GlobalVariable, GlobalVariable>();
        foreach (
            var variable in units.SelectMany(unit => unit.Globals).Where(g => g.IsExternal || g.AliasOf is not null)
        )
        {
            var target = variable.IsExternal ? definitions[variable.Name] : variable;
            if (target.AliasOf is { } alias && definitions.TryGetValue(alias, out var aliased))
            {
                target = aliased;
            }

            bound[variable] = target;
        }

        return bound;
    }

    private const int Strongest = 3;

    // An initialised definition wins over a tentative one (C11 6.9.2), which wins over weak ones and declarations.
    private static int Strength(GlobalVariable variable) =>
        variable switch
        {
            { IsDeclarationOnly: true } => 0,
            { IsWeak: true } => 1,
            { Initializer: null } => 2,
            _ => Strongest,
        };
}
