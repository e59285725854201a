using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>A function that is being executed.</summary>
internal sealed class Frame(CallChain chain, int depth)
{
    public CallChain Chain { get; } = chain;

    public Function Function => Chain.Function;

    /// <summary>Tells this call's locals from those of other active calls of the same function.</summary>
    public int Depth { get; } = depth;

    /// <summary>Locals that exist, to be dropped at the end.</summary>
    public HashSet<Region> Locals { get; } = [];

    /// <summary>The states that have returned, joined.</summary>
    public MachineState? Returned { get; set; }

    /// <summary>What they return, joined.</summary>
    public AbstractValue? ReturnValue { get; set; }

    /// <summary>States on their way to a label, by the label's name or the case's node.</summary>
    public Dictionary<object, MachineState> Jumps { get; } = [];
}

/// <summary>Where <c>break</c> and <c>continue</c> go.</summary>
internal sealed class JumpScope
{
    public MachineState? Broken { get; set; }

    public MachineState? Continued { get; set; }
}

/// <summary>An execution of a loop, to tell later whether it was the endless one.</summary>
internal sealed class LoopRun(Loop? loop, Statement place, CallChain chain, int depth, LoopRun? outer)
{
    public Loop? Loop { get; } = loop;

    public Statement Place { get; } = place;

    public CallChain Chain { get; } = chain;

    /// <summary>The depth of the frame that it runs in.</summary>
    public int Depth { get; } = depth;

    public LoopRun? Outer { get; } = outer;

    /// <summary>Passes begun, from 0 in the first.</summary>
    public int Pass { get; set; } = -1;

    public bool HasSleep { get; set; }

    /// <summary>Passes that came round without sleep and without work, each by its tests.</summary>
    public List<IdlePass> IdlePasses { get; } = [];

    /// <summary>Some state left it.</summary>
    public bool WasLeft { get; set; }

    /// <summary>The states at its head: all, and those of later passes.</summary>
    public MachineState? Head { get; set; }

    public MachineState? LaterHead { get; set; }

    /// <summary>The state in which an outermost loop was entered.</summary>
    public MachineState? FirstHead { get; set; }

    /// <summary>
    /// Whether it is never left: it goes round, or it would if the sleep in its first pass ever ended.
    /// </summary>
    public bool IsEndless => !WasLeft && (Pass >= 1 || Loop is { Condition: null or IntegerConstant { Value: not 0 } });
}
