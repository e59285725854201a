namespace PowerLint.OracleTests;

/// <summary>What handlers do besides counting: they change registers that <c>main</c> has, share code and data with it.</summary>
internal sealed class HandlerEffects(GenerationContext context)
{
    private string? _shared;

    private RandomSource Random => context.Random;

    /// <summary>A function that handlers and <c>main</c> both call, or null.</summary>
    public string? Shared => _shared;

    /// <summary>A handler with a first effect and perhaps another.</summary>
    public void Write(string vector, string effect)
    {
        var before = Random.OneIn(2) ? Prepare() : null;
        var attributes = Random.OneIn(8) ? ", ISR_NOBLOCK" : "";
        context.Declarations.Block(
            $"ISR({vector}{attributes})",
            () =>
            {
                context.Declarations.Line(effect);
                before?.Invoke();
            }
        );
    }

    // Gives what writes the body; what has to stand in front of the handler is written at once.
    private Action Prepare()
    {
        var d = context.Declarations;
        var register = context.Register();
        var bit = Random.Below(6);
        switch (Random.Below(9))
        {
            case 0:
                return () => d.Line($"{register} |= _BV({bit});");
            case 1:
                return () => d.Line($"{register} &= ~_BV({bit});");
            case 2:
                return () => d.Line($"PIN{Random.From(context.Part.Ports)} = _BV({bit});");
            case 3:
                var count = context.Name("n");
                return () =>
                {
                    d.Line($"static uint8_t {count};");
                    d.Block(
                        $"if (++{count} == {Random.Between(2, 4)})",
                        () =>
                        {
                            d.Line($"{count} = 0;");
                            d.Line($"{register} ^= _BV({bit});");
                        }
                    );
                };
            case 4:
                var table = context.Name("steps");
                d.Line($"static const uint8_t {table}[4] = {{1, 3, 2, 0}};");
                return () => d.Line($"{register} = ({register} & ~3) | {table}[ticks & 3];");
            case 5:
                if (_shared is null)
                {
                    _shared = context.Name("shared");
                    d.Line(
                        $"__attribute__((noinline)) static void {_shared}(volatile uint8_t *reg, uint8_t on) {{ if (on) *reg |= _BV({bit}); else *reg &= ~_BV({bit}); }}"
                    );
                }

                return () => d.Line($"{_shared}(&{register}, {Random.Below(2)});");
            case 6:
                return () => d.Line($"if (flag & 1) {register} |= _BV({bit}); else {register} &= ~_BV({bit});");
            case 7:
                return () =>
                {
                    d.Line("uint8_t status = SREG;");
                    d.Line($"{register} ^= {register} & _BV({bit});");
                    d.Line("SREG = status;");
                };
            default:
                return () => d.Line($"for (uint8_t i = 0; i < 2; i++) {register} |= 1 << (i + {bit});");
        }
    }
}
