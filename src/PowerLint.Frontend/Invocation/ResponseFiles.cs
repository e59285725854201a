namespace PowerLint.Frontend;

/// <summary>Flags that a build keeps in a file of their own: <c>@file</c>.</summary>
internal static class ResponseFiles
{
    private const int DeepestNesting = 8;

    public static List<string> Expand(IReadOnlyList<string> flags, string directory)
    {
        var result = new List<string>(flags.Count);
        Expand(flags, directory, result, depth: 0);
        return result;
    }

    private static void Expand(IReadOnlyList<string> flags, string directory, List<string> result, int depth)
    {
        foreach (var flag in flags)
        {
            if (
                flag.Length > 1
                && flag[0] == '@'
                && depth < DeepestNesting
                && Path.Combine(directory, flag[1..]) is var file
                && File.Exists(file)
            )
            {
                Expand(CompileDatabase.SplitCommand(File.ReadAllText(file)), directory, result, depth + 1);
            }
            else
            {
                result.Add(flag);
            }
        }
    }
}
