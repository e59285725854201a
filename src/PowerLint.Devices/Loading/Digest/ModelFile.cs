using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;

namespace PowerLint.Devices;

/// <summary>A file that models are written in, and a number that changes with what is in it.</summary>
/// <param name="Path">The file.</param>
/// <param name="Hash">Not for security: it tells an edited file from the one that was digested.</param>
internal sealed record ModelFile(string Path, ulong Hash)
{
    /// <summary>The files of a folder, in order of name.</summary>
    internal static ModelFile[] In(string folder)
    {
        var paths = Directory.GetFiles(folder, "*.yaml");
        Array.Sort(paths, StringComparer.Ordinal);
        var files = new ModelFile[paths.Length];
        for (var i = 0; i < paths.Length; i++)
        {
            files[i] = new ModelFile(paths[i], HashOf(File.ReadAllBytes(paths[i])));
        }

        return files;
    }

    /// <summary>What tells these files from others.</summary>
    internal static byte[] Stamp(ModelFile[] files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(System.IO.Path.GetFileName(file.Path) + "\0"));
            hash.AppendData(BitConverter.GetBytes(file.Hash));
        }

        return hash.GetHashAndReset();
    }

    // Runs over all files at every start, so eight bytes a step, compiled well at once.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static ulong HashOf(byte[] bytes)
    {
        const ulong Odd = 0x9E3779B97F4A7C15;
        var hash = (ulong)bytes.Length;
        ReadOnlySpan<byte> left = bytes;
        while (left.Length >= sizeof(ulong))
        {
            hash = Mixed(hash ^ MemoryMarshal.Read<ulong>(left));
            left = left[sizeof(ulong)..];
        }

        foreach (var last in left)
        {
            hash = Mixed(hash ^ last);
        }

        return hash;

        static ulong Mixed(ulong value)
        {
            value *= Odd;
            return value ^ BitOperations.RotateRight(value, 29);
        }
    }
}
