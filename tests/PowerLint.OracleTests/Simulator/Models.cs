using System.Collections.Concurrent;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>The repository's device models, each loaded once.</summary>
internal static class Models
{
    private static readonly Lazy<DeviceCatalog> Catalog = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("devices"))
    );

    private static readonly ConcurrentDictionary<string, DeviceModel> Loaded = new(StringComparer.Ordinal);

    /// <summary>A part's model.</summary>
    public static DeviceModel Of(string device) => Loaded.GetOrAdd(device, name => Catalog.Value.Load(name));
}
