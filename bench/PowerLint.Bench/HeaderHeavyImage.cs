using System.Globalization;
using System.Text;

namespace PowerLint.Bench;

/// <summary>
/// Writes an image whose units each pull in some 70 thousand lines of inline register accessors, of which each uses a few. Same number,
/// same text.
/// </summary>
internal static class HeaderHeavyImage
{
    // Five lines an accessor, with its blank line.
    private const int Accessors = 14_000;

    /// <summary>Writes the image and its compile database.</summary>
    /// <returns>The units, in the order of the database.</returns>
    public static IReadOnlyList<string> Write(string folder, int units)
    {
        var header = new StringBuilder(
            "#ifndef ACCESSORS_H\n#define ACCESSORS_H\n#include <avr/io.h>\n#include <stdint.h>\n\n"
        );
        for (var i = 0; i < Accessors; i += 2)
        {
            var (register, field) = (i / 14, i / 2 % 7);
            header.Append(
                CultureInfo.InvariantCulture,
                $"static inline void block{register}_set_field{field}(volatile uint8_t *base, uint8_t value)\n{{\n  base[{register % 16}] = (uint8_t)((base[{register % 16}] & ~(1U << {field})) | ((value & 1U) << {field}));\n}}\n\n"
            );
            header.Append(
                CultureInfo.InvariantCulture,
                $"static inline uint8_t block{register}_get_field{field}(const volatile uint8_t *base)\n{{\n  return (uint8_t)((base[{register % 16}] >> {field}) & 1U);\n}}\n\n"
            );
        }

        File.WriteAllText(Path.Combine(folder, "accessors.h"), header.Append("#endif\n").ToString());
        List<string> files = ["main.c"];
        var main = new StringBuilder("#include \"accessors.h\"\n#include <avr/sleep.h>\n\n");
        var calls = new StringBuilder();
        for (var i = 1; i < units; i++)
        {
            files.Add(string.Create(CultureInfo.InvariantCulture, $"unit{i}.c"));
            File.WriteAllText(
                Path.Combine(folder, files[^1]),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"#include \"accessors.h\"\n\nstatic uint8_t block[16];\n\nvoid unit{i}_setup(void)\n{{\n  block{i}_set_field1(block, 1U);\n  block{i + 9}_set_field3(block, block{i}_get_field1(block));\n  GPIOR0++;\n}}\n"
                )
            );
            main.Append(CultureInfo.InvariantCulture, $"void unit{i}_setup(void);\n");
            calls.Append(CultureInfo.InvariantCulture, $"  unit{i}_setup();\n");
        }

        main.Append("\nint main(void)\n{\n")
            .Append(calls)
            .Append("  set_sleep_mode(SLEEP_MODE_PWR_DOWN);\n  for (;;)\n  {\n    sleep_mode();\n  }\n}\n");
        File.WriteAllText(Path.Combine(folder, files[0]), main.ToString());
        CompileDatabase.Write(folder, files, ["-mmcu=atmega1284p", "-Os"]);
        return files;
    }
}
