using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Lowers one parsed unit. Only what the image can reach from the unit is lowered: functions that other units see, handlers
/// and start-up code, and whatever those mention; so headers full of inline functions cost next to nothing.
/// </summary>
internal sealed class UnitLowering
{
    private readonly ClangUnit _unit;
    private readonly SourceFile _source;
    private readonly HandlerRecognition _handlers;
    private readonly Dictionary<string, FunctionSymbol> _symbols = new(StringComparer.Ordinal);
    private readonly Dictionary<string, DeclaredFunction> _declared = new(StringComparer.Ordinal);
    private readonly Dictionary<string, GlobalVariable> _externals = new(StringComparer.Ordinal);
    private readonly Dictionary<ClangCursor, GlobalVariable> _statics = [];
    private readonly List<GlobalVariable> _globals = [];
    private readonly List<(Function Function, int Order)> _functions = [];
    private readonly List<LoweringGap> _gaps = [];
    private readonly Queue<Action> _work = new();

    // Definitions that nobody outside the unit sees and that have no attribute, with their order: found again when mentioned.
    // One a thread, emptied for each unit: headers have thousands.
    [ThreadStatic]
    private static Dictionary<nint, (ClangCursor Definition, int Order)>? s_inner;
    private readonly Dictionary<nint, (ClangCursor Definition, int Order)> _inner = s_inner ??= [];
    private int _unnamed;
    private int _leftOut;
    private SourceRange _firstLeftOut = SourceRange.None;

    public UnitLowering(
        ClangUnit unit,
        SourceFile source,
        string workingDirectory,
        FileTraits traits,
        IReadOnlyList<string> vectors,
        bool isCPlusPlus
    )
    {
        _unit = unit;
        _inner.Clear();
        _source = source;
        IsCPlusPlus = isCPlusPlus;
        Sources = new SourceMap(unit, workingDirectory, traits);
        var architecture = unit.Triple.Split('-')[0];
        Target = new TargetLayout(
            architecture.StartsWith("arm", StringComparison.Ordinal)
            || architecture.StartsWith("thumb", StringComparison.Ordinal)
                ? "arm"
                : architecture,
            IntBits(architecture),
            unit.PointerBits,
            IsLittleEndian: true
        );
        Types = new TypeLowering(Target);
        _handlers = new HandlerRecognition(Sources, Target.Architecture, vectors);
    }

    public TargetLayout Target { get; }

    /// <summary>Whether the unit is C++: of it, free functions are lowered.</summary>
    public bool IsCPlusPlus { get; }

    public TypeLowering Types { get; }

    public SourceMap Sources { get; }

    /// <summary>Lowers the unit.</summary>
    public TranslationUnit Lower(
        IReadOnlyDictionary<string, string> macros,
        IReadOnlyList<Comment> comments,
        CancellationToken cancellation
    )
    {
        CollectDeclarations();
        if (_leftOut > 0)
        {
            ReportGap(_firstLeftOut, $"C++ methods and templates ({_leftOut} from here on)");
        }

        while (_work.TryDequeue(out var step))
        {
            cancellation.ThrowIfCancellationRequested();
            step();
        }

        return new TranslationUnit(
            _source,
            Target,
            [.. _functions.OrderBy(item => item.Order).Select(item => item.Function)],
            _globals,
            [.. _symbols.Values],
            macros,
            comments,
            _gaps
        )
        {
            Included =
            [
                .. _unit
                    .Files()
                    .Select(file => Sources.FileOf(LibClang.clang_getLocationForOffset(_unit.Handle, file, 0)).Path)
                    .Prepend(_source.Path)
                    .Distinct(StringComparer.Ordinal),
            ],
        };
    }

    /// <summary>How deeply expressions and statements may nest in one another: far more than people write, and less than any
    /// later stage's stack holds.</summary>
    public const int MaximumNesting = 10_000;

    /// <summary>How deep in expressions and statements the lowering is.</summary>
    public int Nesting { get; set; }

    public void ReportGap(SourceRange range, string construct) => _gaps.Add(new LoweringGap(range, construct));

    /// <summary>A name in angle brackets for an object that has none.</summary>
    public string UnnamedObject(string what) => $"<{what} {++_unnamed}>";

