using Dryfit.Outputs;

namespace Dryfit.Cli;

/// <summary>
/// Writes a set of files into one folder, whole or not at all: each first into a temporary file beside its target,
/// flushed to the disk; only when all are there are they renamed. Where a rename fails, those before it are put back.
/// </summary>
internal static class OutputFolder
{
    private const string TemporaryEnding = ".dryfit-tmp";
    private const string LockName = ".dryfit-lock";

    /// <summary>How often a folder that another run is writing to is tried, a tenth of a second apart.</summary>
    private const int Tries = 50;

    /// <param name="named">The folder as the user named it; made where it is not there.</param>
    /// <param name="files">Plain names, each once.</param>
    /// <returns>The paths written, as the user would name them, in the order given.</returns>
    /// <exception cref="FileTroubleException">It cannot be written to; what was there is still there.</exception>
    public static IReadOnlyList<string> Write(string named, IReadOnlyList<OutputFile> files, Surroundings surroundings)
    {
        foreach (var file in files)
            RefusePath(file.Name);
        if (named.Length == 0)
            throw new FileTroubleException("The name of the output folder is empty.");
        try
        {
            var folder = surroundings.FullPath(named);
            if (File.Exists(folder))
                throw new FileTroubleException($"'{named}' is a file; the output needs a folder.");
            Directory.CreateDirectory(folder);
            using var turn = AwaitTurn(folder, named);
            RemoveTemporaries(folder);
            foreach (var file in files)
            {
                if (Directory.Exists(Path.Combine(folder, file.Name)))
                    throw new FileTroubleException(
                        $"'{Path.Combine(named, file.Name)}' is a folder; a file goes there."
                    );
            }
            WriteAll(folder, files);
        }
        catch (Exception fault) when (FileTroubleException.IsRefusal(fault) || fault is ArgumentException)
        {
            throw new FileTroubleException(
                $"The folder '{named}' cannot be written to: {FileTroubleException.Reason(fault)}.",
                fault
            );
        }
        return [.. files.Select(file => Path.Combine(named, file.Name))];
    }

    /// <summary>A file name of ours that would leave the folder is a fault of ours.</summary>
    private static void RefusePath(string name)
    {
        if (name.Length == 0 || name is "." or ".." || name.AsSpan().ContainsAny("/\\:\0"))
            throw new InvalidOperationException($"'{name}' is no plain file name.");
    }

    private static FileStream AwaitTurn(string folder, string named)
    {
        var path = Path.Combine(folder, LockName);
        for (var tries = 1; ; tries++)
        {
            try
            {
                return new FileStream(
                    path,
                    FileMode.OpenOrCreate,
                    FileAccess.ReadWrite,
                    FileShare.None,
                    bufferSize: 1,
                    FileOptions.DeleteOnClose
                );
            }
            catch (IOException fault) when (fault.GetType() == typeof(IOException) && IsHeldByAnother(fault))
            {
                if (tries == Tries)
                    throw new FileTroubleException($"Another run is writing to the folder '{named}'.", fault);
                Thread.Sleep(100);
            }
        }
    }

    // EWOULDBLOCK (11 on Linux, 35 on macOS) from flock, ERROR_SHARING_VIOLATION (32) on Windows.
    private static bool IsHeldByAnother(IOException fault) => (fault.HResult & 0xFFFF) is 11 or 35 or 32;

    private static void RemoveTemporaries(string folder)
    {
        foreach (var left in Directory.EnumerateFiles(folder, ".*" + TemporaryEnding))
            File.Delete(left);
    }

    private static void WriteAll(string folder, IReadOnlyList<OutputFile> files)
    {
        try
        {
            foreach (var file in files)
                WriteTemporary(Temporary(folder, file), file.Bytes);
            RenameAll(folder, files);
        }
        catch
        {
            foreach (var file in files)
                File.Delete(Temporary(folder, file));
            throw;
        }
    }

    private static string Temporary(string folder, OutputFile file) =>
        Path.Combine(folder, "." + file.Name + TemporaryEnding);

    private static void WriteTemporary(string path, ReadOnlyMemory<byte> bytes)
    {
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        stream.Write(bytes.Span);
        stream.Flush(flushToDisk: true);
    }

    private static void RenameAll(string folder, IReadOnlyList<OutputFile> files)
    {
        var before = new List<(string Path, byte[]? Bytes)>();
        try
        {
            foreach (var file in files)
            {
                var target = Path.Combine(folder, file.Name);
                // A symbolic link is replaced by the file, not followed: nothing outside the folder is written.
                var old =
                    File.Exists(target) && new FileInfo(target).LinkTarget is null ? File.ReadAllBytes(target) : null;
                File.Move(Temporary(folder, file), target, overwrite: true);
                before.Add((target, old));
            }
        }
        catch
        {
            foreach (var (path, bytes) in before)
                PutBack(path, bytes);
            throw;
        }
    }

    private static void PutBack(string path, byte[]? bytes)
    {
        if (bytes is null)
        {
            File.Delete(path);
            return;
        }
        var temporary = path + TemporaryEnding;
        WriteTemporary(temporary, bytes);
        File.Move(temporary, path, overwrite: true);
    }
}
