using System.Collections.Immutable;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.CommandLine;

/// <summary>Which device: as asked for, as configured, or as the compiler was told.</summary>
internal static class DeviceChoice
{
    private const string HowToName = "name the part with --device, or as device: in powerlint.yaml";

    /// <summary>Opens the models that come with the product.</summary>
    internal static DeviceCatalog OpenCatalog()
    {
        try
        {
            return DeviceCatalog.Open();
        }
        catch (DeviceModelException exception)
        {
            throw new UsageException(exception.Message);
        }
    }

    /// <summary>The name that was given, or null where none was.</summary>
    internal static string? Named(DeviceCatalog catalog, string? asked, Settings settings)
    {
        var name = asked ?? settings.Device;
        if (name is not null && !catalog.Has(name))
        {
            var where = asked is null ? $"{settings.Shown}: " : "";
            throw new UsageException(
                $"{where}there is no model of a device '{name}'{Suggest(catalog.Nearest(name))} "
                    + "Run 'powerlint devices' for all of them."
            );
        }

        return name;
    }

    /// <summary>The part that flags and macros name.</summary>
    internal static string Detect(DeviceCatalog catalog, ImmutableArray<string> flags, Image image)
    {
        var macros = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, value) in image.Units.SelectMany(unit => unit.Macros))
        {
            macros.TryAdd(name, value);
        }

        return catalog.Detect(flags, macros) switch
        {
            DeviceDetection.Match match => match.Name,
            DeviceDetection.Ambiguous ambiguous => throw new UsageException(
                $"the compiler flags name several devices: {string.Join(", ", ambiguous.Names)} "
                    + $"(from {string.Join(", ", ambiguous.Evidence)}); {HowToName}"
            ),
            DeviceDetection.Unknown { Asked: { } asked } unknown => throw new UsageException(
                $"there is no model of the device '{asked}' that the compiler flags name{Suggest(unknown.Nearest)} "
                    + "Run 'powerlint devices' for all of them."
            ),
            _ when PartOf(macros.Keys) is { } part => throw new UsageException(
                $"there is no model of the device '{part}' that the compiler flags name{Suggest(catalog.Nearest(part))} "
                    + "Run 'powerlint devices' for all of them."
            ),
            _ => throw new UsageException($"the compiler flags do not say which device this is: {HowToName}"),
        };
    }

    // Compilers for AVR parts define __AVR_ATmega32__ for -mmcu=atmega32.
    private static string? PartOf(IEnumerable<string> macros) =>
        macros
            .Where(name =>
                name.StartsWith("__AVR_AT", StringComparison.Ordinal) && name.EndsWith("__", StringComparison.Ordinal)
            )
            .Select(name => name["__AVR_".Length..^2].ToLowerInvariant())
            .FirstOrDefault();

    /// <summary>Loads a model with the configured fuses.</summary>
    internal static DeviceModel Load(DeviceCatalog catalog, string name, Settings? settings = null)
    {
        try
        {
            CheckOptions(catalog, name, settings);
            var options = (settings?.Options ?? []).ToImmutableDictionary(
                option => option.Name,
                option => option.Value,
                StringComparer.Ordinal
            );
            return catalog.Load(name, options);
        }
        catch (DeviceModelException exception)
        {
            throw new UsageException(exception.Message);
        }
    }

    /// <summary>Says which line of the configuration names a fuse that the part does not have.</summary>
    private static void CheckOptions(DeviceCatalog catalog, string name, Settings? settings)
    {
        if (settings is null || settings.Options.IsEmpty)
        {
            return;
        }

        string[] known =
        [
            .. catalog
                .Load(name)
                .Registers.Where(register => register.Kind == RegisterKind.Option)
                .SelectMany(register =>
                    register.Fields.Keys.Select(field => $"{register.Name}.{field}").Prepend(register.Name)
                ),
        ];
        ConfigurationError[] errors =
        [
            .. settings
                .Options.Where(option => !known.Contains(option.Name, StringComparer.Ordinal))
                .Select(option => new ConfigurationError(
                    settings.Shown,
                    option.Line,
                    $"{name} has no fuse or option '{option.Name}'{NearestNames.Hint(option.Name, known)}"
                )),
        ];
        if (errors.Length > 0)
        {
            throw new ConfigurationException(errors);
        }
    }

    private static string Suggest(IReadOnlyCollection<string> nearest) =>
        nearest.Count == 0 ? "." : $"; nearest: {string.Join(", ", nearest)}.";
}
