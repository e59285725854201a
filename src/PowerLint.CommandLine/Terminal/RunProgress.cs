using System.Diagnostics;
using System.Globalization;
using PowerLint.Frontend;

namespace PowerLint.CommandLine;

/// <summary>
/// Says how far a run is, where somebody watches a terminal and has waited a while, and how long each stage took, where that was asked
/// for. Both go to standard error: reports stay as they are.
/// </summary>
internal sealed class RunProgress
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly IConsole _console;
    private readonly bool _tellsTimes;
    private readonly Stopwatch _total = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private TimeSpan _shown;
    private int _width;

    /// <summary>Begins.</summary>
    /// <param name="console">The terminal.</param>
    /// <param name="tellsTimes">Whether to print how long each stage took.</param>
    internal RunProgress(IConsole console, bool tellsTimes)
    {
        _console = console;
        _tellsTimes = tellsTimes;
    }

    /// <summary>Runs a stage.</summary>
    internal T Stage<T>(string name, Func<T> run)
    {
        var before = _total.Elapsed;
        Show(name);
        try
        {
            return run();
        }
        finally
        {
            Clear();
            Tell(name, _total.Elapsed - before);
        }
    }

    /// <summary>Tells the times of a part of a stage, over all threads.</summary>
    internal void Tell(string name, TimeSpan time, string more = "")
    {
        if (_tellsTimes)
        {
            _console.Error.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"powerlint: {time.TotalMilliseconds, 8:F0} ms  {name}{more}"
                )
            );
        }
    }

    /// <summary>Tells what the reading spent its time on.</summary>
    internal void TellReading(ReadResult read)
    {
        if (read.Times is not { } times)
        {
            return;
        }

        Tell("  parser, over all threads", times.Parsing);
        Tell("  lowering, over all threads", times.Lowering);
        Tell("  screening of macros, over all threads", times.Screening);
        Tell(
            "  cache, over all threads",
            times.Cache,
            string.Create(CultureInfo.InvariantCulture, $": {read.UnitsFromCache} of {read.Units.Count} units from it")
        );
    }

    /// <summary>Shows how many files have been read.</summary>
    internal void Read(ReadProgress progress) =>
        Show(string.Create(CultureInfo.InvariantCulture, $"reading {progress.Done} of {progress.Total} files"));

    /// <summary>Tells the total.</summary>
    internal void End()
    {
        Tell("in all", _total.Elapsed);
        Tell(
            string.Create(
                CultureInfo.InvariantCulture,
                $"  of it, collecting garbage ({GC.CollectionCount(0)} times, {GC.CollectionCount(1)} and {GC.CollectionCount(2)} of them older)"
            ),
            GC.GetTotalPauseDuration()
        );
    }

    private void Show(string text)
    {
        if (!_console.IsErrorTerminal)
        {
            return;
        }

        lock (_gate)
        {
            var now = _total.Elapsed;
            if (now < Patience || now - _shown < Pause)
            {
                return;
            }

            _shown = now;
            _console.Error.Write($"\r{text.PadRight(_width)}");
            _width = text.Length;
            _console.Error.Flush();
        }
    }

    private void Clear()
    {
        lock (_gate)
        {
            if (_width > 0)
            {
                _console.Error.Write($"\r{new string(' ', _width)}\r");
                _console.Error.Flush();
                _width = 0;
            }
        }
    }
}
