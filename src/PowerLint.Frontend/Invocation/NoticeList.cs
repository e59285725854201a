namespace PowerLint.Frontend;

/// <summary>Collects notices, one a kind, with all that it concerns.</summary>
internal sealed class NoticeList
{
    private const int MostNamed = 8;

    private readonly SortedDictionary<string, (string Message, SortedSet<string> Subjects)> _notices = new(
        StringComparer.Ordinal
    );

    /// <summary>Adds a notice.</summary>
    /// <param name="id">Its kind.</param>
    /// <param name="message">A sentence, or, with subjects, what stands before the colon.</param>
    /// <param name="subject">A file or flag that it concerns, or null.</param>
    public void Add(string id, string message, string? subject = null)
    {
        if (!_notices.TryGetValue(id, out var notice))
        {
            notice = (message, new SortedSet<string>(StringComparer.Ordinal));
            _notices.Add(id, notice);
        }

        if (subject is not null)
        {
            notice.Subjects.Add(subject);
        }
    }

    public IReadOnlyList<ReadNotice> ToList() =>
        [.. _notices.Select(notice => new ReadNotice(notice.Key, Text(notice.Value.Message, notice.Value.Subjects)))];

    private static string Text(string message, SortedSet<string> subjects)
    {
        if (subjects.Count == 0)
        {
            return message;
        }

        var named = string.Join(", ", subjects.Take(MostNamed));
        var more = subjects.Count > MostNamed ? $" and {subjects.Count - MostNamed} more" : "";
        return $"{message}: {named}{more}.";
    }
}
