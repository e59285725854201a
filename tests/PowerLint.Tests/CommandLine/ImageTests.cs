using System.Text.Json;

namespace PowerLint.Tests;

/// <summary>Several images in one compile database: how they are told apart, chosen and reported.</summary>
public sealed class ImageTests : IDisposable
{
    private const string Registers = """
        #include <stdint.h>
        #define DDRB (*(volatile uint8_t *)0x24)
        #define PORTB (*(volatile uint8_t *)0x25)

        """;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Build_targets_of_CMake_s_object_files_are_images()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "app"));
        Directory.CreateDirectory(Path.Combine(_folder.Path, "boot"));
        Directory.CreateDirectory(Path.Combine(_folder.Path, "common"));
        _folder.Write(
            "app/main.c",
            "void pins(void);\nint main(void) { pins(); for (;;) __asm__ volatile(\"sleep\"); }\n"
        );
        _folder.Write("boot/main.c", "int value(void);\nint main(void) { for (;;) __asm__ volatile(\"nop\"); }\n");
        // One name, two targets: each image has its own.
        _folder.Write("app/pins.c", Registers + "void pins(void) { DDRB = 0x01; }\n");
        _folder.Write("boot/pins.c", Registers + "void pins(void) { DDRB = 0x02; }\n");
        _folder.Write("common/value.c", "int value(void) { return 1; }\n");
        Database(
            ("app/main.c", "CMakeFiles/lamp.dir/app/main.c.o"),
            ("app/pins.c", "CMakeFiles/lamp.dir/app/pins.c.o"),
            ("boot/main.c", "CMakeFiles/loader.dir/boot/main.c.o"),
            ("boot/pins.c", "CMakeFiles/loader.dir/boot/pins.c.o"),
            ("common/value.c", "CMakeFiles/common.dir/common/value.c.o")
        );

        var all = Run("check", "-p", ".", "--format", "json", "--fail-on", "none");
        Assert.Equal("", all.Error);
        using var document = JsonDocument.Parse(all.Output);
        Assert.Equal(
            ["lamp", "loader"],
            document.RootElement.GetProperty("images").EnumerateArray().Select(i => i.GetProperty("image").GetString())
        );

        var one = Run("state", "-p", ".", "--image", "lamp", "--format", "json");
        using var state = JsonDocument.Parse(one.Output);
        Assert.Equal("0x01", Register(state, "DDRB"));
        Assert.DoesNotContain("defined-twice", one.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_targets_an_image_is_what_its_main_file_needs()
    {
        _folder.Write(
            "lamp.c",
            "void lamp_pins(void);\nint main(void) { lamp_pins(); for (;;) __asm__ volatile(\"sleep\"); }\n"
        );
        _folder.Write(
            "fan.c",
            "extern void (*const fan_table[])(void);\nint main(void) { fan_table[0](); for (;;) ; }\n"
        );
        _folder.Write("lamp_pins.c", Registers + "void lamp_pins(void) { DDRB = 0x04; }\n");
        _folder.Write(
            "fan_pins.c",
            Registers + "static void on(void) { PORTB = 0x08; }\nvoid (*const fan_table[])(void) = { on };\n"
        );
        Database(("lamp.c", null), ("fan.c", null), ("lamp_pins.c", null), ("fan_pins.c", null));

        using var lamp = JsonDocument.Parse(Run("state", "-p", ".", "--image", "lamp", "--format", "json").Output);
        using var fan = JsonDocument.Parse(Run("state", "-p", ".", "--image", "fan", "--format", "json").Output);
        Assert.Equal(("0x04", "0x00"), (Register(lamp, "DDRB"), Register(lamp, "PORTB")));
        Assert.Equal(("0x00", "0x08"), (Register(fan, "DDRB"), Register(fan, "PORTB")));
    }

    [Fact]
    public void One_source_in_two_builds_is_read_for_each()
    {
        _folder.Write("main.c", Registers + "int main(void) { DDRB = PINS; for (;;) __asm__ volatile(\"sleep\"); }\n");
        File.WriteAllText(
            Path.Combine(_folder.Path, "compile_commands.json"),
            """
            [
              { "directory": ".", "file": "main.c", "command": "avr-gcc -mmcu=atmega328p -DPINS=1 -c main.c -o build/small/main.o" },
              { "directory": ".", "file": "main.c", "command": "avr-gcc -mmcu=atmega328p -DPINS=3 -c main.c -o build/large/main.o" }
            ]
            """
        );
        using var large = JsonDocument.Parse(
            Run("state", "-p", ".", "--image", "build/large", "--format", "json").Output
        );
        Assert.Equal("0x03", Register(large, "DDRB"));
    }

    [Fact]
    public void Every_image_gets_a_run_of_its_own_in_SARIF_and_a_heading_in_text()
    {
        _folder.Write("lamp.c", "int main(void) { for (;;) __asm__ volatile(\"sleep\"); }\n");
        _folder.Write("fan.c", "int main(void) { for (;;) ; }\n");
        Database(("lamp.c", null), ("fan.c", null));
        using var log = JsonDocument.Parse(Run("check", "-p", ".", "--format", "sarif").Output);
        Assert.Equal(
            ["powerlint/lamp/", "powerlint/fan/"],
            log.RootElement.GetProperty("runs")
                .EnumerateArray()
                .Select(run => run.GetProperty("automationDetails").GetProperty("id").GetString())
        );

        var text = Run("check", "-p", ".").Output;
        Assert.StartsWith("Image lamp\n", text, StringComparison.Ordinal);
        Assert.Contains("\nImage fan\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_image_and_fixes_of_several_name_those_that_there_are()
    {
        _folder.Write("lamp.c", "int main(void) { for (;;) ; }\n");
        _folder.Write("fan.c", "int main(void) { for (;;) ; }\n");
        Database(("lamp.c", null), ("fan.c", null));
        var unknown = Run("check", "-p", ".", "--image", "lmap");
        Assert.Equal(2, unknown.Status);
        Assert.Contains("there is no image 'lmap'", unknown.Error, StringComparison.Ordinal);
        Assert.Contains("lamp, fan", unknown.Error, StringComparison.Ordinal);
        Assert.Contains(
            "choose one with --image: lamp, fan",
            Run("check", "-p", ".", "--fix").Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void State_prints_every_image_under_its_name()
    {
        _folder.Write("lamp.c", Registers + "int main(void) { DDRB = 1; for (;;) ; }\n");
        _folder.Write("fan.c", Registers + "int main(void) { DDRB = 2; for (;;) ; }\n");
        Database(("lamp.c", null), ("fan.c", null));

        using var state = JsonDocument.Parse(Run("state", "-p", ".", "--format", "json").Output);
        Assert.Equal(
            [("lamp", "0x01"), ("fan", "0x02")],
            state
                .RootElement.GetProperty("images")
                .EnumerateArray()
                .Select(image =>
                    (
                        image.GetProperty("image").GetString(),
                        image
                            .GetProperty("points")[0]
                            .GetProperty("registers")
                            .GetProperty("DDRB")
                            .GetProperty("value")
                            .GetString()
                    )
                )
        );

        var explained = Run("state", "-p", ".", "--explain", "DDRB").Output;
        Assert.StartsWith("Image lamp\n", explained, StringComparison.Ordinal);
        Assert.Contains("\nImage fan\n", explained, StringComparison.Ordinal);
    }

    [Fact]
    public void A_baseline_of_several_images_is_held_against_each_by_its_name()
    {
        _folder.Write("lamp.c", Registers + "int main(void) { DDRB = 0xFF; for (;;) ; }\n");
        _folder.Write("fan.c", Registers + "int main(void) { DDRB = 0xFE; for (;;) ; }\n");
        Database(("lamp.c", null), ("fan.c", null));
        Run("check", "-p", ".", "--format", "sarif", "-o", "before.sarif");

        // What the lamp leaves floating now is old in the fan.
        _folder.Write("lamp.c", Registers + "int main(void) { DDRB = 0xFE; for (;;) ; }\n");
        var result = Run("check", "-p", ".", "--format", "sarif", "--baseline", "before.sarif");
        using var log = JsonDocument.Parse(result.Output);
        Assert.Equal(1, result.Status);
        Assert.Equal(
            [true, false],
            log.RootElement.GetProperty("runs")
                .EnumerateArray()
                .Select(run =>
                    run.GetProperty("results")
                        .EnumerateArray()
                        .Any(found => found.GetProperty("baselineState").GetString() == "new")
                )
        );
        Assert.Equal(0, Run("check", "-p", ".", "--image", "fan", "--baseline", "before.sarif").Status);
    }

    private CommandResult Run(params string[] arguments) => TestConsole.Run(_folder.Path, arguments);

    private static string? Register(JsonDocument state, string name) =>
        state
            .RootElement.GetProperty("points")[0]
            .GetProperty("registers")
            .GetProperty(name)
            .GetProperty("value")
            .GetString();

    private void Database(params (string File, string? Output)[] entries) =>
        File.WriteAllText(
            Path.Combine(_folder.Path, "compile_commands.json"),
            JsonSerializer.Serialize(
                entries.Select(entry => new
                {
                    directory = ".",
                    file = entry.File,
                    command = $"avr-gcc -mmcu=atmega328p -c {entry.File}"
                        + (entry.Output is null ? "" : $" -o {entry.Output}"),
                })
            )
        );
}
