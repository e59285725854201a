using System.CommandLine;

namespace PowerLint.CommandLine;

/// <summary>What to do with fixes.</summary>
internal enum FixMode
{
    /// <summary>Only report them.</summary>
    Report,

    /// <summary>Show what the safe ones would change.</summary>
    Show,

    /// <summary>Apply the safe ones.</summary>
    Apply,
}

/// <summary>The options that apply fixes.</summary>
internal sealed class FixOptions
{
    private readonly Option<bool> _fix = new("--fix")
    {
        Description = "Apply the fixes that are marked safe, and report what is left",
    };

    private readonly Option<bool> _dryRun = new("--dry-run")
    {
        Description = "With --fix: print what would be changed as a unified diff, and change nothing",
    };

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Options.Add(_fix);
        command.Options.Add(_dryRun);
    }

    /// <summary>What was asked for.</summary>
    internal FixMode Read(ParseResult parsed) =>
        (parsed.GetValue(_fix), parsed.GetValue(_dryRun)) switch
        {
            (true, true) => FixMode.Show,
            (true, false) => FixMode.Apply,
            (false, true) => throw new UsageException("--dry-run goes with --fix: it shows what --fix would change"),
            _ => FixMode.Report,
        };
}
