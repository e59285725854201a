namespace PowerLint.CommandLine;

/// <summary>What a command sees of the terminal and the process; tests bring their own.</summary>
internal interface IConsole
{
    /// <summary>Standard output.</summary>
    TextWriter Output { get; }

    /// <summary>Standard error.</summary>
    TextWriter Error { get; }

    /// <summary>Whether standard output is a terminal that understands colour.</summary>
    bool IsOutputTerminal { get; }

    /// <summary>Whether standard error is a terminal that somebody watches.</summary>
    bool IsErrorTerminal { get; }

    /// <summary>The folder that relative paths start from.</summary>
    string WorkingDirectory { get; }

    /// <summary>The folder of the user's caches, or null where nothing is to be kept.</summary>
    string? CacheFolder { get; }
}
