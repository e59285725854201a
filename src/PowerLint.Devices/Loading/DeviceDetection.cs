using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>What compiler flags and macros say about the part.</summary>
public abstract record DeviceDetection
{
    private DeviceDetection() { }

    /// <summary>Exactly one part.</summary>
    /// <param name="Name">The part.</param>
    /// <param name="Evidence">The flag or macro that says so.</param>
    public sealed record Match(string Name, string Evidence) : DeviceDetection;

    /// <summary>Several parts: the flags contradict each other, or a macro stands for more than one.</summary>
    /// <param name="Names">The parts, in order of name.</param>
    /// <param name="Evidence">The flags and macros, in the same order.</param>
    public sealed record Ambiguous(ImmutableArray<string> Names, ImmutableArray<string> Evidence) : DeviceDetection;

    /// <summary>No part that has a model.</summary>
    /// <param name="Asked">The name that the flags give, or null where they give none.</param>
    /// <param name="Nearest">Parts with a similar name, nearest first.</param>
    public sealed record Unknown(string? Asked, ImmutableArray<string> Nearest) : DeviceDetection;
}
