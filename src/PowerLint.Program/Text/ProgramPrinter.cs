using System.Globalization;
using System.Text;

namespace PowerLint.Program;

/// <summary>
/// The text form of a program, for tests and for people: one statement a line, every conversion and access spelled out.
/// The same program always gives the same text.
/// </summary>
public sealed class ProgramPrinter
{
    private readonly StringBuilder _text = new();
    private int _depth;

    private ProgramPrinter() { }

    /// <summary>A unit: its globals, then its functions.</summary>
    public static string Print(TranslationUnit unit)
    {
        var printer = new ProgramPrinter();
        foreach (var global in unit.Globals)
        {
            printer.Global(global);
        }

        foreach (var function in unit.Functions)
        {
            printer.Function(function);
        }

        return printer._text.ToString();
    }

    /// <summary>One function.</summary>
    public static string Print(Function function)
    {
        var printer = new ProgramPrinter();
        printer.Function(function);
        return printer._text.ToString();
    }

    /// <summary>One expression.</summary>
    public static string Print(Expression expression) => ExpressionPrinter.Print(expression);

    /// <summary>The block of a statement expression, on one line.</summary>
    internal static string Inline(Block block)
    {
        var printer = new ProgramPrinter();
        foreach (var statement in block.Statements)
        {
            printer.Statement(statement);
        }

        return string.Join(
            ' ',
            printer._text.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Trim())
        );
    }

    private void Global(GlobalVariable global)
    {
        var words = new List<string> { "global" };
        Add(global.IsDeclarationOnly, "extern");
        Add(!global.IsExternal, "static");
        Add(global.IsWeak, "weak");
        Add(global.IsConstant, "const");
        Add(global.IsVolatile, "volatile");
        Add(global.IsUninitialized, "uninitialized");
        Add(global.AliasOf is not null, $"alias({global.AliasOf})");
        Add(
            global.AbsoluteAddress is not null,
            string.Create(CultureInfo.InvariantCulture, $"at(0x{global.AbsoluteAddress ?? 0:x})")
        );
        words.Add($"{global.Name} : {global.Type}");
        var value = global.Initializer is { } initializer
            ? $" = {ExpressionPrinter.Print(initializer, global.Type)}"
            : "";
        Line(string.Join(' ', words) + value);

        void Add(bool condition, string word)
        {
            if (condition)
            {
                words.Add(word);
            }
        }
    }

    private void Function(Function function)
    {
        var header = new StringBuilder("function ");
        header.Append(function.Symbol.IsStatic ? "static " : "").Append(function.IsWeak ? "weak " : "");
        header.Append(function.IsNaked ? "naked " : "").Append(function.Symbol.IsNoReturn ? "noreturn " : "");
        header.Append(function.Name).Append('(');
        header.AppendJoin(", ", function.Parameters.Select(parameter => $"{parameter.Name} : {parameter.Type}"));
        header.Append(function.IsVariadic ? ", ..." : "").Append(") : ").Append(function.ReturnType);
        if (function.StartupSection is { } section)
        {
            header.Append(" startup ").Append(section);
        }

        if (function.Handler is { } handler)
        {
            header.Append(CultureInfo.InvariantCulture, $" handles {handler.SpelledVector}");
            header.Append(
                handler.VectorNumber is { } number ? string.Create(CultureInfo.InvariantCulture, $" #{number}") : ""
            );
            header.Append(handler.EnablesInterruptsAtEntry ? " interruptible" : "");
        }

        Line(header.ToString());
        _depth++;
        foreach (var statement in function.Body.Statements)
        {
            Statement(statement);
        }

        _depth--;
    }

    private void Statement(Statement statement)
    {
        switch (statement)
        {
            case Block block:
                Nested("block", block.Statements);
                break;
            case ExpressionStatement expression:
                Line(ExpressionPrinter.Print(expression.Expression));
                break;
            case LocalDeclaration declaration:
                Declaration(declaration);
                break;
            case If branch:
                Nested($"if {ExpressionPrinter.Print(branch.Condition)}", Body(branch.Then));
                if (branch.Else is { } otherwise)
                {
                    Nested("else", Body(otherwise));
                }

                break;
            case Loop loop:
                Loop(loop);
                break;
            case Switch @switch:
                Nested($"switch {ExpressionPrinter.Print(@switch.Value)}", Body(@switch.Body));
                break;
            case CaseLabel label:
                Line(CaseHead(label));
                if (label.Labelled is not Block { Statements.Count: 0 })
                {
                    Statement(label.Labelled);
                }

                break;
            case Label label:
                Line($"label {label.Name}:");
                Statement(label.Labelled);
                break;
            case Goto jump:
                Line($"goto {jump.Label}");
                break;
            case ComputedGoto jump:
                Line($"goto *{ExpressionPrinter.Print(jump.Target)}");
                break;
            case Break:
                Line("break");
                break;
            case Continue:
                Line("continue");
                break;
            case Return result:
                Line(result.Value is { } value ? $"return {ExpressionPrinter.Print(value)}" : "return");
                break;
            case InlineAssembly assembly:
                Assembly(assembly);
                break;
            case UnknownEffect unknown:
                Line($"unknown effect ({unknown.Reason})");
                break;
            default:
                throw new ArgumentException($"{statement.GetType().Name} has no text form.", nameof(statement));
        }
    }

    private void Declaration(LocalDeclaration declaration)
    {
        var variable = declaration.Variable;
        var text = $"local {(variable.IsVolatile ? "volatile " : "")}{variable.Name} : {variable.Type}";
        text += declaration.Initializer is { } initializer
            ? $" = {ExpressionPrinter.Print(initializer, variable.Type)}"
            : "";
        Line(declaration.Cleanup is { } cleanup ? $"{text} cleanup {cleanup}" : text);
    }

    private void Loop(Loop loop)
    {
        var condition = loop.Condition is { } test ? $" while {ExpressionPrinter.Print(test)}" : "";
        var step = loop.Step is { } advance ? $" step {ExpressionPrinter.Print(advance)}" : "";
        Nested(loop.TestsAfterBody ? $"loop after{condition}{step}" : $"loop{condition}{step}", Body(loop.Body));
    }

    private void Assembly(InlineAssembly assembly)
    {
        var template = assembly
            .Template.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("\n", "\\n", StringComparison.Ordinal)
            .Replace("\t", "\\t", StringComparison.Ordinal);
        var text = new StringBuilder($"asm \"{template}\"");
        foreach (var output in assembly.Outputs)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $" out {output.Constraint} {output.ObjectType} @ {ExpressionPrinter.Print(output.Address)}"
            );
        }

        foreach (var input in assembly.Inputs)
        {
            text.Append(CultureInfo.InvariantCulture, $" in {input.Constraint} {ExpressionPrinter.Print(input.Value)}");
        }

        text.Append(assembly.Clobbers.Count > 0 ? $" clobbers {string.Join(' ', assembly.Clobbers)}" : "");
        Line(text.ToString());
    }

    private static string CaseHead(CaseLabel label) =>
        (label.Low, label.High) switch
        {
            (null, _) => "default:",
            var (low, high) when low == high => string.Create(CultureInfo.InvariantCulture, $"case {low}:"),
            var (low, high) => string.Create(CultureInfo.InvariantCulture, $"case {low}..{high}:"),
        };

    private static IReadOnlyList<Statement> Body(Statement statement) =>
        statement is Block block ? block.Statements : [statement];

    private void Nested(string head, IReadOnlyList<Statement> statements)
    {
        Line($"{head} {{");
        _depth++;
        foreach (var statement in statements)
        {
            Statement(statement);
        }

        _depth--;
        Line("}");
    }

    private void Line(string text) => _text.Append(' ', _depth * 2).Append(text).Append('\n');
}
