using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    // A stream of avr-libc: 14 bytes, with the function that puts a character at offset 8 (its stdio.h).
    private const long StreamBytes = 14;
    private const long PutOffset = 8;

    // Library functions that put characters into a stream.
    private static readonly HashSet<string> s_printing = new(StringComparer.Ordinal)
    {
        "printf",
        "vprintf",
        "fprintf",
        "vfprintf",
        "puts",
        "putchar",
        "fputs",
        "fputc",
        "printf_P",
        "vfprintf_P",
        "fprintf_P",
        "puts_P",
        "fputs_P",
    };

    private Function[]? _streamWriters;

    // Which stream a call prints to is not followed: each one that the image defines may be it.
    private void PrintToStreams(Call call, MachineState state)
    {
        NoteEffect(state);
        foreach (var writer in _streamWriters ??= FindStreamWriters())
        {
            var printed = state.Copy();
            CallFunction(writer, [.. writer.Parameters.Select(parameter => UnknownOf(parameter.Type))], call, printed);
            state.Become(Join(state.Copy(), printed));
        }
    }

    private Function[] FindStreamWriters() =>
        [
            .. _image
                .Units.SelectMany(unit => unit.Globals)
                .Where(global => global.Type is AggregateType { Bytes: StreamBytes } && _image.Target.IntBits == 16)
                .SelectMany(global => global.Initializer?.Entries ?? [])
                .Where(entry => entry.OffsetBytes == PutOffset)
                .OfType<ValueEntry>()
                .Select(entry => FunctionIn(entry.Value))
                .OfType<Function>()
                .Where(function => function.Parameters.Count == 2)
                .Distinct(),
        ];

    private Function? FunctionIn(Expression value) =>
        value switch
        {
            AddressOfFunction address => _image.Resolve(address.Function),
            Conversion conversion => FunctionIn(conversion.Operand),
            _ => null,
        };
}
