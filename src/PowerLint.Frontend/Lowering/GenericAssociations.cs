using System.Text;

namespace PowerLint.Frontend;

/// <summary>Which value a generic selection takes, told by the type names as written before each value.</summary>
internal static class GenericAssociations
{
    public static ClangCursor? Choose(ClangCursor selection, List<ClangCursor> values, SourceMap sources)
    {
        var controlling = Normalized(
            new ClangType(
                LibClang.clang_getUnqualifiedType(ExpressionLowering.SkipParentheses(values[0]).Type.Canonical.Raw)
            ).Spelling
        );
        ClangCursor? fallback = null;
        foreach (var value in values.Skip(1))
        {
            var name = TypeNameBefore(value, sources);
            if (name is "default")
            {
                fallback = value;
            }
            else if (string.Equals(Normalized(name), controlling, StringComparison.Ordinal))
            {
                return value;
            }
        }

        return fallback;
    }

    private static string TypeNameBefore(ClangCursor value, SourceMap sources)
    {
        var (file, offset) = sources.Spelling(LibClang.clang_getRangeStart(value.Extent));
        var text = sources.Contents(file);
        var end = Math.Min(offset, text.Length);
        while (end > 0 && text[end - 1] != (byte)':')
        {
            end--;
        }

        var start = end - 1;
        while (start > 0 && text[start - 1] is not ((byte)',' or (byte)'('))
        {
            start--;
        }

        return start < 0 || end <= start ? "" : Encoding.UTF8.GetString(text[start..(end - 1)]).Trim();
    }

    private static string Normalized(string type)
    {
        var words = type.Replace("\\\n", " ", StringComparison.Ordinal)
            .Replace("*", " * ", StringComparison.Ordinal)
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .ToList();
        var star = words.IndexOf("*");
        var specifiers = star < 0 ? words : words.GetRange(0, star);
        var rest = star < 0 ? [] : words.GetRange(star, words.Count - star);
        return string.Join(' ', Canonical(specifiers).Concat(rest));
    }

    // "unsigned", "long unsigned int" and "uint16_t" are spelled in many ways; typedefs of <stdint.h> are left to their width.
    private static IEnumerable<string> Canonical(List<string> words)
    {
        var isUnsigned = words.Contains("unsigned");
        var longs = words.Count(word => word is "long");
        var basis =
            words.Contains("char") ? "char"
            : words.Contains("short") ? "short"
            : longs > 0 ? (longs > 1 ? "long long" : "long")
            : words.Contains("double") || words.Contains("float") || words.Contains("_Bool") ? null
            : words.TrueForAll(word => word is "int" or "unsigned" or "signed" or "const" or "volatile") ? "int"
            : null;
        var qualifiers = words.Where(word => word is "const" or "volatile").Order(StringComparer.Ordinal);
        return basis is null
            ? qualifiers.Concat(words.Where(word => word is not ("const" or "volatile")))
            : qualifiers
                .Concat(isUnsigned ? ["unsigned"] : [])
                .Concat(basis is "char" && words.Contains("signed") ? ["signed"] : [])
                .Append(basis);
    }
}
