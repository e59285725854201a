namespace PowerLint.OracleTests;

/// <summary>Levels 4 and 5: interrupt handlers, and state machines or other loops that wake-ups move on.</summary>
internal sealed class WakePrograms(GenerationContext context, StatementGenerator statements)
{
    private readonly HandlerEffects _effects = new(context);
    private readonly InputStatements? _inputs = context.Random.OneIn(2) ? new InputStatements(context) : null;

    private RandomSource Random => context.Random;

    /// <summary>Writes handlers in front of <c>main</c> and gives the statements that enable their interrupts.</summary>
    public string[] Handlers()
    {
        var d = context.Declarations;
        d.Line("static volatile uint8_t ticks, flag;");
        var enables = new List<string> { Watchdog() };
        _effects.Write("WDT_vect", Random.OneIn(2) ? "ticks++;" : "ticks++; flag = 1;");
        if (Random.OneIn(2))
        {
            _effects.Write("PCINT0_vect", "flag = 1;");
            enables.Add(context.Part.IsTiny ? "GIMSK |= _BV(PCIE);" : "PCICR |= _BV(PCIE0);");
        }

        if (!context.Part.IsTiny && Random.OneIn(2))
        {
            _effects.Write("TIMER2_OVF_vect", "if (++ticks > 100) ticks = 0;");
            enables.Add("TIMSK2 |= _BV(TOIE2);");
            enables.Add($"TCCR2B = {Random.Between(1, 7)};");
        }

        if (Random.OneIn(3))
        {
            _effects.Write("TIMER0_OVF_vect", "flag |= 2;");
            enables.Add(context.Part.IsTiny ? "TIMSK |= _BV(TOIE0);" : "TIMSK0 |= _BV(TOIE0);");
            enables.Add($"TCCR0B = _BV(CS0{Random.Between(0, 2)});");
        }

        return [.. enables];
    }

    /// <summary>Writes the endless loop: mostly phases that follow each other, one a wake-up.</summary>
    public void Loop(SourceText text, Action<SourceText, string> sleep)
    {
        if (Random.OneIn(3))
        {
            new WakeLoops(context, _effects, _inputs).Write(text, sleep);
            return;
        }

        var count = Random.Between(2, 4);
        var registers = Enumerable
            .Range(0, Random.Between(1, 4))
            .Select(_ => context.Register())
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        var counter = Random.From(
            context.Part.Registers.Where(r => !registers.Contains(r, StringComparer.Ordinal)).ToArray()
        );
        var asFunctions = context.Level >= 5 && Random.OneIn(2);
        context.Declarations.Line("static uint8_t phase;");
        if (asFunctions)
        {
            for (var index = 0; index < count; index++)
            {
                var next = (index + 1) % count;
                context.Declarations.Block(
                    $"static void phase_{index}(void)",
                    () => Phase(context.Declarations, registers, next, sleep)
                );
            }

            var names = Enumerable.Range(0, count).Select(index => $"phase_{index}");
            context.Declarations.Line($"static void (*const phases[])(void) = {{{string.Join(", ", names)}}};");
        }

        text.Block(
            Random.Pick("for (;;)", "while (1)"),
            () =>
            {
                if (asFunctions)
                {
                    text.Line("phases[phase]();");
                }
                else
                {
                    text.Block(
                        "switch (phase)",
                        () =>
                        {
                            for (var index = 0; index < count; index++)
                            {
                                text.Line($"case {index}:");
                                var next = (index + 1) % count;
                                text.Indented(() =>
                                {
                                    Phase(text, registers, next, sleep);
                                    text.Line("break;");
                                });
                            }
                        }
                    );
                }

                Unknowns(text, counter);
            }
        );
    }

    /// <summary>The watchdog as interrupt, through its timed sequence.</summary>
    public string Watchdog()
    {
        var watchdog = context.Part.Watchdog;
        var period = Random.Pick("_BV(WDP1)", "_BV(WDP2) | _BV(WDP0)", "_BV(WDP3)", "0", "_BV(WDP0)");
        return $"{watchdog} = _BV(WDCE) | _BV(WDE); {watchdog} = _BV(WDIE) | {period};";
    }

    private void Phase(SourceText text, string[] registers, int next, Action<SourceText, string> sleep)
    {
        foreach (var register in registers)
        {
            text.Line(
                Random.Below(3) switch
                {
                    0 => $"{register} = {context.Byte()};",
                    1 => $"{register} = 0; {register} |= {context.Byte()};",
                    _ => $"{register} = 0xff; {register} &= ~{context.Byte()};",
                }
            );
        }

        if (Random.OneIn(3))
        {
            text.Block("", () => statements.WriteConstant(text));
        }

        text.Line($"phase = {next};");
        sleep(text, Random.OneIn(4) ? "SLEEP_MODE_IDLE" : Random.From(context.Part.DeepModes));
    }

    /// <summary>A bit or two that what comes from outside decides.</summary>
    private void Unknowns(SourceText text, string register)
    {
        if (_inputs is not null)
        {
            _inputs.Write(text);
            return;
        }

        switch (Random.Below(4))
        {
            case 0:
                text.Block(
                    "if (flag)",
                    () =>
                    {
                        text.Line("flag = 0;");
                        text.Line($"{register} ^= _BV({Random.Below(6)});");
                    }
                );
                break;
            case 1:
                text.Line($"if (PINB & _BV({Random.Below(6)})) {register} |= _BV(1); else {register} &= ~_BV(1);");
                break;
            case 2:
                text.Line($"if (ticks & 4) {register} = ({register} & ~3) | (ticks & 3);");
                break;
        }
    }
}
