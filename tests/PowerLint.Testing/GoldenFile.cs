namespace PowerLint.Testing;

/// <summary>
/// Holds a text against a file beside its input. Where they differ, what came out is left next to it as <c>.actual</c>; with
/// <c>POWERLINT_RENEW=1</c> in the environment the file is written anew instead.
/// </summary>
public static class GoldenFile
{
    /// <summary>The environment variable that renews golden files.</summary>
    public const string RenewVariable = "POWERLINT_RENEW";

    /// <summary>Compares; returns null where the texts are equal, else what differs and what to do.</summary>
    /// <param name="path">The golden file.</param>
    /// <param name="actual">What came out.</param>
    public static string? Difference(string path, string actual)
    {
        ArgumentNullException.ThrowIfNull(actual);
        var text = actual.Replace("\r\n", "\n", StringComparison.Ordinal);
        if (string.Equals(Environment.GetEnvironmentVariable(RenewVariable), "1", StringComparison.Ordinal))
        {
            File.WriteAllText(path, text);
        }

        var expected = File.Exists(path) ? File.ReadAllText(path).Replace("\r\n", "\n", StringComparison.Ordinal) : "";
        var left = path + ".actual";
        if (string.Equals(expected, text, StringComparison.Ordinal))
        {
            File.Delete(left);
            return null;
        }

        File.WriteAllText(left, text);
        return $"{path}: {FirstDifference(expected, text)}\n"
            + $"What came out is in {Path.GetFileName(left)}; if it is right, run the tests with {RenewVariable}=1.";
    }

    private static string FirstDifference(string expected, string actual)
    {
        var wanted = expected.Split('\n');
        var got = actual.Split('\n');
        for (var line = 0; line < Math.Max(wanted.Length, got.Length); line++)
        {
            var left = line < wanted.Length ? wanted[line] : "(end)";
            var right = line < got.Length ? got[line] : "(end)";
            if (!string.Equals(left, right, StringComparison.Ordinal))
            {
                return $"line {line + 1} differs\n  expected: {left}\n  actual:   {right}";
            }
        }

        return "the texts differ";
    }
}
