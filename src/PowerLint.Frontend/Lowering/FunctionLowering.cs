using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Lowers one function: its parameters, local names and labels.</summary>
internal sealed class FunctionLowering
{
    private readonly UnitLowering _unit;
    private readonly Dictionary<ClangCursor, LocalVariable> _locals = [];
    private readonly Dictionary<ClangCursor, LocalVariable> _lengths = [];
    private readonly Dictionary<nint, string> _labels = [];
    private readonly HashSet<string> _labelNames = new(StringComparer.Ordinal);

    public FunctionLowering(UnitLowering unit)
    {
        _unit = unit;
        Expressions = new ExpressionLowering(unit, function: this, labels: this);
        Statements = new StatementLowering(unit, this);
    }

    public ExpressionLowering Expressions { get; }

    public StatementLowering Statements { get; }

    public CType ReturnType { get; private set; } = VoidType.Instance;

    /// <summary>Lowers the definition.</summary>
    public Function Lower(FunctionSymbol symbol, DeclaredFunction declared, InterruptHandler? handler)
    {
        var definition = declared.Body;
        ReturnType = _unit.Types.Lower(definition.ResultType);
        // Not the children: a returned function pointer's parameters stand among them.
        var parameters = Enumerable
            .Range(0, Math.Max(0, definition.ArgumentCount))
            .Select(i => Declare(definition.Argument(i), isParameter: true))
            .ToArray();
        var body = definition.Children().FirstOrDefault(child => child.Kind == CXCursorKind.CompoundStmt);
        return new Function(
            symbol,
            ReturnType,
            parameters,
            definition.Type.IsVariadic,
            Statements.LowerBlock(body),
            _unit.Sources.Range(definition)
        )
        {
            IsWeak = declared.Attributes.IsWeak,
            IsNaked = declared.Attributes.IsNaked,
            StartupSection = declared.Attributes.StartupSection,
            Handler = handler,
        };
    }

    /// <summary>Makes the local variable of a declaration.</summary>
    public LocalVariable Declare(ClangCursor declaration, bool isParameter)
    {
        var name = declaration.Spelling;
        var variable = new LocalVariable(
            name.Length == 0 ? _unit.UnnamedObject("parameter") : name,
            isParameter ? _unit.Types.LowerValue(declaration.Type) : _unit.Types.Lower(declaration.Type),
            !(isParameter && TypeLowering.IsArray(declaration.Type)) && TypeLowering.IsVolatile(declaration.Type),
            _unit.Sources.Range(declaration),
            isParameter
        );
        _locals[declaration.Canonical] = variable;
        return variable;
    }

    /// <summary>
    /// Makes the unnamed variable that keeps the number of elements of an array of variable length: C fixes it when the
    /// declaration is reached (C11 6.7.6.2), whatever happens to the variables that it was computed from.
    /// </summary>
    public LocalVariable DeclareLength(ClangCursor declaration)
    {
        var name = _unit.UnnamedObject("length");
        var length = new LocalVariable(
            name,
            _unit.Types.Int,
            isVolatile: false,
            _unit.Sources.Range(declaration),
            false
        );
        _lengths[declaration.Canonical] = length;
        return length;
    }

    /// <summary>The number of elements of an array of variable length, or null.</summary>
    public LocalVariable? LengthOf(ClangCursor declaration) => _lengths.GetValueOrDefault(declaration.Canonical);

    /// <summary>The local variable of a declaration, or null.</summary>
    public LocalVariable? Local(ClangCursor declaration) => _locals.GetValueOrDefault(declaration.Canonical);

    /// <summary>The name of a label: as written, numbered where a local label (<c>__label__</c>) repeats one.</summary>
    public string LabelName(ClangCursor label)
    {
        // The statement itself is the key: cursors for it differ in what they were reached through.
        var statement = label.Raw.data1;
        if (!_labels.TryGetValue(statement, out var name))
        {
            var written = label.Spelling;
            name = written;
            for (var i = 2; !_labelNames.Add(name); i++)
            {
                name = $"{written}.{i}";
            }

            _labels.Add(statement, name);
        }

        return name;
    }
}
