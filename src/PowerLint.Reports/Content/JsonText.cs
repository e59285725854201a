using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PowerLint.Reports;

/// <summary>Writes JSON documents to text: indented, with line feeds, letters as they are.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes one document and ends the line.</summary>
    internal static void Write(TextWriter output, Action<Utf8JsonWriter> document)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, Options))
        {
            document(writer);
        }

        output.Write(Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length));
        output.Write('\n');
    }
}