    /// <summary>The symbol of a function that is mentioned; its body, where the unit has one, is lowered too.</summary>
    public FunctionSymbol Mention(ClangCursor function)
    {
        var name = NameOf(function);
        if (_symbols.TryGetValue(name, out var symbol))
        {
            return symbol;
        }

        var declared = DeclarationOf(function, name);
        symbol = new FunctionSymbol(name, function.Linkage == CXLinkageKind.Internal)
        {
            IsNoReturn = IsNoReturn(function, declared),
        };
        _symbols.Add(name, symbol);
        if (declared is not null && (declared.Body.Exists || declared.AliasTarget is not null))
        {
            _work.Enqueue(() => LowerFunction(symbol, declared));
        }

        return symbol;
    }

    /// <summary>The symbol of a function known by name only: a compiler intrinsic, or a jump in assembly.</summary>
    public FunctionSymbol Mention(string name)
    {
        if (_symbols.TryGetValue(name, out var symbol))
        {
            return symbol;
        }

        if (_declared.TryGetValue(name, out var declared))
        {
            return Mention(declared.First);
        }

        foreach (var (definition, _) in _inner.Values)
        {
            if (string.Equals(definition.Spelling, name, StringComparison.Ordinal))
            {
                return Mention(definition);
            }
        }

        symbol = new FunctionSymbol(name, isStatic: false)
        {
            IsNoReturn = name is "__builtin_unreachable" or "__builtin_trap" or "__builtin_abort",
        };
        _symbols.Add(name, symbol);
        return symbol;
    }

    /// <summary>The global of a variable with static storage.</summary>
    /// <param name="variable">One of its declarations.</param>
    /// <param name="owner">The function that it is declared in, or null: its initial value may name the function's labels.</param>
    public GlobalVariable MentionVariable(ClangCursor variable, FunctionLowering? owner = null)
    {
        var isExternal = variable.Linkage == CXLinkageKind.External;
        var key = variable.Canonical;
        var name = variable.Spelling;
        if (isExternal ? _externals.TryGetValue(name, out var global) : _statics.TryGetValue(key, out global))
        {
            return global;
        }

        var definition = variable.Definition;
        var declaration = definition.Exists ? definition : variable;
        var attributes = DeclarationAttributes.Of([variable, declaration, key]);
        global = new GlobalVariable(
            name,
            Types.Lower(declaration.Type),
            TypeLowering.IsVolatile(declaration.Type),
            Sources.Range(declaration)
        )
        {
            IsExternal = isExternal,
            IsDeclarationOnly =
                !definition.Exists && variable.StorageClass == CXStorageClass.Extern && attributes.Alias is null,
            IsWeak = attributes.IsWeak,
            IsConstant = TypeLowering.IsConstant(declaration.Type),
            IsUninitialized = attributes.Section?.StartsWith(".noinit", StringComparison.Ordinal) == true,
            AliasOf = attributes.Alias,
        };
        if (isExternal)
        {
            _externals.Add(name, global);
        }
        else
        {
            _statics.Add(key, global);
        }

        _globals.Add(global);
        var initializer = declaration.VariableInitializer;
        if (initializer.Exists)
        {
            _work.Enqueue(() =>
                global.Initializer = new InitializerLowering(
                    new ExpressionLowering(this, function: null, labels: owner)
                ).Lower(declaration.Type, initializer)
            );
        }

        return global;
    }

    /// <summary>A global that the source gives no name: a string, or a compound literal at file scope.</summary>
    public GlobalVariable AddUnnamed(
        string what,
        CType type,
        bool isConstant,
        SourceRange range,
        Initializer? initializer
    )
    {
        var global = new GlobalVariable(UnnamedObject(what), type, isVolatile: false, range)
        {
            IsConstant = isConstant,
            Initializer = initializer,
        };
        _globals.Add(global);
        return global;
    }

    // What the unit's headers declare and define for anybody's use is not looked at before it is used.
    private bool IsPassedOver(ClangCursor function, int order)
    {
        if (IsCPlusPlus || Target.Architecture == "msp430" || function.HasAttributes)
        {
            return false;
        }

        // Thousands in every unit: `static` is cheaper to ask for than a body, and enough for nearly all that is the unit's own.
        if (function.StorageClass != CXStorageClass.Static)
        {
            if (!function.IsDefinition)
            {
                return true;
            }

            if (function.Linkage != CXLinkageKind.Internal)
            {
                return false;
            }
        }

        _inner.Add(function.Identity, (function, order));
        return true;
    }

