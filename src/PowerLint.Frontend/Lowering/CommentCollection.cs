using System.Text;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Comments of the firmware's own files that mention the product.</summary>
internal static class CommentCollection
{
    public static IReadOnlyList<Comment> Collect(IReadOnlyList<OwnFile> files)
    {
        var comments = new List<Comment>();
        foreach (var file in files)
        {
            if (file.Content.AsSpan().IndexOf("powerlint"u8) >= 0)
            {
                Scan(file.Source, Encoding.UTF8.GetString(file.Content).TrimStart('\uFEFF'), comments);
            }
        }

        return comments;
    }

    private static void Scan(SourceFile file, string text, List<Comment> comments)
    {
        var line = 1;
        var lineStart = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var next = i + 1 < text.Length ? text[i + 1] : '\0';
            if (text[i] == '\n')
            {
                line++;
                lineStart = i + 1;
            }
            else if (text[i] is '"' or '\'')
            {
                i = EndOfLiteral(text, i);
            }
            else if (text[i] == '/' && next is '/' or '*')
            {
                var isBlock = next == '*';
                var end = text.IndexOf(isBlock ? "*/" : "\n", i + 2, StringComparison.Ordinal);
                end = end < 0 ? text.Length : end;
                var start = new SourcePosition(file, line, i - lineStart + 1);
                var body = text[(i + 2)..end];
                for (var k = i; k < end; k++)
                {
                    if (text[k] == '\n')
                    {
                        line++;
                        lineStart = k + 1;
                    }
                }

                var close = isBlock ? Math.Min(end + 2, text.Length) : end;
                if (body.Contains("powerlint", StringComparison.Ordinal))
                {
                    comments.Add(
                        new Comment(
                            new SourceRange(start, new SourcePosition(file, line, close - lineStart + 1)),
                            body.TrimStart('/', '*', '!').TrimEnd('*').Trim()
                        )
                    );
                }

                i = close - 1;
            }
        }
    }

    private static int EndOfLiteral(string text, int start)
    {
        for (var i = start + 1; i < text.Length; i++)
        {
            if (text[i] == '\\')
            {
                i++;
            }
            else if (text[i] == text[start] || text[i] == '\n')
            {
                return text[i] == '\n' ? i - 1 : i;
            }
        }

        return text.Length - 1;
    }
}
