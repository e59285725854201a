namespace PowerLint.Program;

/// <summary>
/// Writes a unit: first everything that has a name (files come with the ranges), then bodies and initial values, which refer
/// to it by number.
/// </summary>
internal sealed partial class UnitWriter(UnitOutput output)
{
    private readonly Dictionary<SourceFile, int> _files = [];
    private readonly Dictionary<CType, int> _types = [];
    private readonly Dictionary<FunctionSymbol, int> _symbols = [];
    private readonly Dictionary<GlobalVariable, int> _globals = [];
    private readonly Dictionary<LocalVariable, int> _locals = [];
    private readonly Dictionary<object, int> _nodes = new(ReferenceEqualityComparer.Instance);
    private int _line;

    public void Write(TranslationUnit unit)
    {
        File(unit.Source);
        output.String(unit.Target.Architecture);
        output.Count(unit.Target.IntBits);
        output.Count(unit.Target.PointerBits);
        output.Flag(unit.Target.IsLittleEndian);
        output.Count(unit.Macros.Count);
        foreach (var (name, value) in unit.Macros)
        {
            output.String(name);
            output.String(value);
        }

        output.Count(unit.Symbols.Count);
        foreach (var symbol in unit.Symbols)
        {
            _symbols.Add(symbol, _symbols.Count);
            output.String(symbol.Name);
            output.Byte((byte)((symbol.IsStatic ? 1 : 0) | (symbol.IsNoReturn ? 2 : 0)));
        }

        output.Count(unit.Globals.Count);
        foreach (var global in unit.Globals)
        {
            _globals.Add(global, _globals.Count);
            Global(global);
        }

        output.Count(unit.Functions.Count);
        foreach (var function in unit.Functions)
        {
            Function(function);
        }

        foreach (var global in unit.Globals)
        {
            Initializer(global.Initializer);
        }

        output.Count(unit.Comments.Count);
        foreach (var comment in unit.Comments)
        {
            Range(comment.Range);
            output.String(comment.Text);
        }

        output.Count(unit.Gaps.Count);
        foreach (var gap in unit.Gaps)
        {
            Range(gap.Range);
            output.String(gap.Construct);
        }

        output.Count(unit.Included.Count);
        foreach (var path in unit.Included)
        {
            output.String(path);
        }
    }

    private void Global(GlobalVariable global)
    {
        Variable(global);
        output.Byte(
            (byte)(
                (global.IsExternal ? 1 : 0)
                | (global.IsDeclarationOnly ? 2 : 0)
                | (global.IsWeak ? 4 : 0)
                | (global.IsConstant ? 8 : 0)
                | (global.IsUninitialized ? 16 : 0)
                | (global.AbsoluteAddress is null ? 0 : 32)
            )
        );
        output.String(global.AliasOf);
        if (global.AbsoluteAddress is { } address)
        {
            output.Unsigned(address);
        }
    }

    private void Function(Function function)
    {
        output.Count(_symbols[function.Symbol]);
        Type(function.ReturnType);
        Range(function.Range);
        output.Byte((byte)((function.IsVariadic ? 1 : 0) | (function.IsWeak ? 2 : 0) | (function.IsNaked ? 4 : 0)));
        output.String(function.StartupSection);
        output.Flag(function.Handler is not null);
        if (function.Handler is { } handler)
        {
            output.String(handler.LinkName);
            output.String(handler.SpelledVector);
            output.Signed(handler.VectorNumber ?? -1);
            output.Flag(handler.EnablesInterruptsAtEntry);
        }

        output.Count(function.Parameters.Count);
        foreach (var parameter in function.Parameters)
        {
            Local(parameter);
        }

        Statement(function.Body);
    }

    private void Variable(Variable variable)
    {
        output.String(variable.Name);
        Type(variable.Type);
        output.Flag(variable.IsVolatile);
        Range(variable.Range);
    }

    /// <summary>0 for a local variable that is new and follows, else one more than its number.</summary>
    private void Local(LocalVariable variable)
    {
        if (_locals.TryGetValue(variable, out var number))
        {
            output.Count(number + 1);
            return;
        }

        output.Count(0);
        _locals.Add(variable, _locals.Count);
        Variable(variable);
        output.Flag(variable.IsParameter);
    }

    private void AnyVariable(Variable variable)
    {
        if (variable is GlobalVariable global)
        {
            output.Flag(true);
            output.Count(_globals[global]);
        }
        else
        {
            output.Flag(false);
            Local((LocalVariable)variable);
        }
    }

    private void Initializer(Initializer? initializer)
    {
        // 0 for none; an initial value without an entry is not the same.
        output.Count(initializer is null ? 0 : initializer.Entries.Count + 1);
        foreach (var entry in initializer?.Entries ?? [])
        {
            output.Signed(entry.OffsetBytes);
            switch (entry)
            {
                case ValueEntry value:
                    output.Flag(true);
                    Expression(value.Value);
                    BitField(value.BitField);
                    break;
                case BytesEntry bytes:
                    output.Flag(false);
                    output.Bytes(bytes.Bytes);
                    output.Count(bytes.ElementBytes);
                    break;
                default:
                    throw new NotSupportedException(entry.GetType().Name);
            }
        }
    }

    private void Symbol(FunctionSymbol symbol) => output.Count(_symbols[symbol]);

    private void BitField(BitField? field)
    {
        output.Flag(field is not null);
        if (field is not null)
        {
            output.Count(field.BitOffset);
            output.Count(field.BitWidth);
            output.Count(field.StorageBits);
        }
    }

    private void Type(CType? type)
    {
        if (type is null)
        {
            output.Count(0);
            return;
        }

        // 1 for a type that is new and follows, else two more than its number.
        if (_types.TryGetValue(type, out var number))
        {
            output.Count(number + 2);
            return;
        }

        _types.Add(type, _types.Count);
        output.Count(1);
        switch (type)
        {
            case IntegerType integer:
                output.Byte((byte)TypeTag.Integer);
                output.Count(integer.Bits);
                output.Flag(integer.IsSigned);
                break;
            case FloatingType floating:
                output.Byte((byte)TypeTag.Floating);
                output.Count(floating.Bits);
                break;
            case PointerType pointer:
                output.Byte((byte)TypeTag.Pointer);
                output.Count(pointer.Bits);
                break;
            case AggregateType aggregate:
                output.Byte((byte)TypeTag.Aggregate);
                output.Signed(aggregate.Bytes);
                break;
            case VoidType:
                output.Byte((byte)TypeTag.Void);
                break;
            default:
                throw new NotSupportedException(type.GetType().Name);
        }
    }

    /// <summary>File, line (as a difference to the line before) and column of the start; the same of the end where they differ.</summary>
    private void Range(SourceRange range)
    {
        File(range.Start.File);
        Position(range.Start);
        var isOneFile = range.Start.File == range.End.File;
        output.Flag(isOneFile);
        if (!isOneFile)
        {
            File(range.End.File);
        }

        Position(range.End);
    }

    private void Position(SourcePosition position)
    {
        output.Signed((long)position.Line - _line);
        output.Signed(position.Column);
        _line = position.Line;
    }

    private void File(SourceFile file)
    {
        if (_files.TryGetValue(file, out var number))
        {
            output.Count(number + 1);
            return;
        }

        _files.Add(file, _files.Count);
        output.Count(0);
        output.String(file.Path);
        output.Flag(file.IsSystem);
    }
}
