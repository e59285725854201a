using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>
/// Attributes of a declaration. libclang does not name them, but prints a declaration with them, whatever macros they came
/// through.
/// </summary>
/// <param name="Text">The printed declarations.</param>
internal sealed partial record DeclarationAttributes(string Text)
{
    public static DeclarationAttributes None { get; } = new("");

    public bool IsWeak => Has("weak");

    public bool IsNaked => Has("naked");

    public bool IsUsed => Has("used") || Has("retain");

    public bool IsNoReturn => Has("noreturn") || Text.Contains("_Noreturn ", StringComparison.Ordinal);

    public bool IsConstructor => Has("constructor");

    public bool IsGnuInline => Has("gnu_inline");

    public bool IsSignal => Has("signal");

    public bool IsInterrupt => Has("interrupt");

    public string? Alias => Argument("alias");

    public string? Section => Argument("section");

    public string? Cleanup => Argument("cleanup");

    /// <summary>The name of a start-up section (<c>.init3</c>) or constructor, as the image orders them; null for others.</summary>
    public string? StartupSection =>
        Section is { } section && InitSection().IsMatch(section) ? section
        // Constructors run from .init6 on AVR, after data are set up and before main is called in .init9.
        : IsConstructor ? ".init6"
        : null;

    /// <summary>What the intrinsics prelude notes of an interrupt attribute: the vector's text, empty where a pragma gives it.</summary>
    public string? NotedVector =>
        NotedHandler().Match(Text) is { Success: true } match ? match.Groups["vector"].Value.Trim() : null;

    /// <summary>The number that an interrupt attribute of the compiler gives.</summary>
    public int? InterruptNumber =>
        NumberedHandler().Match(Text) is { Success: true } match
            ? int.Parse(match.Groups["number"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture)
            : null;

    public static DeclarationAttributes Of(IEnumerable<ClangCursor> declarations) =>
        new(
            string.Join(
                '\n',
                declarations.Where(cursor => cursor.HasAttributes).Select(cursor => cursor.PrintDeclaration())
            )
        );

    public DeclarationAttributes With(string text) => new(Text.Length == 0 ? text : $"{Text}\n{text}");

    private bool Has(string name) =>
        Text.Length > 0
        && (
            Text.Contains($"(({name})", StringComparison.Ordinal)
            || Text.Contains($"(({name}(", StringComparison.Ordinal)
        );

    private string? Argument(string name)
    {
        var opening = $"(({name}(";
        var start = Text.IndexOf(opening, StringComparison.Ordinal);
        if (start < 0)
        {
            return null;
        }

        start += opening.Length;
        var end = Text.IndexOf(')', start);
        return end < 0 ? null : Text[start..end].Trim('"', ' ');
    }

    [GeneratedRegex(
        @"^\.(init[0-9]|preinit_array|init_array)",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex InitSection();

    [GeneratedRegex(
        "annotate\\(\"isr:(?<vector>[^\"]*)\"",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex NotedHandler();

    [GeneratedRegex(
        @"\(\(interrupt\((?<number>[0-9]+)\)",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex NumberedHandler();
}