    private DeclaredFunction? DeclarationOf(ClangCursor function, string name)
    {
        var declared = _declared.GetValueOrDefault(name);
        if (
            declared is not { Body.Exists: true } and not { AliasTarget: not null }
            && function.Definition is { Exists: true } definition
            && _inner.TryGetValue(definition.Identity, out var inner)
        )
        {
            declared ??= new DeclaredFunction(function.Canonical, inner.Order);
            declared.Body = definition;
            declared.Order = inner.Order;
            _declared[name] = declared;
        }

        return declared;
    }

    private static int IntBits(string architecture) => architecture is "avr" or "msp430" ? 16 : 32;

    private void CollectDeclarations()
    {
        var roots = new List<ClangCursor>();
        var variables = new List<ClangCursor>();
        var order = 0;
        foreach (var cursor in Declarations(_unit.Root))
        {
            order++;
            if (cursor.Kind == CXCursorKind.VarDecl)
            {
                if (cursor.Linkage == CXLinkageKind.External && IsDefiningDeclaration(cursor))
                {
                    variables.Add(cursor);
                }

                continue;
            }

            if (cursor.Kind != CXCursorKind.FunctionDecl || IsPassedOver(cursor, order))
            {
                continue;
            }

            var name = NameOf(cursor);
            if (!_declared.TryGetValue(name, out var declared))
            {
                declared = new DeclaredFunction(cursor.Canonical, order);
                _declared.Add(name, declared);
            }

            if (cursor.HasAttributes)
            {
                declared.Attributes = declared.Attributes.With(cursor.PrintDeclaration());
                if (declared.AliasTarget is not null && !declared.Body.Exists)
                {
                    declared.Body = default;
                    roots.Add(cursor);
                }
            }

            if (cursor.IsDefinition)
            {
                declared.Body = cursor;
                declared.Order = order;
                roots.Add(cursor);
            }
        }

        foreach (var root in roots)
        {
            var declared = _declared[NameOf(root)];
            if (IsRoot(root, declared))
            {
                Mention(root);
            }
        }

        foreach (var variable in variables)
        {
            MentionVariable(variable);
        }
    }

    // C++ functions may share a name, and differ in their parameters and namespaces.
    private string NameOf(ClangCursor function)
    {
        var name = function.Spelling;
        if (!IsCPlusPlus || string.Equals(name, "main", StringComparison.Ordinal) || function.LinkName == name)
        {
            return name;
        }

        var shown = function.DisplayName;
        for (
            var parent = function.SemanticParent;
            parent.Kind == CXCursorKind.Namespace;
            parent = parent.SemanticParent
        )
        {
            shown = $"{parent.Spelling}::{shown}";
        }

        return shown;
    }

    // C++ groups declarations: extern "C" { … }, namespaces. What stands in classes and templates is not looked into.
    private List<ClangCursor> Declarations(ClangCursor parent)
    {
        if (!IsCPlusPlus)
        {
            return parent.FunctionsAndVariables();
        }

        var children = parent.Children();
        var declarations = new List<ClangCursor>();
        foreach (var cursor in children)
        {
            switch (cursor.Kind)
            {
                case CXCursorKind.LinkageSpec or CXCursorKind.Namespace or CXCursorKind.UnexposedDecl:
                    declarations.AddRange(Declarations(cursor));
                    break;
                case CXCursorKind.CXXMethod
                or CXCursorKind.CXXConstructor
                or CXCursorKind.CXXDestructor
                or CXCursorKind.CXXConversion
                or CXCursorKind.FunctionTemplate
                or CXCursorKind.ClassTemplate
                or CXCursorKind.ClassDecl
                or CXCursorKind.StructDecl:
                    CountLeftOut(cursor);
                    break;
                default:
                    declarations.Add(cursor);
                    break;
            }
        }

        return declarations;
    }

