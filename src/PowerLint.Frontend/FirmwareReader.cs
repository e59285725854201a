using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Reads firmware: C sources and their flags in, lowered units out. Never throws for what the input holds.</summary>
public static class FirmwareReader
{
    /// <summary>Reads what the request names.</summary>
    /// <exception cref="OperationCanceledException">The reading was cancelled.</exception>
    /// <exception cref="FrontendUnavailableException">The parser cannot be loaded on this machine.</exception>
    public static ReadResult Read(ReadRequest request, CancellationToken cancellation = default)
    {
        var notices = new NoticeList();
        try
        {
            // Which files and flags …
            var selected = CommandSelection.Select(request, notices);
            // … what the parser must be told for them (this may ask a compiler for its header folders) …
            var invocations = ParserInvocation.PrepareAll(selected, request, notices);
            // … then parse and lower, each unit on its own.
            var cache = request.CacheFolder is { } folder
                ? new UnitCache(new CacheStore(Path.Combine(folder, "units")))
                : null;
            var reader = new UnitReader(cache, request.Progress);
            var parsed = reader.ReadAll(invocations, cancellation);
            SourceError[] errors = [.. parsed.SelectMany(unit => unit.Errors).Distinct()];
            MissingHeaders.Note(errors, invocations[0].Target, notices);
            var usable = parsed
                .Zip(invocations)
                .Where(read => read.First.Unit is not null)
                .Select(read => (Unit: read.First.Unit!, read.Second.Command.Target))
                .ToArray();
            var units = usable.Select(read => read.Unit).ToArray();
            return new ReadResult
            {
                Units = units,
                Targets = [.. usable.Select(read => read.Target)],
                UnitsFromCache = parsed.Count(unit => unit.IsFromCache),
                Times = reader.Times,
                Notices = notices.ToList(),
                Errors = errors,
                Failure =
                    units.Length > 0
                        ? null
                        : new ReadFailure(
                            ReadFailureKind.NothingUsable,
                            invocations[0].Command.File,
                            Line: null,
                            "None of the files could be parsed: check the flags and the errors listed."
                        ),
            };
        }
        catch (ReadException error)
        {
            return new ReadResult { Failure = error.Failure, Notices = notices.ToList() };
        }
    }

    /// <summary>
    /// Parses what the request names, one unit after the other, and throws the trees away: what the parser alone costs, to hold
    /// other costs against.
    /// </summary>
    /// <returns>How many units there were.</returns>
    public static int ParseOnly(ReadRequest request, CancellationToken cancellation = default)
    {
        var notices = new NoticeList();
        var selected = CommandSelection.Select(request, notices);
        var invocations = ParserInvocation.PrepareAll(selected, request, notices);
        UnitReader.ParseAll(invocations, cancellation);
        return invocations.Count;
    }
}
