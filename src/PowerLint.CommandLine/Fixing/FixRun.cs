using System.Collections.Immutable;
using DiffPlex.Renderer;
using PowerLint.Reports;
using PowerLint.Rules;

namespace PowerLint.CommandLine;

/// <summary>Applies the safe fixes of a check, or shows what they would change.</summary>
internal sealed class FixRun : IDisposable
{
    // Made before anything is read: a file that is newer was changed under the analysis' hands.
    private readonly string _start = Path.GetTempFileName();

    /// <inheritdoc/>
    public void Dispose() => File.Delete(_start);

    /// <summary>Applies the fixes and says so on the terminal.</summary>
    /// <returns>The report without what was mended.</returns>
    /// <exception cref="UsageException">A file must not or cannot be written; then nothing is.</exception>
    internal CheckReport Apply(CheckReport report, FirmwareRun run, TextWriter messages)
    {
        var plan = FixPlan.Of(report.Counting);
        var changed = Changes(plan, report, run);
        foreach (var (path, shown, file, text) in changed)
        {
            try
            {
                AtomicFile.Replace(path, file.Bytes(text));
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                throw new UsageException($"{shown}: the fixes cannot be written: {exception.Message}");
            }
        }

        messages.WriteLine(
            $"powerlint: {Count(plan.Applied.Length, "fix", "fixes")} applied in {Count(changed.Length, "file", "files")}"
                + (
                    plan.Postponed.IsEmpty
                        ? ""
                        : $"; run again for {Count(plan.Postponed.Length, "more", "more")}, which would change the same lines"
                )
        );
        return report with { Findings = [.. report.Findings.Where(finding => !plan.Applied.Contains(finding))] };
    }

    /// <summary>Writes a unified diff of what the fixes would change.</summary>
    internal void Show(CheckReport report, FirmwareRun run, TextWriter output)
    {
        foreach (var (_, shown, file, text) in Changes(FixPlan.Of(report.Counting), report, run))
        {
            var diff = UnidiffRenderer.GenerateUnidiff(
                file.Text,
                text,
                $"a/{shown}",
                $"b/{shown}",
                ignoreWhitespace: false
            );
            output.Write(diff.TrimEnd('\r', '\n'));
            output.Write('\n');
        }
    }

    private ImmutableArray<(string Path, string Shown, SourceFileText File, string Text)> Changes(
        FixPlan plan,
        CheckReport report,
        FirmwareRun run
    )
    {
        var tree = new FirmwareTreeGuard(run.Tree);
        var started = File.GetLastWriteTimeUtc(_start);
        var changes = ImmutableArray.CreateBuilder<(string, string, SourceFileText, string)>();
        foreach (var (path, edits) in plan.Edits)
        {
            var shown = report.Paths.Show(path);
            if (!tree.Holds(path))
            {
                throw new UsageException(
                    $"{shown}: a fix would change this file, which lies outside {report.Paths.Show(run.Tree)} or is a link; nothing was written"
                );
            }

            var file = SourceFileText.Read(path);
            var isSeen = string.Equals(run.Sources!.Whole(path), File.ReadAllText(path), StringComparison.Ordinal);
            if (!isSeen || File.GetLastWriteTimeUtc(path) > started)
            {
                throw new UsageException($"{shown}: this file has changed since it was checked; nothing was written");
            }

            // Where the file is no UTF-8, the parser's columns hold only on lines of plain letters.
            var isPlain = edits.All(edit =>
                run.Sources.Text(edit.Range with { Start = edit.Range.Start with { Column = 1 } }).All(char.IsAscii)
            );
            if ((!file.IsUtf8 && !isPlain) || EditedText.Apply(file.Text, edits) is not { } text)
            {
                throw new UsageException($"{shown}: the fixes do not fit this file's text; nothing was written");
            }

            changes.Add((path, shown, file, text));
        }

        return changes.ToImmutable();
    }

    private static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
