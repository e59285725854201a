using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>What the parts of the generator share while they write one program.</summary>
internal sealed class GenerationContext(RandomSource random, GeneratedPart part, int level)
{
    private int _names;

    public RandomSource Random { get; } = random;

    public GeneratedPart Part { get; } = part;

    /// <summary>1 to 5; see <see cref="FirmwareGenerator"/>.</summary>
    public int Level { get; } = level;

    public ExpressionGenerator Expressions { get; } = new(random, wide: level >= 5 || (level >= 3 && random.OneIn(3)));

    /// <summary>Types, tables, variables and functions, in front of <c>main</c>.</summary>
    public SourceText Declarations { get; } = new();

    /// <summary>Pure functions that expressions may call, as calls with their arguments open.</summary>
    public List<(string Name, IntegerType Result, IntegerType[] Parameters)> Functions { get; } = [];

    /// <summary>A name that no other thing has.</summary>
    public string Name(string kind) => kind + (_names++).ToString(CultureInfo.InvariantCulture);

    /// <summary>A byte, in hex.</summary>
    public string Byte() => "0x" + Random.Below(256).ToString("x2", CultureInfo.InvariantCulture);

    /// <summary>A plain register.</summary>
    public string Register() =>
        Part.Registers[Random.Below(Random.OneIn(3) ? Part.Registers.Count : 2 * Part.Ports.Count)];
}

/// <summary>What a statement can use.</summary>
internal sealed class Scope
{
    /// <summary>What expressions can read.</summary>
    public List<Readable> Readables { get; } = [];

    /// <summary>Variables that can be assigned.</summary>
    public List<Readable> Variables { get; } = [];

    /// <summary>How many loops stand around.</summary>
    public int Loops { get; init; }

    /// <summary>The same with what an inner block adds kept apart.</summary>
    public Scope Inner(bool isLoop)
    {
        var inner = new Scope { Loops = Loops + (isLoop ? 1 : 0) };
        inner.Readables.AddRange(Readables);
        inner.Variables.AddRange(Variables);
        return inner;
    }
}
