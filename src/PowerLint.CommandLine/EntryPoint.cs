using PowerLint.CommandLine;

return CommandTree.Run(args, new SystemConsole());
