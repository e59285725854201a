namespace PowerLint.Analysis;

/// <summary>A byte at an absolute address: what its bits can be, and what decided each.</summary>
internal sealed class RegisterByte
{
    private readonly DecisionSet[]? _decisions;
    private readonly DecisionSet _common;

    private RegisterByte(byte known, byte value, DecisionSet[]? decisions, DecisionSet common)
    {
        Known = known;
        Value = (byte)(value & known);
        _decisions = decisions;
        _common = common;
    }

    public byte Known { get; }

    public byte Value { get; }

    public static RegisterByte Uniform(byte known, byte value, DecisionSet decided) => new(known, value, null, decided);

    public DecisionSet DecidedBy(int bit) => _decisions is null ? _common : _decisions[bit];

    /// <summary>New values, the bits of the mask decided anew, the others as before.</summary>
    public RegisterByte With(byte known, byte value, byte decidedMask, DecisionSet decided)
    {
        value &= known;
        if (decidedMask == 0xFF)
        {
            return new RegisterByte(known, value, null, decided);
        }

        if (decidedMask == 0)
        {
            return known == Known && value == Value ? this : new RegisterByte(known, value, _decisions, _common);
        }

        var decisions = new DecisionSet[8];
        for (var bit = 0; bit < 8; bit++)
        {
            decisions[bit] = (decidedMask >> bit & 1) != 0 ? decided : DecidedBy(bit);
        }

        return new RegisterByte(known, value, decisions, DecisionSet.Reset);
    }

    /// <summary>Whether two bytes, or the lack of them, say the same and were decided by the same writes.</summary>
    public static bool AreSame(RegisterByte? a, RegisterByte? b)
    {
        if (ReferenceEquals(a, b))
        {
            return true;
        }

        if (a is null || b is null || a.Known != b.Known || a.Value != b.Value)
        {
            return false;
        }

        for (var bit = 0; bit < 8; bit++)
        {
            if (!ReferenceEquals(a.DecidedBy(bit), b.DecidedBy(bit)))
            {
                return false;
            }
        }

        return true;
    }

    public static RegisterByte Join(RegisterByte a, RegisterByte b, DecisionLog log)
    {
        if (ReferenceEquals(a, b))
        {
            return a;
        }

        var known = (byte)(a.Known & b.Known & ~(a.Value ^ b.Value));
        if (IsIncluded(b, a, log))
        {
            return a;
        }

        if (IsIncluded(a, b, log))
        {
            return b;
        }

        if (a._decisions is null && b._decisions is null)
        {
            return new RegisterByte(known, a.Value, null, log.Union(a._common, b._common));
        }

        var decisions = new DecisionSet[8];
        for (var bit = 0; bit < 8; bit++)
        {
            decisions[bit] = log.Union(a.DecidedBy(bit), b.DecidedBy(bit));
        }

        return new RegisterByte(known, a.Value, decisions, DecisionSet.Reset);
    }

    public static bool IsIncluded(RegisterByte a, RegisterByte b, DecisionLog log)
    {
        if (ReferenceEquals(a, b))
        {
            return true;
        }

        if ((b.Known & ~a.Known) != 0 || ((a.Value ^ b.Value) & b.Known) != 0)
        {
            return false;
        }

        for (var bit = 0; bit < 8; bit++)
        {
            if (!log.IsIncluded(a.DecidedBy(bit), b.DecidedBy(bit)))
            {
                return false;
            }
        }

        return true;
    }
}