    private void CountLeftOut(ClangCursor cursor)
    {
        if (LibClang.clang_Location_isInSystemHeader(cursor.Location) != 0)
        {
            return;
        }

        var left = cursor.Kind is CXCursorKind.ClassDecl or CXCursorKind.StructDecl
            ? cursor
                .Children()
                .Where(member =>
                    member.Kind
                        is CXCursorKind.CXXMethod
                            or CXCursorKind.CXXConstructor
                            or CXCursorKind.CXXDestructor
                            or CXCursorKind.CXXConversion
                            or CXCursorKind.FunctionTemplate
                    && member.IsDefinition
                )
            : [cursor];
        foreach (var member in left.Where(member => member.IsDefinition || member.Kind is CXCursorKind.ClassTemplate))
        {
            _leftOut++;
            _firstLeftOut = _leftOut == 1 ? Sources.Range(member) : _firstLeftOut;
        }
    }

    // A tentative definition has no "definition" for libclang; `extern` without a value only declares.
    private static bool IsDefiningDeclaration(ClangCursor variable) =>
        variable.StorageClass != CXStorageClass.Extern
        || variable.VariableInitializer.Exists
        || (variable.HasAttributes && variable.PrintDeclaration().Contains("alias(", StringComparison.Ordinal));

    private bool IsRoot(ClangCursor function, DeclaredFunction declared) =>
        declared.Attributes.IsUsed
        || declared.Attributes.IsConstructor
        || declared.Attributes.StartupSection is not null
        || _handlers.Recognize(declared.Body.Exists ? declared.Body : function, declared.Attributes) is not null
        || (
            function.Linkage == CXLinkageKind.External
            && (!function.IsInline || declared.First.StorageClass == CXStorageClass.Extern)
            && !declared.Attributes.IsGnuInline
        );

    // The GNU spelling makes it a part of the function's type, C11's an attribute of the declaration.
    private static bool IsNoReturn(ClangCursor function, DeclaredFunction? declared) =>
        declared?.Attributes.IsNoReturn == true
        || (function.HasAttributes && DeclarationAttributes.Of([function]).IsNoReturn)
        || function.Type.Spelling.Contains("noreturn", StringComparison.Ordinal);

    private void LowerFunction(FunctionSymbol symbol, DeclaredFunction declared)
    {
        var handler = _handlers.Recognize(declared.Body.Exists ? declared.Body : declared.First, declared.Attributes);
        var function = declared.Body.Exists
            ? new FunctionLowering(this).Lower(symbol, declared, handler)
            : LowerAlias(symbol, declared, handler);
        symbol.Definition = function;
        _functions.Add((function, declared.Order));
    }

    // An alias has the body of its target: written as a call, so that the linker may bind the target elsewhere.
    private Function LowerAlias(FunctionSymbol symbol, DeclaredFunction declared, InterruptHandler? handler)
    {
        var range = Sources.Range(declared.First);
        var target = Mention(declared.AliasTarget!);
        var type = declared.First.Type;
        var parameters = Enumerable
            .Range(0, Math.Max(0, type.ParameterCount))
            .Select(i => new LocalVariable(
                UnnamedObject("parameter"),
                Types.LowerValue(type.Parameter(i)),
                isVolatile: false,
                range,
                isParameter: true
            ))
            .ToArray();
        var returnType = Types.Lower(declared.First.ResultType);
        var call = new Call(
            returnType,
            range,
            new AddressOfFunction(Types.Pointer, range, target),
            [
                .. parameters.Select(parameter => new Load(
                    parameter.Type,
                    range,
                    new AddressOfVariable(Types.Pointer, range, parameter),
                    isVolatile: false
                )),
            ]
        );
        Statement body = returnType is VoidType ? new ExpressionStatement(range, call) : new Return(range, call);
        return new Function(symbol, returnType, parameters, type.IsVariadic, new Block(range, [body]), range)
        {
            IsWeak = declared.Attributes.IsWeak,
            Handler = handler,
        };
    }
}

/// <summary>What the unit says of one function, over all its declarations.</summary>
internal sealed class DeclaredFunction(ClangCursor first, int order)
{
    public ClangCursor First { get; } = first;

    public ClangCursor Body { get; set; }

    public int Order { get; set; } = order;

    public DeclarationAttributes Attributes { get; set; } = DeclarationAttributes.None;

    public string? AliasTarget => Attributes.Alias;
}
