using PowerLint.Analysis;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Reports;

namespace PowerLint.CommandLine;

/// <summary>Turns what the stages say about themselves into notices.</summary>
internal static class ReadNotices
{
    /// <summary>What reading the sources has to say of some of its units.</summary>
    internal static List<Notice> From(ReadResult read, IEnumerable<TranslationUnit> units) =>
        [
            .. read.Errors.Select(error => new Notice(
                NoticeLevel.Error,
                "source-error",
                $"{error.Message}; what stands here was not analysed",
                Range(error),
                IsIncomplete: true
            )),
            .. read.Notices.Select(notice => new Notice(
                NoticeLevel.Note,
                notice.Id,
                notice.Message,
                Range: null,
                notice.IsIncomplete
            )),
            .. units
                .SelectMany(unit => unit.Gaps)
                .Select(gap => new Notice(
                    NoticeLevel.Warning,
                    "lowering-gap",
                    $"{gap.Construct}: not understood and left out",
                    gap.Range,
                    IsIncomplete: true
                )),
        ];

    /// <summary>What linking has to say.</summary>
    internal static IEnumerable<Notice> From(Image image) =>
        image.Conflicts.Select(conflict => new Notice(
            NoticeLevel.Warning,
            "defined-twice",
            $"{conflict.Name} is also defined at {Path.GetFileName(conflict.Chosen.File.Path)}:{conflict.Chosen.Line}, which counts; "
                + "are these files of one image?",
            conflict.Dropped,
            IsIncomplete: false
        ));

    /// <summary>What the analysis has to say.</summary>
    internal static IEnumerable<Notice> From(AnalysisResult result) =>
        result.Limits.Select(limit => new Notice(
            limit.IsIncomplete ? NoticeLevel.Warning : NoticeLevel.Note,
            limit.Id,
            limit.Message,
            limit.Range,
            limit.IsIncomplete
        ));

    private static SourceRange? Range(SourceError error)
    {
        if (error.Line < 1)
        {
            return null;
        }

        var position = new SourcePosition(
            new SourceFile(error.Path, IsSystem: false),
            error.Line,
            Math.Max(1, error.Column)
        );
        return new SourceRange(position, position);
    }
}
