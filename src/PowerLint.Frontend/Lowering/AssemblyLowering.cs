using System.Text;
using System.Text.RegularExpressions;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Lowers GNU inline assembly.</summary>
internal static unsafe partial class AssemblyLowering
{
    public static void LowerInto(
        List<Statement> statements,
        ClangCursor cursor,
        SourceRange range,
        UnitLowering unit,
        ExpressionLowering expressions
    )
    {
        if (LibClang.clang_Cursor_isGCCAssemblyHasGoto(cursor.Raw) != 0)
        {
            unit.ReportGap(range, "assembly that jumps to labels");
            statements.Add(new UnknownEffect(range, "assembly that jumps to labels"));
            return;
        }

        var template = FromCompilerForm(NativeString.Take(LibClang.clang_Cursor_getGCCAssemblyTemplate(cursor.Raw)));
        if (TailJump().Match(template) is { Success: true } jump)
        {
            // How an alias of a handler is written where the assembler cannot alias: a jump to another function's body.
            var target = new AddressOfFunction(unit.Types.Pointer, range, unit.Mention(jump.Groups["target"].Value));
            statements.Add(new ExpressionStatement(range, new Call(VoidType.Instance, range, target, [])));
            statements.Add(new Return(range, value: null));
            return;
        }

        statements.Add(
            new InlineAssembly(
                range,
                template,
                [.. Outputs(cursor, expressions, unit.Types)],
                [.. Inputs(cursor, expressions)],
                [.. Clobbers(cursor)]
            )
        );
    }

    private static List<AssemblyOutput> Outputs(ClangCursor cursor, ExpressionLowering expressions, TypeLowering types)
    {
        var outputs = new List<AssemblyOutput>();
        var count = LibClang.clang_Cursor_getGCCAssemblyNumOutputs(cursor.Raw);
        for (var i = 0u; i < count; i++)
        {
            CXString constraint;
            CXCursor operand;
            if (LibClang.clang_Cursor_getGCCAssemblyOutput(cursor.Raw, i, &constraint, &operand) != 0)
            {
                var place = expressions.PlaceOf(new ClangCursor(operand));
                outputs.Add(
                    new AssemblyOutput(null, NativeString.Take(constraint), place.Address, place.ObjectType(types))
                );
            }
        }

        return outputs;
    }

    private static List<AssemblyInput> Inputs(ClangCursor cursor, ExpressionLowering expressions)
    {
        var inputs = new List<AssemblyInput>();
        var count = LibClang.clang_Cursor_getGCCAssemblyNumInputs(cursor.Raw);
        for (var i = 0u; i < count; i++)
        {
            CXString constraint;
            CXCursor operand;
            if (LibClang.clang_Cursor_getGCCAssemblyInput(cursor.Raw, i, &constraint, &operand) != 0)
            {
                inputs.Add(
                    new AssemblyInput(null, NativeString.Take(constraint), expressions.Value(new ClangCursor(operand)))
                );
            }
        }

        return inputs;
    }

    private static List<string> Clobbers(ClangCursor cursor)
    {
        var clobbers = new List<string>();
        var count = LibClang.clang_Cursor_getGCCAssemblyNumClobbers(cursor.Raw);
        for (var i = 0u; i < count; i++)
        {
            clobbers.Add(NativeString.Take(LibClang.clang_Cursor_getGCCAssemblyClobber(cursor.Raw, i)));
        }

        return clobbers;
    }

    /// <summary>
    /// The parser hands the template out with names resolved to numbers, in the compiler's inner form (<c>$0</c>,
    /// <c>${1:A}</c>, <c>$$</c>); this writes it as GNU C does (<c>%0</c>, <c>%A1</c>).
    /// </summary>
    internal static string FromCompilerForm(string template)
    {
        var text = new StringBuilder(template.Length);
        for (var i = 0; i < template.Length; i++)
        {
            var character = template[i];
            if (character == '%')
            {
                text.Append("%%");
            }
            else if (character != '$' || i + 1 == template.Length)
            {
                text.Append(character);
            }
            else if (template[i + 1] == '$')
            {
                text.Append('$');
                i++;
            }
            else if (template[i + 1] == '{' && template.IndexOf('}', i) is > 0 and var end)
            {
                var parts = template[(i + 2)..end].Split(':');
                text.Append('%').Append(parts.Length > 1 ? parts[1] : "").Append(parts[0]);
                i = end;
            }
            else
            {
                text.Append('%');
            }
        }

        return text.ToString();
    }

    [GeneratedRegex(
        @"^\s*r?jmp\s+(?<target>[A-Za-z_]\w*)\s*$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex TailJump();
}
