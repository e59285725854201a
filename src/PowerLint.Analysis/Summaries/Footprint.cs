namespace PowerLint.Analysis;

/// <summary>
/// The places that a call has looked at or written. A state that equals the call's entry state at these places makes the call do
/// the same again. The call's own locals do not count: they are gone before it and after it.
/// </summary>
/// <param name="depth">The frame depth of the call; objects of this depth and deeper are its own.</param>
internal sealed class Footprint(int depth)
{
    // Plain objects are told apart in pieces of this many bytes (as a shift): finer costs more than it finds.
    private const int PieceShift = 4;

    // A cell that starts this many bytes before a place can still reach it.
    private const int LongestReach = 7;

    // Keys with this bit set are marks on a whole object.
    private const int MarkBit = 31;

    // A call that looks at more than this is not worth remembering.
    private const int MaximumPlaces = 8192;

    private readonly HashSet<ulong> _pieces = [];
    private readonly HashSet<ulong> _objects = [];
    private readonly HashSet<ulong> _wholeObjects = [];
    private readonly HashSet<ulong> _addresses = [];
    private ulong _lastPiece = ulong.MaxValue;

    // Made when the call is over and first asked for.
    private ulong[]? _piecesInOrder;

    public bool IsTooLarge => _pieces.Count + _addresses.Count > MaximumPlaces;

    public void Touch(Region region, long offset, int width)
    {
        if (region.Depth >= depth)
        {
            return;
        }

        var first = MemoryModel.Key(region, Math.Max(0, offset - LongestReach)) >> PieceShift;
        var last = MemoryModel.Key(region, Math.Max(0, offset + width - 1)) >> PieceShift;
        if (first == last && first == _lastPiece)
        {
            return;
        }

        _lastPiece = first == last ? first : ulong.MaxValue;
        _objects.Add((ulong)region.Id);
        for (var piece = first; piece <= last; piece++)
        {
            _pieces.Add(piece);
        }
    }

    public void TouchWhole(Region region)
    {
        if (region.Depth < depth)
        {
            _objects.Add((ulong)region.Id);
            _wholeObjects.Add((ulong)region.Id);
        }
    }

    public void Touch(ulong address) => _addresses.Add(address);

    /// <summary>
    /// Whether two memories are the same at all these places. Looks the places up: two states may differ in far more cells than a call
    /// has looked at.
    /// </summary>
    public bool AreSame(PersistentMap<MemoryCell> then, PersistentMap<MemoryCell> now)
    {
        var pieces = _piecesInOrder ??= [.. _pieces];
        for (var i = 0; i < pieces.Length; i++)
        {
            if (!Same(pieces[i] << PieceShift, PieceShift))
            {
                // What differs from this state is likely to differ from the next one, too.
                (pieces[0], pieces[i]) = (pieces[i], pieces[0]);
                return false;
            }
        }

        foreach (var region in _wholeObjects)
        {
            if (!Same(region << 32, MarkBit))
            {
                return false;
            }
        }

        foreach (var region in _objects)
        {
            if (!Same((region << 32) | (1UL << MarkBit), MarkBit))
            {
                return false;
            }
        }

        return true;

        bool Same(ulong prefix, int freeBits) =>
            PersistentMap<MemoryCell>.AllDifferences(
                then,
                now,
                prefix,
                freeBits,
                static (_, left, right) => MemoryCell.AreSame(left, right)
            );
    }

    /// <summary>Whether the byte at an absolute address matters.</summary>
    public bool CoversAddress(ulong address) => _addresses.Contains(address);

    /// <summary>Adds what an inner call looked at; its caller's locals may be among them.</summary>
    public void Absorb(Footprint inner, RegionTable regions)
    {
        _addresses.UnionWith(inner._addresses);
        foreach (var piece in inner._pieces)
        {
            var region = regions[piece >> (32 - PieceShift)];
            if (region.Depth < depth)
            {
                _objects.Add((ulong)region.Id);
                _pieces.Add(piece);
            }
        }

        foreach (var whole in inner._wholeObjects)
        {
            TouchWhole(regions[whole]);
        }
    }
}
