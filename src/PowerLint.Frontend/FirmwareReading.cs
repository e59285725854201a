using System.Security.Cryptography;
using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Firmware of which it is known what files to read and with which flags, to be read once.</summary>
public sealed class FirmwareReading
{
    private readonly NoticeList _notices;
    private readonly IReadOnlyList<ParserInvocation> _invocations;
    private readonly UnitCache? _cache;
    private readonly UnitReader _reader;
    private readonly ReadFailure? _failure;

    private FirmwareReading(
        ReadRequest request,
        NoticeList notices,
        IReadOnlyList<ParserInvocation> invocations,
        ReadFailure? failure
    )
    {
        _notices = notices;
        _invocations = invocations;
        _failure = failure;
        _cache = request.CacheFolder is { } folder
            ? new UnitCache(new CacheStore(Path.Combine(folder, "units")))
            : null;
        _reader = new UnitReader(_cache, request.Progress);
    }

    /// <summary>Finds out which files and flags a request means; this may ask a compiler for its header folders.</summary>
    public static FirmwareReading Open(ReadRequest request)
    {
        var notices = new NoticeList();
        try
        {
            var selected = CommandSelection.Select(request, notices);
            var invocations = ParserInvocation.PrepareAll(selected, request, notices);
            return new FirmwareReading(request, notices, invocations, failure: null);
        }
        catch (ReadException error)
        {
            return new FirmwareReading(request, notices, [], error.Failure);
        }
    }

    /// <summary>
    /// A hash of all that will be read, and of the flags, where the cache holds every unit of it and no file has changed since; else
    /// null. Nothing is parsed. Where two hashes are equal, so are the results.
    /// </summary>
    /// <exception cref="OperationCanceledException">The reading was cancelled.</exception>
    public byte[]? FindInput(CancellationToken cancellation = default) =>
        _failure is null && _reader.AllAreKept(_invocations, cancellation) ? Input() : null;

    /// <summary>Reads it. Never throws for what the input holds.</summary>
    /// <exception cref="OperationCanceledException">The reading was cancelled.</exception>
    /// <exception cref="FrontendUnavailableException">The parser cannot be loaded on this machine.</exception>
    public ReadResult Read(CancellationToken cancellation = default)
    {
        if (_failure is not null)
        {
            return new ReadResult { Failure = _failure, Notices = _notices.ToList() };
        }

        // Each unit on its own.
        var parsed = _reader.ReadAll(_invocations, cancellation);
        SourceError[] errors = [.. parsed.SelectMany(unit => unit.Errors).Distinct()];
        var input = errors.Length == 0 ? Input() : null;
        MissingHeaders.Note(errors, _invocations[0].Target, _notices);
        var usable = parsed
            .Zip(_invocations)
            .Where(read => read.First.Unit is not null)
            .Select(read => (Unit: read.First.Unit!, read.Second.Command.Target))
            .ToArray();
        var units = usable.Select(read => read.Unit).ToArray();
        return new ReadResult
        {
            Units = units,
            Targets = [.. usable.Select(read => read.Target)],
            UnitsFromCache = parsed.Count(unit => unit.IsFromCache),
            Input = input,
            Times = _reader.Times,
            Notices = _notices.ToList(),
            Errors = errors,
            Failure =
                units.Length > 0
                    ? null
                    : new ReadFailure(
                        ReadFailureKind.NothingUsable,
                        _invocations[0].Command.File,
                        Line: null,
                        "None of the files could be parsed: check the flags and the errors listed."
                    ),
        };
    }

    // Besides the units: which image each belongs to, and what was said of how they were found.
    private byte[]? Input()
    {
        if (_cache is null)
        {
            return null;
        }

        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var invocation in _invocations)
        {
            if (_cache.Identity(invocation) is not { } identity)
            {
                return null;
            }

            hash.AppendData(identity);
            Add(invocation.Command.Target ?? "");
        }

        foreach (var notice in _notices.ToList())
        {
            Add(notice.Id);
            Add(notice.Message);
            Add(notice.IsIncomplete ? "incomplete" : "");
        }

        return hash.GetHashAndReset();

        void Add(string text) => hash.AppendData(Encoding.UTF8.GetBytes(text + "\0"));
    }
}
