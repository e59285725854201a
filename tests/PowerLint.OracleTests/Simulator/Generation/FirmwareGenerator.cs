using System.Globalization;

namespace PowerLint.OracleTests;

/// <summary>A generated program.</summary>
/// <param name="Seed">Where it comes from.</param>
/// <param name="Level">Its level.</param>
/// <param name="Device">Its part.</param>
/// <param name="Text">The C source.</param>
internal sealed record GeneratedProgram(int Seed, int Level, string Device, string Text);

/// <summary>
/// Writes random firmware whose behaviour C defines: the same seed gives the same program. Level 1: masks and loops; 2: tables
/// and pointers; 3: structures, switches, calls; 4: handlers and state machines over wake-ups; 5: all of it with function
/// pointers, unions, bit-fields, 16-bit registers and promotion traps. Levels 1 to 3 read nothing from outside.
/// </summary>
internal static class FirmwareGenerator
{
    /// <summary>How many levels there are.</summary>
    public const int Levels = 5;

    /// <summary>Writes the program of a seed.</summary>
    public static GeneratedProgram Generate(int seed)
    {
        var level = 1 + seed % Levels;
        var part = GeneratedPart.All[seed / Levels % GeneratedPart.All.Count];
        var context = new GenerationContext(new RandomSource((ulong)seed), part, level);
        var statements = new StatementGenerator(context);
        var main = new SourceText();
        main.Block("int main(void)", () => Body(context, statements, main));

        var head = new SourceText();
        head.Line(string.Create(CultureInfo.InvariantCulture, $"// device: {part.Name}"));
        head.Line("// flags: -DF_CPU=8000000UL");
        head.Line(string.Create(CultureInfo.InvariantCulture, $"// Generated: seed {seed}, level {level}."));
        foreach (
            var header in (string[])
                ["avr/interrupt", "avr/io", "avr/pgmspace", "avr/sleep", "stdint", "string", "util/atomic"]
        )
        {
            head.Line($"#include <{header}.h>");
        }

        return new GeneratedProgram(seed, level, part.Name, $"{head}\n{context.Declarations}\n{main}");
    }

    private static void Body(GenerationContext context, StatementGenerator statements, SourceText main)
    {
        var random = context.Random;
        var scope = new Scope();
        for (var count = random.Between(1, 3); count > 0; count--)
        {
            statements.Local(main, scope);
        }

        statements.Write(main, scope, random.Between(4, 9), depth: 2);
        Clocks(context, main);
        if (context.Level >= 4)
        {
            var wakes = new WakePrograms(context, statements);
            foreach (var enable in wakes.Handlers())
            {
                main.Line(enable);
            }

            main.Line("sei();");
            wakes.Loop(main, (text, mode) => Sleep(context, text, mode));
            return;
        }

        // One sleep or several in a row, the watchdog ending all but the last.
        var sleeps = random.OneIn(2) ? 1 : random.Between(2, 4);
        if (sleeps > 1)
        {
            context.Declarations.Line("EMPTY_INTERRUPT(WDT_vect)");
            main.Line(new WakePrograms(context, statements).Watchdog());
            main.Line("sei();");
        }

        for (var index = 1; index <= sleeps; index++)
        {
            if (index == sleeps && sleeps > 1)
            {
                main.Line("cli();");
                main.Line($"{context.Part.Watchdog} = _BV(WDCE) | _BV(WDE); {context.Part.Watchdog} = 0;");
            }

            Sleep(context, main, random.OneIn(4) ? "SLEEP_MODE_IDLE" : random.From(context.Part.DeepModes));
            if (index < sleeps)
            {
                statements.Write(main, scope, random.Between(1, 3), depth: 2);
            }
        }

        main.Line("for (;;) ;");
    }

    private static void Clocks(GenerationContext context, SourceText main)
    {
        if (context.Random.OneIn(3))
        {
            main.Line($"CLKPR = _BV(CLKPCE); CLKPR = {context.Random.Below(4)};");
        }

        if (context.Random.OneIn(2))
        {
            main.Line($"{context.Part.Gates} |= _BV({context.Random.From(context.Part.GateBits)});");
        }

        if (context.Random.OneIn(2))
        {
            main.Line("ACSR |= _BV(ACD);");
        }
    }

    private static void Sleep(GenerationContext context, SourceText text, string mode)
    {
        text.Line($"set_sleep_mode({mode});");
        switch (context.Random.Below(4))
        {
            case 0:
                text.Line("sleep_enable();");
                text.Line("sleep_cpu();");
                text.Line("sleep_disable();");
                break;
            case 1:
                text.Line("sleep_enable();");
                text.Line("__asm__ __volatile__(\"sleep\");");
                break;
            default:
                text.Line("sleep_mode();");
                break;
        }
    }
}
