using System.Globalization;
using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Tells interrupt handlers from other functions, by the names and attributes that each architecture uses.</summary>
internal sealed class HandlerRecognition(SourceMap sources, string architecture, IReadOnlyList<string> vectors)
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
        if (vectors.Count > 0 && vectors.Contains(name, StringComparer.Ordinal) && function.IsDefinition)
        {
            return new InterruptHandler(name, name, null, EnablesInterruptsAtEntry: false);
        }

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

        // Only a definition stands behind its pragma; whether the attribute is seen depends on the headers' macros.
        var noted = attributes.NotedVector;
        var pragma =
            architecture is "msp430" && string.IsNullOrEmpty(noted) && function.IsDefinition
                ? PragmaVector(function)
                : null;
        if ((pragma ?? noted) is { } vector)
        {
            var spelled = vector.Length == 0 ? name : vector;
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
        // A macro of the user's own may build the vector's name: its argument is then only a part of it.
        return
            argument.EndsWith("_vect", StringComparison.Ordinal)
            || argument.StartsWith("SIG_", StringComparison.Ordinal)
            ? argument
            : null;
    }

    // #pragma vector=PORT1_VECTOR stands before the function; libclang keeps no trace of it but the text.
    private string? PragmaVector(ClangCursor function)
    {
        var (file, offset) = sources.Expansion(LibClang.clang_getRangeStart(function.Extent));
        var contents = sources.Contents(file);
        if (offset > contents.Length)
        {
            return null;
        }

        var before = contents[..offset];
        var start = before.LastIndexOf("#pragma"u8);
        if (start < 0)
        {
            return null;
        }

        var pragma = before[start..];
        var end = pragma.IndexOf((byte)'\n');
        // Another definition in between would be the one that the pragma belongs to.
        if (end < 0 || pragma[end..].IndexOfAny((byte)';', (byte)'}') >= 0)
        {
            return null;
        }

        var line = Encoding.UTF8.GetString(pragma[..end]);
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        return equals < 0 || !line.Contains("vector", StringComparison.Ordinal) ? null : line[(equals + 1)..].Trim();
    }

    private static bool IsIdentifierPart(byte value) => char.IsAsciiLetterOrDigit((char)value) || value == (byte)'_';
}
