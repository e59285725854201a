namespace PowerLint.Analysis;

/// <summary>
/// The published operators on tristate numbers (Vishwanathan et al., CGO 2022), for 64 bits; narrower results are cut by the
/// caller. In the paper's terms: v is <see cref="KnownBits.Value"/>, m is the complement of <see cref="KnownBits.Known"/>.
/// </summary>
internal static class TristateArithmetic
{
    public static KnownBits Add(KnownBits a, KnownBits b)
    {
        var sumOfMasks = ~a.Known + ~b.Known;
        var sumOfValues = a.Value + b.Value;
        var carries = (sumOfMasks + sumOfValues) ^ sumOfValues;
        return Make(sumOfValues, carries | ~a.Known | ~b.Known);
    }

    public static KnownBits Subtract(KnownBits a, KnownBits b)
    {
        var difference = a.Value - b.Value;
        var borrows = (difference + ~a.Known) ^ (difference - ~b.Known);
        return Make(difference, borrows | ~a.Known | ~b.Known);
    }

    public static KnownBits Multiply(KnownBits a, KnownBits b)
    {
        var product = a.Value * b.Value;
        var uncertain = KnownBits.Exact(0);
        var (value, mask) = (a.Value, ~a.Known);
        var (multiplicandValue, multiplicandMask) = (b.Value, ~b.Known);
        while (value != 0 || mask != 0)
        {
            if ((value & 1) != 0)
            {
                uncertain = Add(uncertain, Make(0, multiplicandMask));
            }
            else if ((mask & 1) != 0)
            {
                uncertain = Add(uncertain, Make(0, multiplicandValue | multiplicandMask));
            }

            value >>= 1;
            mask >>= 1;
            multiplicandValue <<= 1;
            multiplicandMask <<= 1;
        }

        return Add(KnownBits.Exact(product), uncertain);
    }

    public static KnownBits And(KnownBits a, KnownBits b)
    {
        var ones = a.Value & b.Value;
        return new KnownBits(ones | (a.Known & ~a.Value) | (b.Known & ~b.Value), ones);
    }

    public static KnownBits Or(KnownBits a, KnownBits b)
    {
        var ones = a.Value | b.Value;
        return new KnownBits(ones | (a.Known & b.Known), ones);
    }

    public static KnownBits Xor(KnownBits a, KnownBits b)
    {
        var known = a.Known & b.Known;
        return new KnownBits(known, (a.Value ^ b.Value) & known);
    }

    private static KnownBits Make(ulong value, ulong mask) => new(~mask, value & ~mask);
}
