namespace PowerLint.OracleTests;

/// <summary>One altered statement of a clean reference firmware, and what that must lead to.</summary>
/// <param name="Firmware">The firmware, <c>family/scenario</c>.</param>
/// <param name="File">The file that is altered.</param>
/// <param name="Statement">The statement as written.</param>
/// <param name="Occurrence">Which of several equal ones, from 1.</param>
/// <param name="Alteration">What is done to it, for people.</param>
/// <param name="Replacement">What stands there instead.</param>
/// <param name="RuleId">The rule that must fire.</param>
/// <param name="Subjects">The subjects that its findings must name.</param>
internal sealed record Mutation(
    string Firmware,
    string File,
    string Statement,
    int Occurrence,
    string Alteration,
    string Replacement,
    string RuleId,
    IReadOnlyList<string> Subjects
)
{
    /// <summary>The file's text with the statement altered.</summary>
    /// <exception cref="FormatException">The statement does not stand in the file as often as said.</exception>
    public string Apply(string text)
    {
        var at = -1;
        for (var i = 0; i < Occurrence; i++)
        {
            at = text.IndexOf(Statement, at + 1, StringComparison.Ordinal);
            if (at < 0)
            {
                throw new FormatException($"{Firmware}: {File} does not hold '{Statement}' {Occurrence} times");
            }
        }

        return string.Concat(text.AsSpan(0, at), Replacement, text.AsSpan(at + Statement.Length));
    }

    /// <summary>The mutation on one line; no two are equal.</summary>
    public override string ToString() =>
        $"{Firmware}: {File}: {Statement}{(Occurrence > 1 ? $" (no. {Occurrence})" : "")} {Alteration}: {RuleId} {string.Join(' ', Subjects)}";
}
