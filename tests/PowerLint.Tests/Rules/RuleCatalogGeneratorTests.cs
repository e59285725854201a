using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;
using PowerLint.Rules.Generator;

namespace PowerLint.Tests;

/// <summary>Rule pages and rule classes go together, or the build says in which file and line they do not.</summary>
public sealed class RuleCatalogGeneratorTests
{
    private const string Page = """
        ---
        id: warm-pin
        title: Warm pin
        summary: A pin is warm.
        level: warning
        group: pins
        since: 0.1.0
        ---

        # warm-pin
        """;

    private const string Class = "internal sealed class WarmPin : IRule { public void Check(RuleContext context) { } }";

    [Fact]
    public void A_pair_becomes_a_descriptor()
    {
        var (diagnostics, generated) = Generate(Class, ("warm-pin.md", Page));

        Assert.Empty(diagnostics);
        Assert.Contains("new global::PowerLint.Rules.WarmPin()", generated, StringComparison.Ordinal);
        Assert.Contains("DefaultLevel = Level.Warning", generated, StringComparison.Ordinal);
        Assert.Contains("Summary = \"A pin is warm.\"", generated, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_without_a_class_is_named()
    {
        var (diagnostics, _) = Generate("", ("warm-pin.md", Page));

        Assert.Contains(
            "'internal sealed class WarmPin : IRule'",
            Assert.Single(diagnostics),
            StringComparison.Ordinal
        );
        Assert.StartsWith("rules/warm-pin.md(1,1): error", diagnostics[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_without_a_page_is_named()
    {
        var (diagnostics, _) = Generate(Class);

        Assert.Contains("'rules/warm-pin.md'", Assert.Single(diagnostics), StringComparison.Ordinal);
        Assert.StartsWith("Rules.cs(", diagnostics[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("level: warning", "level: loud", 5, "the level must be one of note, warning, error")]
    [InlineData("id: warm-pin", "id: cold-pin", 2, "the id 'cold-pin' differs from the file's name 'warm-pin'")]
    [InlineData("group: pins\n", "", 1, "the front matter lacks 'group'")]
    [InlineData("since: 0.1.0", "sinse: 0.1.0", 7, "the front matter knows no 'sinse'")]
    [InlineData("title: Warm pin", "Warm pin", 3, "'key: value'")]
    public void A_bad_front_matter_is_named_with_its_line(string right, string wrong, int line, string message)
    {
        var page = Page.ReplaceLineEndings("\n").Replace(right, wrong, StringComparison.Ordinal);

        var (diagnostics, _) = Generate(Class, ("warm-pin.md", page));

        Assert.Contains(
            diagnostics,
            diagnostic =>
                diagnostic.StartsWith($"rules/warm-pin.md({line},1): error", StringComparison.Ordinal)
                && diagnostic.Contains(message, StringComparison.Ordinal)
        );
    }

    private static (ImmutableArray<string> Diagnostics, string Generated) Generate(
        string classes,
        params (string Name, string Text)[] pages
    )
    {
        var source = $$"""
            namespace PowerLint.Rules;
            public sealed class RuleContext { }
            public interface IRule { void Check(RuleContext context); }
            {{classes}}
            """;
        var compilation = CSharpCompilation.Create(
            "Rules",
            [
                CSharpSyntaxTree.ParseText(
                    source,
                    path: "Rules.cs",
                    cancellationToken: TestContext.Current.CancellationToken
                ),
            ],
            [MetadataReference.CreateFromFile(typeof(object).Assembly.Location)]
        );
        var driver = CSharpGeneratorDriver
            .Create(new RuleCatalogGenerator())
            .AddAdditionalTexts([.. pages.Select(page => (AdditionalText)new PageText(page.Name, page.Text))])
            .RunGenerators(compilation, TestContext.Current.CancellationToken);
        var result = driver.GetRunResult();
        return (
            [.. result.Diagnostics.Select(diagnostic => diagnostic.ToString())],
            string.Join('\n', result.GeneratedTrees.Select(tree => tree.ToString()))
        );
    }

    private sealed class PageText(string name, string text) : AdditionalText
    {
        public override string Path => "rules/" + name;

        public override SourceText GetText(CancellationToken cancellationToken = default) => SourceText.From(text);
    }
}
