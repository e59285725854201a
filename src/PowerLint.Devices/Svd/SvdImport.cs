using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A family file's skeleton, made from a CMSIS-SVD file.</summary>
/// <param name="Text">The YAML text.</param>
/// <param name="Registers">How many registers it has, further views among them.</param>
/// <param name="Interrupts">How many interrupts.</param>
/// <param name="Notices">Flaws of the SVD file that were mended, by line.</param>
/// <param name="Missing">What is left to fill in.</param>
public sealed record SvdSkeleton(
    string Text,
    int Registers,
    int Interrupts,
    ImmutableArray<SvdNotice> Notices,
    ImmutableArray<string> Missing
);

/// <summary>Turns a CMSIS-SVD file into a skeleton of a family file.</summary>
public static class SvdImport
{
    /// <summary>Imports a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="shown">The file as messages name it.</param>
    /// <param name="family">The family's name, or null for the device's name in small letters.</param>
    /// <exception cref="DeviceModelException">The file cannot be read, is no CMSIS-SVD, or holds bad values.</exception>
    public static SvdSkeleton Import(string path, string shown, string? family)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(shown);
        var errors = new DeviceModelErrors();
        var device = SvdReader.Read(path, shown, errors, out var notices);
        errors.ThrowIfAny();
        var text = FamilySkeleton.Write(
            device!,
            family ?? device!.Name.ToLowerInvariant(),
            Path.GetFileName(path),
            out var missing
        );
        return new SvdSkeleton(
            text,
            device!.Peripherals.Sum(peripheral => peripheral.Registers.Length),
            device.Interrupts.Length,
            notices,
            missing
        );
    }
}
