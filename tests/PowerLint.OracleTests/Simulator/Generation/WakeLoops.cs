namespace PowerLint.OracleTests;

/// <summary>Endless loops other than state machines: waiting for a count, naps through a function, a guarded sleep.</summary>
internal sealed class WakeLoops(GenerationContext context, HandlerEffects effects, InputStatements? inputs)
{
    private RandomSource Random => context.Random;

    /// <summary>Writes one.</summary>
    public void Write(SourceText text, Action<SourceText, string> sleep)
    {
        var deep = Random.From(context.Part.DeepModes);
        var nap = context.Name("nap");
        var isNap = Random.OneIn(3);
        if (isNap)
        {
            context.Declarations.Block(
                $"__attribute__((noinline)) static void {nap}(uint8_t mode, uint8_t times)",
                () => context.Declarations.Block("while (times--)", () => sleep(context.Declarations, "mode"))
            );
        }

        text.Block(
            "for (;;)",
            () =>
            {
                Set(text);
                inputs?.Write(text);
                if (isNap)
                {
                    text.Line($"{nap}({deep}, {Random.Between(1, 3)});");
                    Set(text);
                    text.Line($"{nap}(SLEEP_MODE_IDLE, 1);");
                }
                else if (Random.OneIn(2))
                {
                    text.Line("uint8_t start = ticks;");
                    text.Block("while (ticks == start)", () => sleep(text, deep));
                }
                else
                {
                    text.Line("cli();");
                    text.Block(
                        "if (!flag)",
                        () =>
                        {
                            text.Line($"set_sleep_mode({deep});");
                            text.Line("sleep_enable();");
                            text.Line("sei();");
                            text.Line("sleep_cpu();");
                            text.Line("sleep_disable();");
                        }
                    );
                    text.Line("sei();");
                    text.Line("flag = 0;");
                }

                Set(text);
            }
        );
    }

    private void Set(SourceText text)
    {
        var register = context.Register();
        switch (Random.Below(6))
        {
            case 0:
                text.Line($"{register} = {context.Byte()};");
                break;
            case 1:
                text.Line("cli();");
                text.Line($"{register} |= _BV({Random.Below(6)});");
                text.Line("sei();");
                break;
            case 2:
                text.Block(
                    "",
                    () =>
                    {
                        text.Line("uint8_t status = SREG;");
                        text.Line("cli();");
                        text.Line($"{register} &= ~_BV({Random.Below(6)});");
                        text.Line("SREG = status;");
                    }
                );
                break;
            case 3:
                text.Line($"ATOMIC_BLOCK(ATOMIC_RESTORESTATE) {{ {register} |= _BV({Random.Below(6)}); }}");
                break;
            case 4 when effects.Shared is { } shared:
                text.Line($"{shared}(&{register}, {Random.Below(2)});");
                break;
            default:
                text.Line($"{register} &= ~_BV({Random.Below(6)});");
                break;
        }
    }
}
