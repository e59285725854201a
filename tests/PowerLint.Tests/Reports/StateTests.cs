using System.Text.Json;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Reports;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>The register state, for people and for programs.</summary>
public sealed class StateTests
{
    [Fact]
    public void Json_has_the_shape_of_the_design()
    {
        using var document = JsonDocument.Parse(Json());
        var root = document.RootElement;

        Assert.Equal("device points", Names(root));
        Assert.Equal("atmega328p", root.GetProperty("device").GetString());
        var point = Assert.Single(root.GetProperty("points").EnumerateArray());
        Assert.Equal("kind file line function registers", Names(point));
        Assert.Equal("sleep", point.GetProperty("kind").GetString());
        Assert.Equal("main.c", point.GetProperty("file").GetString());
        Assert.Equal(21, point.GetProperty("line").GetInt32());
        Assert.Equal("main", point.GetProperty("function").GetString());

        // Addresses and values: the source's own definitions, which are those of the part's datasheet.
        var registers = point.GetProperty("registers");
        Assert.Equal("""{"address":36,"width":8,"known":"0xff","value":"0x20"}""", Compact(registers, "DDRB"));
        Assert.Equal("""{"address":37,"width":8,"known":"0xff","value":"0x20"}""", Compact(registers, "PORTB"));
        Assert.Equal("""{"address":83,"width":8,"known":"0xff","value":"0x05"}""", Compact(registers, "SMCR"));
        Assert.Equal("""{"address":240,"width":8,"known":"0xff","value":"0x21"}""", Compact(registers, "0x00f0"));
        Assert.False(registers.TryGetProperty("LFUSE", out _), "fuses have no address");
    }

    [Fact]
    public void Every_known_value_is_within_its_known_bits()
    {
        using var document = JsonDocument.Parse(Json());
        foreach (var point in document.RootElement.GetProperty("points").EnumerateArray())
        {
            foreach (var register in point.GetProperty("registers").EnumerateObject())
            {
                var known = Convert.ToUInt64(register.Value.GetProperty("known").GetString(), 16);
                var value = Convert.ToUInt64(register.Value.GetProperty("value").GetString(), 16);
                Assert.Equal(0UL, value & ~known);
                Assert.Equal(0UL, known >> register.Value.GetProperty("width").GetInt32());
            }
        }
    }

    [Fact]
    public void The_table_shows_what_differs_from_reset()
    {
        var difference = GoldenFile.Difference(BenchLamp.Golden("state.txt"), Text(writer => writer.Write(all: false)));
        Assert.True(difference is null, difference);
    }

    [Fact]
    public void All_registers_are_shown_when_asked_for()
    {
        var result = BenchLamp.Analyze();
        var text = Text(writer => writer.Write(all: true));
        foreach (var register in result.Device.Registers)
        {
            Assert.Contains($"    {register.Name} ", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Explaining_a_field_prints_the_deciding_write()
    {
        var result = BenchLamp.Analyze();
        var register = result.Device.Registers.Single(register => register.Name is "DDRB");
        var text = Text(result, writer => writer.Explain(new FieldReference(register, 5, 1, "DDRB.DDB5")));
        var difference = GoldenFile.Difference(BenchLamp.Golden("explain.txt"), text);
        Assert.True(difference is null, difference);
    }

    private static string Json()
    {
        using var writer = new StringWriter();
        StateJsonWriter.Write(BenchLamp.Analyze(), new ReportPaths(BenchLamp.Folder), writer);
        return writer.ToString();
    }

    private static string Text(Action<StateTextWriter> write) => Text(BenchLamp.Analyze(), write);

    private static string Text(AnalysisResult result, Action<StateTextWriter> write)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        write(
            new StateTextWriter(result, new ReportPaths(BenchLamp.Folder), TextConsole.Over(writer, isTerminal: false))
        );
        return writer.ToString();
    }

    private static string Names(JsonElement element) =>
        string.Join(' ', element.EnumerateObject().Select(property => property.Name));

    private static string Compact(JsonElement registers, string name) =>
        JsonSerializer.Serialize(registers.GetProperty(name));
}
