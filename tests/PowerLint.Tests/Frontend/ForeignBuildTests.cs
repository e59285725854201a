using System.Text.Json;
using PowerLint.Frontend;

namespace PowerLint.Tests;

/// <summary>Builds that are not GCC's, and files that are not C.</summary>
public sealed class ForeignBuildTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    // Spellings as in these compilers' public documentation and exported databases (from memory).
    [InlineData(
        "iccarm.exe --cpu=Cortex-M4 --fpu=VFPv4_sp -e -Ohs --dlib_config DLib_Config_Normal.h --preinclude forced.h -DVALUE=4 -I inc main.c -o main.o",
        "arm",
        "--cpu=Cortex-M4 as -mcpu=cortex-m4"
    )]
    [InlineData(
        "armcc --c99 --cpu Cortex-M0+ -g -O2 --apcs=interwork --preinclude=forced.h -DVALUE=4 -I inc --depend main.d -o main.o main.c",
        "arm",
        "--c99 as -std=gnu99"
    )]
    [InlineData(
        "armclang --target=arm-arm-none-eabi -mcpu=cortex-m33 -xc -std=c11 -fno-rtti -funsigned-char -include forced.h -DVALUE=4 -I inc -c main.c",
        "arm",
        null
    )]
    [InlineData(
        "iccavr --cpu=m328p -e --char_is_signed --preinclude forced.h -DVALUE=4 -I inc -s9 main.c",
        "avr",
        "--cpu=m328p as -mmcu=atmega328p"
    )]
    [InlineData(
        "cl430 -vmsp --abi=eabi --define=VALUE=4 --include_path=inc --preinclude=forced.h main.c",
        "msp430",
        "--define=VALUE=4 as -D VALUE=4"
    )]
    public void Flags_of_other_compilers_are_put_into_the_parser_s_words(
        string command,
        string architecture,
        string? notice
    )
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "inc"));
        _folder.Write("inc/value.h", "#define FROM_INC 3\n");
        _folder.Write("forced.h", "#define FORCED 2\n");
        _folder.Write(
            "main.c",
            "#include \"value.h\"\n__root __no_init int kept;\nint sum[VALUE + FROM_INC + FORCED == 9 ? 1 : -1];\nint main(void) { return 0; }\n"
        );
        _folder.Write(
            "compile_commands.json",
            JsonSerializer.Serialize(
                new[]
                {
                    new
                    {
                        directory = ".",
                        file = "main.c",
                        command,
                    },
                }
            )
        );
        var result = Read();
        Assert.Null(result.Failure);
        Assert.Empty(result.Errors);
        Assert.Equal(architecture, Assert.Single(result.Units).Target.Architecture);
        Assert.DoesNotContain(result.Notices, known => known.Id is "flag-left-out");
        var translated = result.Notices.SingleOrDefault(known => known.Id is "flag-translated");
        Assert.Equal(
            notice is not null,
            translated is not null && translated.Message.Contains(notice!, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Response_files_of_other_compilers_are_taken_in()
    {
        _folder.Write("flags.xcl", "--cpu=Cortex-M3 -DVALUE=4\n");
        _folder.Write("main.c", "int sum[VALUE == 4 ? 1 : -1];\nint main(void) { return 0; }\n");
        _folder.Write(
            "compile_commands.json",
            "[{ \"directory\": \".\", \"file\": \"main.c\", \"command\": \"iccarm -f flags.xcl main.c\" }]"
        );
        Assert.Empty(Read().Errors);
    }

    [Fact]
    public void Assembly_is_skipped_with_a_note_but_its_vector_table_names_the_handlers()
    {
        _folder.Write(
            "startup.s",
            """
                .syntax unified
                .section .isr_vector,"a",%progbits
            g_vectors:
                .word _estack
                .word Reset_Handler
                .word 0
                .word meter_pulse   /* the water meter's reed contact */
                .word clock_tick + 1
                .section .text.Reset_Handler
            Reset_Handler:
                .word not_a_handler
            """
        );
        _folder.Write(
            "main.c",
            "int pulses;\nvoid meter_pulse(void) { pulses++; }\nvoid not_a_handler(void) { }\nint main(void) { return 0; }\n"
        );
        _folder.Write(
            "compile_commands.json",
            "[{ \"directory\": \".\", \"file\": \"startup.s\", \"command\": \"arm-none-eabi-gcc -c startup.s\" }, { \"directory\": \".\", \"file\": \"main.c\", \"command\": \"arm-none-eabi-gcc -mcpu=cortex-m0 -mthumb -c main.c\" }]"
        );
        var result = Read();
        Assert.Empty(result.Errors);
        Assert.Contains(
            "startup.s",
            Assert.Single(result.Notices, notice => notice.Id is "assembly-not-read").Message,
            StringComparison.Ordinal
        );
        Assert.Equal(
            ["meter_pulse"],
            result.Units[0].Functions.Where(function => function.Handler is not null).Select(function => function.Name)
        );
    }

    [Theory]
    [InlineData(
        "__Vectors\tDCD  __initial_sp ; Top\n        DCD  Reset_Handler\n  DCD  PUMP_IRQHandler ; pump\n  AREA |.text|, CODE\n DCD other",
        "PUMP_IRQHandler"
    )]
    [InlineData(
        "        SECTION .intvec:CODE:NOROOT(2)\n        DATA\n__vector_table\n        DCD     sfe(CSTACK)\n        DCD     VALVE_IRQHandler\n        SECTION .text:CODE\n        DCD     other",
        "VALVE_IRQHandler"
    )]
    [InlineData(
        "  .section .vectors\n__vectors:\n  jmp __init\n  jmp __vector_1\n  rjmp door_open\n",
        "__vector_1 door_open"
    )]
    public void Vector_tables_are_read_in_the_dialects_of_the_assemblers(string source, string names) =>
        Assert.Equal(names, string.Join(' ', VectorTables.Names(source.Split('\n'))));

    [Fact]
    public void Of_a_C_plus_plus_unit_free_functions_are_lowered_and_the_rest_is_noted()
    {
        _folder.Write(
            "main.cpp",
            """
            class Pump { public: void start() { level = 1; } int level; };
            namespace tank { int level() { return 3; } }
            int scaled(int x) { return static_cast<int>(x * 2); }
            int scaled(long x) { return x > 4; }
            extern "C" { void c_part(void); int total; }
            extern "C" void __vector_6(void) __attribute__((signal));
            extern "C" void __vector_6(void) { total = 1; }
            static void pass(int &out) { out = 1; }
            int main() {
                Pump pump;
                pump.start();
                total = scaled(2) + tank::level() + scaled(3L);
                int changed = 0;
                pass(changed);
                c_part();
                return total;
            }
            """
        );
        var result = FirmwareReader.Read(
            new ReadRequest
            {
                Files = ["main.cpp"],
                Flags = ["avr-gcc", "-mmcu=atmega328p"],
                AsksCompilers = false,
                WorkingDirectory = _folder.Path,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Empty(result.Errors);
        var unit = Assert.Single(result.Units);
        Assert.Empty(Program.ProgramVerifier.Verify(unit));
        Assert.Equal(
            ["tank::level()", "scaled(int)", "scaled(long)", "__vector_6", "pass(int &)", "main"],
            unit.Functions.Select(function => function.Name)
        );
        Assert.NotNull(unit.Functions.Single(function => function.Name is "__vector_6").Handler);
        Assert.Contains(unit.Symbols, symbol => symbol.Name is "c_part");
        Assert.Contains(
            unit.Gaps,
            gap => gap.Construct.StartsWith("C++ methods", StringComparison.Ordinal) && gap.Range.Line == 1
        );
        Assert.Contains(unit.Gaps, gap => gap.Range.Line == 11);
        Assert.Contains(unit.Gaps, gap => gap.Range.Line == 14);
    }

    private ReadResult Read() =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Database = ".",
                AsksCompilers = false,
                WorkingDirectory = _folder.Path,
            },
            TestContext.Current.CancellationToken
        );
}
