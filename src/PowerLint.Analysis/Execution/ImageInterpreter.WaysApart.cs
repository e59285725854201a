using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // Ways that are told apart within ways that are told apart double each time.
    private const int MaximumWaysApart = 3;

    private ImmutableArray<FieldReference>? _modeFields;
    private int _waysApart;

    private ImmutableArray<FieldReference> ModeFields =>
        _modeFields ??= [.. _device.SleepModes.SelectMany(mode => mode.Selected.Fields).Distinct()];

    /// <summary>
    /// Executes the statements of a block. Where the two ways of an <c>if</c> choose different sleep modes, the rest of the block is
    /// executed for each by itself: joined before it, every mode would seem to go with what only the other one has set up.
    /// </summary>
    private MachineState? ExecuteStatements(IReadOnlyList<Statement> statements, MachineState? state, int first = 0)
    {
        for (var i = first; i < statements.Count; i++)
        {
            if (state is null or { IsUnreachable: true } && _frame.Jumps.Count == 0)
            {
                return null;
            }

            if (i + 1 == statements.Count || statements[i] is not If branch || !MayPart(state))
            {
                state = Execute(statements[i], state);
                continue;
            }

            Step();
            var (then, otherwise) = ExecuteWays(branch, state);
            if (_frame.Jumps.Count > 0 || !ChooseDifferentModes(then, otherwise))
            {
                state = Join(then, otherwise);
                continue;
            }

            _waysApart++;
            then = ExecuteStatements(statements, then, i + 1);
            otherwise = ExecuteStatements(statements, otherwise, i + 1);
            _waysApart--;
            return Join(then, otherwise);
        }

        return state is { IsUnreachable: true } ? null : state;
    }

    // Only within a loop of the main program: before the endless loop, the rest is the whole program.
    private bool MayPart(MachineState? state) =>
        state is { IsUnreachable: false }
        && _run is not null
        && !IsInHandler
        && _waysApart < MaximumWaysApart
        && !IsHurried;

    private bool ChooseDifferentModes(MachineState? a, MachineState? b)
    {
        if (a is null or { IsUnreachable: true } || b is null or { IsUnreachable: true })
        {
            return false;
        }

        var (inA, inB) = (new RegisterView(_registers, a), new RegisterView(_registers, b));
        foreach (var field in ModeFields)
        {
            var (bitsA, bitsB) = (inA.Read(field), inB.Read(field));
            if ((bitsA.Known & bitsB.Known & (bitsA.Value ^ bitsB.Value)) != 0)
            {
                return true;
            }
        }

        return false;
    }

    // What the fields that select the mode hold, as a key.
    private string ModeKey(MachineState state)
    {
        var view = new RegisterView(_registers, state);
        return string.Join(';', ModeFields.Select(field => view.Read(field)));
    }
}
