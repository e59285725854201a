using System.Globalization;
using Microsoft.CodeAnalysis.Sarif;
using PowerLint.Analysis;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>Turns findings into SARIF results.</summary>
internal sealed class SarifResults(CheckReport report, SarifPlaces places)
{
    /// <summary>The fingerprint's name: raise the number when the way it is made changes.</summary>
    private const string FingerprintName = "powerlint/v1";

    // What the library's matcher writes into the results that it matched.
    private const string MatchingProperty = "ResultMatching";

    private readonly SourceLines _sources = new();
    private readonly Dictionary<string, int> _ruleIndex = RuleCatalog
        .All.Select((rule, index) => (rule.Id, index))
        .ToDictionary(rule => rule.Id, rule => rule.index, StringComparer.Ordinal);

    /// <summary>One finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="allowedBecause">The reason that a comment in the source gives for allowing it, or null.</param>
    internal Result Write(Finding finding, string? allowedBecause)
    {
        var result = new Result
        {
            RuleId = finding.RuleId,
            RuleIndex = _ruleIndex.GetValueOrDefault(finding.RuleId, -1),
            Level = SarifRules.Level(finding.Level),
            Message = new Message { Text = finding.Message },
            Locations = [places.Locate(finding.Range, function: finding.Function)],
            RelatedLocations = Related(finding),
            CodeFlows = CodeFlows(finding),
            Fixes = finding.Fix is { } fix ? [places.Describe(fix)] : null,
            PartialFingerprints = new Dictionary<string, string>(StringComparer.Ordinal)
            {
                [FingerprintName] = finding.Fingerprint,
            },
        };
        if (allowedBecause is not null)
        {
            result.Suppressions = [new Suppression { Kind = SuppressionKind.InSource, Justification = allowedBecause }];
        }

        if (report.Baseline is { } baseline)
        {
            result.BaselineState = baseline.IsNew(finding) ? BaselineState.New : BaselineState.Unchanged;
        }

        result.SetProperty("subjects", finding.Subjects.ToArray());
        result.SetProperty("certainty", FindingTextWriter.Name(finding.Certainty));
        if (finding.SleepMode is { } mode)
        {
            result.SetProperty("sleepMode", mode);
        }

        if (finding.Cost.Microamps is { } microamps)
        {
            result.SetProperty("estimatedMicroamps", microamps);
        }

        result.SetProperty("costBasis", finding.Cost.Basis);
        return result;
    }

    /// <summary>A result of the earlier report that is gone, as a result of this one.</summary>
    internal Result WriteAbsent(Result absent)
    {
        var result = absent.DeepClone();
        result.BaselineState = BaselineState.Absent;
        result.RuleIndex = _ruleIndex.GetValueOrDefault(result.RuleId ?? "", -1);
        // What only says how the matching went, and places in the earlier run's own lists.
        result.RemoveProperty(MatchingProperty);
        result.Provenance = null;
        return result;
    }

    /// <summary>The fingerprint that <see cref="Write"/> gave a result; empty where another tool wrote it.</summary>
    internal static string FingerprintOf(Result result) =>
        result.PartialFingerprints is { } prints && prints.TryGetValue(FingerprintName, out var print) ? print : "";

    private List<Location>? Related(Finding finding)
    {
        var related = finding
            .Related.Where(location => location.Range.Line > 0)
            .Select(location => places.Locate(location.Range, location.Message))
            .ToList();
        for (var index = 0; index < related.Count; index++)
        {
            related[index].Id = index + 1;
        }

        return related.Count == 0 ? null : related;
    }

    /// <summary>The way from reset: every write that decided it, then the place where it matters.</summary>
    private List<CodeFlow>? CodeFlows(Finding finding)
    {
        if (finding.Flow.IsEmpty || report.Device is null)
        {
            return null;
        }

        var steps = finding.Flow.Select(Step).ToList();
        if (finding.Point is { } point)
        {
            var what = point.Kind == RestingKind.Sleep ? "the CPU sleeps here" : "the CPU goes round here";
            steps.Add(
                new ThreadFlowLocation
                {
                    Location = places.Locate(point.Range, what, point.Function),
                    Importance = ThreadFlowLocationImportance.Essential,
                }
            );
        }

        for (var index = 0; index < steps.Count; index++)
        {
            steps[index].ExecutionOrder = index + 1;
        }

        return [new CodeFlow { ThreadFlows = [new ThreadFlow { Id = "main", Locations = steps }] }];
    }

    private ThreadFlowLocation Step(Decision decision)
    {
        var handler = decision.Handler is { } name
            ? string.Create(CultureInfo.InvariantCulture, $" (in the handler {name})")
            : "";
        return new ThreadFlowLocation
        {
            Location = places.Locate(
                decision.Range,
                FlowText.Show(decision, report.Device!, _sources) + handler,
                decision.Function
            ),
            NestingLevel = decision.Calls.Length,
            Importance = ThreadFlowLocationImportance.Important,
            State = new Dictionary<string, MultiformatMessageString>(StringComparer.Ordinal)
            {
                [BitText.RegisterAt(report.Device!, decision.Address)] = new()
                {
                    Text = BitText.Show(decision.After, decision.WidthBits),
                },
            },
        };
    }
}
