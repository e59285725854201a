using System.Runtime.ExceptionServices;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>A unit that was read, or the errors that kept it from being.</summary>
internal sealed record ReadUnit(TranslationUnit? Unit, IReadOnlyList<SourceError> Errors, bool IsFromCache = false);

/// <summary>Parses and lowers units side by side. The order of the results is that of the request.</summary>
internal static class UnitReader
{
    // Parsing and lowering follow the tree: long chains of operators nest deeply. Pages that are not touched cost nothing.
    private const int StackBytes = 512 * 1024 * 1024;

    public static IReadOnlyList<ReadUnit> ReadAll(
        IReadOnlyList<ParserInvocation> invocations,
        UnitCache? cache,
        CancellationToken cancellation
    )
    {
        var results = new ReadUnit[invocations.Count];
        RunAll(
            invocations.Count,
            Environment.ProcessorCount,
            i => results[i] = Read(invocations[i], cache, cancellation),
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
        var workers = Enumerable
            .Range(0, Math.Min(mostWorkers, count))
            .Select(_ => new Thread(Work, StackBytes) { IsBackground = true })
            .ToArray();
        foreach (var worker in workers)
        {
            worker.Start();
        }

        foreach (var worker in workers)
        {
            worker.Join();
        }

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
        }
    }

    private static ReadUnit Read(ParserInvocation invocation, UnitCache? cache, CancellationToken cancellation)
    {
        var command = invocation.Command;
        if (cache?.Find(invocation) is { } kept)
        {
            return new ReadUnit(kept, [], IsFromCache: true);
        }

        if (MacroGrowth.Excess(command.File) is { } excess)
        {
            return new ReadUnit(null, [excess]);
        }

        var error = ClangUnit.TryParse(command.File, invocation.Arguments, invocation.Unsaved, out var unit);
        if (unit is null)
        {
            return new ReadUnit(null, [new SourceError(command.File, 0, 0, Refusal(error))]);
        }

        using (unit)
        {
            var source = new SourceFile(command.File, IsSystem: false);
            var lowering = new UnitLowering(unit, source, command.Directory);
            var errors = ParserMessages.Errors(unit, lowering);
            var files = OwnFiles.Of(unit, lowering.Sources);
            var lowered = lowering.Lower(
                MacroCollection.Collect(invocation, files),
                CommentCollection.Collect(files),
                cancellation
            );
            if (errors.Count == 0)
            {
                cache?.Keep(invocation, unit, lowered);
            }

            return new ReadUnit(lowered, errors);
        }
    }

    // CXError_Crashed: the library's own recovery has caught it.
    private static string Refusal(int error) =>
        error == 2
            ? "The parser broke down on this file. An array larger than the target can address does that, for one; "
                + "if the file compiles, leave it out and report it."
            : $"The parser gave this file up (code {error}). Check the flags.";
}
