using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Prints notices for people.</summary>
public static class NoticeTextWriter
{
    /// <summary>Prints one line.</summary>
    public static void Write(Notice notice, ReportPaths paths, IAnsiConsole console)
    {
        ArgumentNullException.ThrowIfNull(notice);
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(console);
        if (notice.Range is { Line: > 0 } range)
        {
            console.Print($"{paths.Show(range.File.Path)}:{range.Line}:{range.Start.Column}: ", Styles.Place);
        }

        console.Print(FindingTextWriter.Name(notice.Level), Styles.Of(notice.Level));
        console.PrintLine($" {notice.Id}: {notice.Message}");
    }
}
