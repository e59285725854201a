namespace PowerLint.Frontend;

/// <summary>Reads firmware: C sources and their flags in, lowered units out. Never throws for what the input holds.</summary>
public static class FirmwareReader
{
    /// <summary>Reads what the request names.</summary>
    /// <exception cref="OperationCanceledException">The reading was cancelled.</exception>
    /// <exception cref="FrontendUnavailableException">The parser cannot be loaded on this machine.</exception>
    public static ReadResult Read(ReadRequest request, CancellationToken cancellation = default) =>
        FirmwareReading.Open(request).Read(cancellation);

    /// <summary>
    /// Parses what the request names, one unit after the other, and throws the trees away: what the parser alone costs, to hold
    /// other costs against.
    /// </summary>
    /// <returns>How many units there were.</returns>
    public static int ParseOnly(ReadRequest request, CancellationToken cancellation = default)
    {
        var notices = new NoticeList();
        var selected = CommandSelection.Select(request, notices);
        var invocations = ParserInvocation.PrepareAll(selected, request, notices);
        UnitReader.ParseAll(invocations, cancellation);
        return invocations.Count;
    }
}
