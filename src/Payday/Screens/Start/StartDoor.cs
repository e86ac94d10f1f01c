using NodaTime;
using Payday.Screens.Shell;
using Payday.Store;

namespace Payday.Screens.Start;

/// <summary>What the first start needs of the outside.</summary>
/// <param name="Store">The store of the data folder, without a household.</param>
/// <param name="Today">Says the date.</param>
/// <param name="ReadFile">Reads the household file of a path.</param>
/// <param name="OpenDemo">The demo household's home screen, in a folder that is thrown away; given is the screen that leaving it leads to.</param>
internal sealed record StartDoor(BookStore Store, Func<LocalDate> Today, Func<string, HouseholdOffer> ReadFile, Func<Func<Screen>, Screen> OpenDemo)
{
    /// <summary>The locale of the machine, such as <c>en_US.UTF-8</c>, from which the usual currency is taken; null for none.</summary>
    public string? Locale { get; init; }
}
