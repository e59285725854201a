using PowerLint.Devices;
using PowerLint.Frontend;

namespace PowerLint.CommandLine;

/// <summary>What a run starts from: the settings, the device models, and which sources to read with which flags; not read yet.</summary>
internal sealed class FirmwareInput
{
    private FirmwareInput(
        FirmwareRequest request,
        SourceSelection sources,
        Settings settings,
        DeviceCatalog catalog,
        string? device,
        FirmwareReading reading,
        RunProgress progress
    )
    {
        Request = request;
        Sources = sources;
        Settings = settings;
        Catalog = catalog;
        Device = device;
        Reading = reading;
        Progress = progress;
    }

    /// <summary>What was asked for.</summary>
    internal FirmwareRequest Request { get; }

    /// <summary>Which files.</summary>
    internal SourceSelection Sources { get; }

    /// <summary>The configuration.</summary>
    internal Settings Settings { get; }

    /// <summary>The device models.</summary>
    internal DeviceCatalog Catalog { get; }

    /// <summary>The part, as asked for or as configured; null to find out from the sources.</summary>
    internal string? Device { get; }

    /// <summary>The files with their flags.</summary>
    internal FirmwareReading Reading { get; }

    /// <summary>Told how the run goes.</summary>
    internal RunProgress Progress { get; }

    /// <summary>Finds out what a request means.</summary>
    /// <exception cref="UsageException">Something that was given cannot be used.</exception>
    internal static FirmwareInput Open(FirmwareRequest request, CommandSession session)
    {
        var progress = new RunProgress(session.Console, request.IsVerbose);
        var sources = SourceSelection.From(request, session);
        var settings = sources.ReadSettings(request, session);
        var catalog = progress.Stage("opening the device models", DeviceChoice.OpenCatalog);
        var device = DeviceChoice.Named(catalog, request.Device, settings);
        var reading = FirmwareReading.Open(
            new ReadRequest
            {
                Files = sources.Files,
                Flags = request.CompilerFlags,
                GuessesIncludeFolders = sources.IsGuessed,
                Database = sources.Database,
                DeviceName = device,
                WorkingDirectory = session.Console.WorkingDirectory,
                AllowedDrivers = request.AllowedDrivers,
                HeaderFolders = request.HeaderFolders,
                Progress = progress.Read,
                CacheFolder = request.UsesCache ? session.Console.CacheFolder : null,
            }
        );
        return new FirmwareInput(request, sources, settings, catalog, device, reading, progress);
    }

    /// <summary>Reads the sources.</summary>
    /// <exception cref="UsageException">Nothing could be read.</exception>
    internal ReadResult Read(CancellationToken cancellation)
    {
        ReadResult read;
        try
        {
            read = Progress.Stage("reading the sources", () => Reading.Read(cancellation));
        }
        catch (FrontendUnavailableException exception)
        {
            throw new UsageException(exception.Message);
        }

        Progress.TellReading(read);
        return read.Failure is { } failure && (failure.Kind != ReadFailureKind.NothingUsable || read.Errors.Count == 0)
            ? throw new UsageException(failure.Message)
            : read;
    }
}
