using System.CommandLine;

namespace PowerLint.CommandLine;

/// <summary>The options that say how and where to write a report.</summary>
internal sealed class ReportOptions
{
    private readonly Option<string> _format;

    private readonly Option<string> _output = new("--output", "-o")
    {
        Description = "The file to write (default: standard output)",
        HelpName = "FILE",
    };

    /// <summary>Offers some formats, the first by default.</summary>
    internal ReportOptions(params string[] formats)
    {
        _format = new Option<string>("--format", "-f")
        {
            Description = "How to write the report",
            DefaultValueFactory = _ => formats[0],
        };
        _format.AcceptOnlyFromAmong(formats);
    }

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Options.Add(_format);
        command.Options.Add(_output);
    }

    /// <summary>The format chosen.</summary>
    internal string Format(ParseResult parsed) => parsed.GetRequiredValue(_format);

    /// <summary>The file to write, or null.</summary>
    internal string? Output(ParseResult parsed) => parsed.GetValue(_output);
}
