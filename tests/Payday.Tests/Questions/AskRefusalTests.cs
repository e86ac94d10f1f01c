namespace Payday.Tests.Questions;

/// <summary>Each kind of wrong answer gets a sentence, changes nothing, and the question again.</summary>
public sealed class AskRefusalTests
{
    [Theory]
    [InlineData("nothing", "There is no \"nothing\" here. One of: payday, bills, count,")]
    [InlineData("b", "\"b\" can be bills or bank; type more of it.")]
    [InlineData("back", "There is no question before this one. stop leaves.")]
    [InlineData("received", "No payday")]
    [InlineData("payday|junk", "'junk' is not an amount; write it like 12.55.")]
    [InlineData("payday|-5", "An amount below zero has no place here.")]
    [InlineData("payday|12.345", "at most 2 decimals")]
    [InlineData("payday|99999999999999999999", "too large")]
    [InlineData("payday||Gift", "Write it like Gift=50.")]
    [InlineData("payday||Gift=much", "'much' is not an amount")]
    [InlineData("payday||Gift=-1", "An income can't be below zero.")]
    [InlineData("payday|||9999", "The buffer has 350.77.")]
    [InlineData("payday||||soon", "'soon' is not an amount")]
    [InlineData("payday|||||||||maybe", "Type even or when due.")]
    [InlineData("payday||||||||||5000", "That is more than is owed; at most")]
    public void Answer_Wrong_IsRefusedAndAskedAgain(string lines, string why)
    {
        using var book = new AskedBook();
        string[] typed = lines.Split('|');
        string question = book.Ask(typed[..^1])[^1];
        var before = book.Digest;

        string[] said = book.Ask(typed.Length == 1 ? typed : typed[^1..]);

        Assert.Contains(why, string.Join(' ', said), StringComparison.Ordinal);
        Assert.Equal(question, said[^1]);
        Assert.Equal(before, book.Digest);
    }

    [Theory]
    [InlineData("Nowhere", "There is no \"Nowhere\" here. One of: Sofa card, Car loan,")]
    [InlineData("Food=9999", "246.46")]
    [InlineData("Dental plan=600", "That is more than is owed; at most 540.00.")]
    [InlineData("Food=x", "'x' is not an amount")]
    [InlineData("|maybe", "Type yes, or notes to change them;")]
    [InlineData("|machine 17", "17")]
    [InlineData("|notes|20", "20")]
    [InlineData("|notes|7=1", "7")]
    [InlineData("|notes|100=50", "Food has 410.00, and its notes would come to 5,205.00; lower another first.")]
    [InlineData("||perhaps", "Type yes or no.")]
    public void Answer_WrongFromTheSurplusOn_IsRefused(string lines, string why)
    {
        using var book = new AskedBook();
        book.AskFor("payday", [.. Enumerable.Repeat("", 27)]);
        string[] typed = lines.Split('|');
        book.Ask(typed[..^1]);
        var before = book.Digest;

        string[] said = book.Ask(typed[^1]);

        Assert.Contains(why, string.Join(' ', said), StringComparison.Ordinal);
        Assert.Equal(before, book.Digest);
    }

    [Theory]
    [InlineData("card||0", "Write what the card paid, or below zero what came back.")]
    [InlineData("card||", "Type what the card paid, or below zero what came back.")]
    [InlineData("card||5|Fox=3; Fuel", "There is no \"Fox\" here.")]
    [InlineData("card||5|Food=3; Fuel=1|||", "4.00")]
    [InlineData("card||5||2030-01-01", "has not come yet")]
    [InlineData("card||5|||stick", "There is no \"stick\" here. One of: account,")]
    [InlineData("move|dentist", "There is no \"dentist\" here.")]
    [InlineData("move|reserve|birthdays|0", "Write an amount above zero.")]
    [InlineData("move||||||", "Pick what gives the money first.")]
    [InlineData("count||junk", "'junk' is not an amount")]
    [InlineData("count||-1", "What is left can't be below zero.")]
    [InlineData("count||missing 3", "Type what is left first.")]
    [InlineData("count||20=x", "20=x")]
    [InlineData("bank||", "Type the bank's balance at the end of that day.")]
    [InlineData("bank|2030-01-01", "still to come")]
    [InlineData("bank||100|maybe", "Type yes, no, or all")]
    [InlineData("bills||dentist", "There is no \"dentist\" here.")]
    public void Answer_WrongBetweenPaydays_IsRefused(string lines, string why)
    {
        using var book = new AskedBook();
        book.Closed();
        string[] typed = lines.Split('|');
        book.Ask(typed[..^1]);
        var before = book.Digest;

        string[] said = book.Ask(typed[^1]);

        Assert.Contains(why, string.Join(' ', said), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(before, book.Digest);
    }

    [Fact]
    public void Answer_LongerThanAnyCanBe_IsNotTakenAndTheNextOneIs()
    {
        using var book = new AskedBook();

        string[] said = book.Ask("payday", new string('1', 1_000_000), "2200");

        Assert.Contains("That answer has more than 1000 characters; nothing of it was taken.", said);
        Assert.Contains("Odette, joinery: 2,200.00.", said);
    }

    [Fact]
    public void Answer_WithControlCharacters_ReachesNoTerminal()
    {
        using var book = new AskedBook();

        string[] said = book.Ask("payday", "", "\u001b[2JGift\u0007=50", "", "\u001b]0;x\u0007");

        Assert.All(said, line => Assert.DoesNotContain(line, char.IsControl));
        Assert.Contains(said, line => line.StartsWith("2,337.64 came in", StringComparison.Ordinal));
    }
}
