namespace PowerLint.Frontend;

/// <summary>Collects notices, each kept once, from any thread.</summary>
internal sealed class NoticeList
{
    private readonly Lock _gate = new();
    private readonly SortedSet<(string Id, string Message)> _notices = new(
        Comparer<(string Id, string Message)>.Create(
            (left, right) =>
                string.CompareOrdinal(left.Id, right.Id) is var byId && byId != 0
                    ? byId
                    : string.CompareOrdinal(left.Message, right.Message)
        )
    );

    public void Add(string id, string message)
    {
        lock (_gate)
        {
            _notices.Add((id, message));
        }
    }

    public IReadOnlyList<ReadNotice> ToList()
    {
        lock (_gate)
        {
            return [.. _notices.Select(notice => new ReadNotice(notice.Id, notice.Message))];
        }
    }
}
