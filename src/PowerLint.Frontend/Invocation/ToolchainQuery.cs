using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>What a cross compiler says of itself.</summary>
/// <param name="Folders">Its system header folders, in the order of search.</param>
/// <param name="Macros">What it defines for the target, as <c>NAME VALUE</c>.</param>
internal sealed record ToolchainAnswer(string[] Folders, string[] Macros)
{
    public static ToolchainAnswer None { get; } = new([], []);
}

/// <summary>
/// Asks a cross compiler where its headers lie and what it defines. Only one that <see cref="DriverLocation"/> lets through is asked, and
/// of the build's flags only those that name a processor are passed on, in a form that can say nothing else. Answers are kept.
/// </summary>
internal static partial class ToolchainQuery
{
    private const int PatienceMilliseconds = 10_000;

    private static readonly Lock Gate = new();
    private static readonly Dictionary<string, ToolchainAnswer> Known = new(StringComparer.Ordinal);

    // Where distributions put the libraries when the compiler itself is not installed.
    private static readonly Dictionary<string, string[]> FixedPlaces = new(StringComparer.Ordinal)
    {
        ["avr"] = ["/usr/lib/avr/include", "/usr/avr/include", "/usr/local/avr/include"],
        ["msp430"] = ["/usr/msp430/include", "/usr/msp430-elf/include"],
        ["arm"] = ["/usr/lib/arm-none-eabi/include", "/usr/arm-none-eabi/include", "/usr/include/newlib"],
        ["riscv32"] = ["/usr/lib/picolibc/riscv64-unknown-elf/include", "/usr/riscv64-unknown-elf/include"],
        ["riscv64"] = ["/usr/lib/picolibc/riscv64-unknown-elf/include", "/usr/riscv64-unknown-elf/include"],
    };

    /// <summary>What a compiler for the target says; its well-known folders where none may be asked.</summary>
    /// <param name="target">The target.</param>
    /// <param name="command">The command: the compiler that it names is preferred where it may be asked.</param>
    /// <param name="flags">Its flags.</param>
    /// <param name="request">What may be asked, and where answers are kept.</param>
    public static ToolchainAnswer Find(
        TargetSelection target,
        CompileCommand command,
        IReadOnlyList<string> flags,
        ReadRequest request
    )
    {
        if (request.AsksCompilers)
        {
            var tree = FirmwareTree.RootOf(command.File);
            foreach (var driver in DriverLocation.Candidates(target, command.Compiler, request.AllowedDrivers, tree))
            {
                if (Ask(driver, ProcessorFlags(flags), request.CacheFolder) is { Folders.Length: > 0 } answer)
                {
                    return answer with { Macros = [.. answer.Macros.Where(macro => IsOfTarget(macro, target))] };
                }
            }
        }

        return new ToolchainAnswer([.. FixedPlaces[target.Architecture].Where(Directory.Exists).Take(1)], []);
    }

    /// <summary>Of a build's flags those that name a processor.</summary>
    internal static string[] ProcessorFlags(IReadOnlyList<string> flags) =>
        [.. flags.Where(flag => flag is "-mthumb" or "-marm" || ProcessorFlag().IsMatch(flag))];

    // Only what the parser cannot know: its own definitions of types and limits are to stay.
    private static bool IsOfTarget(string macro, TargetSelection target) =>
        target.Architecture switch
        {
            "avr" => macro.StartsWith("__AVR_", StringComparison.Ordinal),
            "msp430" => macro.StartsWith("__MSP430", StringComparison.Ordinal),
            _ => false,
        };

    private static ToolchainAnswer Ask(string driver, string[] flags, string? cacheFolder)
    {
        var key = string.Join(' ', [driver, .. flags]);
        lock (Gate)
        {
            if (Known.TryGetValue(key, out var answer))
            {
                return answer;
            }

            var cache = CacheFile(driver, flags, cacheFolder);
            answer = FromCache(cache) ?? ToolchainAnswer.None;
            if (answer.Folders.Length == 0)
            {
                answer = Run(driver, flags);
                // A compiler that does not know the processor still has headers.
                answer = answer.Folders.Length == 0 && flags.Length > 0 ? Run(driver, []) : answer;
                ToCache(cache, answer);
            }

            Known.Add(key, answer);
            return answer;
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

    /// <summary>The macros that a driver prints with <c>-dM</c>, those without parameters.</summary>
    internal static string[] ParseMacros(string output) =>
        [
            .. output
                .Split('\n')
                .Select(line => MacroLine().Match(line.TrimEnd('\r')))
                .Where(match => match.Success)
                .Select(match => $"{match.Groups["name"].Value} {match.Groups["value"].Value}")
                .Order(StringComparer.Ordinal),
        ];

    private static ToolchainAnswer Run(string driver, string[] flags)
    {
        var start = new ProcessStartInfo(driver, [.. flags, "-E", "-dM", "-v", "-x", "c", "/dev/null"])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = Path.GetTempPath(),
        };
        start.Environment["LC_ALL"] = "C";
        // Variables that would add the user's own folders, or have another program do the work.
        foreach (
            var name in (ReadOnlySpan<string>)
                ["CPATH", "C_INCLUDE_PATH", "GCC_EXEC_PREFIX", "COMPILER_PATH", "GCC_COMPARE_DEBUG"]
        )
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
                return ToolchainAnswer.None;
            }

            Task.WaitAll(error, output);
            return new ToolchainAnswer(ParseSearchList(error.Result), ParseMacros(output.Result));
        }
        catch (Exception error) when (error is Win32Exception or InvalidOperationException)
        {
            return ToolchainAnswer.None;
        }
    }

    // A compiler that is replaced has another time or size.
    private static string? CacheFile(string driver, string[] flags, string? cacheFolder)
    {
        if (cacheFolder is not { } root)
        {
            return null;
        }

        var file = new FileInfo(DriverLocation.Resolved(driver));
        var key = string.Create(
            CultureInfo.InvariantCulture,
            $"{driver}\n{string.Join(' ', flags)}\n{file.FullName}\n{file.LastWriteTimeUtc.Ticks}\n{(file.Exists ? file.Length : 0)}"
        );
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..24];
        return Path.Combine(root, "toolchains", $"{name}.txt");
    }

    private static ToolchainAnswer? FromCache(string? cache)
    {
        try
        {
            if (cache is null || !File.Exists(cache))
            {
                return null;
            }

            // Folders, an empty line, macros.
            var lines = File.ReadAllLines(cache);
            var end = Array.IndexOf(lines, "");
            return end > 0 && Array.TrueForAll(lines[..end], Directory.Exists)
                ? new ToolchainAnswer(lines[..end], lines[(end + 1)..])
                : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static void ToCache(string? cache, ToolchainAnswer answer)
    {
        if (cache is null || answer.Folders.Length == 0)
        {
            return;
        }

        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(cache)!);
            var draft = $"{cache}.{Guid.NewGuid():N}";
            File.WriteAllLines(draft, [.. answer.Folders, "", .. answer.Macros]);
            File.Move(draft, cache, overwrite: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // Without a cache the compiler is asked again next time.
        }
    }

    [GeneratedRegex(
        "^-m(mcu|cpu|arch|fpu|float-abi|abi)=[A-Za-z0-9_.+-]{1,40}$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex ProcessorFlag();

    [GeneratedRegex(
        "^#define (?<name>[A-Za-z_][A-Za-z0-9_]*) (?<value>[^\"\\\\]{0,100})$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex MacroLine();
}
