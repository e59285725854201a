using PowerLint.Rules;
using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>The few styles of text reports. Colour only underlines what the words say already.</summary>
internal static class Styles
{
    internal static Style Plain { get; } = Style.Plain;

    internal static Style Heading { get; } = new(decoration: Decoration.Bold);

    internal static Style Place { get; } = new(Color.Teal);

    internal static Style Faint { get; } = new(decoration: Decoration.Dim);

    internal static Style Of(Level level) =>
        level switch
        {
            Level.Error => new Style(Color.Red, decoration: Decoration.Bold),
            Level.Warning => new Style(Color.Olive, decoration: Decoration.Bold),
            _ => new Style(Color.Blue, decoration: Decoration.Bold),
        };

    internal static Style Of(NoticeLevel level) =>
        level switch
        {
            NoticeLevel.Error => Of(Level.Error),
            NoticeLevel.Warning => Of(Level.Warning),
            _ => Of(Level.Note),
        };
}
