using System.CommandLine;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary><c>powerlint rules</c>: lists the rules.</summary>
internal static class RulesCommand
{
    internal static Command Build(CommandSession session)
    {
        var command = new Command("rules", "List the rules");
        command.SetAction(_ =>
        {
            session.WriteReport(
                path: null,
                (writer, isTerminal) => RuleTextWriter.WriteList(RuleCatalog.All, TextConsole.Over(writer, isTerminal))
            );
            return ExitStatus.Clean;
        });
        return command;
    }
}
