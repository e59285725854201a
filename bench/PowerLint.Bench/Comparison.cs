using System.Formats.Tar;
using System.Globalization;
using System.IO.Compression;
using System.Text.Json;

namespace PowerLint.Bench;

/// <summary>
/// Holds a whole check, in processor time, against the bare parse of the same units and against other tools on the same units; all on one
/// core, in turns, medians of a few rounds. Ratios are what counts: the machine may be busy.
/// </summary>
internal sealed class Comparison(string program, string scratch)
{
    private const int Rounds = 3;
    private const string AvrHeaders = "/usr/lib/avr/include";
    private const string CoreFolder = "/usr/share/arduino/hardware/arduino/avr";
    private const string Examples = "/usr/share/doc/libsimavr-examples/examples/examples.tar.gz";

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private readonly List<string> _missed = [];

    /// <summary>Runs everything and prints it.</summary>
    /// <returns>The limits that were missed.</returns>
    public IReadOnlyList<string> Run()
    {
        Start();
        Console.WriteLine(
            "\n| set | units | bare parse s | check / parse | second run / first | one changed / first | MB |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: |"
        );
        var vendor = Made("vendor", folder => VendorStyleImage.Write(folder, 300));
        Set("vendor style", vendor, 1.3, full: true);
        Set("header-heavy", Made("heavy", folder => HeaderHeavyImage.Write(folder, 30)), 1.2, full: false);
        if (Core() is { } core)
        {
            Set("arduino-core-avr", core, null, full: false);
        }

        if (Boards() is { } boards)
        {
            Set("libsimavr-examples", boards, null, full: false);
        }

        // The slowest of them would take a quarter of an hour for all 300 units.
        Others(Made("sample", folder => VendorStyleImage.Write(folder, 60)), ["clang -fsyntax-only", "cppcheck"]);
        Others(vendor, ["clang --analyze"]);
        return _missed;
    }

    private void Start()
    {
        var hello = Path.Combine(scratch, "hello");
        Directory.CreateDirectory(hello);
        File.WriteAllText(
            Path.Combine(hello, "hello.csproj"),
            "<Project Sdk=\"Microsoft.NET.Sdk\"><PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><InvariantGlobalization>true</InvariantGlobalization></PropertyGroup></Project>"
        );
        File.WriteAllText(Path.Combine(hello, "Program.cs"), "System.Console.WriteLine(\"Hello, World!\");\n");
        var built = ChildRun.Of(hello, null, "dotnet", "build", "-c", "Release", "-v", "quiet", "-o", "out");
        if (built.Status != 0)
        {
            throw new InvalidOperationException(built.Output);
        }

        var (own, theirs) = Turns(
            9,
            () => ChildRun.Of(scratch, null, program, "--version"),
            () => ChildRun.Of(scratch, null, Path.Combine(hello, "out", "hello"))
        );
        Console.WriteLine(
            string.Create(
                Plain,
                $"--version: {own:F3} s, the runtime's hello-world {theirs:F3} s, ratio {Held("--version / hello", own / theirs, 1.5):F2}"
            )
        );
    }

    private void Set(string name, (string Folder, int Units) set, double? most, bool full)
    {
        var (parse, check) = Turns(
            Rounds,
            () => ChildRun.Of(set.Folder, null, Environment.ProcessPath!, "--parse", set.Folder),
            () => Check(set.Folder, "--no-cache")
        );
        var cache = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["XDG_CACHE_HOME"] = Path.Combine(scratch, $"cache-{name}"),
        };
        var first = Check(set.Folder, cache);
        var second = Median([.. Enumerable.Range(0, Rounds).Select(_ => Check(set.Folder, cache).Seconds)]);
        double? changed = full
            ? Median([
                .. Enumerable
                    .Range(0, Rounds)
                    .Select(i =>
                    {
                        VendorStyleImage.Touch(set.Folder, i);
                        return Check(set.Folder, cache).Seconds;
                    }),
            ])
            : null;
        if (most is { } limit)
        {
            Held($"{name}: check / parse", check / parse, limit);
        }

