namespace PowerLint.Frontend;

/// <summary>Carries a failure up to the reader, which returns it.</summary>
internal sealed class ReadException(ReadFailureKind kind, string path, int? line, string message) : Exception(message)
{
    public ReadFailure Failure { get; } = new(kind, path, line, message);
}
