using PowerLint.Frontend;

namespace PowerLint.Tests;

/// <summary>What the reader makes of input that is not as it should be.</summary>
public sealed class FirmwareReaderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-reader-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_missing_file_is_named()
    {
        var failure = Read(["absent.c"], "-mmcu=atmega328p").Failure;
        Assert.NotNull(failure);
        Assert.Equal(ReadFailureKind.FileMissing, failure.Kind);
        Assert.EndsWith("absent.c", failure.Path, StringComparison.Ordinal);
        Assert.Contains("absent.c", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_database_is_named()
    {
        var failure = ReadDatabase().Failure;
        Assert.Equal(ReadFailureKind.DatabaseMissing, failure?.Kind);
        Assert.EndsWith("compile_commands.json", failure!.Path, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[\n  { \"file\": \"main.c\",,\n]", 2)]
    [InlineData("{ \"file\": \"main.c\" }", 1)]
    [InlineData("[\n  {\n    \"directory\": \".\" }\n]", 2)]
    [InlineData("[\n  { \"file\": \"main.c\", \"command\": \"avr-gcc -c main.c\" },\n  { \"file\": \"b.c\" }\n]", 3)]
    [InlineData("", 1)]
    public void A_broken_database_is_reported_with_its_line(string json, int line)
    {
        Write("compile_commands.json", json);
        Write("main.c", "int main(void) { }");
        var failure = ReadDatabase().Failure;
        Assert.Equal(ReadFailureKind.DatabaseBroken, failure?.Kind);
        Assert.Equal(line, failure!.Line);
        Assert.Contains($"compile_commands.json:{line}:", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("[{ \"file\": \"start.S\", \"command\": \"avr-gcc -c start.S\" }]")]
    public void A_database_without_C_files_is_empty(string json)
    {
        Write("compile_commands.json", json);
        Assert.Equal(ReadFailureKind.DatabaseEmpty, ReadDatabase().Failure?.Kind);
    }

    [Fact]
    public void A_database_that_lists_a_file_that_is_gone_says_so()
    {
        Write("compile_commands.json", "[{ \"file\": \"gone.c\", \"command\": \"avr-gcc -mmcu=attiny85 -c gone.c\" }]");
        var failure = ReadDatabase().Failure;
        Assert.Equal(ReadFailureKind.FileMissing, failure?.Kind);
        Assert.EndsWith("gone.c", failure!.Path, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"command\": \"avr-gcc -mmcu=attiny85 -DNAME='a b' -DQ=\\\"\\\\\\\"x\\\\\\\"\\\" -c sub/main.c\"")]
    [InlineData(
        "\"arguments\": [\"/opt/tools/avr-gcc\", \"-mmcu=attiny85\", \"-DNAME=a b\", \"-DQ=\\\"x\\\"\", \"sub/main.c\"]"
    )]
    [InlineData("\"command\": \"ccache avr-gcc-7.3 @flags.txt sub/main.c\"")]
    public void Commands_are_split_as_a_shell_does(string command)
    {
        Directory.CreateDirectory(Path.Combine(_folder, "build", "sub"));
        Write(
            "build/sub/main.c",
            "#define T(x) U(x)\n#define U(x) #x\nconst char *q = Q; const char *n = T(NAME);\nint main(void) { return 0; }"
        );
        Write("build/flags.txt", "-mmcu=attiny85 \"-DNAME=a b\" -DQ='\"x\"'");
        Write("compile_commands.json", $"[{{ \"directory\": \"build\", \"file\": \"sub/main.c\", {command} }}]");
        var result = ReadDatabase();
        Assert.Null(result.Failure);
        Assert.Empty(result.Errors);
        var text = string.Join('\n', LoweringCase.Text(Assert.Single(result.Units)));
        Assert.Contains("bytes/1 7800", text, StringComparison.Ordinal);
        Assert.Contains("bytes/1 61206200", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_syntax_error_has_its_place_and_the_rest_is_read()
    {
        Write("main.c", "int good(void) { return 1; }\nint main(void) {\n    x = 1;\n    return good();\n}\n");
        var result = Read(["main.c"], "-mmcu=atmega328p");
        Assert.Null(result.Failure);
        var error = Assert.Single(result.Errors);
        Assert.Equal((3, 5), (error.Line, error.Column));
        Assert.Equal("good main", string.Join(' ', result.Units[0].Functions.Select(function => function.Name)));
    }

    [Fact]
    public void A_missing_header_is_an_error_in_the_source()
    {
        Write("main.c", "#include \"board.h\"\nint main(void) { return 0; }\n");
        var error = Assert.Single(Read(["main.c"], "-mmcu=atmega328p").Errors);
        Assert.Equal(1, error.Line);
        Assert.Contains("board.h", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gcc", "-O2")]
    [InlineData("xtensa-lx106-elf-gcc", "-Os")]
    [InlineData("-Os", "-DX")]
    public void A_compiler_for_no_known_target_is_refused(string first, string second)
    {
        Write("main.c", "int main(void) { return 0; }");
        Assert.Equal(ReadFailureKind.TargetUnknown, Read(["main.c"], first, second).Failure?.Kind);
    }

    [Fact]
    public void Host_programs_in_a_database_are_left_out_with_a_notice()
    {
        Write("main.c", "int main(void) { return 0; }");
        Write("host.c", "int main(void) { return 0; }");
        Write(
            "compile_commands.json",
            "[{ \"file\": \"host.c\", \"command\": \"gcc -c host.c\" }, { \"file\": \"main.c\", \"command\": \"avr-gcc -mmcu=attiny85 -c main.c\" }]"
        );
        var result = ReadDatabase();
        Assert.EndsWith("main.c", Assert.Single(result.Units).Source.Path, StringComparison.Ordinal);
        var notice = Assert.Single(result.Notices, notice => notice.Id is "target-unknown");
        Assert.Contains("host.c", notice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_compiler_inside_the_firmware_s_tree_is_never_run()
    {
        Directory.CreateDirectory(Path.Combine(_folder, ".git"));
        Directory.CreateDirectory(Path.Combine(_folder, "tools"));
        Directory.CreateDirectory(Path.Combine(_folder, "src"));
        Write("src/main.c", "int main(void) { return 0; }");
        var evil = Path.Combine(_folder, "tools", "avr-gcc");
        Write("tools/avr-gcc", "#!/bin/sh\n");
        Assert.Equal(_folder, FirmwareTree.RootOf(Path.Combine(_folder, "src", "main.c")));
        var path = $"{Path.GetDirectoryName(evil)}{Path.PathSeparator}relative{Path.PathSeparator}";
        Assert.Null(
            DriverLocation.Locate("avr-gcc", path, FirmwareTree.RootOf(Path.Combine(_folder, "src", "main.c")))
        );
        Assert.Equal(evil, DriverLocation.Locate("avr-gcc", path, Path.Combine(_folder, "src")));
    }

    [Fact]
    public void The_folders_that_a_compiler_prints_are_taken_in_order()
    {
        var folders = ToolchainQuery.ParseSearchList(
            $"noise\n#include \"...\" search starts here:\n#include <...> search starts here:\n {_folder}/.\n /nowhere/at/all\n {Path.GetTempPath()}\nEnd of search list.\n /usr\n"
        );
        Assert.Equal(2, folders.Length);
        Assert.StartsWith(_folder, folders[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_device_tells_the_target_where_flags_do_not()
    {
        Write("main.c", "#ifndef __AVR_ATtiny85__\n#error part\n#endif\nint main(void) { return sizeof(int); }");
        var result = FirmwareReader.Read(
            new ReadRequest
            {
                Files = ["main.c"],
                DeviceName = "ATtiny85",
                AsksCompilers = false,
                WorkingDirectory = _folder,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Empty(result.Errors);
        Assert.Equal(16, Assert.Single(result.Units).Target.IntBits);
    }

    [Fact]
    public void Flags_that_the_parser_lacks_are_noticed_once_and_flags_that_run_code_never_reach_it()
    {
        Write("a.c", "int main(void) { return 0; }");
        Write("b.c", "int other;");
        var result = Read(
            ["a.c", "b.c"],
            "avr-gcc",
            "-mmcu=atmega328p",
            "-mcall-prologues",
            "-Wall",
            "-ffunction-sections",
            "-fplugin=evil.so",
            "-Xclang",
            "-load",
            "-Xclang",
            "evil.so",
            "-save-temps"
        );
        Assert.Null(result.Failure);
        Assert.Empty(result.Errors);
        var notice = Assert.Single(result.Notices, notice => notice.Id is "flag-left-out");
        Assert.Contains("-mcall-prologues", notice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_the_parser_does_not_know_is_described_to_it()
    {
        Write("main.c", "#ifndef __AVR_ATtiny9999__\n#error part\n#endif\nint main(void) { return 0; }");
        var result = Read(["main.c"], "-mmcu=attiny9999");
        Assert.Empty(result.Errors);
        Assert.Equal("avr", Assert.Single(result.Units).Target.Architecture);
    }

    [Fact]
    public void Units_come_in_the_order_of_the_request()
    {
        string[] files = [.. Enumerable.Range(0, 12).Select(i => $"unit{11 - i}.c")];
        foreach (var file in files)
        {
            Write(file, "int x;");
        }

        var result = Read(files, "-mmcu=atmega328p");
        Assert.Equal(
            string.Join(' ', files),
            string.Join(' ', result.Units.Select(unit => Path.GetFileName(unit.Source.Path)))
        );
    }

    [Fact]
    public void The_clock_and_comments_that_mention_the_product_are_kept()
    {
        Write("clock.h", "#ifndef F_CPU\n#define F_CPU 1000000UL // internal\n#endif\n");
        Write(
            "main.c",
            "#include \"clock.h\"\nchar *s = \"/* powerlint: no */\";\n/* é */ int x; // powerlint: allow floating-pin (test pad)\n/* powerlint: allow\n   busy-wait-delay (boot) */\nint main(void) { return 0; }\n"
        );
        var unit = Read(["main.c"], "-mmcu=atmega328p").Units[0];
        Assert.Equal("1000000UL", unit.Macros["F_CPU"]);
        Assert.Equal("1", unit.Macros["__AVR_ATmega328P__"]);
        Assert.Equal(2, unit.Comments.Count);
        Assert.Equal("powerlint: allow floating-pin (test pad)", unit.Comments[0].Text);
        Assert.Equal((3, 16), (unit.Comments[0].Range.Line, unit.Comments[0].Range.Start.Column));
        Assert.Equal((4, 5), (unit.Comments[1].Range.Line, unit.Comments[1].Range.End.Line));
        Assert.Equal("2000000", Read(["main.c"], "-mmcu=atmega328p", "-DF_CPU=2000000").Units[0].Macros["F_CPU"]);
    }

    [Fact]
    public void Columns_count_UTF_16_units()
    {
        // One character of two bytes and one unit, one of four bytes and two units, before the statement.
        Write("main.c", "int x;\nint main(void) { /* é😀 */ x = 1; return 0; }\n");
        var main = Read(["main.c"], "-mmcu=atmega328p").Units[0].Functions[0];
        Assert.Equal((2, 28), (main.Body.Statements[0].Range.Line, main.Body.Statements[0].Range.Start.Column));
    }

    [Fact]
    public void Handlers_and_macros_stand_where_they_are_used()
    {
        Write("isr.h", "#define HANDLE(v) void v(void) __attribute__((signal)); void v(void)\n#define SET(r) r = 1\n");
        Write(
            "main.c",
            "#include \"isr.h\"\nint x;\nHANDLE(__vector_6) {\n    SET(x);\n}\nint main(void) { return 0; }\n"
        );
        var handler = Read(["main.c"], "-mmcu=atmega328p").Units[0].Functions[0];
        Assert.Equal(6, handler.Handler?.VectorNumber);
        Assert.Equal((3, 1), (handler.Range.Line, handler.Range.Start.Column));
        Assert.Equal((4, 5), (handler.Body.Statements[0].Range.Line, handler.Body.Statements[0].Range.Start.Column));
        Assert.EndsWith("main.c", handler.Body.Statements[0].Range.File.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Deeply_nested_expressions_are_read()
    {
        Write("main.c", $"int main(void) {{ return {string.Join(" + ", Enumerable.Repeat("main()", 2000))}; }}");
        Assert.Empty(Read(["main.c"], "-mmcu=atmega328p").Errors);
    }

    private ReadResult Read(string[] files, params string[] flags) =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Files = files,
                Flags = flags,
                AsksCompilers = false,
                WorkingDirectory = _folder,
            },
            TestContext.Current.CancellationToken
        );

    private ReadResult ReadDatabase() =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Database = ".",
                AsksCompilers = false,
                WorkingDirectory = _folder,
            },
            TestContext.Current.CancellationToken
        );

    private void Write(string name, string content) => File.WriteAllText(Path.Combine(_folder, name), content);
}
