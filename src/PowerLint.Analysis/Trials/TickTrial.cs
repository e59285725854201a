using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>
/// A piece of the program run again with one thing happening: a periodic interrupt comes, once in each sleep, and nothing else
/// does. Tells how many of them go by before the program does more than count.
/// </summary>
internal sealed class TickTrial(Interrupt interrupt, Function handler)
{
    // Four wake-ups with work: what leads to the first differs often, the last two distances must agree.
    private const int WorkNeeded = 4;

    // More than an hour of seconds.
    private const int MaximumIdleWakes = 4_000;

    private readonly List<int> _work = [];
    private MachineState? _earlier;
    private bool _worked;

    public Interrupt Interrupt => interrupt;

    public Function Handler => handler;

    public int Wakes { get; private set; }

    /// <summary>Branches under way of which both sides are run: a sleep in one of them would count twice.</summary>
    public int OpenWays { get; set; }

    /// <summary>Whether something happened that makes the count worthless.</summary>
    public bool IsAbandoned { get; set; }

    public bool IsOver =>
        IsAbandoned || _work.Count >= WorkNeeded || Wakes - (_work is [.., var last] ? last : 0) > MaximumIdleWakes;

    /// <summary>Variables that have been counted up or down.</summary>
    public HashSet<SharedPlace> Counters { get; } = [];

    public void NoteWork() => _worked = true;

    /// <summary>The program has come to a sleep: what it has done since the last one is judged.</summary>
    /// <param name="state">The state there.</param>
    /// <param name="isSame">Whether two states are the same.</param>
    public void NoteSleep(MachineState state, Func<MachineState, MachineState, bool> isSame)
    {
        if (_worked)
        {
            _work.Add(Wakes);
            _earlier = null;
        }
        else if (_earlier is not null && isSame(state, _earlier))
        {
            // What has come round without work goes round for ever.
            IsAbandoned = true;
        }

        _worked = false;
        Wakes++;
        if (_earlier is null || int.IsPow2(Wakes))
        {
            _earlier = state;
        }
    }

    /// <summary>Wake-ups from one piece of work to the next; null where that is not known, or differs.</summary>
    public int? WakesPerWork =>
        !IsAbandoned && _work is [.., var a, var b, var c] && _work.Count >= WorkNeeded && c - b == b - a
            ? c - b
            : null;
}
