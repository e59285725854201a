namespace PowerLint.Rules;

/// <summary>Orders subjects as people count: digits by value (<c>PA2</c> before <c>PA10</c>), the rest by character.</summary>
internal sealed class SubjectOrder : IComparer<string>
{
    /// <summary>The one instance.</summary>
    public static SubjectOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        var left = x.AsSpan();
        var right = y.AsSpan();
        while (!left.IsEmpty && !right.IsEmpty)
        {
            var leftDigits = DigitsAtStart(left);
            var rightDigits = DigitsAtStart(right);
            var order =
                leftDigits > 0 && rightDigits > 0
                    ? CompareNumbers(left[..leftDigits], right[..rightDigits])
                    : left[0].CompareTo(right[0]);
            if (order != 0)
            {
                return order;
            }

            left = left[Math.Max(leftDigits, 1)..];
            right = right[Math.Max(rightDigits, 1)..];
        }

        return left.Length != right.Length ? left.Length.CompareTo(right.Length) : string.CompareOrdinal(x, y);
    }

    private static int DigitsAtStart(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && char.IsAsciiDigit(text[length]))
        {
            length++;
        }

        return length;
    }

    private static int CompareNumbers(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        left = left.TrimStart('0');
        right = right.TrimStart('0');
        return left.Length != right.Length ? left.Length.CompareTo(right.Length) : left.SequenceCompareTo(right);
    }
}
