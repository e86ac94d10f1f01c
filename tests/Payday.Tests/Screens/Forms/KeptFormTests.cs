using System.Collections.Immutable;
using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Screens.Entries;
using Payday.Screens.Forms;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Forms;

/// <summary>A form that is kept: what is typed outlives the screen, and the program.</summary>
public sealed class KeptFormTests : IDisposable
{
    private static readonly Size Complete = new(80, 24);
    private readonly DemoBook demo = new(new LocalDate(2026, 3, 13));

    public void Dispose() => demo.Dispose();

    [Fact]
    public void Fields_TypedOneByOne_AreStoredAsTheyAreLeft()
    {
        On().Type("Clutch", "100+20");
        FormDraft stored = Assert.Single(demo.Stored.Weeks.Forms);
        Assert.Equal("sample", stored.Form);
        Assert.Equal([KeyValuePair.Create("amount", "100+20"), KeyValuePair.Create("what", "Clutch")], stored.Texts);
    }

    [Fact]
    public void Form_OpenedAgain_StandsAsItWasLeft()
    {
        On().Type("Clutch", "100+20").Pick("r");
        string[] shown = On().Shown(Complete);
        Assert.Contains(shown, line => line.Contains("Clutch", StringComparison.Ordinal));
        Assert.Contains(shown, line => line.Contains("120.00", StringComparison.Ordinal));
        Assert.Contains(shown, line => line.Contains("Red", StringComparison.Ordinal));
    }

    [Fact]
    public void Effect_OfAnAmountThatIsTooLargeBesideTheOthers_IsSaidAndEndsNothing()
    {
        var hand = new Hand(new EntryScreen(demo.Session));
        hand.To("Amount").Type("92233720368547758.07").To("For").Pick("f");

        Assert.Contains(hand.Shown(Complete), line => line.Contains("The amount is too large; look at its digits.", StringComparison.Ordinal));
        hand.Press("Right");
        Assert.Equal("The amount is too large; look at its digits.", hand.Message);
        Assert.Empty(demo.Stored.Weeks.Entries);
    }

    // The day after, yesterday would be another day.
    [Fact]
    public void Day_CalledYesterday_IsKeptByItsDate()
    {
        On().To("Day").Type("yesterday");
        Assert.Equal("2026-03-12", demo.Stored.Weeks.FormOf("sample")!.Texts["day"]);
    }

    [Fact]
    public void WrongText_IsRefused_AndWhatStoodThereStays()
    {
        Hand hand = On().Type("Clutch");
        Assert.NotNull(hand.Try("0"));
        Assert.NotNull(hand.Try("much"));
        Assert.Equal(["what"], demo.Stored.Weeks.FormOf("sample")!.Texts.Keys);
    }

    [Fact]
    public void Done_StoresAndForgetsTheFormInOneStep()
    {
        On().Type("Clutch").Press("Right");
        Assert.Empty(demo.Stored.Weeks.Forms);
        Assert.Equal("Clutch", demo.Stored.Household.Name);
    }

    [Fact]
    public void EmptiedField_OrDel_LeavesNothing()
    {
        On().Type("Clutch").To("What").Press("Enter").Type("");
        Assert.Empty(demo.Stored.Weeks.Forms);
        On().Type("Clutch").Press("Del");
        Assert.Empty(demo.Stored.Weeks.Forms);
    }

    private Hand On() => new(new Sample(demo.Session));

    private sealed class Sample(BookSession session) : KeptFormScreen(session, "sample", "take", "Take it.")
    {
        public override string Title => "Sample";

        protected override ImmutableArray<FormField> Fields =>
        [
            TypedFields.Line("what", "What", "What it is."),
            Session.Amount("amount", "Amount", "How much."),
            new("colour", "Colour", "Which.") { Picks = [new("g", "Green", ""), new("r", "Red", "")], Usual = "g" },
            Session.Day("day", "Day", "When."),
        ];

        protected override IEnumerable<Said> Effect => [$"Then {Text("what")} is {Text("colour")}."];

        protected override Way Finish()
        {
            Form.Done(Session.Book with { Household = Session.Book.Household with { Name = Text("what") } });
            return Way.Back;
        }
    }
}
