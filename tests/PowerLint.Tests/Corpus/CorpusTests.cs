using System.Text;
using System.Text.Json;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// Firmware that others wrote, from Debian's libsimavr-examples and arduino-core-avr (versions in
/// <c>tests/corpus/projects.yaml</c>), with real headers and plain avr-gcc command lines: nothing breaks, nothing is left
/// unread, and the findings are those that were read one by one (<c>tests/corpus/REVIEW.md</c>).
/// </summary>
public sealed class CorpusTests
{
    public static TheoryData<string> Names => [.. CorpusProject.Read().Projects.Select(project => project.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Findings_are_those_that_were_reviewed(string name)
    {
        var list = CorpusProject.Read();
        var project = list.Projects.Single(p => string.Equals(p.Name, name, StringComparison.Ordinal));
        var package = list.Packages[project.Package];
        Assert.SkipUnless(
            File.Exists(package.Archive) || Directory.Exists(package.Folder),
            $"the package {project.Package} is not installed"
        );
        using var folder = new TemporaryFolder();
        var build = project.WriteDatabase(package, folder.Path);

        var result = TestConsole.Run(folder.Path, "check", "-p", folder.Path, "--format", "sarif");

        if (project.Model is not null)
        {
            Assert.Equal(2, result.Status);
            Assert.Contains(
                $"there is no model of the device '{project.Device}' that the compiler flags name",
                result.Error,
                StringComparison.Ordinal
            );
            return;
        }

        Assert.True(result.Output.Length > 0, result.Error);
        using var sarif = JsonDocument.Parse(result.Output);
        var run = sarif.RootElement.GetProperty("runs")[0];
        var lines = FindingLines(run, build, folder.Path);
        var hasWarning = lines.Any(line =>
            line.StartsWith("warning ", StringComparison.Ordinal) || line.StartsWith("error ", StringComparison.Ordinal)
        );
        Assert.DoesNotContain("executionSuccessful\": false", result.Output, StringComparison.Ordinal);
        Assert.Equal(hasWarning ? 1 : 0, result.Status);
        var text = new StringBuilder();
        foreach (var line in NoticeLines(run, build, folder.Path).Concat(lines))
        {
            text.Append(line).Append('\n');
        }

        var difference = GoldenFile.Difference(
            Path.Combine(CorpusProject.Root, "findings", name + ".txt"),
            text.ToString()
        );
        Assert.True(difference is null, difference);
    }

    private static List<string> FindingLines(JsonElement run, string build, string folder)
    {
        var lines = new List<string>();
        foreach (var result in run.GetProperty("results").EnumerateArray())
        {
            var properties = result.GetProperty("properties");
            var subjects = properties.GetProperty("subjects").EnumerateArray().Select(subject => subject.GetString());
            var level = result.TryGetProperty("level", out var given) ? given.GetString() : "warning";
            lines.Add(
                $"{level} {properties.GetProperty("certainty").GetString()} {result.GetProperty("ruleId").GetString()} "
                    + $"{Place(result, build, folder)} [{string.Join(' ', subjects)}] {Text(result)}"
            );
        }

        return lines;
    }

    private static IEnumerable<string> NoticeLines(JsonElement run, string build, string folder) =>
        run.GetProperty("invocations")
            .EnumerateArray()
            .Where(invocation => invocation.TryGetProperty("toolExecutionNotifications", out _))
            .SelectMany(invocation => invocation.GetProperty("toolExecutionNotifications").EnumerateArray())
            .Select(notice =>
                $"notice {notice.GetProperty("descriptor").GetProperty("id").GetString()} "
                + $"{(notice.TryGetProperty("locations", out _) ? Place(notice, build, folder) : "-")} {Text(notice)}"
            );

    private static string Text(JsonElement element) =>
        element.GetProperty("message").GetProperty("text").GetString()!.ReplaceLineEndings(" ");

    private static string Place(JsonElement element, string build, string folder)
    {
        var place = element.GetProperty("locations")[0].GetProperty("physicalLocation");
        var uri = place.GetProperty("artifactLocation").GetProperty("uri").GetString()!;
        var path = uri.StartsWith("file:", StringComparison.Ordinal)
            ? new Uri(uri).LocalPath
            : Path.GetFullPath(Path.Combine(folder, uri));
        var line = place.TryGetProperty("region", out var region) ? region.GetProperty("startLine").GetInt32() : 0;
        var shown = path.StartsWith(CorpusProject.Root, StringComparison.Ordinal)
            ? Path.GetRelativePath(CorpusProject.Root, path)
            : Path.GetRelativePath(build, path);
        return $"{shown}:{line}";
    }
}
