namespace PowerLint.Devices;

/// <summary>Names that a misspelt one may have meant.</summary>
public static class NearestNames
{
    // Less is the beginning of too many names.
    private const int ShortestBeginning = 4;

    /// <summary>
    /// Up to some names, nearest first, none further than a third of the word's length and two letters. A name that begins with the
    /// word is one letter away: what is left out is its ending.
    /// </summary>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> names, int count)
    {
        var limit = 2 + (word.Length / 3);
        return
        [
            .. names
                .Select(name => (Name: name, Distance: IsBeginning(word, name) ? 1 : Distance(word, name)))
                .Where(n => n.Distance <= limit)
                .OrderBy(n => n.Distance)
                .ThenBy(n => n.Name, StringComparer.Ordinal)
                .Take(count)
                .Select(n => n.Name),
        ];
    }

    /// <summary>A hint to put behind an error message, or nothing.</summary>
    public static string Hint(string word, IEnumerable<string> names) =>
        Of(word, names, 1) is [var nearest] ? $"; did you mean '{nearest}'?" : "";

    private static bool IsBeginning(string word, string name) =>
        word.Length >= ShortestBeginning
        && name.Length > word.Length
        && name.StartsWith(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Letters to insert, delete or replace (Levenshtein 1966), whatever their case.</summary>
    internal static int Distance(string left, string right)
    {
        var row = new int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var above = row[j];
                var same = char.ToLowerInvariant(left[i - 1]) == char.ToLowerInvariant(right[j - 1]);
                row[j] = Math.Min(diagonal + (same ? 0 : 1), 1 + Math.Min(above, row[j - 1]));
                diagonal = above;
            }
        }

        return row[right.Length];
    }
}
