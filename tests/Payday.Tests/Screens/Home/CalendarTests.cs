using System.Drawing;
using NodaTime;
using Payday.Screens.Home;
using Payday.Screens.Reviews;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Home;

/// <summary>The demo household on 13 March, its payday of 6 March closed.</summary>
public sealed class CalendarTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public CalendarTests() => demo.CloseOne();

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Calendar_LookedBack_MarksWhatIsClosedAndPaid()
    {
        Hand hand = new Hand(new CalendarScreen(demo.Session)).Press("Left");
        Golden.Equal("calendar-back-80x24", hand.Shown(Complete));
        Assert.DoesNotContain(hand.Top.Bindings, key => key.Name == "Left");
    }

    [Fact]
    public void Calendar_TurnedOnAndBack_IsWhereItWas()
    {
        var hand = new Hand(new CalendarScreen(demo.Session));
        string[] first = hand.Shown(Complete);
        hand.Press("Right");
        Assert.Contains("Sat 13 Jun 2026 to Sun 13 Sep 2026", hand.Shown(Complete)[0], StringComparison.Ordinal);
        Assert.Equal(first, hand.Press("Left").Shown(Complete));
    }

    [Fact]
    public void Home_WithAMinimumToCome_ListsItBesideTheBills()
    {
        string[] shown = new Hand(new HomeScreen(demo.Session)).Shown(new Size(80, 60));
        Assert.Contains(shown, line => line.Contains("Wed 18 Mar Car loan", StringComparison.Ordinal) && line.Contains("214.60", StringComparison.Ordinal));
    }
}
