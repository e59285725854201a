using System.Text;

namespace PowerLint.CommandLine;

/// <summary>A source file as bytes and text, so that a change of the text leaves every other byte as it was.</summary>
/// <param name="Text">The text, without a byte-order mark.</param>
/// <param name="Encoding">How the text is written as bytes.</param>
/// <param name="Mark">The byte-order mark, or nothing.</param>
internal sealed record SourceFileText(string Text, Encoding Encoding, byte[] Mark)
{
    private static readonly UTF8Encoding Strict = new(
        encoderShouldEmitUTF8Identifier: false,
        throwOnInvalidBytes: true
    );

    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads a file. What is no UTF-8 is taken byte by byte, which loses nothing.</summary>
    internal static SourceFileText Read(string path)
    {
        var bytes = File.ReadAllBytes(path);
        var mark = bytes.AsSpan().StartsWith(Utf8Mark) ? Utf8Mark.Length : 0;
        try
        {
            return new SourceFileText(Strict.GetString(bytes.AsSpan(mark)), Strict, bytes[..mark]);
        }
        catch (DecoderFallbackException)
        {
            return new SourceFileText(Encoding.Latin1.GetString(bytes.AsSpan(mark)), Encoding.Latin1, bytes[..mark]);
        }
    }

    /// <summary>Whether the columns of the parser are those of <see cref="Text"/>.</summary>
    internal bool IsUtf8 => ReferenceEquals(Encoding, Strict);

    /// <summary>Another text as the file's bytes.</summary>
    internal byte[] Bytes(string text) => [.. Mark, .. Encoding.GetBytes(text)];
}
