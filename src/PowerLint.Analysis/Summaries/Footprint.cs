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

    // A call that looks at more than this is not worth remembering.
    private const int MaximumPlaces = 8192;

    private readonly HashSet<ulong> _pieces = [];
    private readonly HashSet<ulong> _objects = [];
    private readonly HashSet<ulong> _wholeObjects = [];
    private readonly HashSet<ulong> _addresses = [];
    private ulong _lastPiece = ulong.MaxValue;

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

    /// <summary>Whether a memory cell matters; the key is <see cref="MemoryModel.Key"/>'s.</summary>
    public bool CoversCell(ulong key)
    {
        var region = key >> 32;
        var isMark = (int)(uint)key < 0;
        return isMark
            ? _objects.Contains(region)
            : _wholeObjects.Contains(region) || _pieces.Contains(key >> PieceShift);
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
