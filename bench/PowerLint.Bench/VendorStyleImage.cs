using System.Globalization;
using System.Text;

namespace PowerLint.Bench;

/// <summary>
/// Writes an image in the style of a chip vendor's driver library: a device header of register structures and thousands of bit masks, a
/// header a peripheral with settings, handles, enumerations and small inline functions, all of them included by every unit; drivers of
/// several files a peripheral that take handles; modules that use a few drivers each; one main program that sets all modules up and
/// sleeps. As in such libraries, most of what a driver offers is never called. Same number, same text.
/// </summary>
internal static class VendorStyleImage
{
    private const int Peripherals = 40;
    private const int RegistersEach = 14;
    private const int FieldsEach = 9;

    /// <summary>Writes the image and its compile database.</summary>
    /// <returns>The units, in the order of the database.</returns>
    public static IReadOnlyList<string> Write(string folder, int units)
    {
        Directory.CreateDirectory(Path.Combine(folder, "vendor"));
        Directory.CreateDirectory(Path.Combine(folder, "app"));
        Put("vendor/device.h", DeviceHeader());
        var all = new StringBuilder("#ifndef HAL_H\n#define HAL_H\n#include \"device.h\"\n");
        List<string> files = ["app/main.c"];
        for (var i = 0; i < Peripherals; i++)
        {
            all.Append(CultureInfo.InvariantCulture, $"#include \"hal_p{i}.h\"\n");
            Put($"vendor/hal_p{i}.h", PeripheralHeader(i));
        }

        // A small image has the drivers that fit into half of it.
        var driven = Math.Min(Peripherals, units / 2 / VendorStyleDriver.Parts.Length);
        for (var i = 0; i < driven; i++)
        {
            foreach (var (part, text) in VendorStyleDriver.Write(i))
            {
                Put($"vendor/hal_p{i}{part}.c", text);
                files.Add($"vendor/hal_p{i}{part}.c");
            }
        }

        Put("vendor/hal.h", all.Append("#endif\n").ToString());
        var modules = units - files.Count;
        for (var i = 0; i < modules; i++)
        {
            Put($"app/module{i}.c", Module(i, driven));
            files.Add($"app/module{i}.c");
        }

        Put("app/main.c", MainProgram(modules));
        CompileDatabase.Write(folder, files, ["-mmcu=atmega1284p", "-Os", "-Ivendor"]);
        return files;

        void Put(string name, string text) => File.WriteAllText(Path.Combine(folder, name), text);
    }

    /// <summary>Changes one module a little, differently for each number.</summary>
    public static void Touch(string folder, int number)
    {
        var file = Path.Combine(folder, "app", "module7.c");
        File.AppendAllText(
            file,
            string.Create(CultureInfo.InvariantCulture, $"\nstatic const uint8_t change{number} = 1;\n")
        );
    }

    private static string DeviceHeader()
    {
        var text = new StringBuilder(
            "#ifndef DEVICE_H\n#define DEVICE_H\n#include <avr/io.h>\n#include <stdint.h>\n\n"
        );
        for (var peripheral = 0; peripheral < Peripherals; peripheral++)
        {
            text.Append("typedef struct\n{\n");
            for (var register = 0; register < RegistersEach; register++)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"  volatile uint16_t R{register}; /*!< P{peripheral} register {register}, offset {2 * register} */\n"
                );
            }

