using PowerLint.Frontend;
using PowerLint.Program;

namespace PowerLint.CommandLine;

/// <summary>Which images to look at: all that there are, or the one that was asked for.</summary>
internal static class ImageChoice
{
    /// <summary>The images; none where the sources have no main because of their errors.</summary>
    /// <exception cref="UsageException">There is no such image, or none at all.</exception>
    internal static IReadOnlyList<ImageUnits> Choose(ReadResult read, string? asked)
    {
        var images = ImageFinder.Find([
            .. read.Units.Zip(read.Targets, (unit, target) => new UnitToLink(unit, target)),
        ]);
        if (images.Count == 0)
        {
            return read.Errors.Count > 0
                ? images
                : throw new UsageException(
                    "no main() in the C files that were read: give all files of one image, the one with main() among them"
                );
        }

        if (asked is null)
        {
            return images;
        }

        return images.FirstOrDefault(image => string.Equals(image.Name, asked, StringComparison.Ordinal)) is { } chosen
            ? [chosen]
            : throw UsageException.Unknown(
                "image",
                asked,
                images.Select(image => image.Name),
                $"The images are {string.Join(", ", images.Select(image => image.Name))}."
            );
    }
}
