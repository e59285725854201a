namespace PowerLint.Frontend;

/// <summary>A macro as its definition is written.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Parameters">Its parameters, or null for one without an argument list.</param>
/// <param name="Body">The tokens that it stands for.</param>
internal sealed record MacroDefinition(string Name, string[]? Parameters, List<string> Body)
{
    /// <summary>Reads what follows <c>#define</c>.</summary>
    public static MacroDefinition Read(string text)
    {
        var end = 0;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] == '_'))
        {
            end++;
        }

        var name = text[..end];
        string[]? parameters = null;
        if (end < text.Length && text[end] == '(' && text.IndexOf(')', end) is > 0 and var close)
        {
            parameters = text[(end + 1)..close].Split(',', StringSplitOptions.TrimEntries);
            end = close + 1;
        }

        return new MacroDefinition(name, parameters, Tokens(text[end..]));
    }

    /// <summary>The tokens of a line, comments left out where they end it.</summary>
    public static List<string> Tokens(string text)
    {
        var tokens = new List<string>();
        for (var i = 0; i < text.Length; )
        {
            var start = i;
            var character = text[i];
            if (char.IsWhiteSpace(character))
            {
                i++;
                continue;
            }

            if (character == '/' && i + 1 < text.Length && text[i + 1] == '/')
            {
                break;
            }

            if (char.IsLetterOrDigit(character) || character == '_')
            {
                while (i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] == '_'))
                {
                    i++;
                }
            }
            else if (character is '"' or '\'')
            {
                for (i++; i < text.Length && text[i] != character; i++)
                {
                    i += text[i] == '\\' ? 1 : 0;
                }

                i = Math.Min(i + 1, text.Length);
            }
            else
            {
                i++;
            }

            tokens.Add(text[start..i]);
        }

        return tokens;
    }
}