        if (full)
        {
            Held($"{name}: second run / first", second / first.Seconds, 0.10);
            Held($"{name}: one changed / first", changed!.Value / first.Seconds, 0.15);
        }

        Held($"{name}: megabytes", first.Megabytes, 600);
        Console.WriteLine(
            string.Create(
                Plain,
                $"| {name} | {set.Units} | {parse:F2} | {check / parse:F2} | {second / first.Seconds:P0} | {(changed is { } c ? (c / first.Seconds).ToString("P0", Plain) : "")} | {first.Megabytes} |"
            )
        );
    }

    // What the others are told: the part and the headers, and that the compiler is GCC, so that they read the code.
    private void Others((string Folder, int Units) set, string[] tools)
    {
        string[] flags =
        [
            "-D__AVR_ATmega1284P__",
            "-D__AVR_ARCH__=51",
            "-I" + Path.Combine(set.Folder, "vendor"),
            "-isystem",
            AvrHeaders,
        ];
        string[] files =
        [
            .. Directory.EnumerateFiles(set.Folder, "*.c", SearchOption.AllDirectories).Order(StringComparer.Ordinal),
        ];
        var check = Median([.. Enumerable.Range(0, Rounds).Select(_ => Check(set.Folder, "--no-cache").Seconds)]);
        Console.WriteLine($"\nOther tools on {set.Units} units of the vendor style set:");
        Other(
            "clang -fsyntax-only",
            null,
            "clang",
            ["--target=avr", "-mmcu=atmega1284p", .. flags, "-w", "-fsyntax-only", .. files]
        );
        Other(
            "clang --analyze",
            6,
            "clang",
            ["--target=avr", "-mmcu=atmega1284p", .. flags, "-w", "--analyze", "--analyzer-output", "text", .. files]
        );
        Other(
            "cppcheck",
            30,
            "cppcheck",
            [
                "-q",
                "-D__GNUC__=12",
                "-D__GNUC_MINOR__=2",
                .. flags.Where(flag => flag is not "-isystem").Select(flag => flag == AvrHeaders ? "-I" + flag : flag),
                .. files,
            ]
        );
        if (tools.Contains("clang -fsyntax-only", StringComparer.Ordinal))
        {
            SharedHeaders(set.Folder, flags, files);
        }

        void Other(string name, double? least, string tool, string[] arguments)
        {
            if (!tools.Contains(name, StringComparer.Ordinal))
            {
                return;
            }

            if (!OnPath(tool))
            {
                Console.WriteLine($"- {name}: not installed");
                return;
            }

            var run = ChildRun.Of(set.Folder, null, [tool, .. arguments]);
            Console.WriteLine(
                string.Create(
                    Plain,
                    $"- {name}: {run.Seconds:F1} s, {run.Seconds / check:F1} times a check ({check:F2} s)"
                )
            );
            if (least is { } bound && run.Seconds / check < bound)
            {
                _missed.Add(
                    string.Create(Plain, $"{name} takes {run.Seconds / check:F1} times a check, {bound:F0} wanted")
                );
            }
        }
    }

    // Whether one precompiled header for all units would beat parsing the header in each.
    private static void SharedHeaders(string folder, string[] flags, string[] files)
    {
        if (!OnPath("clang"))
        {
            return;
        }

        string[] all = ["clang", "--target=avr", "-mmcu=atmega1284p", .. flags, "-w"];
        var header = Path.Combine(folder, "vendor", "hal.h");
        var made = ChildRun.Of(folder, null, [.. all, "-x", "c-header", header, "-o", "hal.pch"]);
        var (with, without) = Turns(
            Rounds,
            () => ChildRun.Of(folder, null, [.. all, "-fsyntax-only", "-include-pch", "hal.pch", .. files]),
            () => ChildRun.Of(folder, null, [.. all, "-fsyntax-only", .. files])
        );
        Console.WriteLine(
            string.Create(
                Plain,
                $"- with a precompiled header shared by all units clang -fsyntax-only takes {(with + made.Seconds) / without:P0} of its time without"
            )
        );
    }

    private ChildRun Check(string folder, params string[] more) => Check(folder, null, more);

    private ChildRun Check(string folder, Dictionary<string, string>? environment, params string[] more)
    {
        var run = ChildRun.Of(folder, environment, [program, "check", "-p", folder, "--fail-on", "none", .. more]);
        return run.Status == 0
            ? run
            : throw new InvalidOperationException($"{folder}: status {run.Status}: {run.Output}");
    }

    private (string Folder, int Units) Made(string name, Func<string, IReadOnlyList<string>> write)
    {
        var folder = Directory.CreateDirectory(Path.Combine(scratch, name)).FullName;
        return (folder, write(folder).Count);
    }

    private (string Folder, int Units)? Core()
    {
        if (!Directory.Exists(CoreFolder))
        {
            return null;
        }

        string[] files =
        [
            .. Directory
                .EnumerateFiles(Path.Combine(CoreFolder, "cores", "arduino"), "*.c")
                .Order(StringComparer.Ordinal),
            Path.Combine(CoreFolder, "libraries", "Wire", "src", "utility", "twi.c"),
        ];
        var folder = Directory.CreateDirectory(Path.Combine(scratch, "core")).FullName;
        File.WriteAllText(
            Path.Combine(folder, "main.c"),
            "#include <Arduino.h>\nint main(void)\n{\n    init();\n    pinMode(4, OUTPUT);\n    for (;;) {\n        digitalWrite(4, HIGH);\n        delay(10);\n    }\n}\n"
        );
        CompileDatabase.Write(
            folder,
            [.. files, Path.Combine(folder, "main.c")],
            [
                "-mmcu=atmega328p",
                "-Os",
                "-DF_CPU=16000000L",
                "-DARDUINO=10819",
                "-Icores/arduino",
                "-Ivariants/standard",
                "-Ilibraries/Wire/src",
            ],
            CoreFolder
        );
        return (folder, files.Length + 1);
    }

    private (string Folder, int Units)? Boards()
    {
        if (!File.Exists(Examples))
        {
            return null;
        }

        var folder = Directory.CreateDirectory(Path.Combine(scratch, "boards")).FullName;
        using (var archive = new TarReader(new GZipStream(File.OpenRead(Examples), CompressionMode.Decompress)))
        {
            while (archive.GetNextEntry() is { } entry)
            {
                if (entry.EntryType is TarEntryType.RegularFile or TarEntryType.V7RegularFile)
                {
                    var path = Path.Combine(folder, entry.Name);
                    Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                    entry.ExtractToFile(path, overwrite: true);
                }
            }
        }

        (string Folder, string File, string Part)[] units =
        [
            ("board_hd44780", "atmega48_charlcd.c", "atmega48"),
            ("board_ledramp", "atmega48_ledramp.c", "atmega48"),
            ("board_timer_64led", "atmega168_timer_64led.c", "atmega168"),
            ("board_simduino", "atmega328p_dummy_blinky.c", "atmega328p"),
        ];
        File.WriteAllText(
            Path.Combine(folder, CompileDatabase.FileName),
            JsonSerializer.Serialize(
                units.Select(unit => new
                {
                    directory = Path.Combine(folder, "examples", unit.Folder),
                    file = unit.File,
                    arguments = (string[])
                        [
                            "avr-gcc",
                            $"-mmcu={unit.Part}",
                            "-Os",
                            "-I/usr/include/simavr/avr",
                            "-I.",
                            "-I../shared",
                            "-DF_CPU=8000000",
                            "-c",
                            unit.File,
                        ],
                })
            )
        );
        return (folder, units.Length);
    }

    private double Held(string what, double value, double most)
    {
        if (value > most)
        {
            _missed.Add(string.Create(Plain, $"{what} is {value:F2}, at most {most:F2} wanted"));
        }

        return value;
    }

    private static (double First, double Second) Turns(int rounds, Func<ChildRun> first, Func<ChildRun> second)
    {
        var times = Enumerable
            .Range(0, rounds)
            .Select(_ => (First: first().Seconds, Second: second().Seconds))
            .ToArray();
        return (Median([.. times.Select(time => time.First)]), Median([.. times.Select(time => time.Second)]));
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }

    private static bool OnPath(string tool) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Any(folder => File.Exists(Path.Combine(folder, tool)));
}
