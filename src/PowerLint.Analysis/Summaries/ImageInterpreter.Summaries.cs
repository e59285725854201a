using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private CallRecording? _recording;

    // Handlers change what the main program sees at the places that they share with it: more of them, and a call may differ.
    private (int, int) SharedPlaces => (_handlerRegions.Count, _handlerAddresses.Count);

    /// <summary>
    /// Runs a function's body, or does again what an earlier run of the same call did in a state that was the same wherever that
    /// run looked.
    /// </summary>
    private (MachineState? State, AbstractValue Value) RunOrRepeat(
        Frame frame,
        AbstractValue[] arguments,
        MachineState state
    )
    {
        if (!_options.RepeatsCalls || _trial is not null)
        {
            return RunBody(frame, arguments, state);
        }

        var memory = MemoryOf(frame);
        if (memory.Find(arguments, state, SharedPlaces) is { } summary)
        {
            Step();
            return Repeat(summary, state);
        }

        if (!memory.IsWorthRecording)
        {
            return RunBody(frame, arguments, state);
        }

        var entry = state.Copy();
        var recording = StartRecording(frame.Depth);
        var openBefore = _sawOpenCondition;
        _sawOpenCondition = false;
        var (after, value) = RunBody(frame, arguments, state);
        if (FinishRecording(recording, arguments, entry, after, value) is { } made)
        {
            memory.Add(made);
        }

        _sawOpenCondition |= openBefore;
        return (after, value);
    }

    private CallMemory MemoryOf(Frame frame)
    {
        var moment = new CallMoment(
            frame.Depth,
            _activeHandlers.Count > 0 ? _activeHandlers[0] : null,
            _run is not null,
            _handlersSleep
        );
        foreach (var known in frame.Chain.Memories)
        {
            if (known.Moment == moment)
            {
                return known;
            }
        }

        var memory = new CallMemory(moment);
        frame.Chain.Memories.Add(memory);
        return memory;
    }

    private (MachineState? State, AbstractValue Value) Repeat(CallSummary summary, MachineState state)
    {
        _effects += summary.Effects;
        _sawOpenCondition |= summary.SawOpenCondition;
        _volatileReads.UnionWith(summary.VolatileReads);
        if (_reads is { } reads && !IsInHandler)
        {
            reads.ReadsHardware |= summary.VolatileReads.Any();
        }

        foreach (var wait in summary.Waits)
        {
            Events.Waits.Add(wait with { Moment = Now });
        }

        foreach (var poll in summary.Polls)
        {
            AddPoll(poll with { Moment = Now });
        }

        _recording?.Footprint.Absorb(summary.Footprint, _regions);
        return (summary.Apply(state), summary.Value);
    }

    private CallRecording StartRecording(int depth)
    {
        var recording = new CallRecording(_recording, depth)
        {
            EffectsBefore = _effects,
            WaitsBefore = Events.Waits.Count,
            RunsBefore = Events.Runs.Count,
            UnrepeatableBefore = Events.Unrepeatable,
            SharedPlacesBefore = SharedPlaces,
            ReadsBefore = [.. _volatileReads],
        };
        _volatileReads.Clear();
        Watch(recording);
        return recording;
    }

    private CallSummary? FinishRecording(
        CallRecording recording,
        AbstractValue[] arguments,
        MachineState entry,
        MachineState? after,
        AbstractValue value
    )
    {
        Watch(recording.Outer);
        _recording?.Footprint.Absorb(recording.Footprint, _regions);
        _recording?.Polls.AddRange(recording.Polls);

        // What was noted of the moment, a sleep or an endless loop, belongs to that moment alone.
        var isRepeatable =
            Events.Unrepeatable == recording.UnrepeatableBefore
            && SharedPlaces == recording.SharedPlacesBefore
            && !recording.Footprint.IsTooLarge
            && Events.Runs.Skip(recording.RunsBefore).All(run => run.WasLeft);
        var summary = isRepeatable
            ? new CallSummary(arguments, entry, after, recording.Footprint)
            {
                Value = value,
                Effects = _effects - recording.EffectsBefore,
                SawOpenCondition = _sawOpenCondition,
                VolatileReads = [.. _volatileReads],
                Waits = [.. Events.Waits.Skip(recording.WaitsBefore)],
                Polls = [.. recording.Polls],
                SharedPlaces = recording.SharedPlacesBefore,
                IsOfHandler = _activeHandlers.Count > 0,
            }
            : null;
        _volatileReads.UnionWith(recording.ReadsBefore);
        return summary;
    }

    private void Watch(CallRecording? recording)
    {
        _recording = recording;
        _memory.Watched = recording?.Footprint;
        _registers.Watched = recording?.Footprint;
    }
}
