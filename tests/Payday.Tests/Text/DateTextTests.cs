using NodaTime;
using Payday.Text;

namespace Payday.Tests.Text;

public class DateTextTests
{
    [Fact]
    public void Forms_OfADate_AreShortEnglish()
    {
        var date = new LocalDate(2026, 3, 6);
        Assert.Equal("Fri 6 Mar 2026", DateText.Long(date));
        Assert.Equal("Fri 6 Mar", DateText.Weekday(date));
        Assert.Equal("6 Mar 2026", DateText.Day(date));
        Assert.Equal("6 Mar", DateText.Short(date));
    }
}
