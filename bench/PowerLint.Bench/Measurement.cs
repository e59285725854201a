using System.Diagnostics;
using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;

namespace PowerLint.Bench;

/// <summary>What one size of firmware costs. Seconds are of processor time, over all threads.</summary>
internal sealed record Measurement(
    int Lines,
    int Files,
    double ParseSeconds,
    double ReadSeconds,
    double AnalysisSeconds,
    long ReadMegabytes,
    long PeakMegabytes,
    int Points,
    int Limits
)
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static Measurement Take(int lines, string devices)
    {
        var folder = Directory.CreateTempSubdirectory("powerlint-bench-");
        try
        {
            var (files, written) = SyntheticFirmware.Write(folder.FullName, lines);
            var request = new ReadRequest
            {
                Files = files,
                Flags = ["avr-gcc", "-mmcu=atmega1284p", "-Os"],
                DeviceName = "atmega1284p",
                WorkingDirectory = folder.FullName,
            };
            var device = DeviceCatalog.Open(devices).Load("atmega1284p");

            // Once unmeasured: the library is loaded and the files are in the cache.
            FirmwareReader.ParseOnly(request with { Files = [files[0]] });
            var parse = Spent(() => FirmwareReader.ParseOnly(request));
            Image? image = null;
            var read = Spent(() =>
            {
                var result = FirmwareReader.Read(request);
                if (result.Failure is not null || result.Errors.Count > 0)
                {
                    throw new InvalidOperationException(
                        result.Failure?.Message
                            ?? $"{result.Errors[0].Path}:{result.Errors[0].Line}: {result.Errors[0].Message}"
                    );
                }

                image = ImageLinker.Link(result.Units);
            });
            var readMegabytes = HighestSoFar();
            AnalysisResult? found = null;
            var analysis = Spent(() =>
                found = ImageAnalyzer.Run(image!, device, new AnalysisOptions { StepBudget = long.MaxValue })
            );
            CheckState(found!, files.Count - 1);
            return new Measurement(
                written,
                files.Count,
                parse,
                read,
                analysis,
                readMegabytes,
                HighestSoFar(),
                found!.RestingPoints.Length,
                found.Limits.Length
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // A run that left modules out would be quick, and worth nothing.
    private static void CheckState(AnalysisResult found, int modules)
    {
        var counted = found.RestingPoints[0].State.Read(found.Device.Registers.Single(r => r.Name == "GPIOR0"));
        if (counted.Known != 0xFF || counted.Value != (ulong)(modules & 0xFF))
        {
            throw new InvalidOperationException($"GPIOR0 should count {modules} modules: {counted}");
        }
    }

    public string ToLine() =>
        string.Join(
            ' ',
            Lines.ToString(Plain),
            Files.ToString(Plain),
            ParseSeconds.ToString("R", Plain),
            ReadSeconds.ToString("R", Plain),
            AnalysisSeconds.ToString("R", Plain),
            ReadMegabytes.ToString(Plain),
            PeakMegabytes.ToString(Plain),
            Points.ToString(Plain),
            Limits.ToString(Plain)
        );

    public static Measurement FromLine(string line)
    {
        var parts = line.Split(' ');
        return new Measurement(
            int.Parse(parts[0], Plain),
            int.Parse(parts[1], Plain),
            double.Parse(parts[2], Plain),
            double.Parse(parts[3], Plain),
            double.Parse(parts[4], Plain),
            long.Parse(parts[5], Plain),
            long.Parse(parts[6], Plain),
            int.Parse(parts[7], Plain),
            int.Parse(parts[8], Plain)
        );
    }

    private static double Spent(Action run)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        run();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalSeconds;
    }

    private static long HighestSoFar()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 >> 20;
    }
}
