using System.Text.RegularExpressions;

namespace PowerLint.Rules;

/// <summary>The structures and unions that headers define by <c>typedef</c>, as texts.</summary>
internal sealed partial class StructureTexts
{
    private readonly Dictionary<string, string> _bodies = new(StringComparer.Ordinal);

    /// <summary>Takes in what a text defines.</summary>
    public void Read(string text)
    {
        foreach (Match match in Head().Matches(text))
        {
            var open = match.Index + match.Length - 1;
            if (EndOf(text, open) is { } close && Name().Match(text, close + 1) is { Success: true } name)
            {
                _bodies.TryAdd(name.Groups["name"].Value, text[(open + 1)..close]);
            }
        }
    }

    /// <summary>Whether a type of that name is among them.</summary>
    public bool Has(string type) => _bodies.ContainsKey(type);

    /// <summary>Whether the word stands anywhere in the type's definition.</summary>
    public bool Mentions(string type, string word) =>
        _bodies.TryGetValue(type, out var body)
        && Regex.IsMatch(body, $@"\b{Regex.Escape(word)}\b", RegexOptions.None, TimeSpan.FromSeconds(1));

    /// <summary>The name of a member's type; empty for a structure without a name, null where the type has no such member.</summary>
    public string? MemberType(string type, string member)
    {
        if (!_bodies.TryGetValue(type, out var body))
        {
            return null;
        }

        for (var before = ""; !string.Equals(before, body, StringComparison.Ordinal); )
        {
            before = body;
            body = Inner().Replace(body, " ");
        }

        var declaration = Regex.Match(
            body,
            $@"(?<type>\w+)\s+(\w+\s*(\[[^\]]*\]\s*)?,\s*)*{Regex.Escape(member)}\s*(\[[^\]]*\]\s*)?[;,]",
            RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(1)
        );
        return declaration.Success ? declaration.Groups["type"].Value : null;
    }

    private static int? EndOf(string text, int open)
    {
        var depth = 0;
        for (var i = open; i < text.Length; i++)
        {
            depth += text[i] switch
            {
                '{' => 1,
                '}' => -1,
                _ => 0,
            };
            if (depth == 0)
            {
                return i;
            }
        }

        return null;
    }

    [GeneratedRegex(@"\btypedef\s+(struct|union)\b[^{};]*\{", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Head();

    [GeneratedRegex(@"\G\s*(?<name>\w+)\s*;", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Name();

    [GeneratedRegex(@"(struct|union)?\s*\{[^{}]*\}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Inner();
}
