using Microsoft.CodeAnalysis.Sarif;
using PowerLint.Program;

namespace PowerLint.Reports;

/// <summary>Turns source ranges into SARIF locations: relative to the root folder where they lie below it.</summary>
internal sealed class SarifPlaces(ReportPaths paths)
{
    private const string Root = "SRCROOT";

    /// <summary>What the base name of relative addresses stands for.</summary>
    internal Dictionary<string, ArtifactLocation> BaseIds() =>
        new(StringComparer.Ordinal)
        {
            [Root] = new ArtifactLocation { Uri = new Uri(new Uri(paths.Root + "/").AbsoluteUri) },
        };

    /// <summary>A location with a message.</summary>
    internal Location Locate(SourceRange range, string? message = null, string? function = null) =>
        new()
        {
            PhysicalLocation = range.Line < 1 ? null : Physical(range),
            LogicalLocations = function is null
                ? null
                :
                [
                    new LogicalLocation
                    {
                        Name = function,
                        FullyQualifiedName = function,
                        Kind = "function",
                    },
                ],
            Message = message is null ? null : new Message { Text = message },
        };

    /// <summary>A change of the source.</summary>
    internal Microsoft.CodeAnalysis.Sarif.Fix Describe(Rules.Fix fix)
    {
        var result = new Microsoft.CodeAnalysis.Sarif.Fix
        {
            Description = new Message { Text = $"{fix.Description}. {fix.Because}" },
            ArtifactChanges =
            [
                .. fix
                    .Edits.GroupBy(edit => edit.Range.File.Path, StringComparer.Ordinal)
                    .Select(file => new ArtifactChange
                    {
                        ArtifactLocation = Artifact(file.Key),
                        Replacements = [.. file.Select(Replace)],
                    }),
            ],
        };
        result.SetProperty("safe", fix.IsSafe);
        return result;
    }

    private static Replacement Replace(Rules.SourceEdit edit) =>
        new()
        {
            DeletedRegion = new Region
            {
                StartLine = edit.Range.Start.Line,
                StartColumn = edit.Range.Start.Column,
                EndLine = edit.Range.End.Line,
                EndColumn = edit.Range.End.Column,
            },
            InsertedContent = edit.Text.Length == 0 ? null : new ArtifactContent { Text = edit.Text },
        };

    private PhysicalLocation Physical(SourceRange range)
    {
        var region = new Region { StartLine = range.Line, StartColumn = Math.Max(1, range.Start.Column) };
        if (range.End.Line > range.Line || (range.End.Line == range.Line && range.End.Column > range.Start.Column))
        {
            region.EndLine = range.End.Line;
            region.EndColumn = Math.Max(1, range.End.Column);
        }

        return new PhysicalLocation { ArtifactLocation = Artifact(range.File.Path), Region = region };
    }

    private ArtifactLocation Artifact(string path)
    {
        if (paths.TryRelative(path) is not { } relative)
        {
            return new ArtifactLocation { Uri = new Uri(new Uri(path).AbsoluteUri) };
        }

        var escaped = string.Join('/', relative.Split('/').Select(Uri.EscapeDataString));
        return new ArtifactLocation { Uri = new Uri(escaped, UriKind.Relative), UriBaseId = Root };
    }
}
