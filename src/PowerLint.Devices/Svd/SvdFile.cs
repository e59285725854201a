using System.Xml;
using System.Xml.Linq;

namespace PowerLint.Devices;

/// <summary>
/// Reads the XML of a CMSIS-SVD file. The file is not trusted: no document type, so no entities; nothing is fetched; its size and
/// its depth are bounded.
/// </summary>
internal static class SvdFile
{
    /// <summary>The largest file that is read, in characters; vendors' own end at a few million.</summary>
    public const int MostCharacters = 32 << 20;

    /// <summary>The deepest nesting that is read; the standard's own structure needs some ten levels, and one a nested cluster.</summary>
    public const int MostLevels = 64;

    /// <summary>The root element <c>device</c>, or null with the reason among the errors.</summary>
    public static XElement? Read(string path, string shown, DeviceModelErrors errors)
    {
        try
        {
            // Bytes are at least characters: a file that cannot fit is not read at all.
            if (new FileInfo(path).Length > 4L * MostCharacters)
            {
                errors.Add(shown, 0, TooLarge);
                return null;
            }

            if (!CheckDepth(path, shown, errors))
            {
                return null;
            }

            using var reader = XmlReader.Create(path, Settings());
            var root = XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
            if (root.Name.LocalName is "device" && root.Name.NamespaceName.Length == 0)
            {
                return root;
            }

            errors.Add(
                shown,
                ((IXmlLineInfo)root).LineNumber,
                $"this is no CMSIS-SVD file: its root is '{Shortened(root.Name.LocalName)}', not 'device'"
            );
        }
        catch (XmlException exception)
        {
            errors.Add(shown, exception.LineNumber, Cause(exception));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            errors.Add(shown, 0, $"cannot be read: {exception.Message}");
        }

        return null;
    }

    private static string TooLarge =>
        $"the file has more than {MostCharacters >> 20} million characters, more than any part's description needs: it is not read";

    private static XmlReaderSettings Settings() =>
        new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            MaxCharactersInDocument = MostCharacters,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
        };

    private static bool CheckDepth(string path, string shown, DeviceModelErrors errors)
    {
        using var reader = XmlReader.Create(path, Settings());
        while (reader.Read())
        {
            if (reader.Depth > MostLevels)
            {
                errors.Add(
                    shown,
                    ((IXmlLineInfo)reader).LineNumber,
                    $"elements are nested more than {MostLevels} deep, more than CMSIS-SVD needs: the file is not read"
                );
                return false;
            }
        }

        return true;
    }

    // The reader's own messages speak of its settings, which the user cannot change.
    private static string Cause(XmlException exception)
    {
        if (exception.Message.Contains("DTD", StringComparison.Ordinal))
        {
            return "the file has a document type declaration, which CMSIS-SVD does not use: remove it";
        }

        if (exception.Message.Contains("MaxCharactersInDocument", StringComparison.Ordinal))
        {
            return TooLarge;
        }

        var at = exception.Message.LastIndexOf(" Line ", StringComparison.Ordinal);
        return $"not valid XML: {(at < 0 ? exception.Message : exception.Message[..at])}";
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
