using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Lowers initialisers. The tree shows lists as written, so brace elision and designators are resolved here, after C11 6.7.9.
/// </summary>
internal sealed class InitializerLowering(ExpressionLowering expressions)
{
    private const int LongestRange = 65536;

    private readonly List<InitializerEntry> _entries = [];

    private UnitLowering Unit => expressions.Unit;

    /// <summary>Lowers the initial value of an object.</summary>
    public Initializer Lower(ClangType type, ClangCursor initializer)
    {
        FillObject(type, 0, initializer);
        return new Initializer(ConstantRuns.Compact(_entries));
    }

    private void FillObject(ClangType type, long offset, ClangCursor initializer)
    {
        var value = ExpressionLowering.SkipParentheses(initializer);
        if (TryFillString(type, offset, value))
        {
            return;
        }

        if (value.Kind == CXCursorKind.InitListExpr)
        {
            FillList(type, offset, value);
        }
        else if (
            TypeLowering.IsArray(type)
            && ExpressionLowering.SkipConversions(value) is { Kind: CXCursorKind.CompoundLiteralExpr } literal
        )
        {
            // GNU: an array initialised from a compound literal.
            FillObject(type, offset, literal.Children()[^1]);
        }
        else
        {
            _entries.Add(new ValueEntry(offset, expressions.ValueAs(value, Unit.Types.Lower(type)), null));
        }
    }

    private void FillList(ClangType type, long offset, ClangCursor list)
    {
        var items = new ItemReader(list.Children());
        if (TypeLowering.IsArray(type) || TypeLowering.IsRecord(type))
        {
            if (
                items.Peek() is { } only
                && items.Count == 1
                && TryFillString(type, offset, ExpressionLowering.SkipParentheses(only))
            )
            {
                return;
            }

            FillAggregate(type, offset, items, isBraced: true, first: 0);
        }
        else if (items.Peek() is { } first)
        {
            FillObject(type, offset, first);
        }
    }

    private void FillAggregate(ClangType type, long offset, ItemReader items, bool isBraced, long first)
    {
        if (TypeLowering.IsArray(type))
        {
            FillArray(TypeLowering.Strip(type), offset, items, isBraced, first);
        }
        else
        {
            FillRecord(type, offset, items, isBraced, (int)first);
        }
    }

    private void FillArray(ClangType array, long offset, ItemReader items, bool isBraced, long first)
    {
        var element = array.ArrayElement;
        var size = Math.Max(0, element.SizeBytes);
        var length =
            array.Kind == CXTypeKind.ConstantArray && array.ArrayLength > 0 ? array.ArrayLength : long.MaxValue;
        var index = first;
        while (items.Peek() is { } item)
        {
            if (Designation.Of(item) is { } designation)
            {
                if (!isBraced)
                {
                    return;
                }

                index = FillDesignatedElement(element, size, offset, items, designation) + 1;
                continue;
            }

            if (index >= length)
            {
                if (isBraced)
                {
                    items.SkipAll();
                }

                return;
            }

            FillNext(element, offset + (index * size), items);
            index++;
        }
    }

    private long FillDesignatedElement(
        ClangType element,
        long size,
        long offset,
        ItemReader items,
        Designation designation
    )
    {
        var (low, high, rest) = designation.TakeIndex(Unit.Sources);
        items.Skip();
        if (low < 0 || high - low > LongestRange)
        {
            Unit.ReportGap(Unit.Sources.Range(designation.Value), "range of array elements");
            return low;
        }

        for (var index = low; index <= high; index++)
        {
            var isLast = index == high;
            FillDesignated(element, offset + (index * size), isLast ? items : ItemReader.Empty, rest);
        }

        return high;
    }

    private void FillRecord(ClangType type, long offset, ItemReader items, bool isBraced, int first)
    {
        var record = Unit.Types.Record(type);
        var index = first;
        while (items.Peek() is { } item)
        {
            if (Designation.Of(item) is { } designation)
            {
                if (!isBraced || designation.NextMember is not { } member)
                {
                    if (isBraced)
                    {
                        items.Skip();
                        continue;
                    }

                    return;
                }

                items.Skip();
                index = FindMember(record, member, out var isInside);
                if (index < 0)
                {
                    Unit.ReportGap(Unit.Sources.Range(item), "designator of an unknown member");
                    return;
                }

                var field = record.Fields[index];
                FillField(record, field, offset, items, isInside ? designation : designation.SkipMember());
                index++;
                continue;
            }

            while (index < record.Fields.Count && record.Fields[index].IsPadding)
            {
                index++;
            }

            if (index >= record.Fields.Count || (record.IsUnion && index > 0 && index > first))
            {
                if (isBraced)
                {
                    items.SkipAll();
                }

                return;
            }

            FillField(record, record.Fields[index], offset, items, designation: null);
            index++;
            if (record.IsUnion)
            {
                if (!isBraced)
                {
                    return;
                }

                index = record.Fields.Count;
            }
        }
    }

