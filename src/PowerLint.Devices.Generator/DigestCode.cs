using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using Microsoft.CodeAnalysis;

namespace PowerLint.Devices.Generator;

/// <summary>
/// The methods for each type that a model is made of. A class is an object with an identity: what the model shares is written once and
/// shared again when it is read.
/// </summary>
internal sealed class DigestCode(INamedTypeSymbol reader, Action<IPropertySymbol, ITypeSymbol> unknown)
{
    private static readonly SymbolDisplayFormat Full = SymbolDisplayFormat.FullyQualifiedFormat;

    private readonly HashSet<string> _written = new(StringComparer.Ordinal);

    public StringBuilder Writing { get; } = new();

    public StringBuilder Reading { get; } = new();

    /// <summary>Adds a class or a structure, and all that its properties need.</summary>
    public void Add(INamedTypeSymbol type)
    {
        if (!_written.Add(type.Name))
        {
            return;
        }

        var properties = Properties(type);
        var writing = new StringBuilder();
        var reading = new StringBuilder();
        foreach (var property in properties)
        {
            writing.AppendLine($"        {WriteOf(property, property.Type, "value." + property.Name)};");
            reading.AppendLine($"        var read{property.Name} = {ReadOf(property, property.Type)};");
        }

        var name = type.ToDisplayString(Full);
        var made = Construction(type, name, properties);
        if (reader.GetMembers("Adjusted").OfType<IMethodSymbol>().Any(m => Same(m.Parameters[0].Type, type)))
        {
            made = $"Adjusted({made})";
        }

        if (type.IsReferenceType)
        {
            Writing.AppendLine($"    internal void Write({name}? value)\n    {{");
            Writing
                .AppendLine("        if (!IsNewObject(value)) return;")
                .Append(writing)
                .AppendLine("        Keep(value);\n    }");
            Reading.AppendLine($"    internal {name}? Read{type.Name}()\n    {{");
            Reading
                .AppendLine($"        if (!IsNewObject(out var known)) return ({name}?)known;")
                .Append(reading)
                .AppendLine($"        var made = {made};\n        Keep(made);\n        return made;\n    }}");
            return;
        }

        Writing.AppendLine($"    private void Write({name} value)\n    {{").Append(writing).AppendLine("    }");
        Reading.AppendLine($"    private {name} Read{type.Name}()\n    {{").Append(reading);
        Reading.AppendLine($"        return {made};\n    }}");
    }

    // A record is made by its primary constructor, everything else by initialisers.
    private static string Construction(INamedTypeSymbol type, string name, IReadOnlyList<IPropertySymbol> properties)
    {
        var parameters =
            type.InstanceConstructors.Where(c => !c.Parameters.Any(p => Same(p.Type, type)))
                .OrderByDescending(c => c.Parameters.Length)
                .FirstOrDefault()
                ?.Parameters.Select(p => p.Name)
                .ToArray()
            ?? [];
        var rest = properties
            .Where(p => !parameters.Contains(p.Name))
            .Select(p => $"{p.Name} = read{p.Name}")
            .ToArray();
        return $"new {name}({string.Join(", ", parameters.Select(p => "read" + p))})"
            + (rest.Length == 0 ? "" : $" {{ {string.Join(", ", rest)} }}");
    }

    private static IPropertySymbol[] Properties(INamedTypeSymbol type) =>
        [
            .. type.GetMembers()
                .OfType<IPropertySymbol>()
                .Where(p =>
                    !p.IsStatic
                    && !p.IsIndexer
                    && p.SetMethod is not null
                    && p.DeclaredAccessibility == Accessibility.Public
                ),
        ];

    private string WriteOf(IPropertySymbol property, ITypeSymbol type, string value)
    {
        if (Arguments(type, "ImmutableArray", 1) is { } items)
        {
            return $"Count({value}.Length); foreach (var {Loop(value)} in {value}) {{ {WriteOf(property, items[0], Loop(value))}; }}";
        }

        if (Arguments(type, "IReadOnlyDictionary", 2) is { } pair)
        {
            var entry = Loop(value);
            return $"Count({value}.Count); foreach (var {entry} in {value}) {{ {WriteOf(property, pair[0], entry + ".Key")}; "
                + $"{WriteOf(property, pair[1], entry + ".Value")}; }}";
        }

        return type switch
        {
            { TypeKind: TypeKind.Enum } => $"Count((int){value})",
            _ when IsPrimitive(type) => $"Write({value})",
            _ when Arguments(type, "Nullable", 1) is { } inner => $"Write({value}.HasValue); "
                + $"if ({value}.HasValue) {{ {WriteOf(property, inner[0], value + ".Value")}; }}",
            INamedTypeSymbol named when IsOwn(named) => With(named, $"Write({value})"),
            _ => Fail(property, type),
        };
    }

