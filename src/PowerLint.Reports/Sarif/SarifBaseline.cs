using System.Collections.Immutable;
using Microsoft.CodeAnalysis.Sarif;
using Microsoft.CodeAnalysis.Sarif.Baseline.ResultMatching;
using Newtonsoft.Json;

namespace PowerLint.Reports;

/// <summary>An earlier report in SARIF, to tell what is new since. The matching is the SARIF library's own.</summary>
public sealed class SarifBaseline
{
    private const string ToolName = "PowerLint";

    private readonly SarifLog _log;
    private readonly string _shown;

    private SarifBaseline(SarifLog log, string shown)
    {
        _log = log;
        _shown = shown;
    }

    /// <summary>Reads an earlier report.</summary>
    /// <param name="path">The file.</param>
    /// <param name="shown">The file as the user named it.</param>
    /// <exception cref="BaselineException">It is none: what is wrong is said in a line.</exception>
    public static SarifBaseline Read(string path, string shown)
    {
        SarifLog? log;
        try
        {
            log = JsonConvert.DeserializeObject<SarifLog>(File.ReadAllText(path));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new BaselineException(
                File.Exists(path)
                    ? $"{shown}: the baseline cannot be read: {exception.Message}"
                    : $"{shown}: no such baseline; write one with --format sarif --output {shown}"
            );
        }
        catch (Exception exception)
            when (exception is JsonException or FormatException or ArgumentException or InvalidOperationException)
        {
            throw new BaselineException($"{shown}: not a SARIF file: {FirstLine(exception.Message)}");
        }

        if (log is null || log.Runs is null)
        {
            throw new BaselineException($"{shown}: not a SARIF file: it has no runs");
        }

        if (log.Version != SarifVersion.Current)
        {
            throw new BaselineException($"{shown}: this is not SARIF 2.1.0, which --format sarif writes");
        }

        if (log.Runs.Any(run => run?.Tool?.Driver is not { Name: ToolName }))
        {
            throw new BaselineException($"{shown}: this report was not written by {ToolName}");
        }

        if (log.Runs.Count == 0)
        {
            throw new BaselineException($"{shown}: this report holds no runs; a baseline holds one for each image");
        }

        return new SarifBaseline(log, shown);
    }

    /// <summary>Says of each finding how it stands against the earlier report.</summary>
    public BaselineComparison Compare(CheckReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var matched = Match(report with { Baseline = null });
        return new BaselineComparison(
            _shown,
            matched
                .Where(result => result.BaselineState != BaselineState.Absent)
                .GroupBy(SarifResults.FingerprintOf, StringComparer.Ordinal)
                .ToImmutableDictionary(
                    same => same.Key,
                    same =>
                        same.All(result => result.BaselineState == BaselineState.New)
                            ? BaselineStanding.New
                            : BaselineStanding.Unchanged,
                    StringComparer.Ordinal
                ),
            matched.Count(IsGone)
        )
        {
            Absent = [.. matched.Where(IsGone)],
        };
    }

    private static bool IsGone(Result result) => result.BaselineState == BaselineState.Absent;

    private Result[] Match(CheckReport report)
    {
        var current = SarifReport.Log(report);

        // The matcher writes into what it is given, so that each comparison gets its own copies.
        var previous = _log.DeepClone();
        var run = RunOf(previous, current.Runs[0]) ?? new Run { Tool = current.Runs[0].Tool.DeepClone(), Results = [] };
        previous.Runs = [run];
        foreach (var result in run.Results ?? [])
        {
            result.Run = run;
        }

        run.Results = [.. (run.Results ?? []).Where(result => result.BaselineState != BaselineState.Absent)];
        return
        [
            .. ResultMatchingBaselinerFactory
                .GetDefaultResultMatchingBaseliner()
                .Match([previous], [current])
                .SelectMany(log => log.Runs)
                .SelectMany(run => run.Results ?? []),
        ];
    }

    // The run of the same image. A report of one image does not name it unless that was asked for.
    private static Run? RunOf(SarifLog log, Run current) =>
        log.Runs.FirstOrDefault(run =>
            string.Equals(run.AutomationDetails?.Id, current.AutomationDetails?.Id, StringComparison.Ordinal)
        )
        ?? (
            log.Runs is [var only] && (only.AutomationDetails?.Id is null || current.AutomationDetails?.Id is null)
                ? only
                : null
        );

    private static string FirstLine(string text) => text.Split('\n')[0].TrimEnd('\r');
}