    private void FillField(
        RecordLayout record,
        RecordField field,
        long offset,
        ItemReader items,
        Designation? designation
    )
    {
        if (field.BitWidth is { } width)
        {
            var value = designation?.Value ?? items.Take();
            var (unitOffset, access) = TypeLowering.Access(field.OffsetBits, width, record.SizeBytes);
            if (value.Kind == CXCursorKind.InitListExpr && value.Children() is [var inner, ..])
            {
                value = inner;
            }

            _entries.Add(
                new ValueEntry(offset + unitOffset, expressions.ValueAs(value, Unit.Types.Lower(field.Type)), access)
            );
            return;
        }

        var fieldOffset = offset + (field.OffsetBits / 8);
        if (designation is null)
        {
            FillNext(field.Type, fieldOffset, items);
        }
        else
        {
            FillDesignated(field.Type, fieldOffset, items, designation);
        }
    }

    // What a designator leads to; afterwards the list goes on behind it, inside the innermost aggregate.
    private void FillDesignated(ClangType type, long offset, ItemReader items, Designation designation)
    {
        if (designation.IsResolved)
        {
            FillObject(type, offset, designation.Value);
        }
        else if (TypeLowering.IsArray(type))
        {
            var array = TypeLowering.Strip(type);
            var element = array.ArrayElement;
            var size = Math.Max(0, element.SizeBytes);
            var (low, high, rest) = designation.TakeIndex(Unit.Sources);
            for (var index = Math.Max(0, low); index <= high && high - low <= LongestRange; index++)
            {
                FillDesignated(element, offset + (index * size), index == high ? items : ItemReader.Empty, rest);
            }

            FillArray(array, offset, items, isBraced: false, high + 1);
        }
        else if (designation.NextMember is { } member)
        {
            var record = Unit.Types.Record(type);
            var index = FindMember(record, member, out var isInside);
            if (index < 0)
            {
                Unit.ReportGap(Unit.Sources.Range(designation.Value), "designator of an unknown member");
                return;
            }

            FillField(record, record.Fields[index], offset, items, isInside ? designation : designation.SkipMember());
            if (!record.IsUnion)
            {
                FillRecord(type, offset, items, isBraced: false, index + 1);
            }
        }
    }

    // A name may belong to a member of an unnamed structure or union inside the record.
    private int FindMember(RecordLayout record, ClangCursor member, out bool isInside)
    {
        for (var i = 0; i < record.Fields.Count; i++)
        {
            if (record.Fields[i].Cursor.Equals(member))
            {
                isInside = false;
                return i;
            }
        }

        for (var i = 0; i < record.Fields.Count; i++)
        {
            var field = record.Fields[i];
            if (
                field.Name.Length == 0
                && TypeLowering.IsRecord(field.Type)
                && FindMember(Unit.Types.Record(field.Type), member, out _) >= 0
            )
            {
                isInside = true;
                return i;
            }
        }

        isInside = false;
        return -1;
    }

    private void FillNext(ClangType type, long offset, ItemReader items)
    {
        var item = items.Peek()!.Value;
        var value = ExpressionLowering.SkipParentheses(item);
        if (value.Kind == CXCursorKind.InitListExpr)
        {
            items.Skip();
            FillList(type, offset, value);
        }
        else if (TryFillString(type, offset, value))
        {
            items.Skip();
        }
        else if (TypeLowering.IsArray(type) || (TypeLowering.IsRecord(type) && !IsWholeRecord(value, type)))
        {
            FillAggregate(type, offset, items, isBraced: false, first: 0);
        }
        else
        {
            items.Skip();
            FillObject(type, offset, value);
        }
    }

    private static bool IsWholeRecord(ClangCursor value, ClangType type) =>
        TypeLowering.IsRecord(value.Type)
        && TypeLowering.Strip(value.Type).Declaration.Equals(TypeLowering.Strip(type).Declaration);

    private bool TryFillString(ClangType type, long offset, ClangCursor value)
    {
        if (value.Kind != CXCursorKind.StringLiteral || !TypeLowering.IsArray(type))
        {
            return false;
        }

        var array = TypeLowering.Strip(type);
        var elementBytes = (int)array.ArrayElement.SizeBytes;
        if (TypeLowering.IsArray(array.ArrayElement) || elementBytes is not (1 or 2 or 4))
        {
            return false;
        }

        var length = array.ArrayLength >= 0 ? array.ArrayLength : TypeLowering.Strip(value.Type).ArrayLength;
        _entries.Add(
            new BytesEntry(offset, StringLiteral.Bytes(value.Spelling, elementBytes, (int)length), elementBytes)
        );
        return true;
    }

    /// <summary>The items of one pair of braces, taken in turn.</summary>
    private sealed class ItemReader(List<ClangCursor> items)
    {
        private int _next;

        public static ItemReader Empty => new([]);

        public int Count => items.Count;

        public ClangCursor? Peek() => _next < items.Count ? items[_next] : null;

        public ClangCursor Take() => items[_next++];

        public void Skip() => _next++;

        public void SkipAll() => _next = items.Count;
    }
}
