using System.Security.Cryptography;
using System.Text;

namespace PowerLint.Rules;

/// <summary>
/// What tells a finding from others, for baselines: its rule, function, subjects and the text of the expression or the head of
/// the statement that it points at, without white space and comments, and with local names numbered. Lines, columns and the
/// folder are left out, so that unrelated edits change nothing.
/// </summary>
public static class Fingerprint
{
    /// <summary>Hexadecimal digits of a fingerprint.</summary>
    public const int Length = 16;

    /// <summary>Gives each finding its fingerprint; equal ones are told apart by their order in the file.</summary>
    /// <param name="findings">The findings in their order.</param>
    /// <param name="sources">Where the expressions' texts come from.</param>
    /// <param name="locals">The local names of a function; null where none are known.</param>
    public static IEnumerable<Finding> Mark(
        IEnumerable<Finding> findings,
        SourceTexts sources,
        LocalNames? locals = null
    )
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(sources);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            var key = string.Join(
                '\n',
                finding.RuleId,
                Path.GetFileName(finding.Range.File.Path),
                finding.Function ?? "",
                string.Join(',', finding.Subjects),
                finding.IsFromReset ? "" : Text(finding, sources, locals)
            );
            var occurrence = seen.GetValueOrDefault(key);
            seen[key] = occurrence + 1;
            yield return finding with
            {
                Fingerprint = Hash(occurrence == 0 ? key : $"{key}\n{occurrence}"),
            };
        }
    }

    // What stands in a loop or a block is not what the finding points at: its head is.
    private static string Text(Finding finding, SourceTexts sources, LocalNames? locals)
    {
        var text = Normalize(sources.Text(finding.Range));
        var brace = text.IndexOf('{', StringComparison.Ordinal);
        var head = brace < 0 ? text : text[..brace];
        return locals is null || finding.Function is not { } function ? head : locals.Number(head, function);
    }

    /// <summary>A C text without white space and comments, except the space that keeps two words apart.</summary>
    internal static string Normalize(string text)
    {
        var result = new StringBuilder(text.Length);
        var gap = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '/' && i + 1 < text.Length && text[i + 1] is '/' or '*')
            {
                var isLine = text[i + 1] == '/';
                var end = text.IndexOf(isLine ? "\n" : "*/", i + 2, StringComparison.Ordinal);
                i = end < 0 ? text.Length : end + (isLine ? 0 : 1);
                gap = true;
            }
            else if (char.IsWhiteSpace(text[i]))
            {
                gap = true;
            }
            else
            {
                if (gap && result.Length > 0 && IsWord(result[^1]) && IsWord(text[i]))
                {
                    result.Append(' ');
                }

                result.Append(text[i]);
                gap = false;
            }
        }

        return result.ToString();
    }

    private static bool IsWord(char letter) => char.IsLetterOrDigit(letter) || letter == '_';

    private static string Hash(string key) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)))[..Length];
}
