using System.Collections;
using System.Reflection;
using PowerLint.Program;

namespace PowerLint.Tests;

/// <summary>
/// Compares two units node by node, over every public property there is: values must be equal, and objects that are one in the one
/// unit must be one in the other.
/// </summary>
internal sealed class GraphComparison
{
    private readonly Dictionary<object, object> _pairs = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<object, object> _back = new(ReferenceEqualityComparer.Instance);

    /// <summary>The classes that were met.</summary>
    public HashSet<Type> Met { get; } = [];

    /// <summary>The path to the first difference, or null.</summary>
    public string? Difference(object? left, object? right, string path = "unit")
    {
        if (left is null || right is null)
        {
            return ReferenceEquals(left, right) ? null : $"{path}: {left ?? "null"} and {right ?? "null"}";
        }

        var type = left.GetType();
        if (left is string or byte[] || type.IsPrimitive || type.IsEnum)
        {
            var same = left is byte[] bytes ? bytes.AsSpan().SequenceEqual((byte[])right) : left.Equals(right);
            return same ? null : $"{path}: {left} and {right}";
        }

        if (left is IEnumerable list)
        {
            return Lists([.. list.Cast<object?>()], [.. ((IEnumerable)right).Cast<object?>()], path);
        }

        if (type != right.GetType())
        {
            return $"{path}: {type.Name} and {right.GetType().Name}";
        }

        Met.Add(type);
        if (left is Statement or Expression or Variable or FunctionSymbol or Function)
        {
            var isKnown = _pairs.TryGetValue(left, out var partner);
            if (isKnown || _back.ContainsKey(right))
            {
                return isKnown && ReferenceEquals(partner, right) ? null : $"{path}: not the same object";
            }

            _pairs.Add(left, right);
            _back.Add(right, left);
        }

        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (
                property.GetIndexParameters().Length == 0
                && Difference(property.GetValue(left), property.GetValue(right), $"{path}.{property.Name}") is { } found
            )
            {
                return found;
            }
        }

        return null;
    }

    private string? Lists(object?[] left, object?[] right, string path)
    {
        if (left.Length != right.Length)
        {
            return $"{path}: {left.Length} and {right.Length} items";
        }

        for (var i = 0; i < left.Length; i++)
        {
            if (Difference(left[i], right[i], $"{path}[{i}]") is { } found)
            {
                return found;
            }
        }

        return null;
    }
}
