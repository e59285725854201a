namespace PowerLint.Devices;

/// <summary>Something wrong in a device file.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">Line, from 1; 0 where unknown.</param>
/// <param name="Message">What is wrong and what to do.</param>
public sealed record DeviceModelError(string File, int Line, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{File}:{Line}: {Message}";
}

/// <summary>Thrown when device files cannot be used.</summary>
public sealed class DeviceModelException(IReadOnlyList<DeviceModelError> errors)
    : Exception(string.Join(Environment.NewLine, errors))
{
    /// <summary>All errors found.</summary>
    public IReadOnlyList<DeviceModelError> Errors { get; } = errors;
}
