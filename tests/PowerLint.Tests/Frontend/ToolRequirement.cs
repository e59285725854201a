namespace PowerLint.Tests;

/// <summary>Tools that a test cannot do without: missing, they fail the test in continuous integration and skip it elsewhere.</summary>
internal static class ToolRequirement
{
    public static void Demand(string? tool)
    {
        if (tool is null || IsOnPath(tool))
        {
            return;
        }

        Assert.False(Environment.GetEnvironmentVariable("CI") is { Length: > 0 }, $"{tool} is not installed.");
        Assert.Skip($"{tool} is not installed.");
    }

    /// <summary>Whether a tool is on the search path.</summary>
    public static bool IsOnPath(string tool) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, tool)));
}
