using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Currents;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>The way from a request to what a report shows: configuration, sources, device, image, analysis, rules, costs.</summary>
internal sealed class FirmwareRun
{
    private readonly Settings _settings;
    private readonly Image? _image;
    private readonly List<Notice> _notices;
    private readonly RunProgress _progress;
    private AnalysisResult? _result;

    private FirmwareRun(
        Settings settings,
        ReportPaths paths,
        DeviceModel? device,
        Image? image,
        List<Notice> notices,
        RunProgress progress
    )
    {
        _progress = progress;
        _settings = settings;
        Paths = paths;
        Device = device;
        _image = image;
        _notices = notices;
    }

    /// <summary>The image's name, where there are several or one was asked for by name; else null.</summary>
    internal string? Image { get; private init; }

    /// <summary>How paths are shown.</summary>
    internal ReportPaths Paths { get; }

    /// <summary>The device; null where the sources are too broken to tell, or to be run.</summary>
    internal DeviceModel? Device { get; }

    /// <summary>Whether part of the firmware could not be looked at.</summary>
    internal bool IsIncomplete => _notices.Any(notice => notice.IsIncomplete);

    /// <summary>Reads configuration, sources and device model of one image.</summary>
    /// <exception cref="UsageException">Something that was given cannot be used, or there are several images.</exception>
    internal static FirmwareRun Start(FirmwareRequest request, CommandSession session)
    {
        var runs = StartAll(request, session);
        return runs.Length == 1
            ? runs[0]
            : throw new UsageException(
                $"there are several images: choose one with --image: {string.Join(", ", runs.Select(run => run.Image))}"
            );
    }

    /// <summary>Reads configuration, sources and device models: a run for each image, or for the one that was asked for.</summary>
    /// <exception cref="UsageException">Something that was given cannot be used.</exception>
    internal static ImmutableArray<FirmwareRun> StartAll(FirmwareRequest request, CommandSession session)
    {
        var input = FirmwareInput.Open(request, session);
        return StartAll(input, input.Read(session.Cancellation), session);
    }

    /// <summary>Takes what was read: a run for each image, or for the one that was asked for.</summary>
    /// <exception cref="UsageException">Something that was given cannot be used.</exception>
    internal static ImmutableArray<FirmwareRun> StartAll(FirmwareInput input, ReadResult read, CommandSession session)
    {
        var (request, settings, progress) = (input.Request, input.Settings, input.Progress);
        var paths = new ReportPaths(session.Console.WorkingDirectory);
        var images = ImageChoice.Choose(read, request.Image);
        if (images.Count == 0)
        {
            return
            [
                new FirmwareRun(
                    settings,
                    paths,
                    device: null,
                    image: null,
                    ReadNotices.From(read, read.Units),
                    progress
                ),
            ];
        }

        var isNamed = images.Count > 1 || request.Image is not null;
        return [.. images.Select(Open)];

        FirmwareRun Open(ImageUnits units)
        {
            var image = progress.Stage("linking", () => ImageLinker.Link(units.Units))!;
            List<Notice> notices = [.. ReadNotices.From(read, units.Units), .. ReadNotices.From(image)];
            var part = input.Device ?? DeviceChoice.Detect(input.Catalog, request.CompilerFlags, image);
            var device = progress.Stage(
                "loading the device model",
                () => DeviceChoice.Load(input.Catalog, part, settings)
            );
            SettingsChecks.Check(settings, device, settings.File is { } file ? paths.Show(file) : SettingsFile.Name);
            return new FirmwareRun(settings, paths, device, image, notices, progress)
            {
                Image = isNamed ? units.Name : null,
                Tree = settings.Folder ?? input.Sources.Folder,
            };
        }
    }

    /// <summary>The sources as the findings saw them; null before <see cref="Check"/>, or where nothing could be run.</summary>
    internal SourceTexts? Sources { get; private set; }

    /// <summary>The folder that the firmware lies in: that of its configuration, else that of its sources or database.</summary>
    internal string Tree { get; private init; } = "";

    /// <summary>Runs the image in the abstract; null where the sources are too broken to be run.</summary>
    internal AnalysisResult? Analyze(CancellationToken cancellation)
    {
        if (_result is null && _image is not null && Device is not null)
        {
            var options = new AnalysisOptions { CpuHertz = _settings.CpuHertz };
            var (image, device) = (_image, Device);
            _result = _progress.Stage("analysis", () => ImageAnalyzer.Run(image, device, options, cancellation));
            _notices.AddRange(ReadNotices.From(_result));
        }

        return _result;
    }

    /// <summary>Runs the rules too.</summary>
    internal CheckReport Check(CancellationToken cancellation)
    {
        var findings = ImmutableArray<Finding>.Empty;
        var allowed = ImmutableArray<AllowedFinding>.Empty;
        if (Analyze(cancellation) is { } result)
        {
            _notices.AddRange(UncheckedRules.Of(result.Device, _settings.RuleSettings()));
            var folder = _settings.Folder ?? Paths.Root;
            var excluded = new PathPatterns(folder, _settings.Excluded);
            var paths = new PathRules(folder, _settings.PathRules);
            var board = new BoardFacts(_settings.Pins, _settings.Package, _settings.SupplyVolts)
            {
                FittedRegulators = _settings.FittedRegulators,
            };
            var costs = new CostEstimator(result.Device, OperatingPoint(result), board);
            var run = _progress.Stage("rules", () => RuleRunner.Run(result, board, _settings.RuleSettings(), _image!));
            Sources = run.Sources;
            findings = [.. run.Findings.Where(IsIncluded).Select(paths.Apply).OfType<Finding>().Select(costs.Estimate)];
            allowed =
            [
                .. run
                    .Suppressed.Where(suppressed => IsIncluded(suppressed.Finding))
                    .Select(suppressed => new AllowedFinding(costs.Estimate(suppressed.Finding), suppressed.Reason)),
            ];

            bool IsIncluded(Finding finding) => !excluded.Match(finding.Range.File.Path);
        }

        _progress.End();
        return new CheckReport
        {
            Image = Image,
            Device = Device,
            Findings = findings,
            Allowed = allowed,
            Notices = [.. _notices],
            Paths = Paths,
            ToolVersion = ProductVersion.Text,
        };
    }

    /// <summary>Prints the notices, for reports that do not carry them.</summary>
    internal void PrintNotices(TextWriter writer)
    {
        var console = TextConsole.Over(writer, isTerminal: false);
        foreach (var notice in _notices)
        {
            NoticeTextWriter.Write(notice, Paths, console);
        }

        writer.Flush();
    }

    private OperatingPoint OperatingPoint(AnalysisResult result) =>
        new(
            _settings.SupplyVolts,
            _settings.CpuHertz
                ?? result.BusyWaits.Select(wait => wait.ClockHertz).FirstOrDefault(hertz => hertz is not null)
        );
}
