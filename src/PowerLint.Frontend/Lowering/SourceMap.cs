using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>
/// Turns libclang's locations into the program's positions: the place where macros are expanded, columns in UTF-16 units.
/// </summary>
internal sealed unsafe class SourceMap(ClangUnit unit, string workingDirectory, FileTraits traits)
{
    private readonly Dictionary<nint, MappedFile> _files = [];

    /// <summary>The range of a cursor.</summary>
    public SourceRange Range(ClangCursor cursor) => Range(cursor.Extent);

    /// <summary>A range of libclang's.</summary>
    public SourceRange Range(CXSourceRange range)
    {
        var start = Position(LibClang.clang_getRangeStart(range));
        var end = Position(LibClang.clang_getRangeEnd(range));
        var ordered =
            ReferenceEquals(start.File, end.File) && (start.Line, start.Column).CompareTo((end.Line, end.Column)) <= 0;
        return new SourceRange(start, ordered ? end : start);
    }

    /// <summary>A position: where the outermost macro is used.</summary>
    public SourcePosition Position(CXSourceLocation location)
    {
        nint file;
        uint line;
        uint column;
        uint offset;
        LibClang.clang_getExpansionLocation(location, &file, &line, &column, &offset);
        return file == 0
            ? SourceRange.None.Start
            : new SourcePosition(
                File(file, location).Source,
                (int)line,
                Utf16Column(_files[file], (int)column, (int)offset)
            );
    }

    /// <summary>The file of a location, macros expanded.</summary>
    public SourceFile FileOf(CXSourceLocation location) => Position(location).File;

    /// <summary>Where the outermost macro is used, as file and byte offset.</summary>
    public (nint File, int Offset) Expansion(CXSourceLocation location)
    {
        nint file;
        uint line;
        uint column;
        uint offset;
        LibClang.clang_getExpansionLocation(location, &file, &line, &column, &offset);
        return (file, (int)offset);
    }

    /// <summary>Where the characters of a token are written, inside a macro's definition where it comes from one.</summary>
    public (nint File, int Offset) Spelling(CXSourceLocation location)
    {
        nint file;
        uint line;
        uint column;
        uint offset;
        LibClang.clang_getSpellingLocation(location, &file, &line, &column, &offset);
        return (file, (int)offset);
    }

    /// <summary>The bytes of a file.</summary>
    public ReadOnlySpan<byte> Contents(nint file) => unit.Contents(file);

    /// <summary>Whether a file that was asked for before mentions the clock or the product.</summary>
    public bool IsOfInterest(nint file) => _files.TryGetValue(file, out var mapped) && mapped.Traits.IsOfInterest;

    private MappedFile File(nint handle, CXSourceLocation location)
    {
        if (!_files.TryGetValue(handle, out var mapped))
        {
            var name = NativeString.Take(LibClang.clang_getFileName(handle));
            var path = Path.GetFullPath(Path.Combine(workingDirectory, name));
            var isSystem = LibClang.clang_Location_isInSystemHeader(location) != 0;
            mapped = new MappedFile(
                handle,
                new SourceFile(path, isSystem),
                traits.Of(path, handle, unit.Contents(handle))
            );
            _files.Add(handle, mapped);
        }

        return mapped;
    }

    private int Utf16Column(MappedFile file, int column, int offset)
    {
        if (file.Traits.IsAscii || column <= 1)
        {
            return column;
        }

        var contents = unit.Contents(file.Handle);
        var lineStart = offset - (column - 1);
        return lineStart < 0 || offset > contents.Length
            ? column
            : Encoding.UTF8.GetCharCount(contents[lineStart..offset]) + 1;
    }

    private sealed record MappedFile(nint Handle, SourceFile Source, FileTraits.Traits Traits);
}
