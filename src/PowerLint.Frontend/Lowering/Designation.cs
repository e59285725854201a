namespace PowerLint.Frontend;

/// <summary>The designators before one item of an initialiser list, and the item's value.</summary>
internal sealed class Designation
{
    private readonly List<ClangCursor> _parts;
    private readonly int _next;

    private Designation(List<ClangCursor> parts, int next)
    {
        _parts = parts;
        _next = next;
    }

    /// <summary>The value given.</summary>
    public ClangCursor Value => _parts[^1];

    /// <summary>Whether no designator is left.</summary>
    public bool IsResolved => _next == _parts.Count - 1;

    /// <summary>The member that comes next, or null where an index does.</summary>
    public ClangCursor? NextMember =>
        !IsResolved && _parts[_next].Kind == CXCursorKind.MemberRef ? _parts[_next].Referenced : null;

    /// <summary>The designation of an item, or null where it has none. The tree shows it as a nameless node of type void.</summary>
    public static Designation? Of(ClangCursor item)
    {
        if (item.Kind != CXCursorKind.UnexposedExpr || item.Type.Kind != CXTypeKind.Void)
        {
            return null;
        }

        var parts = item.Children();
        return parts.Count < 2 ? null : new Designation(parts, 0);
    }

    public Designation SkipMember() => new(_parts, _next + 1);

    /// <summary>Takes <c>[low]</c> or <c>[low ... high]</c>.</summary>
    public (long Low, long High, Designation Remaining) TakeIndex(SourceMap sources)
    {
        var low = _parts[_next].EvaluateInteger() ?? -1;
        if (_next + 1 < _parts.Count - 1 && IsRange(_parts[_next], _parts[_next + 1], sources))
        {
            return (low, _parts[_next + 1].EvaluateInteger() ?? -1, new Designation(_parts, _next + 2));
        }

        return (low, low, new Designation(_parts, _next + 1));
    }

    private static bool IsRange(ClangCursor low, ClangCursor high, SourceMap sources)
    {
        if (high.Kind == CXCursorKind.MemberRef)
        {
            return false;
        }

        var (file, start) = sources.Expansion(LibClang.clang_getRangeEnd(low.Extent));
        var (otherFile, end) = sources.Expansion(LibClang.clang_getRangeStart(high.Extent));
        var contents = sources.Contents(file);
        return file == otherFile
            && start <= end
            && end <= contents.Length
            && contents[start..end].IndexOf("..."u8) >= 0;
    }
}
