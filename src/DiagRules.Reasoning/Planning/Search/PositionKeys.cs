namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Fixed pseudo-random numbers (SplitMix64; Steele, Lea and Flood 2014) whose exclusive-or names a set of events (Zobrist 1970).</summary>
internal sealed class PositionKeys
{
    private ulong _state = 0x6A09E667F3BCC908;

    internal UInt128[] Next(int count)
    {
        var keys = new UInt128[count];
        for (var i = 0; i < count; i++)
        {
            keys[i] = new UInt128(Next(), Next());
        }

        return keys;
    }

    private ulong Next()
    {
        var z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9;
        z = (z ^ z >> 27) * 0x94D049BB133111EB;
        return z ^ z >> 31;
    }
}
