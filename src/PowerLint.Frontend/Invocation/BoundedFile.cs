namespace PowerLint.Frontend;

/// <summary>
/// Reads files of a tree that is not trusted: only ordinary files, and none beyond a bound. Devices and pipes, which may never end,
/// have no length and read as empty.
/// </summary>
public static class BoundedFile
{
    /// <summary>The most that is read of a source file: more than people write, generated tables included.</summary>
    public const long MostSourceBytes = 32L * 1024 * 1024;

    /// <summary>The length in bytes of what a path leads to, or null where it leads nowhere.</summary>
    public static long? Length(string path)
    {
        try
        {
            var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
            var file = new FileInfo(target);
            return file.Exists ? file.Length : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The bytes of a file; null where it is longer than the bound, or cannot be read.</summary>
    public static byte[]? Read(string path, long mostBytes = MostSourceBytes)
    {
        try
        {
            return Length(path) switch
            {
                null => null,
                0 => [],
                { } length when length > mostBytes => null,
                _ => File.ReadAllBytes(path),
            };
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
