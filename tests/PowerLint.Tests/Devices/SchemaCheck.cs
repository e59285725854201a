using System.Text.Json.Nodes;
using Json.Schema;
using PowerLint.Testing;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace PowerLint.Tests.Devices;

/// <summary>Holds device files against the published schema.</summary>
internal static class SchemaCheck
{
    private static readonly JsonSchema Schema = JsonSchema.FromFile(RepositoryRoot.Combine("devices", "schema.json"));

    /// <summary>What does not fit, a line each; empty where everything does.</summary>
    public static string Differences(TextReader text)
    {
        var stream = new YamlStream();
        stream.Load(text);
        var results = Schema.Evaluate(
            System.Text.Json.JsonSerializer.SerializeToElement(ToJson(stream.Documents[0].RootNode)),
            new EvaluationOptions { OutputFormat = OutputFormat.List }
        );
        return results.IsValid
            ? ""
            : string.Join(
                Environment.NewLine,
                (results.Details ?? [])
                    .Where(d => d.Errors is not null)
                    .Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")
            );
    }

    private static JsonNode? ToJson(YamlNode node)
    {
        switch (node)
        {
            case YamlMappingNode map:
                var made = new JsonObject();
                foreach (var (key, value) in map.Children)
                {
                    made[((YamlScalarNode)key).Value!] = ToJson(value);
                }

                return made;
            case YamlSequenceNode list:
                return new JsonArray([.. list.Children.Select(ToJson)]);
            case YamlScalarNode { Style: ScalarStyle.Plain, Value: "~" or "null" or "" }:
                return null;
            case YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } flag:
                return JsonValue.Create(flag.Value is "true");
            case YamlScalarNode { Style: ScalarStyle.Plain } number
                when double.TryParse(
                    number.Value,
                    System.Globalization.NumberStyles.Float,
                    System.Globalization.CultureInfo.InvariantCulture,
                    out var real
                ):
                return real == Math.Floor(real) ? JsonValue.Create((long)real) : JsonValue.Create(real);
            case YamlScalarNode scalar:
                return JsonValue.Create(scalar.Value);
            default:
                throw new InvalidOperationException("device files have no anchors");
        }
    }
}
