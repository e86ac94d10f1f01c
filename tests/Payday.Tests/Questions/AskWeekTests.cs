using NodaTime;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Questions;

/// <summary>A week asked line by line and on the full screen: the same book after each part of it.</summary>
public sealed class AskWeekTests
{
    [Fact]
    public void Week_ByLinesAndByKeys_EndsInTheSameBook()
    {
        using AskedBook asked = new AskedBook().Closed();
        using AskedBook worked = new AskedBook().Closed();

        On(new LocalDate(2026, 3, 7));
        Same("fill", ["", "skip", "no", "menu"], hand => hand.Press("f").To("Food").Press("Enter").To("Fares").Press("k"));
        Same("card", ["Bread", "12.40", "food", "yesterday", "", ""], hand => hand.Press("b", "a").Type("Bread", "12.40").To("Day").Type("yesterday").Press("Right"));
        Same("card", ["Market", "30", "food=20; household goods", "", "sofa card", ""], hand =>
        {
            hand.Press("b", "a").Type("Market", "30").Press("Ctrl+N").To("Food").Type("20").Press("Down").Pick("h").Press("Right");
            hand.To("Paid by").Pick("s").Press("Right");
        });
        Same("bills", ["", "phones", "70", "", ""], hand => hand.Press("q").To("Phones").Press("Space").To("Amount").Type("70").Press("Right"));

        On(new LocalDate(2026, 3, 12));
        Same("bills", ["yes", "", "free", "menu"], hand => hand.Press("q", "Space", "Down", "Down", "x", "Enter"));
        Same("count", ["", "150", "buffer", "", "3", "stays", "10", "back", "missing Lost coin=2", "", "90", "95", "90", "found it", "menu"], hand =>
        {
            hand.Press("w").Type("150").To("Food").Press("t").To("The account's buffer").Press("Enter");
            hand.To("Household goods").Type("3").To("Household goods").Press("t").To("Stays").Press("Enter");
            hand.To("Pocket money").Type("10").To("Pocket money").Press("e").Type("Lost coin=2");
            hand.To("Eating out").Type("90").To("Eating out").Press("e").Type("found it");
        });
        Same("count", [.. Enumerable.Repeat("", 18)], hand => hand.Press("w", "c"));
        Same("return", ["20=9,5=1", "", "", "yes"], hand => hand.Press("r", "Enter").To("20").Type("9").Press("Down").Type("1").Press("Right", "c", "Enter"));
        Same("bank", ["", "4000", "yes", "no", "yes", "menu"], hand => hand.Press("@").Press("Enter").Type("4000").To("Odette").Press("Space").Press("Down").Press("Space"));
        Same("bank", ["", "", "all", "Not known", "yes"], hand => hand.Press("@", "Ctrl+A", "c", "e").Type("Not known").Press("Enter"));
        Same("move", ["reserve", "car repairs", "5", "Tyres", "", ""], hand => hand.Press("t", "a").Pick("r").Press("Down", "Enter").To("Car repairs").Press("Enter").To("Amount").Type("5", "Tyres").Press("Right"));
        Same("entry", ["out", "3.20", "buffer", "fee", "", "Cheque book", "", ""], hand => hand.Press("$", "a").To("Way").Pick("w").To("Amount").Type("3.20").To("For").Press("Enter").To("Buffer").Press("Enter").To("Kind").Press("Enter").To("fee").Press("Enter").To("What").Type("Cheque book").Press("Right"));

        void On(LocalDate day)
        {
            asked.Today = day;
            worked.Today = day;
        }

        void Same(string part, string[] lines, Action<Hand> work)
        {
            var before = asked.Digest;
            string[] said = asked.AskFor(part, lines);
            work(worked.Hand);
            Assert.True(worked.Digest == asked.Digest, $"{part} differs:\n{string.Join('\n', said)}");
            Assert.NotEqual(before, asked.Digest);
            asked.IsSound();
        }
    }
}
