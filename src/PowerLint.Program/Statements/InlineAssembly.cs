namespace PowerLint.Program;

/// <summary>GNU inline assembly, as written; the analysis knows what the instructions that firmware uses mean.</summary>
public sealed class InlineAssembly(
    SourceRange range,
    string template,
    IReadOnlyList<AssemblyOutput> outputs,
    IReadOnlyList<AssemblyInput> inputs,
    IReadOnlyList<string> clobbers
) : Statement(range)
{
    /// <summary>The template, escapes resolved, operand references (<c>%0</c>, <c>%[name]</c>) left in.</summary>
    public string Template { get; } = template;

    /// <summary>Output operands; numbered first.</summary>
    public IReadOnlyList<AssemblyOutput> Outputs { get; } = outputs;

    /// <summary>Input operands; numbered after the outputs.</summary>
    public IReadOnlyList<AssemblyInput> Inputs { get; } = inputs;

    /// <summary>Clobbered registers, <c>memory</c> among them where given.</summary>
    public IReadOnlyList<string> Clobbers { get; } = clobbers;
}

/// <summary>An output operand.</summary>
/// <param name="Name">Symbolic name, or null.</param>
/// <param name="Constraint">The constraint string.</param>
/// <param name="Address">The address of the object written.</param>
/// <param name="ObjectType">Its type.</param>
public sealed record AssemblyOutput(string? Name, string Constraint, Expression Address, CType ObjectType);

/// <summary>An input operand.</summary>
/// <param name="Name">Symbolic name, or null.</param>
/// <param name="Constraint">The constraint string.</param>
/// <param name="Value">The value.</param>
public sealed record AssemblyInput(string? Name, string Constraint, Expression Value);