            text.Append(
                CultureInfo.InvariantCulture,
                $"}} P{peripheral}_TypeDef;\n\nextern P{peripheral}_TypeDef p{peripheral}_instance;\n#define P{peripheral} (&p{peripheral}_instance)\n\n"
            );
            for (var register = 0; register < RegistersEach; register++)
            {
                for (var field = 0; field < FieldsEach; field++)
                {
                    var name = string.Create(CultureInfo.InvariantCulture, $"P{peripheral}_R{register}_F{field}");
                    text.Append(
                        CultureInfo.InvariantCulture,
                        $"#define {name}_Pos ({field}U)\n#define {name}_Msk (0x1U << {name}_Pos) /*!< 0x{1 << field:X8} */\n#define {name} {name}_Msk /*!< field {field} of register {register} */\n"
                    );
                }
            }
        }

        return text.Append("#endif\n").ToString();
    }

    private static string PeripheralHeader(int n)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"#ifndef HAL_P{n}_H\n#define HAL_P{n}_H\n#include \"device.h\"\n\n");
        for (var group = 0; group < 12; group++)
        {
            text.Append("/**\n  * @brief The choices of one setting.\n  */\ntypedef enum\n{\n");
            for (var value = 0; value < 8; value++)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"  HAL_P{n}_G{group}_V{value} = 0x{value:X2}U, /*!< choice {value} */\n"
                );
            }

            text.Append(
                CultureInfo.InvariantCulture,
                $"}} HAL_P{n}_G{group}TypeDef;\n\n#define IS_P{n}_G{group}(VALUE) (((VALUE) == HAL_P{n}_G{group}_V0) || ((VALUE) == HAL_P{n}_G{group}_V1) || ((VALUE) == HAL_P{n}_G{group}_V2))\n\n"
            );
        }

        text.Append("typedef struct\n{\n");
        for (var group = 0; group < 12; group++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"  uint8_t Setting{group}; /*!< a value of HAL_P{n}_G{group}TypeDef */\n"
            );
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"}} HAL_P{n}_InitTypeDef;\n\ntypedef struct HAL_P{n}_Handle\n{{\n  P{n}_TypeDef *Instance;\n  HAL_P{n}_InitTypeDef Init;\n  volatile uint8_t State;\n  volatile uint8_t Lock;\n  uint16_t Error;\n  const uint8_t *Data;\n  uint16_t Size;\n  uint16_t Count;\n  void (*Complete)(struct HAL_P{n}_Handle *handle);\n}} HAL_P{n}_HandleTypeDef;\n\n"
        );
        for (var register = 0; register < RegistersEach; register++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"static inline void HAL_P{n}_SetR{register}(P{n}_TypeDef *p, uint16_t value)\n{{\n  p->R{register} = (uint16_t)((p->R{register} & (uint16_t)~P{n}_R{register}_F0) | value);\n}}\n\nstatic inline uint16_t HAL_P{n}_GetR{register}(const P{n}_TypeDef *p)\n{{\n  return p->R{register};\n}}\n\n"
            );
        }

        for (var function = 0; function < VendorStyleDriver.Functions; function++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"uint8_t HAL_P{n}_Do{function}(HAL_P{n}_HandleTypeDef *handle, uint16_t value);\n"
            );
        }

        return text.Append(
                CultureInfo.InvariantCulture,
                $"uint8_t HAL_P{n}_Init(HAL_P{n}_HandleTypeDef *handle);\n{VendorStyleDriver.Prototypes(n)}#endif\n"
            )
            .ToString();
    }

    private static string Module(int n, int driven)
    {
        var (a, b) = (n % driven, (n * 7 + 3) % driven);
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $$"""
            #include "hal.h"

            static HAL_P{{a}}_HandleTypeDef first;
            static HAL_P{{b}}_HandleTypeDef second;
            static uint16_t history[16];
            static uint8_t position;

            static void finished(HAL_P{{a}}_HandleTypeDef *handle)
            {
              handle->Count = 0U;
            }

            void module{{n}}_setup(void)
            {
              first.Instance = P{{a}};
              first.Init.Setting0 = HAL_P{{a}}_G0_V{{n % 8}};
              first.Init.Setting1 = 0x{{n % 200:X2}}U;
              first.Init.Setting2 = HAL_P{{a}}_G2_V1;
              first.Complete = finished;
              (void)HAL_P{{a}}_Init(&first);
              second.Instance = P{{b}};
              second.Init.Setting1 = 0x{{(n * 3) % 200:X2}}U;
              (void)HAL_P{{b}}_Init(&second);
              GPIOR0++;
            }

            """
        );
        for (var step = 0; step < 6; step++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $$"""

                static uint8_t step{{step}}(uint16_t value)
                {
                  uint8_t result = HAL_P{{a}}_Do{{(n + step) % VendorStyleDriver.Functions}}(&first, value);

                  if (result == 0U)
                  {
                    history[position & 15U] = (uint16_t)(value + {{step}}U);
                    position++;
                  }
                  else if (value > {{100 * step}}U)
                  {
                    result |= HAL_P{{b}}_Do{{(n + (2 * step))
                    % VendorStyleDriver.Functions}}(&second, (uint16_t)(value >> 2));
                  }
                  return result;
                }

                """
            );
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"\nuint8_t module{n}_process(uint8_t event)\n{{\n  uint8_t result = 0U;\n\n  if ((event & 0x80U) != 0U)\n  {{\n    return 1U;\n  }}\n"
        );
        for (var step = 0; step < 6; step++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  result |= step{step}({(n * 5) + step}U);\n");
        }

        return text.Append("  return (uint8_t)(result & 0U);\n}\n").ToString();
    }

    private static string MainProgram(int modules)
    {
        var text = new StringBuilder("#include \"hal.h\"\n#include <avr/interrupt.h>\n#include <avr/sleep.h>\n\n");
        foreach (
            var (type, name, argument) in ((string, string, string)[])
                [("void", "setup", "void"), ("uint8_t", "process", "uint8_t event")]
        )
        {
            for (var i = 0; i < modules; i++)
            {
                text.Append(CultureInfo.InvariantCulture, $"{type} module{i}_{name}({argument});\n");
            }
        }

        text.Append(
            "\nstatic volatile uint8_t event;\n\nISR(PCINT0_vect)\n{\n  event = 1U;\n}\n\nstatic void setup(void)\n{\n"
        );
        for (var i = 0; i < modules; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  module{i}_setup();\n");
        }

        text.Append("}\n\nstatic uint8_t process(uint8_t what)\n{\n  uint8_t busy = 0U;\n");
        for (var i = 0; i < modules; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  busy |= module{i}_process(what);\n");
        }

        return text.Append(
                """
                  return busy;
                }

                int main(void)
                {
                  setup();
                  PCMSK0 = 1U;
                  PCICR = 1U;
                  set_sleep_mode(SLEEP_MODE_PWR_DOWN);
                  sleep_enable();
                  for (;;)
                  {
                    cli();
                    uint8_t what = event;
                    event = 0U;
                    sei();
                    if (process(what) == 0U)
                    {
                      sleep_cpu();
                    }
                  }
                }

                """
            )
            .ToString();
    }
}
