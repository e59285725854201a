using System.Globalization;
using PowerLint.Program;
using PowerLint.Rules;
using Spectre.Console;

namespace PowerLint.Reports;

/// <summary>Prints findings for people.</summary>
public sealed class FindingTextWriter(CheckReport report, IAnsiConsole console)
{
    private readonly SourceLines _sources = new();

    /// <summary>Prints notices, findings and a summary line.</summary>
    public void Write()
    {
        if (report.Image is { } image)
        {
            console.PrintLine($"Image {image}", Styles.Heading);
        }

        foreach (var notice in report.Notices)
        {
            NoticeTextWriter.Write(notice, report.Paths, console);
        }

        if (!report.Notices.IsEmpty && !report.Findings.IsEmpty)
        {
            console.PrintLine();
        }

        foreach (var finding in report.Findings)
        {
            WriteFinding(finding);
            console.PrintLine();
        }

        console.PrintLine(Summary());
    }

    private void WriteFinding(Finding finding)
    {
        console.Print(Place(finding.Range) + ": ", Styles.Place);
        console.Print(Name(finding.Level), Styles.Of(finding.Level));
        console.Print($" {finding.RuleId}", Styles.Heading);
        console.PrintLine($": {finding.Message}");
        WriteSourceLine(finding.Range);
        WriteRow("about", string.Join(", ", finding.Subjects));
        WriteRow("certainty", Name(finding.Certainty));
        WriteRow("asleep in", finding.SleepMode);
        WriteRow("cost", Cost(finding.Cost));
        if (finding.Fix is { } fix)
        {
            var how = fix.IsSafe ? "safe, --fix applies it" : "not applied unseen";
            WriteRow("fix", $"{fix.Description} ({how}). {fix.Because}");
        }

        WriteRow(
            "baseline",
            report.Baseline?.IsNew(finding) switch
            {
                true => "new",
                false => "unchanged",
                null => null,
            }
        );
        foreach (var related in finding.Related.Where(related => related.Range.Line > 0))
        {
            WriteRow("see", $"{Place(related.Range)}: {related.Message}");
        }
    }

    private void WriteRow(string label, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            console.Print("    " + label.PadRight(10), Styles.Faint);
            console.PrintLine(text);
        }
    }

    private void WriteSourceLine(SourceRange range)
    {
        if (_sources.Line(range.File, range.Line) is not { } line)
        {
            return;
        }

        var number = range.Line.ToString(CultureInfo.InvariantCulture).PadLeft(6);
        console.Print(number + " | ", Styles.Faint);
        console.PrintLine(line.Replace('\t', ' ').TrimEnd());
        var start = Math.Clamp(range.Start.Column - 1, 0, line.Length);
        var end =
            range.End.Line == range.Line && range.End.Column > range.Start.Column
                ? Math.Min(range.End.Column - 1, line.TrimEnd().Length)
                : line.TrimEnd().Length;
        var length = Math.Max(1, end - start);
        console.PrintLine("       | " + new string(' ', start) + "^" + new string('~', length - 1), Styles.Place);
    }

    private string Summary()
    {
        var text =
            report.Findings.Length == 0
                ? "No findings"
                : $"{Count(report.Findings.Length, "finding")} ({string.Join(", ", Levels())})";
        if (report.Device is { } device)
        {
            text += $" on {device.Name}";
        }

        if (!report.Allowed.IsEmpty)
        {
            text += $", {Count(report.Allowed.Length, "finding")} allowed in the source";
        }

        if (report.Baseline is { } baseline)
        {
            var counting = report.Counting.Count();
            text +=
                $"; against {baseline.Shown}: {counting} new, {report.Findings.Length - counting} unchanged, {baseline.AbsentCount} gone";
        }

        return report.IsIncomplete ? text + "; the analysis is incomplete, see the notices above" : text;
    }

    private IEnumerable<string> Levels()
    {
        foreach (var level in (Level[])[Level.Error, Level.Warning, Level.Note])
        {
            var count = report.Findings.Count(finding => finding.Level == level);
            if (count > 0)
            {
                yield return Count(count, Name(level));
            }
        }
    }

    private string Place(SourceRange range) =>
        $"{report.Paths.Show(range.File.Path)}:{range.Line}:{range.Start.Column}";

    private static string Cost(CostEstimate cost)
    {
        if (cost.Microamps is not { } microamps)
        {
            return cost.Basis.StartsWith("unknown", StringComparison.Ordinal) ? cost.Basis : $"unknown ({cost.Basis})";
        }

        return $"about {CurrentText.Show(microamps)} ({cost.Basis})";
    }

    private static string Count(int count, string noun) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {noun}{(count == 1 ? "" : "s")}";

    internal static string Name(Level level) =>
        level switch
        {
            Level.Error => "error",
            Level.Warning => "warning",
            _ => "note",
        };

    internal static string Name(NoticeLevel level) =>
        level switch
        {
            NoticeLevel.Error => "error",
            NoticeLevel.Warning => "warning",
            _ => "notice",
        };

    internal static string Name(Certainty certainty) =>
        certainty switch
        {
            Certainty.Proven => "proven",
            Certainty.BoardDependent => "board-dependent",
            _ => "possible",
        };
}
