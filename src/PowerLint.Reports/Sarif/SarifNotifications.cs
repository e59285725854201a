using System.Collections.Immutable;
using Microsoft.CodeAnalysis.Sarif;

namespace PowerLint.Reports;

/// <summary>Turns notices into SARIF tool notifications.</summary>
internal static class SarifNotifications
{
    /// <summary>The kinds of notices that a run has, by identifier.</summary>
    internal static List<ReportingDescriptor>? Describe(ImmutableArray<Notice> notices) =>
        notices.IsEmpty
            ? null
            :
            [
                .. notices
                    .Select(notice => notice.Id)
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal)
                    .Select(id => new ReportingDescriptor { Id = id }),
            ];

    /// <summary>One notice.</summary>
    internal static Notification Write(Notice notice, SarifPlaces places) =>
        new()
        {
            Descriptor = new ReportingDescriptorReference { Id = notice.Id },
            Level = notice.Level switch
            {
                NoticeLevel.Error => FailureLevel.Error,
                NoticeLevel.Warning => FailureLevel.Warning,
                _ => FailureLevel.Note,
            },
            Message = new Message { Text = notice.Message },
            Locations = notice.Range is { Line: > 0 } range ? [places.Locate(range)] : null,
        };
}
