using PowerLint.Frontend;

namespace PowerLint.Tests;

/// <summary>Which compilers are asked about themselves, what they are told, and what is said of headers that are missing.</summary>
public sealed class ToolchainTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_compiler_that_a_database_names_by_path_is_asked_only_where_the_user_allows_it()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "tools"));
        Directory.CreateDirectory(Path.Combine(_folder.Path, "firmware"));
        _folder.Write("tools/board-cc", "#!/bin/sh\n");
        var driver = Path.Combine(_folder.Path, "tools", "board-cc");
        var tree = Path.Combine(_folder.Path, "firmware");

        Assert.DoesNotContain(driver, Candidates([]));
        Assert.DoesNotContain(driver, Candidates(["board-*"]));
        Assert.Contains(driver, Candidates([Path.Combine(_folder.Path, "tools", "*")]));
        // Not even then within the tree that is analysed.
        Assert.DoesNotContain(
            driver,
            DriverLocation.Candidates(
                TargetSelection.Avr,
                driver,
                [Path.Combine(_folder.Path, "tools", "*")],
                _folder.Path
            )
        );

        IEnumerable<string> Candidates(string[] allowed) =>
            DriverLocation.Candidates(TargetSelection.Avr, driver, allowed, tree);
    }

    [Fact]
    public void A_compiler_by_name_is_looked_for_on_the_search_path_only()
    {
        // sh is on every search path; no glob, no question.
        Assert.DoesNotContain(Find([]), path => path.EndsWith("/sh", StringComparison.Ordinal));
        Assert.Contains(Find(["s?"]), path => path.EndsWith("/sh", StringComparison.Ordinal));

        IEnumerable<string> Find(string[] allowed) =>
            DriverLocation.Candidates(TargetSelection.Arm, "/tree/bin/sh", allowed, _folder.Path);
    }

    [Fact]
    public void Only_flags_that_name_a_processor_are_passed_on() =>
        Assert.Equal(
            ["-mmcu=atmega328p", "-mcpu=cortex-m0+", "-mthumb"],
            ToolchainQuery.ProcessorFlags([
                "-mmcu=atmega328p",
                "-mcpu=cortex-m0+",
                "-mthumb",
                "-mmcu=x -wrapper evil",
                "-mcpu=../../evil",
                "-fplugin=evil.so",
                "-wrapper",
                "@evil",
                "-Bevil",
                "-specs=evil",
            ])
        );

    [Fact]
    public void The_macros_of_a_part_that_the_parser_does_not_know_come_from_its_compiler()
    {
        ToolRequirement.Demand("avr-gcc");
        // gcc-avr knows the ATtiny1634 and the parser the ATtiny4313; both define __AVR_ARCH__ as avr-libc's documentation says.
        _folder.Write("main.c", "#if __AVR_ARCH__ < 2\n#error no architecture\n#endif\nint main(void) { return 0; }\n");
        foreach (var part in (string[])["attiny1634", "attiny4313"])
        {
            Assert.Empty(Read(part, "main.c").Errors);
        }
    }

    [Fact]
    public void A_missing_header_is_named_with_the_way_to_point_at_it()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, ".git"));
        Directory.CreateDirectory(Path.Combine(_folder.Path, "lib", "sensor"));
        _folder.Write("lib/sensor/sensor.h", "int sense(void);\n");
        _folder.Write("main.c", "#include <vendor/clock.h>\nint main(void) { return 0; }\n");
        _folder.Write("other.c", "#include \"sensor.h\"\nint other(void) { return sense(); }\n");

        var notices = Read("atmega328p", "main.c", "other.c").Notices;
        var missing = Assert.Single(notices, notice => notice.Id is "header-missing").Message;
        Assert.Contains("vendor/clock.h", missing, StringComparison.Ordinal);
        Assert.Contains("--header-folder", missing, StringComparison.Ordinal);
        Assert.Contains("avr-gcc", missing, StringComparison.Ordinal);
        var elsewhere = Assert.Single(notices, notice => notice.Id is "header-elsewhere").Message;
        Assert.Contains("sensor.h in lib/sensor", elsewhere, StringComparison.Ordinal);
    }

    [Fact]
    public void A_header_folder_on_the_command_line_is_searched()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "kit"));
        _folder.Write("kit/kit.h", "#define LOOP for (;;)\n");
        _folder.Write("main.c", "#include <kit.h>\nint main(void)\n{\n    LOOP ;\n}\n");
        var result = TestConsole.Run(_folder.Path, "state", "-d", "atmega328p", "--header-folder", "kit", "main.c");
        Assert.Equal("", result.Error);
        Assert.Equal(0, result.Status);
    }

    private ReadResult Read(string part, params string[] files) =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Files = files,
                Flags = ["avr-gcc", $"-mmcu={part}"],
                WorkingDirectory = _folder.Path,
            },
            TestContext.Current.CancellationToken
        );
}
