using System.Collections.Immutable;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>A case, run through the real front end, device model, interpreter and rules.</summary>
/// <param name="Result">The analysis.</param>
/// <param name="Rules">The findings.</param>
public sealed record CaseRun(AnalysisResult Result, RuleRun Rules)
{
    private static readonly Lazy<DeviceCatalog> Catalog = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("devices"))
    );

    // Parts that exist only for tests.
    private static readonly Lazy<DeviceCatalog> TestParts = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("tests", "arm-layout", "devices"))
    );

    /// <summary>Runs a case.</summary>
    /// <param name="firmware">The case.</param>
    /// <param name="repeatsCalls">Whether calls that repeat earlier ones are done from memory.</param>
    /// <exception cref="InvalidOperationException">The source cannot be read, lowered or linked: a case must be whole.</exception>
    public static CaseRun Of(FirmwareCase firmware, bool repeatsCalls = true)
    {
        var catalog = Catalog.Value.Names.Contains(firmware.Header.Device, StringComparer.Ordinal)
            ? Catalog.Value
            : TestParts.Value;
        var device = catalog.Load(firmware.Header.Device, firmware.Header.Options);
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = firmware.Files,
                Flags = firmware.Header.CommandLine(device),
                DeviceName = firmware.Header.Device,
                WorkingDirectory = Path.GetDirectoryName(firmware.Files[0])!,
            }
        );
        string[] troubles =
        [
            .. read.Errors.Select(error => $"{error.Path}:{error.Line}: {error.Message}"),
            .. read.Gaps.Select(gap => $"{gap.Range}: not lowered: {gap.Construct}"),
        ];
        if (read.Failure is { } failure)
        {
            throw new InvalidOperationException($"{firmware.Name}: {failure.Message}\n{string.Join('\n', troubles)}");
        }

        if (troubles.Length > 0)
        {
            throw new InvalidOperationException($"{firmware.Name}:\n{string.Join('\n', troubles)}");
        }

        var image =
            ImageLinker.Link(read.Units)
            ?? throw new InvalidOperationException($"{firmware.Name}: no file defines main()");
        var result = ImageAnalyzer.Run(
            image,
            device,
            new AnalysisOptions { CpuHertz = firmware.Header.Hertz, RepeatsCalls = repeatsCalls }
        );
        return new CaseRun(result, RuleRunner.Run(result, firmware.Header.Board, RuleSettings.Default, image));
    }

    /// <summary>What differs from the expectations, for people; empty where nothing does.</summary>
    public ImmutableArray<string> Differences(FirmwareCase firmware) =>
        new CaseComparison(firmware, Result, Rules).Differences();
}
