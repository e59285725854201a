using System.Diagnostics;
using System.Globalization;
using PowerLint.Bench;
using PowerLint.Frontend;

// Without arguments: 1, 10, 100 and 300 thousand lines, each in a process of its own, as a table.
// With thousands of lines as arguments: those. `compare`: a whole check against the bare parse and other tools.
// --measure LINES prints one raw row (what the child processes do).
// --write vendor|heavy FOLDER writes one of the sets that compare uses.
// With models: how long a fresh process takes to load a part; --load PART FOLDER prints the milliseconds of one.
var devices = Path.Combine(AppContext.BaseDirectory, "devices");
if (args is ["--measure", var size])
{
    Console.WriteLine(Measurement.Take(int.Parse(size, CultureInfo.InvariantCulture), devices).ToLine());
    return 0;
}

if (args is ["--parse", var database])
{
    _ = FirmwareReader.ParseOnly(new ReadRequest { Database = database, WorkingDirectory = database });
    return 0;
}

if (args is ["--write", var shape, var into])
{
    _ = shape == "heavy" ? HeaderHeavyImage.Write(into, 30) : VendorStyleImage.Write(into, 300);
    return 0;
}

if (args is ["--run", ..])
{
    return ChildRun.Measure(args[1..]);
}

if (args is ["compare"])
{
    var scratch = Directory.CreateTempSubdirectory("powerlint-compare-").FullName;
    try
    {
        var product = Path.Combine(scratch, "product");
        var project = Path.Combine(Sources.Root, "src", "PowerLint.CommandLine");
        var published = ChildRun.Of(
            Sources.Root,
            null,
            "dotnet",
            "publish",
            project,
            "-c",
            "Release",
            "-v",
            "quiet",
            "-o",
            product
        );
        if (published.Status != 0)
        {
            Console.Error.WriteLine(published.Output);
            return 1;
        }

        var missed = new Comparison(Path.Combine(product, "powerlint"), scratch).Run();
        foreach (var miss in missed)
        {
            Console.WriteLine($"missed: {miss}");
        }

        return missed.Count == 0 ? 0 : 1;
    }
    finally
    {
        Directory.Delete(scratch, recursive: true);
    }
}

int[] thousands =
    args.Length == 0 ? [1, 10, 100, 300] : [.. args.Select(text => int.Parse(text, CultureInfo.InvariantCulture))];
Console.WriteLine(
    "| lines | files | bare parse s | parse + lower s | analysis s | analysis / bare parse | MB after lowering | MB peak | growth of analysis per growth of lines |"
);
Console.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
Measurement? before = null;
foreach (var count in thousands)
{
    var start = new ProcessStartInfo(Environment.ProcessPath!)
    {
        RedirectStandardOutput = true,
        UseShellExecute = false,
        ArgumentList = { "--measure", (1000 * count).ToString(CultureInfo.InvariantCulture) },
    };
    using var child = Process.Start(start)!;
    var line = child.StandardOutput.ReadToEnd().Trim();
    child.WaitForExit();
    if (child.ExitCode != 0)
    {
        Console.Error.WriteLine($"{count} thousand lines failed: {line}");
        return 1;
    }

    var row = Measurement.FromLine(line);
    if (row.Points != 1 || row.Limits != 0)
    {
        Console.Error.WriteLine(
            $"{count} thousand lines: {row.Points} resting points, {row.Limits} limits; 1 and 0 expected."
        );
        return 1;
    }

    var growth = before is null
        ? ""
        : (row.AnalysisSeconds / before.AnalysisSeconds / ((double)row.Lines / before.Lines)).ToString(
            "F2",
            CultureInfo.InvariantCulture
        );
    Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {row.Lines} | {row.Files} | {row.ParseSeconds:F2} | {row.ReadSeconds:F2} | {row.AnalysisSeconds:F2} | {row.AnalysisSeconds / row.ParseSeconds:F2} | {row.ReadMegabytes} | {row.PeakMegabytes} | {growth} |"
        )
    );
    before = row;
}

return 0;
