using System.Globalization;

namespace ToolWear.Ordeals.Kills;

/// <summary>What came of a number of kills.</summary>
internal sealed class KillTally
{
    private readonly SortedDictionary<string, int> _opened = new(StringComparer.Ordinal);
    private readonly List<string> _wrong = [];

    /// <summary>How many children were killed.</summary>
    public int Kills { get; private set; }

    /// <summary>How many kills fell after the first byte of a line and before its acknowledgement.</summary>
    public int InTheMiddle { get; private set; }

    /// <summary>How many entries were acknowledged.</summary>
    public long Acknowledged { get; private set; }

    /// <summary>How many of those were not there any more.</summary>
    public long Lost { get; private set; }

    /// <summary>What else was not as it should be.</summary>
    public IReadOnlyList<string> Wrong => _wrong;

    /// <summary>How many lines that were not acknowledged came back whole.</summary>
    public int KeptUnacknowledged { get; private set; }

    /// <summary>How the store was found after each kill, with how often.</summary>
    public IReadOnlyDictionary<string, int> Opened => _opened;

    public void Add(bool inTheMiddle, long acknowledged, string opened)
    {
        Kills++;
        InTheMiddle += inTheMiddle ? 1 : 0;
        Acknowledged += acknowledged;
        _opened[opened] = _opened.GetValueOrDefault(opened) + 1;
    }

    public void AddLost(long entries) => Lost += entries;

    public void AddKept() => KeptUnacknowledged++;

    public void AddWrong(string what) => _wrong.Add(what);

    public void Add(KillTally other)
    {
        Kills += other.Kills;
        InTheMiddle += other.InTheMiddle;
        Acknowledged += other.Acknowledged;
        Lost += other.Lost;
        KeptUnacknowledged += other.KeptUnacknowledged;
        _wrong.AddRange(other._wrong);
        foreach ((string opened, int times) in other._opened)
        {
            _opened[opened] = _opened.GetValueOrDefault(opened) + times;
        }
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            kills {Kills}, of them between the first byte of a line and its acknowledgement {InTheMiddle}
            acknowledged {Acknowledged}, lost {Lost}, wrong {_wrong.Count}, came back whole though not acknowledged {KeptUnacknowledged}
            {string.Join('\n', _opened.Select(each => $"{each.Value, 6}  {each.Key}").Concat(_wrong))}

            """
        );
}
