using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace PowerLint.Rules.Generator;

/// <summary>
/// Makes <c>RuleCatalog.g.cs</c> from the rule pages: what a page says of its rule, and the class of the same name. A page
/// without a class, a class without a page and a page that cannot be read are errors with file and line.
/// </summary>
[Generator]
public sealed class RuleCatalogGenerator : IIncrementalGenerator
{
    private static readonly DiagnosticDescriptor BadPage = Error(
        "RULE001",
        "Rule page cannot be used",
        "Rule page: {0}"
    );

    private static readonly DiagnosticDescriptor PageWithoutClass = Error(
        "RULE002",
        "Rule page without a class",
        "Rule page '{0}' has no class: add 'internal sealed class {1} : IRule', or remove the page"
    );

    private static readonly DiagnosticDescriptor ClassWithoutPage = Error(
        "RULE003",
        "Rule class without a page",
        "Rule class '{0}' has no page: add 'rules/{1}.md', or remove the class"
    );

    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var pages = context
            .AdditionalTextsProvider.Where(file => IsRulePage(file.Path))
            .Select((file, cancellation) => (file.Path, Text: file.GetText(cancellation)))
            .Where(file => file.Text is not null)
            .Collect();

        var classes = context
            .SyntaxProvider.CreateSyntaxProvider(
                (node, _) => node is ClassDeclarationSyntax { BaseList: not null },
                (syntax, cancellation) => ToRuleClass(syntax, cancellation)
            )
            .Where(rule => rule is not null)
            .Collect();

        context.RegisterSourceOutput(
            pages.Combine(classes),
            (output, input) =>
                Generate(
                    output,
                    input.Left.Select(file => RulePage.Read(file.Path, file.Text!)),
                    input.Right.Where(rule => rule is not null).Select(rule => rule!)
                )
        );
    }

    private static DiagnosticDescriptor Error(string id, string title, string message) =>
        new(id, title, message, "Rules", DiagnosticSeverity.Error, isEnabledByDefault: true);

    private static bool IsRulePage(string path) =>
        path.EndsWith(".md", StringComparison.Ordinal)
        && !string.Equals(Path.GetFileName(path), "README.md", StringComparison.Ordinal);

    private static RuleClass? ToRuleClass(
        GeneratorSyntaxContext syntax,
        System.Threading.CancellationToken cancellation
    )
    {
        var declaration = (ClassDeclarationSyntax)syntax.Node;
        return
            syntax.SemanticModel.GetDeclaredSymbol(declaration, cancellation) is { IsAbstract: false } symbol
            && symbol.AllInterfaces.Any(type => type.ToDisplayString() == "PowerLint.Rules.IRule")
            ? new RuleClass(symbol.Name, symbol.ToDisplayString(), declaration.Identifier.GetLocation())
            : null;
    }

    private static void Generate(
        SourceProductionContext output,
        IEnumerable<RulePage> read,
        IEnumerable<RuleClass> found
    )
    {
        var pages = read.OrderBy(page => page.Id, StringComparer.Ordinal).ToArray();
        var classes = found
            .GroupBy(rule => rule.Name, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

        foreach (var page in pages)
        {
            foreach (var (message, line) in page.Defects)
            {
                output.ReportDiagnostic(Diagnostic.Create(BadPage, page.At(line), message));
            }

            if (!classes.ContainsKey(page.ClassName))
            {
                output.ReportDiagnostic(
                    Diagnostic.Create(PageWithoutClass, page.At(0), Path.GetFileName(page.Path), page.ClassName)
                );
            }
        }

        var paired = new HashSet<string>(pages.Select(page => page.ClassName), StringComparer.Ordinal);
        foreach (var rule in classes.Values.Where(rule => !paired.Contains(rule.Name)))
        {
            output.ReportDiagnostic(
                Diagnostic.Create(ClassWithoutPage, rule.Location, rule.Name, ToKebabCase(rule.Name))
            );
        }

        output.AddSource(
            "RuleCatalog.g.cs",
            SourceText.From(
                Write(pages.Where(page => page.Defects.Count == 0 && classes.ContainsKey(page.ClassName)), classes),
                Encoding.UTF8
            )
        );
    }

    private static string ToKebabCase(string name)
    {
        var text = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }

    private static string Write(IEnumerable<RulePage> pages, Dictionary<string, RuleClass> classes)
    {
        var text = new StringBuilder();
        text.Append(
            """
            // <auto-generated>From rules/*.md by PowerLint.Rules.Generator.</auto-generated>
            #nullable enable
            namespace PowerLint.Rules;

            partial class RuleCatalog
            {
                private static partial global::System.Collections.Immutable.ImmutableArray<RuleDescriptor> Describe() =>
                [

            """
        );
        foreach (var page in pages)
        {
            text.Append("        new RuleDescriptor(() => new global::")
                .Append(classes[page.ClassName].FullName)
                .Append("())\n        {\n");
            Property("Id", Quote(page.Id));
            Property("Title", Quote(page["title"]));
            Property("Summary", Quote(page["summary"]));
            Property("DefaultLevel", "Level." + char.ToUpperInvariant(page["level"][0]) + page["level"].Substring(1));
            Property("Group", Quote(page["group"]));
            Property("Since", Quote(page["since"]));
            Property("Needs", Quote(page["needs"]));
            Property("Page", Quote(page.Body));
            text.Append("        },\n");
        }

        text.Append("    ];\n}\n");
        return text.ToString().Replace("\r\n", "\n");

        void Property(string name, string value) =>
            text.Append("            ").Append(name).Append(" = ").Append(value).Append(",\n");
    }

    private static string Quote(string value) => SymbolDisplay.FormatLiteral(value.Replace("\r\n", "\n"), quote: true);
}
