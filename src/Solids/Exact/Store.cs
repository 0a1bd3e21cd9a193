namespace Dryfit.Solids.Exact;

/// <summary>A growing row of values that keeps its memory from one solid to the next.</summary>
internal sealed class Store<T>
    where T : struct
{
    private T[] items = new T[64];

    public int Count { get; private set; }

    public ref T this[int index] => ref items[index];

    public Span<T> Span => items.AsSpan(0, Count);

    public void Clear() => Count = 0;

    public int Add(in T item)
    {
        if (Count == items.Length)
        {
            Array.Resize(ref items, Count * 2);
        }

        items[Count] = item;
        return Count++;
    }

    /// <summary>Adds so many places at once; the caller fills them.</summary>
    public Span<T> Extend(int count)
    {
        if (Count + count > items.Length)
        {
            Array.Resize(ref items, Math.Max(Count + count, Count * 2));
        }

        Count += count;
        return items.AsSpan(Count - count, count);
    }

    /// <summary>Sets the count; new places hold <paramref name="fill"/>.</summary>
    public void Resize(int count, T fill)
    {
        if (count > items.Length)
        {
            Array.Resize(ref items, Math.Max(count, items.Length * 2));
        }

        if (count > Count)
        {
            items.AsSpan(Count, count - Count).Fill(fill);
        }

        Count = count;
    }

    /// <summary>Takes one out; those after it move up.</summary>
    public void Remove(int index)
    {
        Span[(index + 1)..].CopyTo(Span[index..]);
        Count--;
    }

    public void CutBack(int count) => Count = count;
}
