namespace PowerLint.Devices.Digest;

/// <summary>Runs when the program is built: digests the folder of models given first into the file given second.</summary>
internal static class EntryPoint
{
    private static int Main(string[] arguments)
    {
        if (arguments is not [var folder, var digest])
        {
            Console.Error.WriteLine("PowerLint.Devices.Digest FOLDER DIGEST");
            return 2;
        }

        try
        {
            var made = ModelDigest.Make(folder);
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(digest))!);
            File.WriteAllBytes(digest, made);
            return 0;
        }
        catch (DeviceModelException exception)
        {
            // As compilers write them, so that the build shows file and line.
            foreach (var error in exception.Errors)
            {
                Console.Error.WriteLine($"{Path.GetFullPath(error.File)}({error.Line}): error MODEL: {error.Message}");
            }

            return 1;
        }
    }
}
