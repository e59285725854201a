namespace PowerLint.Devices;

/// <summary>Collects what is wrong in device files, so that one look shows all of it.</summary>
internal sealed class DeviceModelErrors
{
    private readonly List<DeviceModelError> _errors = [];
    private readonly HashSet<DeviceModelError> _seen = [];

    public bool Any => _errors.Count > 0;

    public void Add(DeviceNode at, string message) => Add(at.File, at.Line, message);

    public void Add(string file, int line, string message)
    {
        // A block is read once an instance: its mistake is told once.
        var error = new DeviceModelError(file, line, message);
        if (_seen.Add(error))
        {
            _errors.Add(error);
        }
    }

    public void ThrowIfAny()
    {
        if (Any)
        {
            throw new DeviceModelException(_errors);
        }
    }
}
