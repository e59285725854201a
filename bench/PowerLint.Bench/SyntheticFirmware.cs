using System.Globalization;
using System.Text;

namespace PowerLint.Bench;

/// <summary>
/// Writes firmware of a given length in the style of a driver library: modules with settings passed by pointer, handles, loops
/// over pin masks, tables, state machines, and a main program that sets all up and sleeps. Every module counts GPIOR0 up when it
/// is set up, so that the state tells whether all were run. Same length, same text.
/// </summary>
internal static class SyntheticFirmware
{
    // A module is a file of about this many lines.
    private const int ModuleLines = 250;

    private static readonly string[] Ports = ["A", "B", "C", "D"];

    /// <summary>Writes it.</summary>
    /// <returns>The files, and how many lines they have together.</returns>
    public static (IReadOnlyList<string> Files, int Lines) Write(string folder, int lines)
    {
        var modules = Math.Max(1, lines / ModuleLines);
        var written = 0;
        List<string> files = [Path.Combine(folder, "main.c")];
        Add(Path.Combine(folder, "driver.h"), Header, null);
        Add(files[0], MainProgram(modules), null);
        for (var module = 0; module < modules; module++)
        {
            Add(Path.Combine(folder, Name(module) + ".c"), Module(module), files);
        }

        return (files, written);

        void Add(string file, string text, List<string>? list)
        {
            File.WriteAllText(file, text);
            written += text.Count(character => character == '\n');
            list?.Add(file);
        }
    }

    private static string Name(int module) => string.Create(CultureInfo.InvariantCulture, $"module{module:d4}");

    private const string Header = """
        #ifndef DRIVER_H
        #define DRIVER_H
        #include <avr/interrupt.h>
        #include <avr/io.h>
        #include <avr/sleep.h>
        #include <stdint.h>

        typedef struct { volatile uint8_t in, direction, out; } port_registers;
        typedef struct { uint16_t pins; uint8_t mode; uint8_t pull; } pin_settings;
        typedef struct handle {
            port_registers *port;
            pin_settings settings;
            uint8_t state;
            uint16_t counters[8];
            void (*done)(struct handle *self);
        } handle;
        #define PORT_A ((port_registers *)&PINA)
        #define PORT_B ((port_registers *)&PINB)
        #define PORT_C ((port_registers *)&PINC)
        #define PORT_D ((port_registers *)&PIND)
        #endif

        """;

    private static string MainProgram(int modules)
    {
        var text = new StringBuilder("#include \"driver.h\"\n\n");
        for (var module = 0; module < modules; module++)
        {
            text.Append(CultureInfo.InvariantCulture, $"void {Name(module)}_setup(void);\n");
            text.Append(CultureInfo.InvariantCulture, $"uint8_t {Name(module)}_poll(uint8_t event);\n");
        }

        text.Append(
            """

            static volatile uint8_t event;

            ISR(PCINT0_vect)
            {
                event = 1;
            }

            static void setup(void)
            {

            """
        );
        for (var module = 0; module < modules; module++)
        {
            text.Append(CultureInfo.InvariantCulture, $"    {Name(module)}_setup();\n");
        }

        text.Append("}\n\nstatic uint8_t poll(uint8_t what)\n{\n    uint8_t busy = 0;\n");
        for (var module = 0; module < modules; module++)
        {
            text.Append(CultureInfo.InvariantCulture, $"    busy |= {Name(module)}_poll(what);\n");
        }

        return text.Append(
                """
                    return busy;
                }

                int main(void)
                {
                    setup();
                    PCMSK0 = 1;
                    PCICR = 1;
                    set_sleep_mode(SLEEP_MODE_PWR_DOWN);
                    sleep_enable();
                    for (;;) {
                        cli();
                        uint8_t what = event;
                        event = 0;
                        sei();
                        if (!poll(what))
                            sleep_cpu();
                    }
                }

                """
            )
            .ToString();
    }

    private static string Module(int module)
    {
        var name = Name(module);
        var port = Ports[module % Ports.Length];
        var text = new StringBuilder();
        Write(
            $$"""
            #include "driver.h"

            static handle self;
            static uint8_t buffer[32];

            static const pin_settings rows[] = {
                {0x{{1 << (module % 8):x2}}, 1, 0},
                {0x{{1 << ((module + 3) % 8):x2}}, 0, 1},
                {0x{{3 << (module % 6):x2}}, 1, 1},
            };

            static void pins_setup(port_registers *port, const pin_settings *settings)
            {
                for (uint8_t position = 0; position < 16; position++) {
                    uint16_t here = settings->pins & (1U << position);
                    if (!here)
                        continue;
                    uint8_t value = port->direction;
                    value &= ~(1U << position);
                    value |= (settings->mode & 1U) << position;
                    port->direction = value;
                    if (settings->pull)
                        port->out |= here;
                    else
                        port->out &= ~here;
                }
            }

            static void finished(handle *which)
            {
                which->state = 0;
                which->counters[{{module % 8}}]++;
            }

            """
        );
        for (var step = 0; step < 8; step++)
        {
            Write(
                $$"""

                static uint16_t step{{step}}(handle *which, uint8_t value)
                {
                    uint16_t sum = {{(module * 7) + step}};

                    for (uint8_t i = 0; i < 8; i++) {
                        if (value & (1U << i))
                            sum += which->counters[i];
                        else
                            sum ^= (uint16_t)(sum << 1);
                    }
                    switch (which->state) {
                    case 0:
                        buffer[{{step}}] = value;
                        which->state = {{step}} + 1;
                        break;
                    case {{step + 1}}:
                        buffer[{{step + 8}}] = (uint8_t)sum;
                        if (which->done)
                            which->done(which);
                        break;
                    default:
                        which->state = 0;
                        break;
                    }
                    return sum;
                }

                """
            );
        }

        Write(
            $$"""

            void {{name}}_setup(void)
            {
                self.port = PORT_{{port}};
                self.done = finished;
                for (uint8_t i = 0; i < sizeof rows / sizeof *rows; i++) {
                    self.settings = rows[i];
                    pins_setup(self.port, &self.settings);
                }
                PRR0 |= {{1 << (module % 8)}};
                GPIOR0++;
            }

            uint8_t {{name}}_poll(uint8_t event)
            {
                uint16_t sum = 0;

                if (event & 0x80)
                    return 1;

            """
        );
        for (var step = 0; step < 8; step++)
        {
            Write($"    sum += step{step}(&self, {(module + step) & 0xFF});\n");
        }

        text.Append("    OCR1A = sum;\n    return 0;\n}\n");
        return text.ToString();

        void Write(FormattableString part) => text.Append(part.ToString(CultureInfo.InvariantCulture));
    }
}
