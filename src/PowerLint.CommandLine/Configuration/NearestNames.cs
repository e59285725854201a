namespace PowerLint.CommandLine;

/// <summary>Finds what a mistyped name may have meant.</summary>
internal static class NearestNames
{
    /// <summary>The names closest to a word, best first; none where nothing is near.</summary>
    internal static IReadOnlyList<string> Find(string word, IEnumerable<string> names, int count = 3) =>
        [
            .. names
                .Select(name => (Name: name, Distance: Distance(word.ToUpperInvariant(), name.ToUpperInvariant())))
                .Where(candidate => candidate.Distance <= Math.Max(2, word.Length / 3))
                .OrderBy(candidate => candidate.Distance)
                .ThenBy(candidate => candidate.Name, StringComparer.Ordinal)
                .Take(count)
                .Select(candidate => candidate.Name),
        ];

    /// <summary><c>; did you mean A or B?</c>, or nothing.</summary>
    internal static string Suggest(string word, IEnumerable<string> names)
    {
        var nearest = Find(word, names);
        return nearest.Count == 0 ? "" : $"; did you mean {string.Join(" or ", nearest)}?";
    }

    /// <summary>Insertions, deletions and replacements between two words (Levenshtein).</summary>
    private static int Distance(string left, string right)
    {
        var previous = new int[right.Length + 1];
        var current = new int[right.Length + 1];
        for (var column = 0; column <= right.Length; column++)
        {
            previous[column] = column;
        }

        for (var row = 1; row <= left.Length; row++)
        {
            current[0] = row;
            for (var column = 1; column <= right.Length; column++)
            {
                var replaced = previous[column - 1] + (left[row - 1] == right[column - 1] ? 0 : 1);
                current[column] = Math.Min(Math.Min(previous[column], current[column - 1]) + 1, replaced);
            }

            (previous, current) = (current, previous);
        }

        return previous[right.Length];
    }
}
