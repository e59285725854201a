using System.Collections.Concurrent;

namespace PowerLint.Frontend;

/// <summary>What is asked of every file that a unit includes, found out once in a run: most headers are shared by many units.</summary>
internal sealed class FileTraits
{
    private readonly ConcurrentDictionary<(string Path, long Length, long Time), Traits> _known = new();

    /// <summary>The traits of a file as the parser holds it.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="file">The parser's handle.</param>
    /// <param name="content">Its bytes.</param>
    public Traits Of(string path, nint file, ReadOnlySpan<byte> content)
    {
        // The same time and length is the same file.
        var key = (path, content.Length, LibClang.clang_getFileTime(file));
        if (!_known.TryGetValue(key, out var traits))
        {
            traits = new Traits(
                content.IndexOfAnyExceptInRange((byte)0, (byte)127) < 0,
                content.IndexOf("F_CPU"u8) >= 0 || content.IndexOf("powerlint"u8) >= 0
            );
            _known[key] = traits;
        }

        return traits;
    }

    /// <summary>What is asked.</summary>
    /// <param name="IsAscii">Whether columns in bytes are columns in characters.</param>
    /// <param name="IsOfInterest">Whether it mentions the clock or the product.</param>
    internal readonly record struct Traits(bool IsAscii, bool IsOfInterest);
}
