using System.Diagnostics;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// The recipes of <c>docs/recipes.md</c>, run word for word in a shell on fresh copies of the projects that they name, with the builds'
/// own tools: what a new user does.
/// </summary>
public sealed class RecipeTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-recipe-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("CMake with a cross-toolchain file", "bird-box", "cmake", "atmega328p")]
    [InlineData("A Makefile, with Bear", "rain-gauge", "bear", "attiny85")]
    [InlineData("A bare folder of sources", "night-light", "sh", "attiny85")]
    public void A_recipe_works_as_it_is_written(string heading, string project, string tool, string device)
    {
        Assert.SkipUnless(IsInstalled(tool) && IsInstalled("avr-gcc"), $"{tool} or avr-gcc is not installed");
        Copy(RepositoryRoot.Combine("tests", "recipes", project), _folder);

        var (status, output) = Shell(string.Join('\n', Commands(heading)));

        // A report, not a complaint: the last line counts the findings on the part.
        Assert.True(status is 0 or 1, output);
        Assert.Matches($"(No findings|[0-9]+ findings?).* on {device}", output);
        Assert.DoesNotContain("not analysed", output, StringComparison.Ordinal);
        Assert.DoesNotContain("incomplete", output, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Commands(string heading)
    {
        var lines = File.ReadAllLines(RepositoryRoot.Combine("docs", "recipes.md"))
            .SkipWhile(line => line != $"## {heading}")
            .Skip(1)
            .TakeWhile(line => !line.StartsWith("## ", StringComparison.Ordinal));
        var isInside = false;
        foreach (var line in lines)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                isInside = !isInside;
            }
            else if (isInside)
            {
                yield return line;
            }
        }
    }

    private (int Status, string Output) Shell(string commands)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "powerlint");
        var script =
            "set -u\nfail() { [ $? -le 1 ] || exit 99; }\ntrap fail ERR\n"
            + $"powerlint() {{ dotnet '{program}.dll' \"$@\"; }}\n{commands}\n";
        var start = new ProcessStartInfo("bash", ["-c", script])
        {
            WorkingDirectory = _folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        start.Environment["XDG_CACHE_HOME"] = Path.Combine(_folder, ".cache");
        using var shell = Process.Start(start)!;
        var errors = shell.StandardError.ReadToEndAsync();
        var output = shell.StandardOutput.ReadToEnd() + errors.Result;
        shell.WaitForExit();
        return (shell.ExitCode, output);
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private static bool IsInstalled(string tool) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Any(folder => File.Exists(Path.Combine(folder, tool)));
}
