using System.Security.Cryptography;
using System.Text;
using PowerLint.Analysis;
using PowerLint.Currents;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>What a check wrote.</summary>
/// <param name="Text">The report.</param>
/// <param name="Messages">What went to standard error beside it.</param>
/// <param name="Status">The exit status.</param>
internal sealed record KeptReport(string Text, string Messages, int Status);

/// <summary>
/// Reports of earlier checks, in the user's cache. One is used again only where everything that it was made from is the same: the
/// program, the device models, the settings, the command line, where it goes, every source and header.
/// </summary>
internal sealed class KeptReports
{
    // The report of a large code base takes some hundred kilobytes.
    private const long MostBytes = 64L * 1024 * 1024;

    private readonly CacheStore _store;
    private readonly byte[] _circumstances;

    private KeptReports(CacheStore store, byte[] circumstances)
    {
        _store = store;
        _circumstances = circumstances;
    }

    /// <summary>Those that one run may use; null where nothing is kept.</summary>
    internal static KeptReports? Of(FirmwareInput input, CommandSession session, bool isTerminal)
    {
        if (!input.Request.UsesCache || session.Console.CacheFolder is not { } folder)
        {
            return null;
        }

        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (
            var type in (ReadOnlySpan<Type>)
                [
                    typeof(KeptReports),
                    typeof(CheckReport),
                    typeof(CostEstimator),
                    typeof(Finding),
                    typeof(ImageAnalyzer),
                    typeof(DeviceModel),
                    typeof(FirmwareReading),
                    typeof(TranslationUnit),
                ]
        )
        {
            Add(type.Module.ModuleVersionId.ToString());
        }

        hash.AppendData(input.Catalog.Stamp());
        Add(session.Console.WorkingDirectory);
        Add(isTerminal ? "terminal" : "");
        foreach (var argument in session.Arguments)
        {
            Add(argument);
        }

        if (input.Settings.File is { } file)
        {
            Add(file);
            hash.AppendData(input.Settings.Hash.AsSpan());
        }

        return new KeptReports(new CacheStore(Path.Combine(folder, "reports"), MostBytes), hash.GetHashAndReset());

        void Add(string text) => hash.AppendData(Encoding.UTF8.GetBytes(text + "\0"));
    }

    /// <summary>The report of the same input, or null.</summary>
    /// <param name="source">The hash of what was read, or null where something has changed.</param>
    internal KeptReport? Find(byte[]? source)
    {
        if (source is null || _store.Read(Key(source)) is not { } bytes)
        {
            return null;
        }

        try
        {
            using var reader = new BinaryReader(new MemoryStream(bytes, writable: false), Encoding.UTF8);
            return new KeptReport(reader.ReadString(), reader.ReadString(), reader.ReadInt32());
        }
        catch (Exception error) when (error is IOException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Keeps a report.</summary>
    internal void Keep(byte[]? source, KeptReport report)
    {
        if (source is null)
        {
            return;
        }

        using var bytes = new MemoryStream();
        using (var writer = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write(report.Text);
            writer.Write(report.Messages);
            writer.Write(report.Status);
        }

        _store.Write(Key(source), bytes.GetBuffer().AsSpan(0, (int)bytes.Length));
        _store.Trim();
    }

    private byte[] Key(byte[] source) => SHA256.HashData([.. _circumstances, .. source]);
}
