namespace PowerLint.Frontend;

/// <summary>How far the reading is.</summary>
/// <param name="Done">Files that were read, or taken from the cache.</param>
/// <param name="Total">All files.</param>
public readonly record struct ReadProgress(int Done, int Total);

/// <summary>What the reading spent its time on, summed over its threads.</summary>
/// <param name="Cache">Looking units up in the cache, and keeping them.</param>
/// <param name="Screening">Looking for macros that the parser would choke on.</param>
/// <param name="Parsing">The parser.</param>
/// <param name="Lowering">Turning its trees into units.</param>
public sealed record ReadTimes(TimeSpan Cache, TimeSpan Screening, TimeSpan Parsing, TimeSpan Lowering);
