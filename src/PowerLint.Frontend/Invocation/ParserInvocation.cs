namespace PowerLint.Frontend;

/// <summary>One file, ready to be parsed.</summary>
/// <param name="Command">How the build compiles it.</param>
/// <param name="Target">The target.</param>
/// <param name="Part">The part that the flags or the device name, or null.</param>
/// <param name="Arguments">The parser's arguments.</param>
/// <param name="Unsaved">Files from memory.</param>
/// <param name="Definitions">Macros that flags define.</param>
internal sealed record ParserInvocation(
    CompileCommand Command,
    TargetSelection Target,
    string? Part,
    IReadOnlyList<string> Arguments,
    IReadOnlyList<UnsavedFile> Unsaved,
    IReadOnlyList<string> Definitions
)
{
    /// <summary>The functions that vector tables in assembly files name: they are interrupt handlers.</summary>
    public IReadOnlyList<string> Vectors { get; init; } = [];

    /// <summary>
    /// Prepares the commands. A database may list programs for the host, too, or for a second processor: the architecture
    /// that most of the files are for is the firmware's, the others are left out with a notice.
    /// </summary>
    /// <exception cref="ReadException">No command's target is known.</exception>
    public static IReadOnlyList<ParserInvocation> PrepareAll(
        SelectedCommands selected,
        ReadRequest request,
        NoticeList notices
    )
    {
        var prepared = new List<ParserInvocation>();
        ReadException? failure = null;
        foreach (var command in selected.Commands)
        {
            try
            {
                prepared.Add(Prepare(command, request, notices) with { Vectors = selected.Vectors });
            }
            catch (ReadException error)
            {
                failure ??= error;
                notices.Add(
                    "target-unknown",
                    "Files for no microcontroller that can be told were not read",
                    command.File
                );
            }
        }

        if (prepared.Count == 0)
        {
            throw failure!;
        }

        var architecture = prepared
            .GroupBy(invocation => invocation.Target.Architecture, StringComparer.Ordinal)
            .MaxBy(group => group.Count())!
            .Key;
        foreach (
            var other in prepared.Where(invocation =>
                !string.Equals(invocation.Target.Architecture, architecture, StringComparison.Ordinal)
            )
        )
        {
            notices.Add(
                "other-target",
                $"Most files are for {architecture}; files for another target were not read",
                other.Command.File
            );
        }

        return
        [
            .. prepared.Where(invocation =>
                string.Equals(invocation.Target.Architecture, architecture, StringComparison.Ordinal)
            ),
        ];
    }

    /// <summary>Puts the parser's arguments together.</summary>
    /// <exception cref="ReadException">The target is not known.</exception>
    public static ParserInvocation Prepare(CompileCommand command, ReadRequest request, NoticeList notices)
    {
        var given = ResponseFiles.Expand(command.Flags, command.Directory);
        var expanded = ForeignFlags.Translate(command.Compiler, given, notices);
        var target =
            TargetSelection.From(command.Compiler, expanded, request.DeviceName)
            ?? throw new ReadException(
                ReadFailureKind.TargetUnknown,
                command.File,
                line: null,
                $"{command.File}: neither the compiler ({command.Compiler ?? "none given"}) nor its flags tell which microcontroller this is for. "
                    + "Give --device NAME, or flags such as -- avr-gcc -mmcu=atmega328p."
            );
        var flags = DriverFlags.Translate(expanded, target.Architecture);
        foreach (var dropped in flags.Dropped)
        {
            notices.Add("flag-left-out", "Flags that the parser does not know were left out", dropped);
        }

        var arguments = new List<string> { "-target", target.Triple };
        var part = TargetSelection.PartFlag(expanded) ?? PartOf(request.DeviceName, target);
        arguments.AddRange(PartFlags.For(target, part, expanded, request.CacheFolder, notices));
        arguments.AddRange([
            "-x",
            command.IsCPlusPlus ? "c++" : "c",
            "-ffreestanding",
            "-fgnuc-version=9.3.1",
            "-nostdlibinc",
            "-nobuiltininc",
            "-w",
            // Mistakes that the cross compilers only warn of.
            "-Wno-implicit-function-declaration",
            "-Wno-implicit-int",
            "-Wno-int-conversion",
            "-Wno-incompatible-pointer-types",
            "-Wno-incompatible-function-pointer-types",
            "-Wno-return-mismatch",
            "-Wno-return-type",
            "-ferror-limit=0",
            // Headers with delays choose the exact form only where the build optimises.
            "-Os",
            "-working-directory",
            command.Directory,
        ]);
        if (string.Equals(target.Architecture, TargetSelection.Avr.Architecture, StringComparison.Ordinal))
        {
            // avr-gcc lets bit-fields cross the bytes of their type; nothing else changes, all alignments are one there.
            arguments.Add("-fpack-struct=1");
        }

        if (!expanded.Contains("-ffreestanding", StringComparer.Ordinal))
        {
            // Free-standing only so that main may be of any type; avr-libc's exact delays ask for a hosted compiler.
            arguments.AddRange(["-U__STDC_HOSTED__", "-D__STDC_HOSTED__=1"]);
        }

        arguments.AddRange(flags.Flags);
        var toolchain = ToolchainQuery.Find(target, command, expanded, request);
        if (toolchain.Folders.Length == 0)
        {
            notices.Add(
                "toolchain-not-found",
                $"No {target.Drivers[0]} was found on the search path: only PowerLint's own free-standing headers are used."
            );
        }

        foreach (var folder in SystemFolders(toolchain, request))
        {
            arguments.Add("-isystem");
            arguments.Add(folder);
        }

        arguments.Add("-include");
        arguments.Add(OwnHeaders.Prelude);
        return new ParserInvocation(
            command,
            target,
            part,
            arguments,
            [OwnHeaders.PreludeFile(target.Architecture, toolchain.Macros)],
            flags.Definitions
        );
    }

    private static IEnumerable<string> SystemFolders(ToolchainAnswer toolchain, ReadRequest request) =>
        request
            .HeaderFolders.Select(folder => Path.GetFullPath(Path.Combine(request.WorkingDirectory, folder)))
            .Append(OwnHeaders.Preferred)
            .Concat(toolchain.Folders)
            .Append(OwnHeaders.Freestanding);

    private static string? PartOf(string? device, TargetSelection target) =>
        device is not null && target == TargetSelection.FromPart(device) ? device.ToLowerInvariant() : null;
}
