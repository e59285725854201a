using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Program;

namespace PowerLint.Rules;

/// <summary>The parameters and local variables of an image's functions: their names are the author's whim.</summary>
/// <param name="image">The image.</param>
public sealed partial class LocalNames(Image image)
{
    private readonly Dictionary<string, HashSet<string>> _byFunction = new(StringComparer.Ordinal);

    /// <summary>A text of a function with its local names replaced by numbers, in order of first use in the text.</summary>
    public string Number(string text, string function)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(function);
        if (!_byFunction.TryGetValue(function, out var names))
        {
            names = image
                .Units.SelectMany(unit => unit.Functions)
                .Where(f => string.Equals(f.DisplayName, function, StringComparison.Ordinal))
                .SelectMany(f =>
                    f.Parameters.Concat(
                        StatementPlaces.Within(f.Body).OfType<LocalDeclaration>().Select(d => d.Variable)
                    )
                )
                .Select(variable => variable.Name)
                .ToHashSet(StringComparer.Ordinal);
            _byFunction.Add(function, names);
        }

        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        return Word()
            .Replace(
                text,
                word =>
                {
                    // A member of that name is none of the function's own.
                    if (!names.Contains(word.Value))
                    {
                        return word.Value;
                    }

                    if (!numbers.TryGetValue(word.Value, out var number))
                    {
                        number = numbers.Count + 1;
                        numbers.Add(word.Value, number);
                    }

                    return "$" + number.ToString(CultureInfo.InvariantCulture);
                }
            );
    }

    [GeneratedRegex(@"(?<![.\w]|->)[A-Za-z_]\w*", RegexOptions.None, 1000)]
    private static partial Regex Word();
}
