using System.Diagnostics;

namespace PowerLint.OracleTests;

/// <summary>Runs the tools that the oracles are made of.</summary>
internal static class ExternalTool
{
    /// <summary>Runs a tool to its end and gives its standard output.</summary>
    /// <exception cref="InvalidOperationException">It is missing or failed; the message says what it printed.</exception>
    public static string Run(string tool, IEnumerable<string> arguments, string? input = null, string? folder = null)
    {
        var start = new ProcessStartInfo(tool, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = input is not null,
            WorkingDirectory = folder ?? Environment.CurrentDirectory,
        };
        Process process;
        try
        {
            process = Process.Start(start) ?? throw new InvalidOperationException($"{tool} did not start.");
        }
        catch (System.ComponentModel.Win32Exception error)
        {
            throw new InvalidOperationException(
                $"{tool} is missing. The oracle tests need Debian's gcc, gcc-avr, avr-libc, binutils-avr and libsimavr-dev.",
                error
            );
        }

        using (process)
        {
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEndAsync();
            if (input is not null)
            {
                process.StandardInput.Write(input);
                process.StandardInput.Close();
            }

            process.WaitForExit();
            return process.ExitCode == 0
                ? output.Result
                : throw new InvalidOperationException(
                    $"{tool} {string.Join(' ', start.ArgumentList)} ended with {process.ExitCode}:\n{errors.Result}"
                );
        }
    }
}
