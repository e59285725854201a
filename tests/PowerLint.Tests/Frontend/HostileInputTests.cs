using System.Text;
using PowerLint.Frontend;

namespace PowerLint.Tests;

/// <summary>Sources and databases that mean harm, or that a broken tool wrote: a message, and the other files are read.</summary>
public sealed class HostileInputTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public HostileInputTests() => _folder.Write("good.c", "int good(void) { return 1; }\n");

    public void Dispose() => _folder.Dispose();

    public static TheoryData<string, string> Nested =>
        new()
        {
            { "operators", $"int x; int f(void) {{ return {Times("!", 3_000_000)}x; }}" },
            { "sums", $"int x; int f(void) {{ return {Times("x+", 3_000_000)}x; }}" },
            { "casts", $"int x; int f(void) {{ return {Times("(int)", 3_000_000)}x; }}" },
            { "parentheses", $"int x; int f(void) {{ return {Times("(", 100_000)}x{Times(")", 100_000)}; }}" },
            { "braces", $"int f(void) {{ {Times("{", 100_000)}{Times("}", 100_000)} }}" },
            { "conditions", $"#if {Times("(", 100_000)}1{Times(")", 100_000)}\n#endif\n{Times("#if 1\n", 50_000)}" },
        };

    [Theory]
    [MemberData(nameof(Nested))]
    public void Deep_nesting_costs_its_own_file_only(string name, string source)
    {
        _folder.Write(name + ".c", source);
        var result = Read(name + ".c", "good.c");
        Assert.Contains(result.Units, unit => unit.Functions.Any(function => function.Name is "good"));
        Assert.True(result.Errors.Count > 0 || result.Gaps.Any());
        Assert.All(result.Errors, error => Assert.EndsWith(name + ".c", error.Path, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("#include \"self.c\"\nint f;\n")]
    [InlineData("#include \"/dev/zero\"\nint f = ;\n")]
    [InlineData("#include \"/dev/stdin\"\nint f = ;\n")]
    [InlineData(
        "#define A B B\n#define B C C\n#define C D D\n#define D E E\n#define E F F F F F F F F\n#define F G G G G G G G G G G G G G G G G\n#define G H H H H H H H H H H H H H H H H\n#define H I I I I I I I I I I I I I I I I\n#define I 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1,\nint f[] = { A };\n"
    )]
    public void Sources_that_never_end_are_ended(string source)
    {
        _folder.Write("self.c", source);
        var result = Read("self.c", "good.c");
        Assert.NotEmpty(result.Errors);
        Assert.Contains(result.Units, unit => unit.Functions.Any(function => function.Name is "good"));
    }

    [Fact]
    public void Pipes_and_devices_are_not_waited_for()
    {
        ToolRequirement.Demand("mkfifo");
        var pipe = Path.Combine(_folder.Path, "pipe.c");
        using (var make = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo("mkfifo", [pipe])))
        {
            make!.WaitForExit();
        }

        File.CreateSymbolicLink(Path.Combine(_folder.Path, "zero.h"), "/dev/zero");
        _folder.Write("zero.c", "#include \"zero.h\"\nint after_zero(void) { return 1; }\n");
        var result = Read("pipe.c", "zero.c", "good.c");
        Assert.Empty(result.Errors);
        Assert.Contains(result.Units, unit => unit.Functions.Any(function => function.Name is "after_zero"));
    }

    [Fact]
    public void Links_that_lead_in_a_circle_and_files_of_50_MB_are_refused_by_name()
    {
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "a.c"), Path.Combine(_folder.Path, "b.c"));
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "b.c"), Path.Combine(_folder.Path, "a.c"));
        using (var big = File.Create(Path.Combine(_folder.Path, "big.c")))
        {
            big.SetLength(50_000_000);
        }

        _folder.Write(
            "compile_commands.json",
            "[{ \"file\": \"a.c\", \"command\": \"avr-gcc -mmcu=attiny85 a.c\" }, { \"file\": \"big.c\", \"command\": \"avr-gcc -mmcu=attiny85 big.c\" }, { \"file\": \"good.c\", \"command\": \"avr-gcc -mmcu=attiny85 good.c\" }]"
        );
        var result = Read();
        Assert.Contains(
            result.Errors,
            error =>
                error.Path.EndsWith("big.c", StringComparison.Ordinal)
                && error.Message.Contains("32 MB", StringComparison.Ordinal)
        );
        Assert.True(
            result.Failure is { Kind: ReadFailureKind.FileMissing }
                || result.Errors.Any(error => error.Path.EndsWith("a.c", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Odd_bytes_are_read_as_they_come()
    {
        File.WriteAllBytes(
            Path.Combine(_folder.Path, "odd.c"),
            [
                .. "// caf"u8,
                0xE9,
                0xFF,
                .. "\r\nint zero\0 = 1;\r\nint odd(void)\r\n{\r\n    const char *s = \""u8,
                0xE9,
                .. "\";\r\n    return *s;\r\n}\r\n"u8,
            ]
        );
        var result = Read("odd.c");
        var odd = Assert.Single(result.Units).Functions.Single();
        Assert.Equal((3, 5), (odd.Range.Line, odd.Body.Statements[0].Range.Line));
    }

    [Fact]
    public void UTF_16_is_named_as_what_it_is()
    {
        File.WriteAllText(Path.Combine(_folder.Path, "wide.c"), "int f(void) { return 1; }\n", Encoding.Unicode);
        Assert.Contains(
            Read("wide.c", "good.c").Errors,
            error => error.Message.Contains("UTF-16", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Programs_that_a_database_names_are_not_run()
    {
        var mark = Path.Combine(_folder.Path, "was-run");
        var driver = Path.Combine(_folder.Path, "avr-gcc");
        _folder.Write("avr-gcc", $"#!/bin/sh\ntouch '{mark}'\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(driver, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        _folder.Write("flags.txt", $"-wrapper {driver} -fplugin={driver} -B{_folder.Path} -specs={driver}");
        _folder.Write(
            "compile_commands.json",
            $"[{{ \"directory\": \".\", \"file\": \"good.c\", \"arguments\": [\"{driver}\", \"-mmcu=attiny85\", \"-Xclang\", \"-load\", \"-Xclang\", \"{driver}\", \"@flags.txt\", \"good.c\"] }}]"
        );
        var result = FirmwareReader.Read(
            new ReadRequest
            {
                Database = ".",
                WorkingDirectory = _folder.Path,
                AllowedDrivers = ["*", "/*"],
            },
            TestContext.Current.CancellationToken
        );
        Assert.Empty(result.Errors);
        Assert.False(File.Exists(mark));
    }

    private static string Times(string text, int count) => new StringBuilder().Insert(0, text, count).ToString();

    private ReadResult Read(params string[] files) =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Files = files,
                Flags = files.Length > 0 ? ["avr-gcc", "-mmcu=atmega328p"] : [],
                Database = files.Length > 0 ? null : ".",
                AsksCompilers = false,
                WorkingDirectory = _folder.Path,
            },
            TestContext.Current.CancellationToken
        );
}
