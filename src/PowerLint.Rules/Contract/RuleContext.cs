using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>What a rule may ask, and where it reports. One for each rule and image.</summary>
public sealed class RuleContext(AnalysisResult result, BoardFacts board, RuleDescriptor rule, RuleSettings settings)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Verdict> _clean = [];

    /// <summary>What the analysis found out.</summary>
    public AnalysisResult Result { get; } = result;

    /// <summary>The device.</summary>
    public DeviceModel Device => Result.Device;

    /// <summary>What the board file says.</summary>
    public BoardFacts Board { get; } = board;

    /// <summary>The rule that runs.</summary>
    public RuleDescriptor Rule { get; } = rule;

    /// <summary>Thresholds and levels.</summary>
    public RuleSettings Settings { get; } = settings;

    /// <summary>The suppressions in the source, with what they suppressed; set only for the rules that judge them.</summary>
    internal SuppressionOutcome? Suppressions { get; init; }

    /// <summary>The resting points, in order of first visit.</summary>
    internal IReadOnlyList<PointFacts> Points => field ??= PointFacts.Of(Result);

    /// <summary>
    /// The points where the CPU does rest: a sleep instruction that does nothing is none where another one works.
    /// </summary>
    internal IReadOnlyList<PointFacts> Rests =>
        field ??= Points.Any(point => point.Sleeps) ? [.. Points.Where(point => point.Sleeps)] : Points;

    /// <summary>Findings reported so far.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Subjects that the rule looked at and found clean.</summary>
    public IReadOnlyList<Verdict> Verdicts => _clean;

    /// <summary>The level of a finding of that certainty: the rule's own where it is proven, else a note.</summary>
    public Level LevelOf(Certainty certainty) =>
        certainty == Certainty.Proven ? Settings.Levels.GetValueOrDefault(Rule.Id) ?? Rule.DefaultLevel : Level.Note;

    /// <summary>Reports a finding.</summary>
    public void Report(Finding finding) => _findings.Add(finding);

    /// <summary>Records that a subject was looked at and is clean: silence is not proof.</summary>
    public void Clean(string subject) => _clean.Add(new Verdict(Rule.Id, subject));
}

/// <summary>A subject that a rule looked at and found clean.</summary>
/// <param name="RuleId">The rule.</param>
/// <param name="Subject">The subject.</param>
public sealed record Verdict(string RuleId, string Subject);
