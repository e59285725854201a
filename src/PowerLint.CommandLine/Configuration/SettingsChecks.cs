using PowerLint.Devices;

namespace PowerLint.CommandLine;

/// <summary>Checks a configuration against the device that it is for.</summary>
internal static class SettingsChecks
{
    /// <summary>Checks it.</summary>
    /// <exception cref="ConfigurationException">It names what the device does not have.</exception>
    internal static void Check(Settings settings, DeviceModel device, string file)
    {
        var errors = new List<ConfigurationError>();
        if (settings.Package is { } package && !device.Packages.Contains(package, StringComparer.Ordinal))
        {
            errors.Add(
                new ConfigurationError(
                    file,
                    settings.PackageLine,
                    $"{device.Name} has no package '{package}'; it comes in {string.Join(", ", device.Packages)}"
                )
            );
        }

        var pins = device.Pins.Select(pin => pin.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var (pin, line) in settings.PinLines.Where(entry => !pins.Contains(entry.Pin)))
        {
            errors.Add(
                new ConfigurationError(file, line, $"{device.Name} has no pin '{pin}'{NearestNames.Hint(pin, pins)}")
            );
        }

        var regulators = device.Regulators.Select(regulator => regulator.Name).ToArray();
        foreach (
            var (regulator, line) in settings.RegulatorLines.Where(entry =>
                !regulators.Contains(entry.Regulator, StringComparer.Ordinal)
            )
        )
        {
            errors.Add(
                new ConfigurationError(
                    file,
                    line,
                    $"{device.Name} has no regulator '{regulator}'{NearestNames.Hint(regulator, regulators)}"
                )
            );
        }

        if (errors.Count > 0)
        {
            throw new ConfigurationException([.. errors.OrderBy(error => error.Line)]);
        }
    }
}
