namespace PowerLint.CommandLine;

/// <summary>What the command tells the shell.</summary>
internal static class ExitStatus
{
    /// <summary>Nothing at or above <c>--fail-on</c>.</summary>
    internal const int Clean = 0;

    /// <summary>Findings at or above <c>--fail-on</c>.</summary>
    internal const int Findings = 1;

    /// <summary>The command line, the configuration or the input could not be used.</summary>
    internal const int UsageError = 2;

    /// <summary>Part of the firmware could not be analysed: silence about it is no proof. Wins over <see cref="Findings"/>.</summary>
    internal const int Incomplete = 3;
}
