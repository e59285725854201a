using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>Gives every object one region, so that equal addresses are equal values.</summary>
internal sealed class RegionTable(Image image, Action<Region, Initializer> fill)
{
    private readonly List<Region> _regions = [];
    private readonly Dictionary<object, Region> _byObject = [];

    // Of each local, by the depth of its frame: most have one.
    private readonly Dictionary<LocalVariable, List<Region>> _locals = [];

    public Region this[ulong id] => _regions[(int)id];

    public Region Of(GlobalVariable variable)
    {
        if (_byObject.TryGetValue(variable, out var known))
        {
            return known;
        }

        var definition = image.Resolve(variable);
        if (!_byObject.TryGetValue(definition, out var region))
        {
            region = Add(
                new Region(_regions.Count, definition.Name, definition.Type.SizeBytes) { Global = definition }
            );
            _byObject.Add(definition, region);
            if (region.StartsKnown && definition.Initializer is { } initializer)
            {
                fill(region, initializer);
            }
        }

        _byObject[variable] = region;
        return region;
    }

    public Region Of(LocalVariable variable, int depth)
    {
        if (!_locals.TryGetValue(variable, out var regions))
        {
            regions = [];
            _locals.Add(variable, regions);
        }

        foreach (var known in regions)
        {
            if (known.Depth == depth)
            {
                return known;
            }
        }

        var region = Add(new Region(_regions.Count, variable.Name, variable.Type.SizeBytes) { Depth = depth });
        regions.Add(region);
        return region;
    }

    public Region Of(FunctionSymbol function)
    {
        object key = image.Resolve(function) ?? (object)(function.IsStatic ? function : function.Name);
        if (!_byObject.TryGetValue(key, out var region))
        {
            region = Add(new Region(_regions.Count, function.Name, 0) { Function = function });
            _byObject.Add(key, region);
        }

        return region;
    }

    /// <summary>The arguments beyond the named ones of an active call.</summary>
    public Region OfVariadicArguments(Function function, int depth)
    {
        var key = (function, depth);
        if (!_byObject.TryGetValue(key, out var region))
        {
            region = Add(new Region(_regions.Count, $"{function.Name}(...)", 0) { IsVariadic = true, Depth = depth });
            _byObject.Add(key, region);
        }

        return region;
    }

    public Region OfLabel(Function function, string label)
    {
        var key = (function, label);
        if (!_byObject.TryGetValue(key, out var region))
        {
            region = Add(new Region(_regions.Count, label, 0) { Label = label });
            _byObject.Add(key, region);
        }

        return region;
    }

    private Region Add(Region region)
    {
        _regions.Add(region);
        return region;
    }
}
