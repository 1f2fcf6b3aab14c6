using System.Collections.Immutable;
using System.Text;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Storage.Csv;
using ToolWear.Storage.HandMade;
using ToolWear.Testing.Generators;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>The CSV set, one of its files changed.</summary>
internal sealed class CsvSetTarget : Target
{
    private static readonly DateOnly Today = Pool.FirstDay.AddDays(Pool.Days + 1);

    private readonly ImmutableArray<ImmutableArray<CsvFile>> _sets =
    [
        .. Fixed
            .Samples(Ledgers.Plausible, 40)
            .Select(ledger => Shop.Fold(ledger).After!)
            .Select(shop => CsvSet.Export(shop).ToImmutableArray()),
    ];

    public override string Name => "CSV set";

    public override bool Try(Random chance)
    {
        ImmutableArray<CsvFile> set = _sets[chance.Next(_sets.Length)];
        int which = chance.Next(set.Length);
        CsvFile changed = new(set[which].Name, Changed(set[which].Bytes.ToArray(), chance));
        return IsTaken(CsvSet.Import(set.SetItem(which, changed), Today));
    }

    /// <summary>Whether an import was taken; what was taken must make a shop that can be written again.</summary>
    internal static bool IsTaken(CsvImported imported)
    {
        if (imported.Faults.IsEmpty)
        {
            Shop shop = Shop.Empty;
            foreach (LedgerEntry entry in imported.Entries)
            {
                shop = shop.After(new Entered(shop.NextNumber, DateTimeOffset.UnixEpoch, Today, entry)).After!;
            }

            _ = CsvSet.Export(shop);
            return true;
        }

        foreach (CsvFault fault in imported.Faults)
        {
            MustBeCivil(HarmlessWriter.Of(fault.ToString()));
        }

        return imported.Entries.IsEmpty ? false : throw new InvalidOperationException("faults and entries both");
    }
}

/// <summary>The table of tools in use.</summary>
internal sealed class ToolsInUseTarget : Target
{
    private static readonly byte[] Table = Encoding.UTF8.GetBytes(
        """
        tool,form,eye,place,section,steel,gauge,wears,size_mm,scrap_mm,made_mm,heats_before,heats_before_how,guess_heats,on,peg,note
        R1,drift,hatchet,rough,rectangle,4140,width,smaller,14.2,12.8,16,30,estimated,60,2026-03-02,north,"a note, of two
        lines"
        R2,punch,,none,round,,,,36.5,,,,,,,,
        R3,slitter,hatchet,none,,S7,edge,smaller,40,38,,12,counted,,,,=1+1
        """
    );

    public override string Name => "tools in use";

    public override bool Try(Random chance) =>
        HandMadeTable.Read(new CsvFile("mine.csv", Changed(Table, chance)))
            is { Table: { } table, Faults.IsEmpty: true }
        && Core.Deeds.Bringing.Tables.Read(
            table,
            Shop.Empty,
            LengthUnit.Mm,
            Pool.FirstDay.AddDays(Pool.Days + 1),
            new(KeepUnknown: chance.Next(2) == 0, CarryDown: ["steel"])
        )
            is { Faults.IsEmpty: true };
}

/// <summary>The plain tables of fit, lifetimes and stock.</summary>
internal sealed class PlainTableTarget : Target
{
    private static readonly (
        string Table,
        Func<CsvFile, (bool IsTaken, ImmutableArray<CsvFault> Faults)> Read
    )[] Tables =
    [
        (
            "kind,group,tool,segment,start_mm,heats,wear_mm\r\nrough,4140,R1,0,0,10,0.2\r\nrough,4140,R1,0,0,20.5,0.35\r\nrough,S7,\"R 2\",1,0.1,,\r\n",
            file => Told(PlainTables.Readings(file))
        ),
        (
            "kind,group,tool,limit_mm,resolution_mm,guess_heats,heats_now\nrough,4140,R1,0.8,0.02,60,20.5\nrough,S7,R2,,,,0\n",
            file => Told(PlainTables.Tools(file))
        ),
        ("tool,heats,failed,from_heats\nA,40,1,\nB,60,0,12\nC,9.5,1,0\n", file => Told(PlainTables.Lifetimes(file))),
        (
            "from_mark_mm,section,a_mm,b_mm,radius_mm,large_radius_mm\n0,rectangle,20,10,1,\n60,teardrop,36.8,,3.2,8.8\n100,round,30,,,\n120,oval,30,16,,\n",
            file => Told(PlainTables.Stations(file))
        ),
    ];

    public override string Name => "plain tables";

    public override bool Try(Random chance)
    {
        (string table, Func<CsvFile, (bool IsTaken, ImmutableArray<CsvFault> Faults)> read) = Tables[
            chance.Next(Tables.Length)
        ];
        (bool isTaken, ImmutableArray<CsvFault> faults) = read(
            new CsvFile("t.csv", Changed(Encoding.UTF8.GetBytes(table), chance))
        );
        foreach (CsvFault fault in faults)
        {
            MustBeCivil(HarmlessWriter.Of(fault.ToString()));
        }

        return isTaken;
    }

    private static (bool IsTaken, ImmutableArray<CsvFault> Faults) Told<T>(TableRead<T> read) =>
        (read.Faults.IsEmpty, read.Faults);
}
