namespace Dryfit.Outputs;

/// <summary>
/// A file as it is to be written: every output is a function from a finished piece to one of these. Who writes it,
/// where, and what happens when that fails, is the caller's.
/// </summary>
/// <param name="Name">A plain file name without a folder: <c>piece.glb</c>.</param>
/// <param name="Bytes">All of its content; the same for the same piece, byte for byte.</param>
public sealed record OutputFile(string Name, ReadOnlyMemory<byte> Bytes);
