using System.Collections.Immutable;
using PowerLint.Devices;

namespace PowerLint.Analysis;

/// <summary>A call that is being watched, to be summarised when it is over.</summary>
/// <param name="outer">The recording around it, or null.</param>
/// <param name="depth">The frame depth of the call.</param>
internal sealed class CallRecording(CallRecording? outer, int depth)
{
    public CallRecording? Outer { get; } = outer;

    public Footprint Footprint { get; } = new(depth);

    public List<PollEvent> Polls { get; } = [];

    public required int EffectsBefore { get; init; }

    public required int WaitsBefore { get; init; }

    public required int RunsBefore { get; init; }

    public required int UnrepeatableBefore { get; init; }

    public required (int, int) SharedPlacesBefore { get; init; }

    /// <summary>The hardware bits that the caller had read before, set aside.</summary>
    public required ImmutableArray<(Register Register, ulong Mask)> ReadsBefore { get; init; }
}
