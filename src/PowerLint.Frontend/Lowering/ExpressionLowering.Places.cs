using PowerLint.Program;

namespace PowerLint.Frontend;

internal sealed partial class ExpressionLowering
{
    /// <summary>The object that an expression designates; a temporary where it is only a value.</summary>
    public Place PlaceOf(ClangCursor cursor)
    {
        switch (cursor.Kind)
        {
            case CXCursorKind.ParenExpr:
                return PlaceOf(FirstExpression(cursor));
            case CXCursorKind.DeclRefExpr
                when Variable(cursor) is { } variable && !TypeLowering.IsReference(cursor.Referenced.Type):
                return new Place(
                    new AddressOfVariable(Types.Pointer, Range(cursor), variable),
                    cursor.Type,
                    null,
                    variable is LocalVariable { IsParameter: true }
                        && (TypeLowering.IsArray(cursor.Type) || TypeLowering.IsFunction(cursor.Type))
                );
            case CXCursorKind.MemberRefExpr:
                return Member(cursor);
            case CXCursorKind.ArraySubscriptExpr:
                return Element(cursor);
            case CXCursorKind.UnaryOperator when cursor.UnaryOperator == CXUnaryOperatorKind.Deref:
                return new Place(Value(FirstExpression(cursor)), cursor.Type, null);
            case CXCursorKind.UnaryOperator when cursor.UnaryOperator == CXUnaryOperatorKind.Extension:
                return PlaceOf(FirstExpression(cursor));
            case CXCursorKind.StringLiteral:
                return new Place(
                    new AddressOfVariable(Types.Pointer, Range(cursor), String(cursor)),
                    cursor.Type,
                    null
                );
            case CXCursorKind.CompoundLiteralExpr:
                return new Place(CompoundLiteral(cursor), cursor.Type, null);
            case CXCursorKind.GenericSelectionExpr when Selected(cursor) is { } selected:
                return PlaceOf(selected);
            // Conversions between qualifiers, and names such as __func__, which stand for an array.
            case CXCursorKind.UnexposedExpr
                when cursor.Children() is [{ IsExpression: true } only]
                    && (TypeLowering.IsArray(cursor.Type) || IsObject(only)):
                return PlaceOf(only);
            default:
                return Temporary(cursor);
        }
    }

    private static bool IsObject(ClangCursor cursor) =>
        cursor.Kind
            is CXCursorKind.DeclRefExpr
                or CXCursorKind.MemberRefExpr
                or CXCursorKind.ArraySubscriptExpr
                or CXCursorKind.CompoundLiteralExpr
                or CXCursorKind.ParenExpr
        || (cursor.Kind == CXCursorKind.UnaryOperator && cursor.UnaryOperator == CXUnaryOperatorKind.Deref);

    private Variable? Variable(ClangCursor cursor)
    {
        var referenced = cursor.Referenced;
        return referenced.Kind switch
        {
            CXCursorKind.ParmDecl => function?.Local(referenced),
            CXCursorKind.VarDecl when referenced.HasStaticStorage => unit.MentionVariable(referenced),
            CXCursorKind.VarDecl => function?.Local(referenced),
            _ => null,
        };
    }

    private Place Member(ClangCursor cursor)
    {
        var @base = FirstExpression(cursor);
        var isArrow = IsPointer(@base.Type);
        var address = isArrow ? Value(@base) : PlaceOf(@base).Address;
        var record = isArrow ? TypeLowering.PointeeOf(@base.Type) : @base.Type;
        var field = cursor.Referenced;
        var range = Range(cursor);
        if (OffsetBits(record, field) is not { } offset)
        {
            return new Place(Unknown(cursor, "member whose place is not known", address), cursor.Type, null);
        }

        if (!field.IsBitField)
        {
            return new Place(Folding.Offset(address, offset / 8, Types.Int, range), cursor.Type, null);
        }

        var (bytes, access) = TypeLowering.Access(offset, field.BitFieldWidth, Types.Record(record).SizeBytes);
        return new Place(Folding.Offset(address, bytes, Types.Int, range), cursor.Type, access);
    }

    // The field may belong to an unnamed structure or union inside the record, which the tree leaves out.
    private long? OffsetBits(ClangType record, ClangCursor field)
    {
        var layout = Types.Record(record);
        foreach (var candidate in layout.Fields)
        {
            if (candidate.Cursor.Equals(field))
            {
                return candidate.OffsetBits < 0 ? null : candidate.OffsetBits;
            }
        }

        foreach (var candidate in layout.Fields)
        {
            if (
                candidate.Name.Length == 0
                && TypeLowering.IsRecord(candidate.Type)
                && OffsetBits(candidate.Type, field) is { } inner
            )
            {
                return candidate.OffsetBits + inner;
            }
        }

        return null;
    }

    private Place Element(ClangCursor cursor)
    {
        var parts = cursor.Children();
        var (pointer, index) = IsPointer(parts[0].Type) ? (parts[0], parts[1]) : (parts[1], parts[0]);
        var step = TypeLowering.StepBytes(pointer.Type);
        var address = Value(pointer);
        return step is { } bytes
            ? new Place(Folding.Offset(address, Value(index), bytes, Range(cursor)), cursor.Type, null)
            : new Place(
                Unknown(cursor, "element of an array of variable length", address, Value(index)),
                cursor.Type,
                null
            );
    }

    private GlobalVariable String(ClangCursor cursor)
    {
        var array = TypeLowering.Strip(cursor.Type);
        var elementBytes = (int)Math.Max(1, array.ArrayElement.SizeBytes);
        var bytes = StringLiteral.Bytes(cursor.Spelling, elementBytes, (int)Math.Max(0, array.ArrayLength));
        return unit.AddUnnamed(
            "string",
            Types.Lower(cursor.Type),
            isConstant: true,
            Range(cursor),
            new Initializer([new BytesEntry(0, bytes, elementBytes)])
        );
    }

    private Expression CompoundLiteral(ClangCursor cursor)
    {
        var range = Range(cursor);
        var type = Types.Lower(cursor.Type);
        var initializer = new InitializerLowering(this).Lower(cursor.Type, LastExpression(cursor));
        if (function is null)
        {
            var global = unit.AddUnnamed("literal", type, TypeLowering.IsConstant(cursor.Type), range, initializer);
            return new AddressOfVariable(Types.Pointer, range, global);
        }

        var variable = new LocalVariable(
            unit.UnnamedObject("literal"),
            type,
            TypeLowering.IsVolatile(cursor.Type),
            range,
            isParameter: false
        );
        return new InitializedTemporary(Types.Pointer, range, variable, initializer);
    }

    private Place Temporary(ClangCursor cursor)
    {
        var range = Range(cursor);
        var value = Value(cursor);
        var variable = new LocalVariable(
            unit.UnnamedObject("temporary"),
            value.Type,
            isVolatile: false,
            range,
            isParameter: false
        );
        var initializer = new Initializer([new ValueEntry(0, value, null)]);
        return new Place(new InitializedTemporary(Types.Pointer, range, variable, initializer), cursor.Type, null);
    }
}
