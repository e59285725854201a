using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>Which statements hold labels that a jump or a switch can enter; computed once a function.</summary>
internal sealed class LabelIndex
{
    private readonly Dictionary<Statement, HashSet<string>?> _holders = [];
    private readonly Dictionary<Switch, List<CaseLabel>> _cases = [];
    private readonly Dictionary<string, Label> _labels = new(StringComparer.Ordinal);

    public LabelIndex(Function function) => Visit(function.Body, null);

    /// <summary>Whether a jump can enter the statement.</summary>
    public bool HoldsLabels(Statement statement) => _holders.ContainsKey(statement);

    /// <summary>Whether the statement holds a label of that name.</summary>
    public bool Holds(Statement statement, string label) =>
        _holders.TryGetValue(statement, out var names) && names is not null && names.Contains(label);

    /// <summary>The label of that name, or null.</summary>
    public Label? Find(string name) => _labels.GetValueOrDefault(name);

    public IReadOnlyList<CaseLabel> CasesOf(Switch statement) =>
        _cases.TryGetValue(statement, out var cases) ? cases : [];

    private (bool Any, HashSet<string>? Names) Visit(Statement statement, List<CaseLabel>? cases)
    {
        var (any, names) = (false, (HashSet<string>?)null);
        switch (statement)
        {
            case Block block:
                foreach (var inner in block.Statements)
                {
                    Add(Visit(inner, cases));
                }

                break;
            case If branch:
                Add(Visit(branch.Then, cases));
                if (branch.Else is not null)
                {
                    Add(Visit(branch.Else, cases));
                }

                break;
            case Loop loop:
                Add(Visit(loop.Body, cases));
                break;
            case Switch inner:
                var own = new List<CaseLabel>();
                _cases[inner] = own;
                var (_, inside) = Visit(inner.Body, own);
                if (inside is not null)
                {
                    Add((true, inside));
                }

                break;
            case CaseLabel label:
                cases?.Add(label);
                Add((true, null));
                Add(Visit(label.Labelled, cases));
                break;
            case Label label:
                _labels[label.Name] = label;
                Add((true, new HashSet<string>(StringComparer.Ordinal) { label.Name }));
                Add(Visit(label.Labelled, cases));
                break;
        }

        if (any)
        {
            _holders[statement] = names;
        }

        return (any, names);

        void Add((bool Any, HashSet<string>? Names) part)
        {
            any |= part.Any;
            if (part.Names is not null)
            {
                (names ??= new HashSet<string>(StringComparer.Ordinal)).UnionWith(part.Names);
            }
        }
    }
}
