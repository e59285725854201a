using System.Globalization;
using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Tells interrupt handlers from other functions, by the names and attributes that each architecture uses.</summary>
internal sealed class HandlerRecognition(SourceMap sources, string architecture)
{
    private const string AvrPrefix = "__vector_";

    // Exceptions of the M-profile core itself; those of peripherals end in _IRQHandler. Reset_Handler is no interrupt.
    private static readonly HashSet<string> CoreHandlers = new(StringComparer.Ordinal)
    {
        "NMI_Handler",
        "HardFault_Handler",
        "MemManage_Handler",
        "BusFault_Handler",
        "UsageFault_Handler",
        "SVC_Handler",
        "DebugMon_Handler",
        "PendSV_Handler",
        "SysTick_Handler",
    };

    public InterruptHandler? Recognize(ClangCursor function, DeclarationAttributes attributes)
    {
        var name = function.Spelling;
        if (architecture is "avr")
        {
            if (name.StartsWith(AvrPrefix, StringComparison.Ordinal))
            {
                int? number = int.TryParse(
                    name.AsSpan(AvrPrefix.Length),
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out var parsed
                )
                    ? parsed
                    : null;
                return new InterruptHandler(name, MacroArgument(function) ?? name, number, attributes.IsInterrupt);
            }

            return attributes.IsSignal || attributes.IsInterrupt
                ? new InterruptHandler(name, MacroArgument(function) ?? name, null, attributes.IsInterrupt)
                : null;
        }

        if (attributes.NotedVector is { } vector)
        {
            var spelled = vector.Length == 0 ? PragmaVector(function) ?? name : vector;
            return new InterruptHandler(spelled, spelled, null, EnablesInterruptsAtEntry: false);
        }

        if (attributes.InterruptNumber is { } attributeNumber)
        {
            return new InterruptHandler(name, name, attributeNumber, EnablesInterruptsAtEntry: false);
        }

        var isNamedHandler =
            architecture is "arm"
            && (name.EndsWith("_IRQHandler", StringComparison.Ordinal) || CoreHandlers.Contains(name));
        // Handlers of the M profile nest by priority, yet the same handler never interrupts itself.
        return isNamedHandler || (attributes.IsInterrupt && architecture is not "msp430")
            ? new InterruptHandler(name, name, null, EnablesInterruptsAtEntry: false)
            : null;
    }

    // ISR(WDT_vect) { … }: the function's name comes out of the macro; the user wrote the vector as its first argument.
    private string? MacroArgument(ClangCursor function)
    {
        var (file, offset) = sources.Expansion(function.Location);
        var contents = sources.Contents(file);
        if (offset >= contents.Length)
        {
            return null;
        }

        var rest = contents[offset..];
        var length = 0;
        while (length < rest.Length && IsIdentifierPart(rest[length]))
        {
            length++;
        }

        var macro = Encoding.UTF8.GetString(rest[..length]);
        if (string.Equals(macro, function.Spelling, StringComparison.Ordinal))
        {
            return null;
        }

        var position = length;
        while (position < rest.Length && rest[position] is (byte)' ' or (byte)'\t')
        {
            position++;
        }

        if (position >= rest.Length || rest[position] != (byte)'(')
        {
            return null;
        }

        var start = ++position;
        while (position < rest.Length && rest[position] is not ((byte)',' or (byte)')' or (byte)'\n'))
        {
            position++;
        }

        var argument = Encoding.UTF8.GetString(rest[start..position]).Trim();
        return argument.Length == 0 ? null : argument;
    }

    // #pragma vector=PORT1_VECTOR stands before the function; libclang keeps no trace of it but the text.
    private string? PragmaVector(ClangCursor function)
    {
        var (file, offset) = sources.Expansion(
            function.Extent is var extent ? LibClang.clang_getRangeStart(extent) : default
        );
        var contents = sources.Contents(file);
        if (offset > contents.Length)
        {
            return null;
        }

        var before = Encoding.UTF8.GetString(contents[..offset]);
        var pragma = before.LastIndexOf("#pragma", StringComparison.Ordinal);
        if (pragma < 0)
        {
            return null;
        }

        var end = before.IndexOf('\n', pragma);
        var line = before[pragma..(end < 0 ? before.Length : end)];
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        return equals < 0 || !line.Contains("vector", StringComparison.Ordinal) ? null : line[(equals + 1)..].Trim();
    }

    private static bool IsIdentifierPart(byte value) => char.IsAsciiLetterOrDigit((char)value) || value == (byte)'_';
}
