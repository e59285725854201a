using System.Text.Json;

namespace PowerLint.Tests;

/// <summary>Firmware without a compile database and without a configuration: what can be guessed is, and is said.</summary>
public sealed class NoSetUpTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public NoSetUpTests()
    {
        foreach (var name in (string[])["src/drivers", "include/board", "tests", "src/.hidden"])
        {
            Directory.CreateDirectory(Path.Combine(_folder.Path, name));
        }

        _folder.Write("include/board/pins.h", "#define DDRB (*(volatile unsigned char *)0x24)\n");
        _folder.Write("src/drivers/lamp.h", "#include \"board/pins.h\"\nvoid lamp_setup(void);\n");
        _folder.Write("src/drivers/lamp.c", "#include \"lamp.h\"\nvoid lamp_setup(void) { DDRB = 0x20; }\n");
        _folder.Write(
            "src/main.c",
            "#include <lamp.h>\nint main(void)\n{\n    lamp_setup();\n    for (;;)\n        __asm__ volatile(\"sleep\");\n}\n"
        );
        // Neither of the firmware's: a test on the host and a hidden folder.
        _folder.Write("tests/test_lamp.c", "#include <stdio.h>\nint main(void) { puts(\"ok\"); return 0; }\n");
        _folder.Write("src/.hidden/other.c", "int main(void) { return 1; }\n");
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("src")]
    [InlineData(".")]
    public void A_folder_and_a_device_are_enough(string folder)
    {
        var result = TestConsole.Run(_folder.Path, "state", "--device", "atmega328p", "--format", "json", folder);
        using var state = JsonDocument.Parse(result.Output);
        var registers = state.RootElement.GetProperty("points")[0].GetProperty("registers");
        Assert.Equal("0x20", registers.GetProperty("DDRB").GetProperty("value").GetString());
        Assert.Contains("Include folders were guessed", result.Error, StringComparison.Ordinal);
        Assert.Contains("src/drivers", result.Error, StringComparison.Ordinal);
        Assert.Equal(0, result.Status);
    }

    [Fact]
    public void Links_in_a_circle_end()
    {
        Directory.CreateSymbolicLink(Path.Combine(_folder.Path, "src", "again"), Path.Combine(_folder.Path, "src"));
        Directory.CreateSymbolicLink(
            Path.Combine(_folder.Path, "src", "self"),
            Path.Combine(_folder.Path, "src", "self")
        );
        Assert.Equal(0, TestConsole.Run(_folder.Path, "state", "--device", "atmega328p", "src").Status);
    }

    [Fact]
    public void A_folder_without_sources_is_named()
    {
        var result = TestConsole.Run(_folder.Path, "check", "--device", "atmega328p", "include");
        Assert.Equal(2, result.Status);
        Assert.Contains("include: no C files", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Init_takes_part_and_clock_from_a_makefile()
    {
        _folder.Write("Makefile", "MCU = atmega168p\nCFLAGS = -mmcu=$(MCU) -DF_CPU=8000000UL -Iinclude\n");
        Directory.CreateDirectory(Path.Combine(_folder.Path, "third_party"));
        var result = TestConsole.Run(_folder.Path, "init");

        Assert.Equal(0, result.Status);
        Assert.Contains("part      atmega168p", result.Output, StringComparison.Ordinal);
        Assert.Contains("Next: powerlint check src", result.Output, StringComparison.Ordinal);
        var text = File.ReadAllText(Path.Combine(_folder.Path, "powerlint.yaml"));
        Assert.Contains("device: atmega168p\n", text, StringComparison.Ordinal);
        Assert.Contains("clocks: { cpu-hertz: 8000000 }\n", text, StringComparison.Ordinal);
        Assert.Contains("exclude: [\"third_party/**\"]\n", text, StringComparison.Ordinal);
        // What was written is read.
        var state = TestConsole.Run(_folder.Path, "state", "--format", "json", "src");
        using var document = JsonDocument.Parse(state.Output);
        Assert.Equal("atmega168p", document.RootElement.GetProperty("device").GetString());
    }

    [Fact]
    public void Init_finds_the_database_below_and_writes_over_nothing()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "build"));
        _folder.Write(
            "build/compile_commands.json",
            "[{ \"directory\": \"..\", \"file\": \"src/main.c\", \"command\": \"avr-gcc -mmcu=attiny85 -c src/main.c\" }]"
        );
        Assert.Contains(
            "Next: powerlint check -p build\n",
            TestConsole.Run(_folder.Path, "init").Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "device: attiny85\n",
            File.ReadAllText(Path.Combine(_folder.Path, "powerlint.yaml")),
            StringComparison.Ordinal
        );

        var again = TestConsole.Run(_folder.Path, "init");
        Assert.Equal(2, again.Status);
        Assert.Contains("--force", again.Error, StringComparison.Ordinal);
        Assert.Equal(0, TestConsole.Run(_folder.Path, "init", "--force", "--device", "atmega88p").Status);
        Assert.Contains(
            "device: atmega88p\n",
            File.ReadAllText(Path.Combine(_folder.Path, "powerlint.yaml")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Init_says_what_it_did_not_find()
    {
        _folder.Write("Makefile", "CFLAGS = -mmcu=atmega9999\n");
        var result = TestConsole.Run(_folder.Path, "init");
        Assert.Contains("atmega9999, of which there is no model", result.Output, StringComparison.Ordinal);
        Assert.Contains(
            "# The build names atmega9999",
            File.ReadAllText(Path.Combine(_folder.Path, "powerlint.yaml")),
            StringComparison.Ordinal
        );
    }
}
