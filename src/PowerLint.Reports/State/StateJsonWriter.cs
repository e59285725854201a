using System.Text.Json;
using PowerLint.Analysis;
using PowerLint.Devices;

namespace PowerLint.Reports;

/// <summary>
/// Writes the register state at every resting point as JSON, for programs to read. A 0 bit in <c>known</c> can be either;
/// registers that the model does not name but the program writes are listed byte by byte, by address.
/// </summary>
public static class StateJsonWriter
{
    /// <summary>Writes one JSON document.</summary>
    public static void Write(AnalysisResult result, ReportPaths paths, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(output);
        JsonText.Write(output, writer => WriteDocument(writer, result, paths));
    }

    /// <summary>Writes the states of several images as one JSON document.</summary>
    public static void Write(
        IReadOnlyList<(string? Image, AnalysisResult Result)> images,
        ReportPaths paths,
        TextWriter output
    )
    {
        ArgumentNullException.ThrowIfNull(images);
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(output);
        JsonText.Write(
            output,
            writer =>
            {
                writer.WriteStartObject();
                writer.WriteStartArray("images");
                foreach (var (image, result) in images)
                {
                    WriteDocument(writer, result, paths, image);
                }

                writer.WriteEndArray();
                writer.WriteEndObject();
            }
        );
    }

    private static void WriteDocument(
        Utf8JsonWriter writer,
        AnalysisResult result,
        ReportPaths paths,
        string? image = null
    )
    {
        writer.WriteStartObject();
        if (image is not null)
        {
            writer.WriteString("image", image);
        }

        writer.WriteString("device", result.Device.Name);
        writer.WriteStartArray("points");
        foreach (var point in result.RestingPoints)
        {
            WritePoint(writer, result.Device, point, paths);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter writer, DeviceModel device, RestingPoint point, ReportPaths paths)
    {
        writer.WriteStartObject();
        writer.WriteString("kind", point.Kind == RestingKind.Sleep ? "sleep" : "endless-loop");
        writer.WriteString("file", paths.Show(point.Range.File.Path));
        writer.WriteNumber("line", point.Range.Line);
        writer.WriteString("function", point.Function);
        writer.WriteStartObject("registers");
        foreach (var register in device.Registers.Where(register => register.Kind != RegisterKind.Option))
        {
            ulong? address = register.IsAddressable ? register.Address : null;
            WriteRegister(writer, register.Name, address, register.WidthBits, point.State.Read(register));
        }

        foreach (var (address, bits) in point.State.UnmodelledBytes)
        {
            WriteRegister(writer, BitText.Address(address), address, 8, bits);
        }

        writer.WriteEndObject();
        writer.WriteEndObject();
    }

    private static void WriteRegister(Utf8JsonWriter writer, string name, ulong? address, int widthBits, KnownBits bits)
    {
        var known = bits.Known & BitText.Mask(widthBits);
        writer.WriteStartObject(name);
        if (address is { } place)
        {
            writer.WriteNumber("address", place);
        }

        writer.WriteNumber("width", widthBits);
        writer.WriteString("known", BitText.Hex(known, widthBits));
        writer.WriteString("value", BitText.Hex(bits.Value & known, widthBits));
        writer.WriteEndObject();
    }
}
