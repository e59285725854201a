using System.Globalization;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>A unit that was read, or the errors that kept it from being.</summary>
internal sealed record ReadUnit(TranslationUnit? Unit, IReadOnlyList<SourceError> Errors, bool IsFromCache = false);

/// <summary>Parses and lowers units side by side. The order of the results is that of the request.</summary>
/// <param name="cache">Where lowered units are kept, or null.</param>
/// <param name="progress">Told after each unit, or null.</param>
internal sealed class UnitReader(UnitCache? cache, Action<ReadProgress>? progress)
{
    // Beyond what any file that people write takes, on a slow machine that is busy.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly MacroGrowth _growth = new();
    private readonly FileTraits _traits = new();
    private readonly ReadClock _clock = new();

    /// <summary>What was spent so far.</summary>
    public ReadTimes Times => _clock.Times;

    /// <summary>Whether the cache holds all of them as they would be read.</summary>
    public bool AllAreKept(IReadOnlyList<ParserInvocation> invocations, CancellationToken cancellation)
    {
        if (cache is null)
        {
            return false;
        }

        var missing = 0;
        new WorkerPool(
            invocations.Count,
            Environment.ProcessorCount,
            Patience,
            i =>
            {
                if (
                    Volatile.Read(ref missing) == 0
                    && !_clock.Measure(ReadClock.Stage.Cache, () => cache.Verify(invocations[i]))
                )
                {
                    Volatile.Write(ref missing, 1);
                }
            },
            _ => Volatile.Write(ref missing, 1)
        ).RunAll(cancellation);
        return missing == 0;
    }

    public IReadOnlyList<ReadUnit> ReadAll(IReadOnlyList<ParserInvocation> invocations, CancellationToken cancellation)
    {
        var results = new ReadUnit?[invocations.Count];
        var done = 0;
        new WorkerPool(
            invocations.Count,
            Environment.ProcessorCount,
            Patience,
            i =>
            {
                // What comes after the file was given up is dropped.
                Interlocked.CompareExchange(ref results[i], Read(invocations[i], cancellation), null);
                progress?.Invoke(new ReadProgress(Interlocked.Increment(ref done), results.Length));
            },
            i => Interlocked.CompareExchange(ref results[i], GivenUp(invocations[i].Command.File), null)
        ).RunAll(cancellation);
        cache?.Trim();
        return results!;
    }

    /// <summary>Parses units one after the other and throws the trees away.</summary>
    public static void ParseAll(IReadOnlyList<ParserInvocation> invocations, CancellationToken cancellation) =>
        new WorkerPool(
            invocations.Count,
            mostWorkers: 1,
            TimeSpan.MaxValue,
            i =>
            {
                var invocation = invocations[i];
                ClangUnit.TryParse(invocation.Command.File, invocation.Arguments, invocation.Unsaved, out var unit);
                unit?.Dispose();
            },
            _ => { }
        ).RunAll(cancellation);

    private static ReadUnit GivenUp(string file) =>
        Refused(
            file,
            string.Create(
                CultureInfo.InvariantCulture,
                $"This file was given up after {Patience.TotalSeconds:F0} seconds. Leave it out, or make it simpler."
            )
        );

    private static ReadUnit Refused(string file, string message) => new(null, [new SourceError(file, 1, 1, message)]);

    private ReadUnit Read(ParserInvocation invocation, CancellationToken cancellation)
    {
        var command = invocation.Command;
        if (cache is not null && _clock.Measure(ReadClock.Stage.Cache, () => cache.Find(invocation)) is { } kept)
        {
            return new ReadUnit(kept, [], IsFromCache: true);
        }

        switch (BoundedFile.Length(command.File))
        {
            case null:
                return Refused(
                    command.File,
                    "This file cannot be read. Check its permissions, and where it leads if it is a link."
                );
            case > BoundedFile.MostSourceBytes:
                return Refused(
                    command.File,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"This file is longer than {BoundedFile.MostSourceBytes >> 20} MB: it was not read. Leave it out, or keep data in a binary file."
                    )
                );
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
            () =>
                ClangUnit.TryParse(
                    command.File,
                    invocation.Arguments,
                    [.. invocation.Unsaved, .. Endless.FilesFor(command.File)],
                    out unit
                )
        );
        if (unit is null)
        {
            return Refused(command.File, Refusal(error));
        }

        using (unit)
        {
            var read = _clock.Measure(ReadClock.Stage.Lowering, () => LowerSafely(unit, invocation, cancellation));
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

    // A defect of ours must cost the file that shows it, and must be seen.
    private ReadUnit LowerSafely(ClangUnit unit, ParserInvocation invocation, CancellationToken cancellation)
    {
        try
        {
            return Lower(unit, invocation, cancellation);
        }
#pragma warning disable CA1031 // Said aloud, and the run counts as incomplete.
        catch (Exception error) when (error is not OperationCanceledException)
#pragma warning restore CA1031
        {
            return Refused(
                invocation.Command.File,
                $"This file brought PowerLint to a defect of its own, please report it with the file: {error.GetType().Name} {error.StackTrace?.Split('\n')[0].Trim()}"
            );
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
            ? "The parser broke down on this file. An array larger than the target can address does that, and expressions or "
                + "statements nested by the hundred thousand; if the file compiles, leave it out and report it."
            : $"The parser gave this file up (code {error}). Check the flags.";
}
