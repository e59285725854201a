using System.Diagnostics;

namespace PowerLint.Frontend;

/// <summary>Sums up what the stages of reading take, over all threads.</summary>
internal sealed class ReadClock
{
    private readonly long[] _ticks = new long[4];

    public enum Stage
    {
        Cache,
        Screening,
        Parsing,
        Lowering,
    }

    public ReadTimes Times => new(Time(Stage.Cache), Time(Stage.Screening), Time(Stage.Parsing), Time(Stage.Lowering));

    /// <summary>Runs a part of a stage.</summary>
    public T Measure<T>(Stage stage, Func<T> run)
    {
        var start = Stopwatch.GetTimestamp();
        try
        {
            return run();
        }
        finally
        {
            Interlocked.Add(ref _ticks[(int)stage], Stopwatch.GetTimestamp() - start);
        }
    }

    private TimeSpan Time(Stage stage) => Stopwatch.GetElapsedTime(0, Volatile.Read(ref _ticks[(int)stage]));
}
