using System.CommandLine;

namespace PowerLint.CommandLine;

/// <summary>The options that say which firmware on which device.</summary>
internal sealed class FirmwareOptions
{
    private readonly Option<string> _device = new("--device", "-d")
    {
        Description = "The part, as its compiler names it (default: from powerlint.yaml, else from the compiler flags)",
        HelpName = "NAME",
    };

    private readonly Option<string> _configuration = new("--config", "-c")
    {
        Description = "The configuration (default: powerlint.yaml, found upwards from the sources)",
        HelpName = "FILE",
    };

    private readonly Option<string> _database = new("-p")
    {
        Description = "A compile database, or the folder that holds compile_commands.json",
        HelpName = "DIR_OR_DATABASE",
    };

    private readonly Option<string> _image = new("--image")
    {
        Description =
            "The image, where a compile database holds several: its target, or its main file or folder (default: all)",
        HelpName = "NAME",
    };

    private readonly Option<string[]> _allowedDrivers = new("--allow-driver")
    {
        Description =
            "A cross compiler that may be asked for its header folders, besides the well-known ones on the search path: a glob over names, or over full paths",
        HelpName = "GLOB",
    };

    private readonly Option<string[]> _headerFolders = new("--header-folder")
    {
        Description = "A further folder with headers of the tool chain or a library",
        HelpName = "FOLDER",
    };

    private readonly Option<bool> _noCache = new("--no-cache")
    {
        Description = "Read every file anew: take nothing from the cache and keep nothing in it",
    };

    private readonly Option<bool> _verbose = new("--verbose", "-v")
    {
        Description = "Say on standard error how long each stage took",
    };

    private readonly Argument<string[]> _files = new("FILES")
    {
        Description =
            "C sources. With -p: only these of the database. Without: all of them form one image, compiled with the flags after --",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Options.Add(_device);
        command.Options.Add(_configuration);
        command.Options.Add(_database);
        command.Options.Add(_image);
        command.Options.Add(_allowedDrivers);
        command.Options.Add(_headerFolders);
        command.Options.Add(_noCache);
        command.Options.Add(_verbose);
        command.Arguments.Add(_files);
    }

    /// <summary>What was asked for.</summary>
    internal FirmwareRequest Read(ParseResult parsed, CommandSession session) =>
        new(
            parsed.GetValue(_device),
            parsed.GetValue(_configuration),
            parsed.GetValue(_database),
            [.. parsed.GetValue(_files) ?? []],
            session.CompilerFlags,
            [.. parsed.CommandResult.Command.Options.Select(option => option.Name)]
        )
        {
            AllowedDrivers = [.. parsed.GetValue(_allowedDrivers) ?? []],
            HeaderFolders = [.. parsed.GetValue(_headerFolders) ?? []],
            Image = parsed.GetValue(_image),
            UsesCache = !parsed.GetValue(_noCache),
            IsVerbose = parsed.GetValue(_verbose),
        };
}
