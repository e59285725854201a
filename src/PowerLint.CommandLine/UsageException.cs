namespace PowerLint.CommandLine;

/// <summary>The command line, the configuration or the input cannot be used as given.</summary>
/// <param name="message">What is wrong, where, and what to do.</param>
internal sealed class UsageException(string message) : Exception(message);
