using System.Diagnostics;
using System.Globalization;
using PowerLint.Fuzz;

// COUNT [START]: so many inputs of every kind, in processes of their own, so that a crash is seen and told with its input's number.
// --batch KIND START COUNT: what those processes do. --show KIND NUMBER: writes one input to standard output.
const int BatchSize = 250;
var plain = CultureInfo.InvariantCulture;
var patience = TimeSpan.FromSeconds(30);
if (args is ["--show", var shown, var which])
{
    using var output = Console.OpenStandardOutput();
    output.Write(Find(shown).Input(int.Parse(which, plain)));
    return 0;
}

if (args is ["--batch", var kind, var first, var size])
{
    var target = Find(kind);
    var folder = Directory.CreateTempSubdirectory("powerlint-fuzz-").FullName;
    try
    {
        for (var i = int.Parse(first, plain); i < int.Parse(first, plain) + int.Parse(size, plain); i++)
        {
            // The last number that was said is the one to blame for a crash.
            Console.WriteLine(i.ToString(plain));
            var start = Stopwatch.GetTimestamp();
            try
            {
                target.Run(target.Input(i), folder);
            }
#pragma warning disable CA1031 // Whatever it is, it is what is looked for.
            catch (Exception error)
#pragma warning restore CA1031
            {
                Console.WriteLine($"! {i.ToString(plain)} {Shortened(error.ToString().ReplaceLineEndings(" | "))}");
            }

            if (Stopwatch.GetElapsedTime(start) > patience)
            {
                Console.WriteLine(
                    $"! {i.ToString(plain)} took {Stopwatch.GetElapsedTime(start).TotalSeconds.ToString("F0", plain)} s"
                );
            }
        }
    }
    finally
    {
        Directory.Delete(folder, recursive: true);
    }

    return 0;
}

var count = args.Length > 0 ? int.Parse(args[0], plain) : 1000;
var begin = args.Length > 1 ? int.Parse(args[1], plain) : 0;
var bad = 0;
foreach (var target in Target.All)
{
    var watch = Stopwatch.StartNew();
    for (var done = 0; done < count; done += BatchSize)
    {
        bad += Batch(target.Name, begin + done, Math.Min(BatchSize, count - done));
    }

    Console.WriteLine(
        $"{target.Name}: {count.ToString(plain)} inputs, {watch.Elapsed.TotalSeconds.ToString("F0", plain)} s"
    );
}

Console.WriteLine(
    bad == 0
        ? $"{(count * Target.All.Count).ToString(plain)} inputs, no crash, no exception, no hang"
        : $"{bad.ToString(plain)} inputs failed"
);
return bad == 0 ? 0 : 1;

static string Shortened(string text) => text.Length > 900 ? text[..900] : text;

static Target Find(string name) =>
    Target.All.Single(target => string.Equals(target.Name, name, StringComparison.Ordinal));

int Batch(string name, int from, int number)
{
    var failed = 0;
    var end = from + number;
    while (from < end)
    {
        var start = new ProcessStartInfo(
            Environment.ProcessPath!,
            ["--batch", name, from.ToString(plain), (end - from).ToString(plain)]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using var child = Process.Start(start)!;
        var errors = child.StandardError.ReadToEndAsync();
        var last = from;
        var hung = false;
        while (true)
        {
            var line = child.StandardOutput.ReadLineAsync();
            if (!line.Wait(3 * patience))
            {
                child.Kill(entireProcessTree: true);
                hung = true;
                break;
            }

            if (line.Result is not { } text)
            {
                break;
            }

            if (text.StartsWith('!'))
            {
                failed++;
                Console.WriteLine($"{name} {text}");
            }
            else
            {
                last = int.Parse(text, plain);
            }
        }

        child.WaitForExit();
        _ = errors.Result;
        if (child.ExitCode == 0)
        {
            return failed;
        }

        failed++;
        Console.WriteLine(
            $"{name} ! {last.ToString(plain)} {(hung ? "never ended" : $"ended the process with status {child.ExitCode.ToString(plain)}")}"
        );
        from = last + 1;
    }

    return failed;
}
