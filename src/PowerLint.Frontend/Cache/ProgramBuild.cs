using System.Globalization;
using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>What tells this build of the program, and its parser, from others: what one has cached is nothing to another.</summary>
internal static class ProgramBuild
{
    private static readonly Lazy<byte[]> Made = new(Make);

    public static byte[] Stamp => Made.Value;

    private static byte[] Make()
    {
        var text = new StringBuilder();
        foreach (var type in (ReadOnlySpan<Type>)[typeof(ProgramBuild), typeof(TranslationUnit)])
        {
            text.Append(type.Module.ModuleVersionId.ToString("N")).Append('\n');
        }

        if (NativeLibraryLoader.File is { } parser)
        {
            var file = new FileInfo(parser);
            text.Append(CultureInfo.InvariantCulture, $"{file.Length} {file.LastWriteTimeUtc.Ticks}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