    private string ReadOf(IPropertySymbol property, ITypeSymbol type)
    {
        if (Arguments(type, "ImmutableArray", 1) is { } items)
        {
            return $"{ArrayReader(property, items[0])}()";
        }

        if (Arguments(type, "IReadOnlyDictionary", 2) is { } pair)
        {
            return $"{DictionaryReader(property, pair[0], pair[1])}()";
        }

        return type switch
        {
            { TypeKind: TypeKind.Enum } => $"({type.ToDisplayString(Full)})Count()",
            { SpecialType: SpecialType.System_String } => "ReadString()" + Bang(type),
            _ when IsPrimitive(type) => $"Read{type.Name}()",
            _ when Arguments(type, "Nullable", 1) is { } inner =>
                $"ReadBoolean() ? {ReadOf(property, inner[0])} : ({type.ToDisplayString(Full)})null",
            INamedTypeSymbol named when IsOwn(named) => $"Read{named.Name}()"
                + (named.IsReferenceType ? Bang(type) : ""),
            _ => Fail(property, type),
        };
    }

    private string ArrayReader(IPropertySymbol property, ITypeSymbol item)
    {
        var name = "ReadArrayOf" + Identifier(item);
        if (_written.Add(name))
        {
            var type = item.ToDisplayString(Full);
            var read = ReadOf(property, item);
            Reading.AppendLine(
                $$"""
                    private ImmutableArray<{{type}}> {{name}}()
                    {
                        var count = Count();
                        if (count == 0) return ImmutableArray<{{type}}>.Empty;
                        var items = new {{type}}[count];
                        for (var i = 0; i < items.Length; i++) items[i] = {{read}};
                        return ImmutableCollectionsMarshal.AsImmutableArray(items);
                    }
                """
            );
        }

        return name;
    }

    // A dictionary that nothing is removed from lists its entries in the order in which they came.
    private string DictionaryReader(IPropertySymbol property, ITypeSymbol key, ITypeSymbol value)
    {
        var name = $"ReadMapOf{Identifier(key)}To{Identifier(value)}";
        if (_written.Add(name))
        {
            var types = $"{key.ToDisplayString(Full)}, {value.ToDisplayString(Full)}";
            var comparer = key.SpecialType == SpecialType.System_String ? ", System.StringComparer.Ordinal" : "";
            Reading.AppendLine(
                $$"""
                    private static readonly Dictionary<{{types}}> EmptyFor{{name}} = new();
                    private IReadOnlyDictionary<{{types}}> {{name}}()
                    {
                        var count = Count();
                        if (count == 0) return EmptyFor{{name}};
                        var entries = new Dictionary<{{types}}>(count{{comparer}});
                        for (var i = 0; i < count; i++) entries.Add({{ReadOf(property, key)}}, {{ReadOf(
                    property,
                    value
                )}});
                        return entries;
                    }
                """
            );
        }

        return name;
    }

    private string With(INamedTypeSymbol type, string code)
    {
        Add(type);
        return code;
    }

    private string Fail(IPropertySymbol property, ITypeSymbol type)
    {
        unknown(property, type);
        return "default!";
    }

    // Loops nest: each has a variable of its own.
    private static string Loop(string value) =>
        value.StartsWith("each", StringComparison.Ordinal) ? "each" + value.Split('.')[0] : "each";

    private static string Bang(ITypeSymbol type) => type.NullableAnnotation == NullableAnnotation.Annotated ? "" : "!";

    private static bool IsOwn(INamedTypeSymbol type) =>
        !type.IsAbstract
        && type.TypeKind is TypeKind.Class or TypeKind.Struct
        && string.Equals(type.ContainingNamespace.ToDisplayString(), "PowerLint.Devices", StringComparison.Ordinal);

    private static bool IsPrimitive(ITypeSymbol type) =>
        type.SpecialType
            is SpecialType.System_String
                or SpecialType.System_Boolean
                or SpecialType.System_Int32
                or SpecialType.System_UInt64
                or SpecialType.System_Double;

    private static ITypeSymbol[]? Arguments(ITypeSymbol type, string name, int count) =>
        type is INamedTypeSymbol { IsGenericType: true } named
        && string.Equals(named.Name, name, StringComparison.Ordinal)
        && named.TypeArguments.Length == count
            ? [.. named.TypeArguments]
            : null;

    private static string Identifier(ITypeSymbol type) =>
        type is INamedTypeSymbol { IsGenericType: true } named
            ? named.Name + string.Concat(named.TypeArguments.Select(Identifier))
            : type.Name;

    private static bool Same(ITypeSymbol left, ITypeSymbol right) => SymbolEqualityComparer.Default.Equals(left, right);
}
