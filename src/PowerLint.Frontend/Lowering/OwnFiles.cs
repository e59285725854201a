using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>A file of the firmware's own.</summary>
internal sealed record OwnFile(SourceFile Source, byte[] Content);

/// <summary>The files of a unit that are not system headers, and mention the clock or the product.</summary>
internal static class OwnFiles
{
    public static IReadOnlyList<OwnFile> Of(ClangUnit unit, SourceMap sources)
    {
        var files = new List<OwnFile>();
        foreach (var file in unit.Files())
        {
            var source = sources.FileOf(LibClang.clang_getLocationForOffset(unit.Handle, file, 0));
            if (
                sources.IsOfInterest(file)
                && !source.IsSystem
                && !source.Path.StartsWith(OwnHeaders.Folder, StringComparison.Ordinal)
            )
            {
                files.Add(new OwnFile(source, unit.Contents(file).ToArray()));
            }
        }

        return files;
    }
}
