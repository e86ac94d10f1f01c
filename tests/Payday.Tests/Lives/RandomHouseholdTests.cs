using CsCheck;
using Payday.Faults.Households;
using Payday.Store.Folders;
using Payday.Tests.Printing;

namespace Payday.Tests.Lives;

/// <summary>Households at the edges of what a file may hold, played by commands; the harness plays a year of each.</summary>
public sealed class RandomHouseholdTests
{
    private const int Paydays = 5;

    [Fact]
    public void Play_ARandomHousehold_NeitherFailsNorLosesAnything() => Gen.Int[1, 1_000_000].Sample(
        seed =>
        {
            using var scratch = new ScratchFolder();
            var year = new HouseholdYear(seed, new CommandPlayer(new StoreFolder(scratch.In("data"))), Paydays);
            year.Play(new CommandPlayer(new StoreFolder(scratch.In("other"))));
        },
        iter: 6,
        threads: 1);
}
