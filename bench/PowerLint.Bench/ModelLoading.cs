using System.Diagnostics;
using System.Globalization;
using PowerLint.Devices;

namespace PowerLint.Bench;

/// <summary>
/// How long it takes a fresh process to have a part's model, from the digest that the build makes and from the files themselves:
/// each figure is taken by a stopwatch in a process of its own, around opening the folder and loading the part.
/// </summary>
internal static class ModelLoading
{
    private const int Starts = 15;

    private static readonly string[] Parts = ["attiny13a", "atmega328p", "atmega2560", "atxmega128a4u"];

    /// <summary>Loads one part and returns the milliseconds. What a child process does.</summary>
    internal static double Load(string part, string folder)
    {
        var watch = Stopwatch.StartNew();
        _ = DeviceCatalog.Open(folder).Load(part);
        return watch.Elapsed.TotalMilliseconds;
    }

    /// <summary>Prints the table.</summary>
    internal static void Print(string devices)
    {
        var files = Directory.CreateTempSubdirectory("powerlint-bench-");
        foreach (var file in Directory.EnumerateFiles(devices, "*.yaml"))
        {
            File.Copy(file, Path.Combine(files.FullName, Path.GetFileName(file)));
        }

        Console.WriteLine("| part | digest, fastest ms | digest, median ms | files, fastest ms | files, median ms |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: |");
        foreach (var part in Parts)
        {
            var fast = Times(part, devices);
            var slow = Times(part, files.FullName);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {part} | {fast[0]:F1} | {fast[Starts / 2]:F1} | {slow[0]:F1} | {slow[Starts / 2]:F1} |"
                )
            );
        }

        files.Delete(recursive: true);
    }

    private static double[] Times(string part, string folder)
    {
        var times = new double[Starts];
        for (var i = 0; i < Starts; i++)
        {
            var start = new ProcessStartInfo(Environment.ProcessPath!)
            {
                RedirectStandardOutput = true,
                UseShellExecute = false,
                ArgumentList = { "--load", part, folder },
            };
            using var child = Process.Start(start)!;
            times[i] = double.Parse(child.StandardOutput.ReadToEnd(), CultureInfo.InvariantCulture);
            child.WaitForExit();
        }

        Array.Sort(times);
        return times;
    }
}
