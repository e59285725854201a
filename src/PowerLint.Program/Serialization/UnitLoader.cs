namespace PowerLint.Program;

/// <summary>Reads what <see cref="UnitWriter"/> writes, in the same order.</summary>
internal sealed partial class UnitLoader(UnitInput input)
{
    private readonly List<SourceFile> _files = [];
    private readonly List<CType> _types = [];
    private readonly List<FunctionSymbol> _symbols = [];
    private readonly List<GlobalVariable> _globals = [];
    private readonly List<LocalVariable> _locals = [];
    private readonly List<object> _nodes = [];
    private int _line;

    public TranslationUnit Load()
    {
        var source = File();
        var target = new TargetLayout(input.Name(), input.Number(), input.Number(), input.Flag());
        var macros = new SortedDictionary<string, string>(StringComparer.Ordinal);
        for (var count = input.Count(); count > 0; count--)
        {
            macros.Add(input.Name(), input.Name());
        }

        for (var count = input.Count(); count > 0; count--)
        {
            var name = input.Name();
            var flags = input.Byte();
            _symbols.Add(new FunctionSymbol(name, (flags & 1) != 0) { IsNoReturn = (flags & 2) != 0 });
        }

        for (var count = input.Count(); count > 0; count--)
        {
            _globals.Add(Global());
        }

        var functions = new Function[input.Count()];
        for (var i = 0; i < functions.Length; i++)
        {
            functions[i] = Function();
        }

        foreach (var global in _globals)
        {
            global.Initializer = Initializer();
        }

        var comments = new Comment[input.Count()];
        for (var i = 0; i < comments.Length; i++)
        {
            comments[i] = new Comment(Range(), input.Name());
        }

        var gaps = new LoweringGap[input.Count()];
        for (var i = 0; i < gaps.Length; i++)
        {
            gaps[i] = new LoweringGap(Range(), input.Name());
        }

        var included = new string[input.Count()];
        for (var i = 0; i < included.Length; i++)
        {
            included[i] = input.Name();
        }

        return new TranslationUnit(source, target, functions, _globals, _symbols, macros, comments, gaps)
        {
            Included = included,
        };
    }

    private GlobalVariable Global()
    {
        var (name, type, isVolatile, range) = Variable();
        var flags = input.Byte();
        return new GlobalVariable(name, type, isVolatile, range)
        {
            IsExternal = (flags & 1) != 0,
            IsDeclarationOnly = (flags & 2) != 0,
            IsWeak = (flags & 4) != 0,
            IsConstant = (flags & 8) != 0,
            IsUninitialized = (flags & 16) != 0,
            AliasOf = input.String(),
            AbsoluteAddress = (flags & 32) != 0 ? input.Unsigned() : null,
        };
    }

    private Function Function()
    {
        var symbol = Symbol();
        var returnType = Type();
        var range = Range();
        var flags = input.Byte();
        var section = input.String();
        var handler = input.Flag() ? Handler() : null;
        var parameters = new LocalVariable[input.Count()];
        for (var i = 0; i < parameters.Length; i++)
        {
            parameters[i] = Local();
        }

        var function = new Function(symbol, returnType, parameters, (flags & 1) != 0, (Block)Statement(), range)
        {
            IsWeak = (flags & 2) != 0,
            IsNaked = (flags & 4) != 0,
            StartupSection = section,
            Handler = handler,
        };
        symbol.Definition = function;
        return function;
    }

    private InterruptHandler Handler()
    {
        var linkName = input.Name();
        var spelled = input.Name();
        var number = input.SignedNumber();
        return new InterruptHandler(linkName, spelled, number < 0 ? null : number, input.Flag());
    }

    private (string Name, CType Type, bool IsVolatile, SourceRange Range) Variable() =>
        (input.Name(), Type(), input.Flag(), Range());

    private LocalVariable Local()
    {
        var number = input.Number();
        if (number > 0)
        {
            return _locals[number - 1];
        }

        // Numbered before it is read, as the writer does; nothing in it refers to a local variable.
        var (name, type, isVolatile, range) = Variable();
        var variable = new LocalVariable(name, type, isVolatile, range, input.Flag());
        _locals.Add(variable);
        return variable;
    }

    private Variable AnyVariable() => input.Flag() ? _globals[input.Number()] : Local();

    private FunctionSymbol Symbol() => _symbols[input.Number()];

    private Initializer? Initializer()
    {
        var count = input.Number();
        if (count == 0)
        {
            return null;
        }

        // Grown as they come: a count alone must not take memory.
        var entries = new List<InitializerEntry>();
        for (; count > 1; count--)
        {
            var offset = input.Signed();
            entries.Add(
                input.Flag()
                    ? new ValueEntry(offset, Expression(), BitField())
                    : new BytesEntry(offset, input.Bytes(), input.Number())
            );
        }

        return new Initializer(entries);
    }

    private BitField? BitField() => input.Flag() ? new BitField(input.Number(), input.Number(), input.Number()) : null;

    private CType Type() => OptionalType() ?? throw UnitInput.Broken();

    private CType? OptionalType()
    {
        var number = input.Number();
        if (number == 0)
        {
            return null;
        }

        if (number > 1)
        {
            return _types[number - 2];
        }

        CType type = (TypeTag)input.Byte() switch
        {
            TypeTag.Integer => new IntegerType(input.Number(), input.Flag()),
            TypeTag.Floating => new FloatingType(input.Number()),
            TypeTag.Pointer => new PointerType(input.Number()),
            TypeTag.Aggregate => new AggregateType(input.Signed()),
            TypeTag.Void => VoidType.Instance,
            _ => throw UnitInput.Broken(),
        };
        _types.Add(type);
        return type;
    }

    private SourceRange Range()
    {
        var startFile = File();
        var start = Position(startFile);
        var endFile = input.Flag() ? startFile : File();
        return new SourceRange(start, Position(endFile));
    }

    private SourcePosition Position(SourceFile file)
    {
        var line = checked((int)(input.Signed() + _line));
        _line = line;
        return new SourcePosition(file, line, input.SignedNumber());
    }

    private SourceFile File()
    {
        var number = input.Number();
        if (number > 0)
        {
            return _files[number - 1];
        }

        var file = new SourceFile(input.Name(), input.Flag());
        _files.Add(file == SourceFile.None ? SourceFile.None : file);
        return _files[^1];
    }
}
