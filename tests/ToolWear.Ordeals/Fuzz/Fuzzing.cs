using System.Globalization;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>What came of one target.</summary>
/// <param name="Name">What was tried.</param>
/// <param name="Tried">How often.</param>
/// <param name="Taken">How often the input was taken.</param>
/// <param name="Wrong">What was neither taken nor refused civilly, each with its seed.</param>
internal sealed record Fuzzed(string Name, int Tried, int Taken, IReadOnlyList<string> Wrong);

/// <summary>Seeded input for everything that takes any: each try has a seed of its own and can be made again alone.</summary>
internal static class Fuzzing
{
    /// <summary>What is tried, each with its share in a hundred.</summary>
    public static IReadOnlyList<(Func<Target> Make, int Share)> Targets { get; } =
    [
        (() => new CsvSetTarget(), 25),
        (() => new ToolsInUseTarget(), 15),
        (() => new PlainTableTarget(), 20),
        (() => new JournalTarget(), 15),
        (() => new TextTarget(), 20),
        (() => new CommandTarget(), 5),
    ];

    /// <summary>Tries a number of inputs, shared out over all targets, and says what came of it.</summary>
    /// <param name="number">How many.</param>
    /// <param name="seed">The first seed.</param>
    /// <returns>The exit code.</returns>
    public static int ByHand(int number, int seed)
    {
        Fuzzed[] all = new Fuzzed[Targets.Count];
        Parallel.For(0, all.Length, i => all[i] = Run(Targets[i].Make(), number * Targets[i].Share / 100, seed));
        foreach (Fuzzed each in all)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{each.Name, -20} tried {each.Tried, 7}, taken {each.Taken, 7} ({100.0 * each.Taken / each.Tried:0} %), wrong {each.Wrong.Count}"
                )
            );
            foreach (string wrong in each.Wrong.Take(10))
            {
                Console.WriteLine("  " + wrong);
            }
        }

        return all.Any(each => each.Wrong.Count > 0) ? 1 : 0;
    }

    /// <summary>Tries a target.</summary>
    /// <param name="target">The target.</param>
    /// <param name="number">How many inputs.</param>
    /// <param name="seed">The first seed.</param>
    /// <returns>What came of it.</returns>
    public static Fuzzed Run(Target target, int number, int seed)
    {
        int taken = 0;
        List<string> wrong = [];
        for (int i = 0; i < number; i++)
        {
            int own = unchecked((seed * 1_000_003) + i);
            try
            {
                taken += target.Try(new Random(own)) ? 1 : 0;
            }
#pragma warning disable CA1031 // whatever else comes out is what is looked for
            catch (Exception e)
#pragma warning restore CA1031
            {
                wrong.Add($"seed {own}: {e.GetType().Name}: {e.Message} {e.StackTrace?.Split('\n').FirstOrDefault()}");
            }
        }

        return new Fuzzed(target.Name, number, taken, wrong);
    }
}
