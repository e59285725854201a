namespace PowerLint.Frontend;

/// <summary>Files that a source could include and that never end, or wait for somebody: to the parser they are empty.</summary>
internal static class Endless
{
    private static readonly string[] Devices =
    [
        "/dev/zero",
        "/dev/full",
        "/dev/random",
        "/dev/urandom",
        "/dev/stdin",
        "/dev/tty",
        "/dev/console",
        "/dev/fd/0",
        "/proc/self/fd/0",
        "/proc/kmsg",
    ];

    private static readonly UnsavedFile[] Known = [.. Devices.Select(device => new UnsavedFile(device, []))];

    /// <summary>What to put in the place of such files, the main file among them where it is a device or a pipe.</summary>
    public static IReadOnlyList<UnsavedFile> FilesFor(string mainFile) =>
        BoundedFile.Length(mainFile) == 0 ? [.. Known, new UnsavedFile(mainFile, [])] : Known;
}
