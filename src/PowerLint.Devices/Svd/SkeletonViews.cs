namespace PowerLint.Devices;

/// <summary>Tells which registers are further views of bytes that others hold already.</summary>
internal static class SkeletonViews
{
    /// <summary>
    /// The views: registers that share a byte with one before them. What the file calls an alternate comes after what it does
    /// not, and what the processor's own file describes comes last.
    /// </summary>
    public static HashSet<SvdRegister> Find(
        IEnumerable<SvdRegister> registers,
        Func<SvdRegister, bool> isDescribedElsewhere
    )
    {
        var views = new HashSet<SvdRegister>(ReferenceEqualityComparer.Instance);
        var taken = new HashSet<ulong>();
        foreach (var register in registers.OrderBy(register => register.IsAlternate))
        {
            var bytes = Bytes(register).ToArray();
            if (isDescribedElsewhere(register) || bytes.Any(taken.Contains))
            {
                views.Add(register);
                continue;
            }

            taken.UnionWith(bytes);
        }

        return views;
    }

    private static IEnumerable<ulong> Bytes(SvdRegister register)
    {
        var count =
            register.SizeBits <= 8 ? 1
            : register.SizeBits <= 16 ? 2
            : register.SizeBits <= 32 ? 4
            : 8;
        return Enumerable.Range(0, count).Select(i => register.Address + (ulong)i);
    }
}
