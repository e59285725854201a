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
        for (var i = 0; i < flags.Count; i++)
        {
            var flag = flags[i];
            // Two of the other compilers have words for it.
            if (flag is "-f" or "--via" && i + 1 < flags.Count && depth < DeepestNesting)
            {
                var named = Path.Combine(directory, flags[i + 1]);
                if (File.Exists(named))
                {
                    Expand(CompileDatabase.SplitCommand(File.ReadAllText(named)), directory, result, depth + 1);
                    i++;
                    continue;
                }
            }

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
