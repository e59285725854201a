using System.Text;

namespace PowerLint.Devices;

/// <summary>Words of an SVD file as YAML has them.</summary>
internal static class SkeletonText
{
    private static readonly string[] SpecialWords = ["null", "true", "false", "yes", "no", "on", "off", "y", "n"];

    /// <summary>A key or value: plain where YAML takes it for text, in quotes elsewhere.</summary>
    public static string Word(string text)
    {
        var isPlain =
            text.Length > 0
            && (char.IsAsciiLetter(text[0]) || text[0] == '_')
            && text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '_' or '.' or '-' or '+')
            && !SpecialWords.Contains(text, StringComparer.OrdinalIgnoreCase)
            && !IsNotFinite(text);
        return isPlain ? text : Quoted(text);
    }

    // NaN and Infinity are numbers to some readers.
    private static bool IsNotFinite(string text) =>
        text.Equals("nan", StringComparison.OrdinalIgnoreCase)
        || text.StartsWith("inf", StringComparison.OrdinalIgnoreCase);

    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var letter in text)
        {
            quoted.Append(
                letter switch
                {
                    '"' => "\\\"",
                    '\\' => "\\\\",
                    _ when char.IsControl(letter) => " ",
                    _ => letter.ToString(),
                }
            );
        }

        return quoted.Append('"').ToString();
    }
}
