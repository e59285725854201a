namespace PowerLint.Program;

/// <summary>The firmware, linked from its units: one entry, its callees, its interrupt handlers.</summary>
public sealed class Image
{
    private readonly Dictionary<FunctionSymbol, Function> _functions;
    private readonly Dictionary<GlobalVariable, GlobalVariable> _globals;

    internal Image(
        IReadOnlyList<TranslationUnit> units,
        Function entry,
        IReadOnlyList<Function> startup,
        IReadOnlyList<Function> handlers,
        IReadOnlyList<LinkConflict> conflicts,
        Dictionary<FunctionSymbol, Function> functions,
        Dictionary<GlobalVariable, GlobalVariable> globals
    )
    {
        Units = units;
        Entry = entry;
        Startup = startup;
        Handlers = handlers;
        Conflicts = conflicts;
        _functions = functions;
        _globals = globals;
    }

    /// <summary>The units, in the order of <see cref="PathOrder"/>.</summary>
    public IReadOnlyList<TranslationUnit> Units { get; }

    /// <summary>The target, the same for all units.</summary>
    public TargetLayout Target => Units[0].Target;

    /// <summary><c>main</c>.</summary>
    public Function Entry { get; }

    /// <summary>What runs before <see cref="Entry"/>, in order.</summary>
    public IReadOnlyList<Function> Startup { get; }

    /// <summary>The interrupt handlers, ordered by vector number, then name.</summary>
    public IReadOnlyList<Function> Handlers { get; }

    /// <summary>Names that two units define, with what was chosen.</summary>
    public IReadOnlyList<LinkConflict> Conflicts { get; }

    /// <summary>The body that the linker binds a name to, or null where the image has none.</summary>
    public Function? Resolve(FunctionSymbol symbol) => _functions.GetValueOrDefault(symbol);

    /// <summary>The function that the linker binds a name to that any unit may use, or null.</summary>
    public Function? Named(string name) =>
        Units
            .SelectMany(unit => unit.Functions)
            .Where(function =>
                !function.Symbol.IsStatic && string.Equals(function.Name, name, StringComparison.Ordinal)
            )
            .Select(function => Resolve(function.Symbol))
            .FirstOrDefault();

    /// <summary>The definition that the linker binds a global to; itself where only declarations exist.</summary>
    public GlobalVariable Resolve(GlobalVariable variable) => _globals.GetValueOrDefault(variable, variable);

    /// <summary>The value of a macro as the first unit that defines it writes it, or null.</summary>
    public string? Macro(string name)
    {
        foreach (var unit in Units)
        {
            if (unit.Macros.TryGetValue(name, out var value))
            {
                return value;
            }
        }

        return null;
    }
}

/// <summary>Two strong definitions of one name.</summary>
/// <param name="Name">The name.</param>
/// <param name="Chosen">Where the one that was kept stands.</param>
/// <param name="Dropped">Where the other stands.</param>
public sealed record LinkConflict(string Name, SourceRange Chosen, SourceRange Dropped);
