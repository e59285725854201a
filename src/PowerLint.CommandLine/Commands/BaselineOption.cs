using System.CommandLine;
using PowerLint.Reports;

namespace PowerLint.CommandLine;

/// <summary>The option that names an earlier report: only what it lacks counts.</summary>
internal sealed class BaselineOption
{
    private readonly Option<string> _baseline = new("--baseline")
    {
        Description = "An earlier SARIF report: mark findings new, unchanged or absent, and fail for new ones only",
        HelpName = "FILE.sarif",
    };

    /// <summary>Adds the option to a command.</summary>
    internal void AddTo(Command command) => command.Options.Add(_baseline);

    /// <summary>Reads the earlier report, or null where none was named.</summary>
    /// <exception cref="UsageException">It cannot be used.</exception>
    internal SarifBaseline? Read(ParseResult parsed, CommandSession session)
    {
        if (parsed.GetValue(_baseline) is not { } given)
        {
            return null;
        }

        try
        {
            return SarifBaseline.Read(session.FullPath(given), given);
        }
        catch (BaselineException exception)
        {
            throw new UsageException(exception.Message);
        }
    }
}
