using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.CommandLine;

/// <summary>
/// Patterns over paths below a folder: <c>*</c> and <c>?</c> stay within one name, <c>**</c> goes over any number of folders; a
/// pattern that names a folder covers all below it.
/// </summary>
internal sealed class PathPatterns(string folder, ImmutableArray<string> patterns)
{
    private readonly ImmutableArray<Regex> _expressions = [.. patterns.Select(Compile)];

    /// <summary>Whether a path matches one of them.</summary>
    internal bool Match(string path)
    {
        var relative = Path.GetRelativePath(folder, path).Replace('\\', '/');
        return _expressions.Any(expression => expression.IsMatch(relative));
    }

    private static Regex Compile(string pattern)
    {
        var text = pattern.Replace('\\', '/').TrimEnd('/');
        var expression = new StringBuilder("^");
        for (var index = 0; index < text.Length; index++)
        {
            var rest = text.AsSpan(index);
            if (rest.StartsWith("**/", StringComparison.Ordinal))
            {
                expression.Append("(.*/)?");
                index += 2;
            }
            else if (rest.StartsWith("**", StringComparison.Ordinal))
            {
                expression.Append(".*");
                index++;
            }
            else
            {
                expression.Append(
                    rest[0] switch
                    {
                        '*' => "[^/]*",
                        '?' => "[^/]",
                        _ => Regex.Escape(rest[..1].ToString()),
                    }
                );
            }
        }

        try
        {
            return new Regex(
                expression.Append("(/.*)?$").ToString(),
                RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture
            );
        }
        catch (NotSupportedException)
        {
            throw new UsageException($"{SettingsFile.Name}: the pattern '{pattern[..40]}…' is too long for a path");
        }
    }
}
