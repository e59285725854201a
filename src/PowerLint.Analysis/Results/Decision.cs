using System.Collections.Immutable;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>A write that decided bits of a register. One object a place, call chain and effect; compares by identity.</summary>
public sealed class Decision
{
    /// <summary>Order of first execution, from reset.</summary>
    public required int Ordinal { get; init; }

    /// <summary>Lowest byte address written.</summary>
    public required ulong Address { get; init; }

    /// <summary>Width of the access in bits.</summary>
    public required int WidthBits { get; init; }

    /// <summary>The writing expression or statement; in a system header, where the user's source called it.</summary>
    public required SourceRange Range { get; init; }

    /// <summary>The function that holds it.</summary>
    public required string Function { get; init; }

    /// <summary>The calls that led there, outermost first: call expressions in callers.</summary>
    public required ImmutableArray<CallSite> Calls { get; init; }

    /// <summary>The handler that it ran in (its spelled vector), or null for the main program.</summary>
    public string? Handler { get; init; }

    /// <summary>The register's bits before.</summary>
    public required KnownBits Before { get; init; }

    /// <summary>The bits written.</summary>
    public required KnownBits After { get; init; }
}

/// <summary>A call on the way to a place.</summary>
/// <param name="Range">The call expression.</param>
/// <param name="Caller">The function that holds it.</param>
/// <param name="Callee">The function called.</param>
public sealed record CallSite(SourceRange Range, string Caller, string Callee);
