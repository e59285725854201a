using System.CommandLine;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint explain</c>: prints a rule's page.</summary>
internal static class ExplainCommand
{
    internal static Command Build(CommandSession session)
    {
        var rule = new Argument<string>("RULE") { Description = "The rule's identifier, as findings give it" };
        var command = new Command("explain", "Explain a rule: what it finds, why it costs, how to mend it") { rule };
        command.SetAction(parsed => Run(session, parsed.GetRequiredValue(rule)));
        return command;
    }

    private static int Run(CommandSession session, string id)
    {
        var rule =
            RuleCatalog.Find(id)
            ?? throw UsageException.Unknown(
                "rule",
                id,
                RuleCatalog.All.Select(known => known.Id),
                "Run 'powerlint rules' for all of them."
            );
        session.WriteReport(
            path: null,
            (writer, isTerminal) => RuleTextWriter.WritePage(rule, TextConsole.Over(writer, isTerminal))
        );
        return ExitStatus.Clean;
    }
}
