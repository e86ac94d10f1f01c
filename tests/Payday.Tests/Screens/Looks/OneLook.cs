using Payday.Core.Households;
using Payday.Screens.Looking;
using Payday.Screens.Shell;

namespace Payday.Tests.Screens.Looks;

/// <summary>A folder that is looked at, without another process.</summary>
internal sealed class OneLook(Func<Book> book) : ILookDoor
{
    public string? Holder { get; set; } = "process 4711 since 2026-03-02 08:15";

    public Seen Look() => new(book(), Holder);

    public BookSession Open() => throw new InvalidOperationException("Nothing is opened here.");

    public void GiveBack()
    {
    }
}
