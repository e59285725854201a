using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace PowerLint.Bench;

/// <summary>What a program cost: processor time over all its threads and children, and its largest resident memory.</summary>
internal sealed record ChildRun(double Seconds, long Megabytes, int Status, string Output)
{
    // RUSAGE_CHILDREN; the structure starts with user and system time, then the largest resident size in kilobytes.
    private const int Children = -1;

    /// <summary>Runs a program on one core, in a process that measures nothing else.</summary>
    public static ChildRun Of(string folder, IReadOnlyDictionary<string, string>? environment, params string[] command)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!, ["--run", .. command])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = folder,
        };
        foreach (var (name, value) in environment ?? new Dictionary<string, string>(StringComparer.Ordinal))
        {
            start.Environment[name] = value;
        }

        using var wrapper = Process.Start(start)!;
        var line = wrapper.StandardOutput.ReadToEnd();
        wrapper.WaitForExit();
        var parts = line.Split(' ', 4);
        return new ChildRun(
            double.Parse(parts[0], CultureInfo.InvariantCulture),
            long.Parse(parts[1], CultureInfo.InvariantCulture),
            int.Parse(parts[2], CultureInfo.InvariantCulture),
            parts[3]
        );
    }

    /// <summary>What the measuring process does.</summary>
    public static int Measure(string[] command)
    {
        using (var own = Process.GetCurrentProcess())
        {
            if (OperatingSystem.IsLinux() || OperatingSystem.IsWindows())
            {
                own.ProcessorAffinity = 1;
            }
        }

        var start = new ProcessStartInfo(command[0], command[1..])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using var child = Process.Start(start)!;
        var errors = child.StandardError.ReadToEndAsync();
        var output = child.StandardOutput.ReadToEnd() + errors.Result;
        child.WaitForExit();
        var usage = new long[18];
        _ = GetUsage(Children, usage);
        var seconds = usage[0] + usage[2] + (usage[1] + usage[3]) / 1e6;
        Console.Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{seconds:F3} {usage[4] >> 10} {child.ExitCode} {output[..Math.Min(output.Length, 2000)]}"
            )
        );
        return 0;
    }

    [DllImport("libc", EntryPoint = "getrusage")]
    private static extern int GetUsage(int who, [Out] long[] usage);
}
