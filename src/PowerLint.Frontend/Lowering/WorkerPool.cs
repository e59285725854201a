using System.Diagnostics;
using System.Runtime.ExceptionServices;

namespace PowerLint.Frontend;

/// <summary>
/// Does pieces of work side by side on threads with much stack. A piece that takes longer than the patience is given up: its thread is
/// left behind, since the parser cannot be stopped, and another takes its place.
/// </summary>
/// <param name="count">How many pieces there are.</param>
/// <param name="mostWorkers">How many to do at a time.</param>
/// <param name="patience">How long one may take.</param>
/// <param name="run">Does the piece of a number.</param>
/// <param name="giveUp">Told the number of a piece that takes too long.</param>
internal sealed class WorkerPool(int count, int mostWorkers, TimeSpan patience, Action<int> run, Action<int> giveUp)
{
    // Parsing and lowering follow the tree: long chains of operators nest deeply. Pages that are not touched cost nothing.
    private const int StackBytes = 512 * 1024 * 1024;

    private readonly Lock _gate = new();
    private readonly Dictionary<int, long> _running = [];
    private readonly SemaphoreSlim _change = new(0);
    private ExceptionDispatchInfo? _failure;
    private int _next;
    private int _done;

    /// <summary>Does all of them.</summary>
    public void RunAll(CancellationToken cancellation)
    {
        for (var i = 0; i < Math.Min(mostWorkers, count); i++)
        {
            Start(cancellation);
        }

        while (true)
        {
            lock (_gate)
            {
                _failure?.Throw();
                if (_done == count)
                {
                    return;
                }
            }

            // Not until all have ended, where the user has had enough: the parser does not look up from a file.
            _ = _change.Wait(TimeSpan.FromMilliseconds(250), cancellation);
            foreach (var late in TakeLate())
            {
                giveUp(late);
                Start(cancellation);
            }
        }
    }

    private List<int> TakeLate()
    {
        lock (_gate)
        {
            var late = _running
                .Where(piece => Stopwatch.GetElapsedTime(piece.Value) > patience)
                .Select(piece => piece.Key)
                .ToList();
            foreach (var piece in late)
            {
                _running.Remove(piece);
                _done++;
            }

            return late;
        }
    }

    private void Start(CancellationToken cancellation) =>
        new Thread(() => Work(cancellation), StackBytes) { IsBackground = true }.Start();

    private void Work(CancellationToken cancellation)
    {
        try
        {
            while (Take() is { } piece)
            {
                cancellation.ThrowIfCancellationRequested();
                run(piece);
                if (!End(piece))
                {
                    return;
                }
            }
        }
        catch (Exception error)
        {
            lock (_gate)
            {
                _failure ??= ExceptionDispatchInfo.Capture(error);
            }
        }

        _change.Release();
    }

    private int? Take()
    {
        lock (_gate)
        {
            if (_next == count || _failure is not null)
            {
                return null;
            }

            _running.Add(_next, Stopwatch.GetTimestamp());
            return _next++;
        }
    }

    private bool End(int piece)
    {
        lock (_gate)
        {
            if (!_running.Remove(piece))
            {
                return false;
            }

            _done++;
            if (_done == count)
            {
                _change.Release();
            }

            return true;
        }
    }
}
