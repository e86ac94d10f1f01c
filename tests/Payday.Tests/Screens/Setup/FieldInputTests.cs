namespace Payday.Tests.Screens.Setup;

public sealed class FieldInputTests : IDisposable
{
    private readonly DemoBook demo = new();

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData("Bills", "Name", "", "Nothing stands here; write something.")]
    [InlineData("Bills", "Name", "two\nlines", "There is a character in it that can't be shown (U+000A); remove it.")]
    [InlineData("Bills", "Name", "bell\a", "There is a character in it that can't be shown (U+0007); remove it.")]
    [InlineData("Bills", "Name", "1234567890123456789012345678901234567890123456789012345678901", "That has 61 characters; shorten it to 60.")]
    [InlineData("Bills", "Amount", "", "An amount is missing.")]
    [InlineData("Bills", "Amount", "twelve", "'twelve' is not an amount; write it like 12.55.")]
    [InlineData("Bills", "Amount", "12.345", "USD has at most 2 decimals; write it like 12.55.")]
    [InlineData("Bills", "Amount", "123456789012345678901234567890", "The amount is too large; look at its digits.")]
    [InlineData("Bills", "Amount", "-5", "An amount below zero has no place here.")]
    [InlineData("Bills", "Amount", "1\n2", "An amount can't hold control characters such as a line break.")]
    [InlineData("Bills", "Day", "32", "'32' is no day of a month; write 1 to 31, last, first or last working day, 2nd or last Friday.")]
    [InlineData("Bills", "Day", "9th Friday", "'9th Friday' is no day of a month; write 1 to 31, last, first or last working day, 2nd or last Friday.")]
    [InlineData("Bills", "Day", "123456789012345678901234567890", "'123456789012345678901234567890' is no day of a month; write 1 to 31, last, first or last working day, 2nd or last Friday.")]
    [InlineData("Bills", "Until", "soon", "Not a date; write it like 2026-03-12 or 12 Mar 2026.")]
    [InlineData("Bills", "Until", "2026-02-30", "February 2026 has 28 days.")]
    [InlineData("Bills", "Until", "2020-01-01", "2020-01-01 is before the household starts, 2026-03-05; write a later date.")]
    [InlineData("Bills", "Until", "\u001b[2J", "Not a date; write it like 2026-03-12 or 12 Mar 2026.")]
    [InlineData("Debts", "Yearly rate", "much", "'much' is not a percentage; write 19.99 for 19.99 %.")]
    [InlineData("Debts", "Yearly rate", "-1", "'-1' is not a percentage; write 19.99 for 19.99 %.")]
    [InlineData("Debts", "Yearly rate", "1.23456", "A percentage has at most 4 decimals here; round it.")]
    [InlineData("Debts", "Yearly rate", "1999", "That is above 1000 %; write 19.99 for 19.99 %.")]
    [InlineData("Debts", "Yearly rate", "123456789012345678901234567890", "'123456789012345678901234567890' is not a percentage; write 19.99 for 19.99 %.")]
    [InlineData("Settings", "Notes", "", "Write 1 to 30 values with blanks between them, such as 50 20 10 5.")]
    [InlineData("Settings", "Notes", "20 twenty", "'twenty' is not an amount; write it like 12.55.")]
    [InlineData("Settings", "Notes", "20 20", "20 stands there twice; write it once.")]
    [InlineData("Settings", "Notes", "0", "0 is no value of a note or coin; write one above zero.")]
    [InlineData("Settings", "Further holidays", "2026-13-01", "'2026-13-01': There is no month 13; months go from 1 to 12.")]
    [InlineData("Settings", "Slip lines", "1|2|3|4|5|6|7", "There are 7 lines; at most 6 are taken.")]
    [InlineData("Opening", "Notes of 20", "3.5", "'3.5' doesn't fit; write a whole number from 0 to 1000000.")]
    [InlineData("Opening", "Notes of 20", "-1", "'-1' doesn't fit; write a whole number from 0 to 1000000.")]
    public void Type_WhatIsNoValue_SaysWhyInOneLineAndChangesNothing(string part, string label, string text, string fault)
    {
        Hand hand = demo.Hand.To(part).Press("Enter");
        if (part is "Bills" or "Debts")
        {
            hand.Press("Enter");
        }

        Assert.Equal(fault, hand.To(label).Try(text));
        Assert.Equal(Payday.Store.HouseholdFiles.HouseholdFile.Write(Payday.Commands.DemoCommand.Household()), Payday.Store.HouseholdFiles.HouseholdFile.Write(demo.Stored.Household));
    }

    [Theory]
    [InlineData("15", "15")]
    [InlineData("Last Day", "last")]
    [InlineData("last working day", "last working day")]
    [InlineData("second fri", "2nd Friday")]
    [InlineData("5 MONDAY", "last Monday")]
    [InlineData("last Friday", "last Friday")]
    [InlineData("first working day", "first working day")]
    public void Type_ADayAsPeopleSayIt_IsTaken(string text, string shown)
    {
        demo.Hand.To("Bills").Press("Enter", "Enter").To("Day").Type(text);

        Assert.Contains(demo.Hand.Shown(new System.Drawing.Size(80, 24)), line => line[2..].StartsWith("Day ", StringComparison.Ordinal) && line.EndsWith(shown, StringComparison.Ordinal));
    }

    [Fact]
    public void Choices_OfMoreThanOneWord_StandApart()
    {
        string shown = string.Join(' ', demo.Hand.To("Pots").Press("Enter", "Enter").To("Per").Shown(new System.Drawing.Size(80, 24)).Select(line => line.Trim()));

        Assert.Contains("Choices, by letter too: week / payday / month / month, spread.", shown, StringComparison.Ordinal);
        Assert.Contains("month", demo.Hand.Pick("m").Shown(new System.Drawing.Size(80, 24)).Single(line => line.Contains("Per ", StringComparison.Ordinal)), StringComparison.Ordinal);
    }
}
