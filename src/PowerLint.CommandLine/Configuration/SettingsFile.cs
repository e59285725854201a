using System.Security.Cryptography;
using System.Text;

namespace PowerLint.CommandLine;

/// <summary>Finds and reads <c>powerlint.yaml</c>.</summary>
internal static class SettingsFile
{
    /// <summary>The file's name.</summary>
    internal const string Name = "powerlint.yaml";

    private const int MostBytes = 1024 * 1024;

    /// <summary>Reads a configuration file.</summary>
    /// <param name="path">The file, absolute.</param>
    /// <param name="shown">The file as errors should name it.</param>
    /// <exception cref="UsageException">The file is missing or unreadable.</exception>
    /// <exception cref="ConfigurationException">Its content is wrong.</exception>
    internal static Settings Read(string path, string shown)
    {
        if (!File.Exists(path))
        {
            throw new UsageException($"{shown}: no such configuration file; check the path given with --config");
        }

        if (Frontend.BoundedFile.Length(path) > MostBytes)
        {
            throw new UsageException($"{shown}: this is too long for a configuration file");
        }

        try
        {
            var text = File.ReadAllText(path);
            return new SettingsReader(shown).Read(text) with
            {
                File = path,
                Shown = shown,
                Hash = [.. SHA256.HashData(Encoding.UTF8.GetBytes(text))],
            };
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new UsageException($"{shown}: the configuration file cannot be read: {exception.Message}");
        }
    }

    /// <summary>The nearest configuration file in a folder or above it, or null.</summary>
    internal static string? FindUpwards(string folder)
    {
        for (var current = new DirectoryInfo(folder); current is not null; current = current.Parent)
        {
            var candidate = Path.Combine(current.FullName, Name);
            if (File.Exists(candidate))
            {
                return candidate;
            }
        }

        return null;
    }
}
