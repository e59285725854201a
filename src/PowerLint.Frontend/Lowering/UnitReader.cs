using System.Runtime.ExceptionServices;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>A unit that was read, or the errors that kept it from being.</summary>
internal sealed record ReadUnit(TranslationUnit? Unit, IReadOnlyList<SourceError> Errors, bool IsFromCache = false);

/// <summary>Parses and lowers units side by side. The order of the results is that of the request.</summary>
/// <param name="cache">Where lowered units are kept, or null.</param>
/// <param name="progress">Told after each unit, or null.</param>
internal sealed class UnitReader(UnitCache? cache, Action<ReadProgress>? progress)
{
    // Parsing and lowering follow the tree: long chains of operators nest deeply. Pages that are not touched cost nothing.
    private const int StackBytes = 512 * 1024 * 1024;

    private readonly MacroGrowth _growth = new();
    private readonly FileTraits _traits = new();
    private readonly ReadClock _clock = new();

    /// <summary>What was spent so far.</summary>
    public ReadTimes Times => _clock.Times;

    public IReadOnlyList<ReadUnit> ReadAll(IReadOnlyList<ParserInvocation> invocations, CancellationToken cancellation)
    {
        var results = new ReadUnit[invocations.Count];
        var done = 0;
        RunAll(
            invocations.Count,
            Environment.ProcessorCount,
            i =>
            {
                results[i] = Read(invocations[i], cancellation);
                progress?.Invoke(new ReadProgress(Interlocked.Increment(ref done), results.Length));
            },
            cancellation
        );
        cache?.Trim();
        return results;
    }

    /// <summary>Parses units one after the other and throws the trees away.</summary>
    public static void ParseAll(IReadOnlyList<ParserInvocation> invocations, CancellationToken cancellation) =>
        RunAll(
            invocations.Count,
            mostWorkers: 1,
            i =>
            {
                var invocation = invocations[i];
                ClangUnit.TryParse(invocation.Command.File, invocation.Arguments, invocation.Unsaved, out var unit);
                unit?.Dispose();
            },
            cancellation
        );

    private static void RunAll(int count, int mostWorkers, Action<int> run, CancellationToken cancellation)
    {
        ExceptionDispatchInfo? failure = null;
        var next = -1;
        var workers = Math.Min(mostWorkers, count);
        using var open = new CountdownEvent(workers);
        for (var i = 0; i < workers; i++)
        {
            new Thread(Work, StackBytes) { IsBackground = true }.Start();
        }

        // Not until all have ended, where the user has had enough: the parser does not look up from a file.
        open.Wait(cancellation);
        failure?.Throw();

        void Work()
        {
            try
            {
                for (
                    var i = Interlocked.Increment(ref next);
                    i < count && failure is null;
                    i = Interlocked.Increment(ref next)
                )
                {
                    cancellation.ThrowIfCancellationRequested();
                    run(i);
                }
            }
            catch (Exception error)
            {
                failure ??= ExceptionDispatchInfo.Capture(error);
            }

            try
            {
                open.Signal();
            }
            catch (ObjectDisposedException)
            {
                // The run was cancelled, and nobody waits any more.
            }
        }
    }

    private ReadUnit Read(ParserInvocation invocation, CancellationToken cancellation)
    {
        var command = invocation.Command;
        if (cache is not null && _clock.Measure(ReadClock.Stage.Cache, () => cache.Find(invocation)) is { } kept)
        {
            return new ReadUnit(kept, [], IsFromCache: true);
        }

        var excess = _clock.Measure(
            ReadClock.Stage.Screening,
            () => _growth.Excess(command.File, invocation.Arguments, command.Directory)
        );
        if (excess is not null)
        {
            return new ReadUnit(null, [excess]);
        }

        ClangUnit? unit = null;
        var error = _clock.Measure(
            ReadClock.Stage.Parsing,
            () => ClangUnit.TryParse(command.File, invocation.Arguments, invocation.Unsaved, out unit)
        );
        if (unit is null)
        {
            return new ReadUnit(null, [new SourceError(command.File, 0, 0, Refusal(error))]);
        }

        using (unit)
        {
            var read = _clock.Measure(ReadClock.Stage.Lowering, () => Lower(unit, invocation, cancellation));
            if (cache is not null && read is { Errors.Count: 0, Unit: { } lowered })
            {
                _clock.Measure(
                    ReadClock.Stage.Cache,
                    () =>
                    {
                        cache.Keep(invocation, unit, lowered);
                        return 0;
                    }
                );
            }

            return read;
        }
    }

    private ReadUnit Lower(ClangUnit unit, ParserInvocation invocation, CancellationToken cancellation)
    {
        var command = invocation.Command;
        var source = new SourceFile(command.File, IsSystem: false);
        var lowering = new UnitLowering(
            unit,
            source,
            command.Directory,
            _traits,
            invocation.Vectors,
            command.IsCPlusPlus
        );
        var errors = ParserMessages.Errors(unit, lowering);
        var files = OwnFiles.Of(unit, lowering.Sources);
        var lowered = lowering.Lower(
            MacroCollection.Collect(invocation, files),
            CommentCollection.Collect(files),
            cancellation
        );
        return new ReadUnit(lowered, errors);
    }

    // CXError_Crashed: the library's own recovery has caught it.
    private static string Refusal(int error) =>
        error == 2
            ? "The parser broke down on this file. An array larger than the target can address does that, for one; "
                + "if the file compiles, leave it out and report it."
            : $"The parser gave this file up (code {error}). Check the flags.";
}
