using System.Text.Json;
using PowerLint.Program;
using PowerLint.Rules;

namespace PowerLint.Reports;

/// <summary>Writes findings as plain JSON, for scripts to which SARIF is too much.</summary>
public static class FindingJsonWriter
{
    /// <summary>Writes one JSON document.</summary>
    public static void Write(CheckReport report, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(output);
        JsonText.Write(output, writer => WriteDocument(writer, report));
    }

    /// <summary>Writes the reports of several images as one JSON document.</summary>
    public static void Write(IReadOnlyList<CheckReport> reports, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(reports);
        ArgumentNullException.ThrowIfNull(output);
        JsonText.Write(
            output,
            writer =>
            {
                writer.WriteStartObject();
                writer.WriteStartArray("images");
                foreach (var report in reports)
                {
                    WriteDocument(writer, report);
                }

                writer.WriteEndArray();
                writer.WriteEndObject();
            }
        );
    }

    private static void WriteDocument(Utf8JsonWriter writer, CheckReport report)
    {
        writer.WriteStartObject();
        if (report.Image is { } image)
        {
            writer.WriteString("image", image);
        }

        writer.WriteString("device", report.Device?.Name);
        writer.WriteBoolean("incomplete", report.IsIncomplete);
        writer.WriteStartArray("findings");
        foreach (var finding in report.Findings)
        {
            WriteFinding(writer, report, finding);
        }

        writer.WriteEndArray();
        if (report.Baseline is { } baseline)
        {
            writer.WriteNumber("absent", baseline.AbsentCount);
        }

        writer.WriteStartArray("notices");
        foreach (var notice in report.Notices)
        {
            WriteNotice(writer, report, notice);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter writer, CheckReport report, Finding finding)
    {
        writer.WriteStartObject();
        writer.WriteString("rule", finding.RuleId);
        writer.WriteString("level", FindingTextWriter.Name(finding.Level));
        writer.WriteString("certainty", FindingTextWriter.Name(finding.Certainty));
        WritePlace(writer, report, finding.Range);
        writer.WriteString("function", finding.Function);
        writer.WriteString("message", finding.Message);
        writer.WriteStartArray("subjects");
        foreach (var subject in finding.Subjects)
        {
            writer.WriteStringValue(subject);
        }

        writer.WriteEndArray();
        writer.WriteString("sleepMode", finding.SleepMode);
        if (finding.Cost.Microamps is { } microamps)
        {
            writer.WriteNumber("estimatedMicroamps", microamps);
        }
        else
        {
            writer.WriteNull("estimatedMicroamps");
        }

        writer.WriteString("costBasis", finding.Cost.Basis);
        writer.WriteString("fingerprint", finding.Fingerprint);
        if (finding.Fix is { } fix)
        {
            writer.WriteString("fix", fix.Description);
            writer.WriteBoolean("fixIsSafe", fix.IsSafe);
        }

        if (report.Baseline is { } baseline)
        {
            writer.WriteString("baseline", baseline.IsNew(finding) ? "new" : "unchanged");
        }

        writer.WriteEndObject();
    }

    private static void WriteNotice(Utf8JsonWriter writer, CheckReport report, Notice notice)
    {
        writer.WriteStartObject();
        writer.WriteString("id", notice.Id);
        writer.WriteString("level", FindingTextWriter.Name(notice.Level));
        writer.WriteString("message", notice.Message);
        if (notice.Range is { Line: > 0 } range)
        {
            WritePlace(writer, report, range);
        }

        writer.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter writer, CheckReport report, SourceRange range)
    {
        writer.WriteString("file", report.Paths.Show(range.File.Path));
        writer.WriteNumber("line", range.Line);
        writer.WriteNumber("column", range.Start.Column);
    }
}
