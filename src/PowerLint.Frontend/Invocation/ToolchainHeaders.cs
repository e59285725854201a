using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace PowerLint.Frontend;

/// <summary>
/// Where a cross compiler keeps its headers. Asks the compiler itself, but only one of the known names found on the search
/// path, never one that lies in the firmware's tree or that a compile database names by path.
/// </summary>
internal static class ToolchainHeaders
{
    private const int PatienceMilliseconds = 10_000;

    private static readonly Lock Gate = new();
    private static readonly Dictionary<string, string[]> Known = new(StringComparer.Ordinal);

    // Where distributions put the libraries when the compiler itself is not installed.
    private static readonly Dictionary<string, string[]> FixedPlaces = new(StringComparer.Ordinal)
    {
        ["avr"] = ["/usr/lib/avr/include", "/usr/avr/include", "/usr/local/avr/include"],
        ["msp430"] = ["/usr/msp430/include", "/usr/msp430-elf/include"],
        ["arm"] = ["/usr/lib/arm-none-eabi/include", "/usr/arm-none-eabi/include", "/usr/include/newlib"],
        ["riscv32"] = ["/usr/lib/picolibc/riscv64-unknown-elf/include", "/usr/riscv64-unknown-elf/include"],
        ["riscv64"] = ["/usr/lib/picolibc/riscv64-unknown-elf/include", "/usr/riscv64-unknown-elf/include"],
    };

    /// <summary>The system header folders for a target, in the order of search.</summary>
    /// <param name="target">The target.</param>
    /// <param name="compiler">The compiler that the build names: preferred where it is a known one.</param>
    /// <param name="firmwareFolder">The firmware's tree.</param>
    /// <param name="asksCompilers">Whether a compiler may be run.</param>
    /// <param name="cacheFolder">Where answers are kept, or null.</param>
    public static IReadOnlyList<string> Find(
        TargetSelection target,
        string? compiler,
        string firmwareFolder,
        bool asksCompilers,
        string? cacheFolder
    )
    {
        if (asksCompilers)
        {
            foreach (var driver in DriversFor(target, compiler))
            {
                if (
                    Locate(driver, Environment.GetEnvironmentVariable("PATH") ?? "", firmwareFolder) is { } path
                    && Ask(path, cacheFolder) is { Length: > 0 } folders
                )
                {
                    return folders;
                }
            }
        }

        return [.. FixedPlaces[target.Architecture].Where(Directory.Exists).Take(1)];
    }

    /// <summary>The driver as the search path finds it, or null.</summary>
    internal static string? Locate(string driver, string searchPath, string firmwareFolder)
    {
        var tree = Path.GetFullPath(firmwareFolder);
        foreach (var folder in searchPath.Split(Path.PathSeparator))
        {
            if (!Path.IsPathRooted(folder))
            {
                continue;
            }

            var path = Path.GetFullPath(Path.Combine(folder, driver));
            if (File.Exists(path) && !IsInside(path, tree) && !IsInside(Resolved(path), tree))
            {
                return path;
            }
        }

        return null;
    }

    private static IEnumerable<string> DriversFor(TargetSelection target, string? compiler)
    {
        var named = compiler is null ? null : Path.GetFileName(compiler.Replace('\\', '/'));
        return TargetSelection.KnownDrivers.Contains(named, StringComparer.Ordinal)
            ? target.Drivers.Prepend(named!)
            : target.Drivers;
    }

    private static bool IsInside(string path, string folder) =>
        path.StartsWith(
            folder.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    private static string Resolved(string path)
    {
        try
        {
            return File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        }
        catch (IOException)
        {
            return path;
        }
    }

    private static string[] Ask(string driver, string? cacheFolder)
    {
        lock (Gate)
        {
            if (Known.TryGetValue(driver, out var folders))
            {
                return folders;
            }

            var cache = CacheFile(driver, cacheFolder);
            folders = FromCache(cache) ?? [];
            if (folders.Length == 0)
            {
                folders = ParseSearchList(Run(driver));
                ToCache(cache, folders);
            }

            Known.Add(driver, folders);
            return folders;
        }
    }

    /// <summary>The folders that a driver prints with <c>-v</c>.</summary>
    internal static string[] ParseSearchList(string output) =>
        [
            .. output
                .Split('\n')
                .Select(line => line.TrimEnd('\r'))
                .SkipWhile(line => !line.StartsWith("#include <...>", StringComparison.Ordinal))
                .Skip(1)
                .TakeWhile(line => line.StartsWith(' '))
                .Select(line => Path.GetFullPath(line.Trim()))
                .Where(Directory.Exists)
                .Distinct(StringComparer.Ordinal),
        ];

    private static string Run(string driver)
    {
        var start = new ProcessStartInfo(driver, ["-E", "-v", "-x", "c", "/dev/null"])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["LC_ALL"] = "C";
        // Variables that would add the user's own folders.
        foreach (var name in (ReadOnlySpan<string>)["CPATH", "C_INCLUDE_PATH", "GCC_EXEC_PREFIX", "COMPILER_PATH"])
        {
            start.Environment.Remove(name);
        }

        try
        {
            using var process = Process.Start(start)!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEndAsync();
            if (!process.WaitForExit(PatienceMilliseconds))
            {
                process.Kill(entireProcessTree: true);
                return "";
            }

            Task.WaitAll(error, output);
            return error.Result;
        }
        catch (Exception error) when (error is Win32Exception or InvalidOperationException)
        {
            return "";
        }
    }

    // A compiler that is replaced has another time or size.
    private static string? CacheFile(string driver, string? cacheFolder)
    {
        if (cacheFolder is not { } root)
        {
            return null;
        }

        var file = new FileInfo(Resolved(driver));
        var key = string.Create(
            CultureInfo.InvariantCulture,
            $"{driver}\n{file.FullName}\n{file.LastWriteTimeUtc.Ticks}\n{(file.Exists ? file.Length : 0)}"
        );
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..24];
        return Path.Combine(root, "toolchains", $"{name}.txt");
    }

    private static string[]? FromCache(string? cache)
    {
        try
        {
            if (cache is null || !File.Exists(cache))
            {
                return null;
            }

            var folders = File.ReadAllLines(cache);
            return Array.TrueForAll(folders, Directory.Exists) ? folders : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void ToCache(string? cache, string[] folders)
    {
        if (cache is null || folders.Length == 0)
        {
            return;
        }

        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(cache)!);
            var draft = $"{cache}.{Environment.ProcessId.ToString(CultureInfo.InvariantCulture)}";
            File.WriteAllLines(draft, folders);
            File.Move(draft, cache, overwrite: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // Without a cache the compiler is asked again next time.
        }
    }
}
