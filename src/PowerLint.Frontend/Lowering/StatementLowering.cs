using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Lowers statements.</summary>
internal sealed class StatementLowering(UnitLowering unit, FunctionLowering function)
{
    private CType _switchType = VoidType.Instance;

    /// <summary>Lowers a compound statement.</summary>
    public Block LowerBlock(ClangCursor compound)
    {
        var statements = new List<Statement>();
        if (compound.Exists)
        {
            foreach (var child in compound.Children())
            {
                LowerInto(statements, child);
            }
        }

        return new Block(unit.Sources.Range(compound), statements);
    }

    /// <summary>Lowers a statement that stands alone.</summary>
    public Statement Lower(ClangCursor cursor)
    {
        if (unit.Nesting >= UnitLowering.MaximumNesting)
        {
            var place = unit.Sources.Range(cursor);
            var reason = $"statement nested more than {UnitLowering.MaximumNesting} deep";
            unit.ReportGap(place, reason);
            return new UnknownEffect(place, reason);
        }

        var statements = new List<Statement>();
        unit.Nesting++;
        LowerInto(statements, cursor);
        unit.Nesting--;
        return statements.Count == 1 ? statements[0] : new Block(unit.Sources.Range(cursor), statements);
    }

    /// <summary>Lowers a statement into the block that holds it.</summary>
    public void LowerInto(List<Statement> statements, ClangCursor cursor)
    {
        if (cursor.IsExpression)
        {
            statements.Add(new ExpressionStatement(unit.Sources.Range(cursor), function.Expressions.Effect(cursor)));
            return;
        }

        var range = unit.Sources.Range(cursor);
        switch (cursor.Kind)
        {
            case CXCursorKind.CompoundStmt:
                statements.Add(LowerBlock(cursor));
                break;
            case CXCursorKind.NullStmt:
                break;
            case CXCursorKind.DeclStmt:
                foreach (var declaration in cursor.Children())
                {
                    LowerDeclaration(statements, declaration);
                }

                break;
            case CXCursorKind.IfStmt:
                statements.Add(LowerIf(cursor, range));
                break;
            case CXCursorKind.WhileStmt:
                var whileParts = cursor.Children();
                statements.Add(
                    new Loop(
                        range,
                        function.Expressions.Condition(whileParts[0]),
                        step: null,
                        Lower(whileParts[^1]),
                        testsAfterBody: false
                    )
                );
                break;
            case CXCursorKind.DoStmt:
                var doParts = cursor.Children();
                statements.Add(
                    new Loop(
                        range,
                        function.Expressions.Condition(doParts[^1]),
                        step: null,
                        Lower(doParts[0]),
                        testsAfterBody: true
                    )
                );
                break;
            case CXCursorKind.ForStmt:
                statements.Add(LowerFor(cursor, range));
                break;
            case CXCursorKind.SwitchStmt:
                statements.Add(LowerSwitch(cursor, range));
                break;
            case CXCursorKind.CaseStmt:
            case CXCursorKind.DefaultStmt:
                LowerCase(statements, cursor);
                break;
            case CXCursorKind.LabelStmt:
                var labelled = cursor.Children().FirstOrDefault(child => child.IsStatement || child.IsExpression);
                statements.Add(
                    new Label(
                        range,
                        function.LabelName(cursor),
                        labelled.Exists ? Lower(labelled) : new Block(range, [])
                    )
                );
                break;
            case CXCursorKind.GotoStmt:
                var target = cursor.Children().FirstOrDefault(child => child.Kind == CXCursorKind.LabelRef).Referenced;
                statements.Add(
                    target.Exists
                        ? new Goto(range, function.LabelName(target))
                        : new UnknownEffect(range, "jump to no label")
                );
                break;
            case CXCursorKind.IndirectGotoStmt:
                statements.Add(new ComputedGoto(range, function.Expressions.Value(cursor.Children()[^1])));
                break;
            case CXCursorKind.BreakStmt:
                statements.Add(new Break(range));
                break;
            case CXCursorKind.ContinueStmt:
                statements.Add(new Continue(range));
                break;
            case CXCursorKind.ReturnStmt:
                LowerReturn(statements, cursor, range);
                break;
            case CXCursorKind.GCCAsmStmt:
                AssemblyLowering.LowerInto(statements, cursor, range, unit, function.Expressions);
                break;
            case CXCursorKind.UnexposedStmt:
                // Statements with attributes, such as a marked fall-through: the attribute says nothing that we need.
                foreach (var child in cursor.Children().Where(child => child.IsStatement || child.IsExpression))
                {
                    LowerInto(statements, child);
                }

                break;
            case CXCursorKind.UnexposedDecl or CXCursorKind.VarDecl:
                LowerDeclaration(statements, cursor);
                break;
            default:
                unit.ReportGap(range, $"statement of kind {cursor.Kind}");
                statements.Add(new UnknownEffect(range, $"statement of kind {cursor.Kind}"));
                break;
        }
    }

