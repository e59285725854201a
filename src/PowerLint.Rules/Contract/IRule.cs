namespace PowerLint.Rules;

/// <summary>
/// A rule: asks the analysis' result in device concepts and reports. Its page in <c>rules/</c> holds its metadata; the class is
/// named after the page (<c>floating-pin.md</c>, <c>FloatingPin</c>). Stateless; one instance serves all images.
/// </summary>
public interface IRule
{
    /// <summary>Checks one image.</summary>
    /// <param name="context">What to ask, and where to report.</param>
    void Check(RuleContext context);
}
