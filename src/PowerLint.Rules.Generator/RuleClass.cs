using System;
using Microsoft.CodeAnalysis;

namespace PowerLint.Rules.Generator;

/// <summary>A class that implements <c>IRule</c>. Compares by value, so that an edit elsewhere generates nothing anew.</summary>
internal sealed class RuleClass : IEquatable<RuleClass>
{
    public RuleClass(string name, string fullName, Location location)
    {
        Name = name;
        FullName = fullName;
        Location = location;
    }

    /// <summary>The class' name.</summary>
    public string Name { get; }

    /// <summary>With its namespace.</summary>
    public string FullName { get; }

    /// <summary>Where it is declared.</summary>
    public Location Location { get; }

    /// <inheritdoc/>
    public bool Equals(RuleClass? other) =>
        other is not null && FullName == other.FullName && Location.GetLineSpan().Equals(other.Location.GetLineSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RuleClass);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(FullName);
}
