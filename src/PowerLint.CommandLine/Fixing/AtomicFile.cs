namespace PowerLint.CommandLine;

/// <summary>Replaces files whole: whoever reads one sees the old content or the new one, also after a crash.</summary>
internal static class AtomicFile
{
    /// <summary>Replaces the content of a file; its permissions stay.</summary>
    internal static void Replace(string path, byte[] content)
    {
        // In the same folder, since a rename is whole on one file system only.
        var folder = Path.GetDirectoryName(path)!;
        var temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Path.GetRandomFileName()}");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(path));
            }

            File.Move(temporary, path, overwrite: true);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    }
}
