using Dryfit.Mending;

namespace Dryfit.Cli;

/// <summary>
/// Puts edited files in the place of those that were read: each first into a temporary file beside it, flushed to the disk;
/// only when all are there are they renamed, and where a rename fails those before it are put back. What is read-only, or
/// was changed by somebody since it was read, is left alone.
/// </summary>
internal static class EditedFiles
{
    private const string TemporaryEnding = ".dryfit-tmp";

    /// <param name="before">The files as read.</param>
    /// <param name="after">The same files with their edits, in the same order.</param>
    /// <returns>The names of those that were written, as the user would name them.</returns>
    /// <exception cref="FileTroubleException">One cannot be written; all are as they were.</exception>
    public static IReadOnlyList<string> Write(
        IReadOnlyList<SourceText> before,
        IReadOnlyList<SourceText> after,
        Surroundings surroundings
    )
    {
        var changed = before
            .Zip(after)
            .Where(pair => !pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span))
            .ToList();
        var files = new List<(string Path, string Temporary, SourceText Before, SourceText After)>();
        var name = "";
        try
        {
            foreach (var (old, edited) in changed)
            {
                name = old.Name;
                var path = Target(surroundings.FullPath(name));
                RefuseReadOnly(path, name);
                RefuseChanged(path, old);
                var temporary = Path.Combine(
                    Path.GetDirectoryName(path)!,
                    $".{Path.GetFileName(path)}{TemporaryEnding}"
                );
                files.Add((path, temporary, old, edited));
                WriteTemporary(temporary, edited.Bytes, path);
            }
            RenameAll(files, ref name);
        }
        catch (Exception fault)
        {
            foreach (var file in files)
                File.Delete(file.Temporary);
            if (fault is FileTroubleException || !FileTroubleException.IsRefusal(fault))
                throw;
            throw new FileTroubleException(
                $"'{name}' cannot be written: {FileTroubleException.Reason(fault)}. Nothing was changed.",
                fault
            );
        }
        return [.. changed.Select(pair => pair.First.Name)];
    }

    /// <summary>The file itself where the name is a link to it: the link stays.</summary>
    private static string Target(string path) =>
        File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;

    private static void RefuseReadOnly(string path, string name)
    {
        if (File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly))
            throw new FileTroubleException($"'{name}' is read-only. Nothing was changed.");
        // A rename asks the folder only: whether the file itself may be written must be tried.
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
    }

    private static void RefuseChanged(string path, SourceText read)
    {
        if (!File.ReadAllBytes(path).AsSpan().SequenceEqual(read.Bytes.Span))
            throw new FileTroubleException(
                $"'{read.Name}' was changed while it was being mended. Nothing was written; run the command again."
            );
    }

    private static void WriteTemporary(string path, ReadOnlyMemory<byte> bytes, string like)
    {
        using (var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(bytes.Span);
            stream.Flush(flushToDisk: true);
        }
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, File.GetUnixFileMode(like));
    }

    private static void RenameAll(
        List<(string Path, string Temporary, SourceText Before, SourceText After)> files,
        ref string name
    )
    {
        var done = 0;
        try
        {
            for (; done < files.Count; done++)
            {
                var (path, temporary, before, _) = files[done];
                name = before.Name;
                RefuseChanged(path, before);
                File.Move(temporary, path, overwrite: true);
            }
        }
        catch
        {
            foreach (var (path, temporary, before, _) in files.Take(done))
            {
                WriteTemporary(temporary, before.Bytes, path);
                File.Move(temporary, path, overwrite: true);
            }
            throw;
        }
    }
}
