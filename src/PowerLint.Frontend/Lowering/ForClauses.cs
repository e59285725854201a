namespace PowerLint.Frontend;

/// <summary>
/// Which clauses a <c>for</c> has. The tree shows only those that exist, so where some are left out the text between the
/// semicolons tells which.
/// </summary>
internal readonly record struct ForClauses(bool Initialization, bool Condition, bool Step)
{
    public static ForClauses Present(ClangCursor loop, int childCount, SourceMap sources)
    {
        var clauses = childCount - 1;
        if (clauses is 0 or >= 3)
        {
            return new ForClauses(clauses > 0, clauses > 0, clauses > 0);
        }

        var (file, offset) = sources.Spelling(LibClang.clang_getRangeStart(loop.Extent));
        var filled = Filled(sources.Contents(file), offset);
        if (filled.Count(clause => clause) == clauses)
        {
            return new ForClauses(filled[0], filled[1], filled[2]);
        }

        // A macro that expands to nothing stands in a clause: a declaration is the first, then a condition is likeliest.
        var first = loop.Children()[0];
        return clauses == 1
            ? new ForClauses(first.Kind == CXCursorKind.DeclStmt, first.Kind != CXCursorKind.DeclStmt, Step: false)
            : new ForClauses(first.Kind == CXCursorKind.DeclStmt, Condition: true, first.Kind != CXCursorKind.DeclStmt);
    }

    private static bool[] Filled(ReadOnlySpan<byte> text, int start)
    {
        var filled = new bool[3];
        var clause = 0;
        var depth = 0;
        for (var i = start; i < text.Length && clause < 3; i++)
        {
            var character = (char)text[i];
            var next = i + 1 < text.Length ? (char)text[i + 1] : '\0';
            switch (character)
            {
                case '/' when next == '*':
                    var length = text[(i + 2)..].IndexOf("*/"u8);
                    i = length < 0 ? text.Length : i + 2 + length + 1;
                    continue;
                case '/' when next == '/':
                    var line = text[i..].IndexOf((byte)'\n');
                    i = line < 0 ? text.Length : i + line;
                    continue;
                case '"' or '\'':
                    i = SkipLiteral(text, i);
                    break;
                case '(' when depth++ == 0:
                    continue;
                case ')' when --depth == 0:
                    return filled;
                case ';' when depth == 1:
                    clause++;
                    continue;
                case '\\' when next is '\n' or '\r':
                    continue;
            }

            if (depth >= 1 && clause < 3 && !char.IsWhiteSpace(character))
            {
                filled[clause] = true;
            }
        }

        return filled;
    }

    private static int SkipLiteral(ReadOnlySpan<byte> text, int start)
    {
        for (var i = start + 1; i < text.Length; i++)
        {
            if (text[i] == (byte)'\\')
            {
                i++;
            }
            else if (text[i] == text[start])
            {
                return i;
            }
        }

        return text.Length - 1;
    }
}
