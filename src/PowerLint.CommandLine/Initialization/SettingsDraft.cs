using System.Globalization;
using System.Text;

namespace PowerLint.CommandLine;

/// <summary>Writes a first <c>powerlint.yaml</c> from what was found.</summary>
internal static class SettingsDraft
{
    /// <summary>The text of the file; paths in it are relative to the folder.</summary>
    internal static string Write(TreeFindings found, string folder)
    {
        var text = new StringBuilder();
        if (found.Device is { } device)
        {
            text.Append("# The part, as its compiler names it");
            text.Append(found.NamedIn is { } file ? $"; from {Path.GetRelativePath(folder, file)}.\n" : ".\n");
            text.Append(CultureInfo.InvariantCulture, $"device: {device}\n");
        }
        else
        {
            text.Append(
                "# The part, as its compiler names it; 'powerlint devices' lists those that there are models of.\n"
            );
            text.Append(
                found.UnknownPart is { } part
                    ? $"# The build names {part}, which has no model yet.\n"
                    : "# Nothing in the build names it.\n"
            );
            text.Append("# device: NAME\n");
        }

        text.Append("\n# Supply voltage and package let costs and pins that are not bonded out be told.\n");
        text.Append("# supply-volts: 3.0\n# package: NAME\n");
        if (found.CpuHertz is { } hertz)
        {
            text.Append(CultureInfo.InvariantCulture, $"\nclocks: {{ cpu-hertz: {hertz} }}\n");
        }

        text.Append(
            """

            # What the board does with each pin: what it drives, what pulls it. Without this, many findings depend on the board.
            # board:
            #   pins:
            #     PB3: { load: "what it switches", active: high, milliamps: 2.0 }
            #     PD2: { pull: up, ohms: 10000 }

            """
        );
        if (!found.Foreign.IsEmpty)
        {
            text.Append("\n# Findings in other people's code are not shown; it is analysed all the same.\n");
            text.Append($"exclude: [{string.Join(", ", found.Foreign.Select(name => $"\"{name}/**\""))}]\n");
        }

        return text.ToString();
    }
}
