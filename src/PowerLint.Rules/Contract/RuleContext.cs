using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>What a rule may ask, and where it reports.</summary>
public sealed class RuleContext(AnalysisResult result, BoardFacts board)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Verdict> _clean = [];

    /// <summary>What the analysis found out.</summary>
    public AnalysisResult Result { get; } = result;

    /// <summary>The device.</summary>
    public DeviceModel Device => Result.Device;

    /// <summary>What the board file says.</summary>
    public BoardFacts Board { get; } = board;

    /// <summary>Findings reported so far.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Subjects that a rule looked at and found clean, or could not reach.</summary>
    public IReadOnlyList<Verdict> Verdicts => _clean;

    /// <summary>Reports a finding.</summary>
    public void Report(Finding finding) => _findings.Add(finding);

    /// <summary>Records that a subject was looked at and is clean: silence is not proof.</summary>
    public void Clean(string ruleId, string subject) => _clean.Add(new Verdict(ruleId, subject));
}

/// <summary>A subject that a rule looked at and found clean.</summary>
/// <param name="RuleId">The rule.</param>
/// <param name="Subject">The subject.</param>
public sealed record Verdict(string RuleId, string Subject);