    private void LowerDeclaration(List<Statement> statements, ClangCursor declaration)
    {
        // Types, functions and static assertions declared in a block do nothing when it runs.
        if (declaration.Kind != CXCursorKind.VarDecl)
        {
            return;
        }

        if (declaration.HasStaticStorage)
        {
            if (declaration.StorageClass != CXStorageClass.Extern)
            {
                unit.MentionVariable(declaration, function);
            }

            return;
        }

        var range = unit.Sources.Range(declaration);
        var variable = function.Declare(declaration, isParameter: false);
        if (TypeLowering.Strip(declaration.Type).Kind == CXTypeKind.VariableArray)
        {
            KeepLength(declaration, range, statements);
        }

        var initializer = declaration.VariableInitializer;
        var cleanup = declaration.HasAttributes ? DeclarationAttributes.Of([declaration]).Cleanup : null;
        statements.Add(
            new LocalDeclaration(
                range,
                variable,
                initializer.Exists
                    ? new InitializerLowering(function.Expressions).Lower(declaration.Type, initializer)
                    : null
            )
            {
                Cleanup = cleanup is null ? null : unit.Mention(cleanup),
            }
        );
    }

    private void KeepLength(ClangCursor declaration, SourceRange range, List<Statement> statements)
    {
        var count = declaration.Children().FirstOrDefault(child => child.IsExpression);
        if (TypeLowering.Strip(declaration.Type).ArrayElement.SizeBytes <= 0 || !count.Exists)
        {
            unit.ReportGap(range, "array of arrays of variable length");
            return;
        }

        var value = function.Expressions.ValueAs(count, unit.Types.Int);
        var length = function.DeclareLength(declaration);
        statements.Add(new LocalDeclaration(range, length, new Initializer([new ValueEntry(0, value, null)])));
    }

    private If LowerIf(ClangCursor cursor, SourceRange range)
    {
        var parts = cursor.Children();
        return new If(
            range,
            function.Expressions.Condition(parts[0]),
            Lower(parts[1]),
            parts.Count > 2 ? Lower(parts[2]) : null
        );
    }

    private Statement LowerFor(ClangCursor cursor, SourceRange range)
    {
        var parts = cursor.Children();
        var present = ForClauses.Present(cursor, parts.Count, unit.Sources);
        var next = 0;
        ClangCursor? initialization = present.Initialization ? parts[next++] : null;
        ClangCursor? condition = present.Condition ? parts[next++] : null;
        ClangCursor? step = present.Step ? parts[next++] : null;
        var statements = new List<Statement>();
        if (initialization is { } first)
        {
            LowerInto(statements, first);
        }

        var loop = new Loop(
            range,
            condition is { } test ? function.Expressions.Condition(test) : null,
            step is { } advance ? function.Expressions.Effect(advance) : null,
            Lower(parts[^1]),
            testsAfterBody: false
        );
        if (statements.Count == 0)
        {
            return loop;
        }

        statements.Add(loop);
        return new Block(range, statements);
    }

    private Switch LowerSwitch(ClangCursor cursor, SourceRange range)
    {
        var parts = cursor.Children();
        var value = function.Expressions.Value(parts[0]);
        var outer = _switchType;
        _switchType = value.Type;
        var body = Lower(parts[^1]);
        _switchType = outer;
        return new Switch(range, value, body);
    }

    // Labels of one statement nest in each other, thousands deep in generated code: here they follow each other.
    private void LowerCase(List<Statement> statements, ClangCursor cursor)
    {
        while (true)
        {
            var range = unit.Sources.Range(cursor);
            var parts = cursor.Children();
            var isCase = cursor.Kind == CXCursorKind.CaseStmt;
            var values = isCase ? parts.Count - 1 : 0;
            ulong? low = values > 0 ? CaseValue(parts[0]) : null;
            ulong? high = values > 1 ? CaseValue(parts[1]) : low;
            if (isCase && low is null)
            {
                unit.ReportGap(range, "case label without a constant value");
            }

            cursor = parts[^1];
            if (cursor.Kind is not (CXCursorKind.CaseStmt or CXCursorKind.DefaultStmt))
            {
                statements.Add(new CaseLabel(range, low, high, Lower(cursor)));
                return;
            }

            statements.Add(new CaseLabel(range, low, high, new Block(range, [])));
        }
    }

    private ulong? CaseValue(ClangCursor cursor) =>
        cursor.EvaluateInteger() is { } value
            ? Folding.Truncate(unchecked((ulong)value), (_switchType as IntegerType)?.Bits ?? 64)
            : null;

    private void LowerReturn(List<Statement> statements, ClangCursor cursor, SourceRange range)
    {
        var value = cursor.Children().FirstOrDefault(child => child.IsExpression);
        if (!value.Exists)
        {
            statements.Add(new Return(range, value: null));
        }
        else if (function.ReturnType is VoidType)
        {
            statements.Add(new ExpressionStatement(range, function.Expressions.Effect(value)));
            statements.Add(new Return(range, value: null));
        }
        else
        {
            statements.Add(new Return(range, function.Expressions.ValueAs(value, function.ReturnType)));
        }
    }
}
