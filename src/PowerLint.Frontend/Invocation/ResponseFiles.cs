using System.Text;

namespace PowerLint.Frontend;

/// <summary>Flags that a build keeps in a file of their own: <c>@file</c>.</summary>
internal static class ResponseFiles
{
    private const int DeepestNesting = 8;
    private const int MostBytes = 1024 * 1024;
    private const int MostFlags = 100_000;

    public static List<string> Expand(IReadOnlyList<string> flags, string directory)
    {
        var result = new List<string>(flags.Count);
        Expand(flags, directory, result, depth: 0);
        return result;
    }

    private static void Expand(IReadOnlyList<string> flags, string directory, List<string> result, int depth)
    {
        for (var i = 0; i < flags.Count && result.Count < MostFlags; i++)
        {
            var flag = flags[i];
            // Two of the other compilers have words for it.
            if (flag is "-f" or "--via" && i + 1 < flags.Count && depth < DeepestNesting)
            {
                var named = Path.Combine(directory, flags[i + 1]);
                if (File.Exists(named))
                {
                    Expand(Words(named), directory, result, depth + 1);
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
                Expand(Words(file), directory, result, depth + 1);
            }
            else
            {
                result.Add(flag);
            }
        }
    }

    private static List<string> Words(string file) =>
        CompileDatabase.SplitCommand(Encoding.UTF8.GetString(BoundedFile.Read(file, MostBytes) ?? []));
}
