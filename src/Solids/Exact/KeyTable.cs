namespace Dryfit.Solids.Exact;

/// <summary>Numbers by key: open addressing, emptied by counting up a stamp, so that it costs nothing to start anew.</summary>
internal sealed class KeyTable
{
    private Slot[] slots = new Slot[256];
    private int stamp = 1;
    private int count;

    public void Clear()
    {
        stamp++;
        count = 0;
    }

    /// <summary>The number of a key; a new key gets <paramref name="fresh"/>.</summary>
    public ref int Find(ulong key, int fresh, out bool isKnown)
    {
        if (2 * count >= slots.Length)
        {
            Grow();
        }

        var at = Hash(key) & (slots.Length - 1);
        while (slots[at].Stamp == stamp)
        {
            if (slots[at].Key == key)
            {
                isKnown = true;
                return ref slots[at].Value;
            }

            at = (at + 1) & (slots.Length - 1);
        }

        slots[at] = new()
        {
            Key = key,
            Stamp = stamp,
            Value = fresh,
        };
        count++;
        isKnown = false;
        return ref slots[at].Value;
    }

    private static int Hash(ulong key) => (int)((key * 0x9E3779B97F4A7C15ul) >> 40);

    private void Grow()
    {
        var old = slots;
        slots = new Slot[2 * old.Length];
        foreach (ref var slot in old.AsSpan())
        {
            if (slot.Stamp == stamp)
            {
                var at = Hash(slot.Key) & (slots.Length - 1);
                while (slots[at].Stamp == stamp)
                {
                    at = (at + 1) & (slots.Length - 1);
                }

                slots[at] = slot;
            }
        }
    }

    private struct Slot
    {
        public ulong Key;
        public int Stamp;
        public int Value;
    }
}
