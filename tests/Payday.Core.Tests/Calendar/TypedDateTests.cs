using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Faults;

namespace Payday.Core.Tests.Calendar;

public class TypedDateTests
{
    private static readonly LocalDate Thursday12March = new(2026, 3, 12);

    [Theory]
    [InlineData("2026-03-12", "2026-03-12")]
    [InlineData(" 2026-3-2 ", "2026-03-02")]
    [InlineData("2026/03/02", "2026-03-02")]
    [InlineData("2026.3.2", "2026-03-02")]
    [InlineData("12 Mar 2026", "2026-03-12")]
    [InlineData("12 MARCH 2026", "2026-03-12")]
    [InlineData("March 12, 2026", "2026-03-12")]
    [InlineData("12-Sept-2026", "2026-09-12")]
    [InlineData("Thu 12 Mar 2026", "2026-03-12")]
    [InlineData("25.3.2026", "2026-03-25")]
    [InlineData("3/25/2026", "2026-03-25")]
    [InlineData("3.3.2026", "2026-03-03")]
    [InlineData("29 Feb 2028", "2028-02-29")]
    public void Parse_WhatCanBeOneDateOnly_IsTaken(string text, string date) => Assert.Equal(date, Iso(TypedDate.Parse(text)));

    [Theory]
    [InlineData("today", "2026-03-12")]
    [InlineData("Yesterday", "2026-03-11")]
    [InlineData("12 Mar", "2026-03-12")]
    [InlineData("13 Mar", "2025-03-13")]
    [InlineData("Dec 31", "2025-12-31")]
    [InlineData("Wed 11 Mar", "2026-03-11")]
    public void Parse_WithoutAYear_IsTheLatestNotAfterToday(string text, string date) => Assert.Equal(date, Iso(TypedDate.Parse(text, Thursday12March)));

    [Theory]
    [InlineData("30 Feb", "February 2026 has 28 days.")]
    [InlineData("31 Nov", "November 2026 has 30 days.")]
    public void Parse_WithoutAYearAndNoDay_NamesThisYears(string text, string fault) => Assert.Equal(fault, TypedDate.Parse(text, Thursday12March).Fault);

    [Theory]
    [InlineData("10/9/2026", DateOrder.MonthFirst, "2026-10-09")]
    [InlineData("10/9/2026", DateOrder.DayFirst, "2026-09-10")]
    [InlineData("10.09.2026", DateOrder.DayFirst, "2026-09-10")]
    [InlineData("10/9/2026", DateOrder.Unknown, "It can be 10 September or 9 October; write it like 2026-03-12 or 12 Mar 2026.")]
    [InlineData("25/3/2026", DateOrder.MonthFirst, "2026-03-25")]
    [InlineData("3/25/2026", DateOrder.DayFirst, "2026-03-25")]
    [InlineData("2026/10/9", DateOrder.DayFirst, "2026-10-09")]
    [InlineData("0/9/2026", DateOrder.MonthFirst, "There is no month 0; months go from 1 to 12.")]
    [InlineData("30/30/2026", DateOrder.MonthFirst, "There is no month 30; months go from 1 to 12.")]
    [InlineData("10/9/26", DateOrder.MonthFirst, TypedDate.NotADate)]
    public void Parse_InFigures_IsReadInTheOrderGiven(string text, DateOrder order, string date) => Assert.Equal(date, Iso(TypedDate.Parse(text, order: order)));

    // Unicode CLDR, short date patterns of the places that use a currency, from memory.
    [Theory]
    [InlineData("USD", DateOrder.MonthFirst)]
    [InlineData("EUR", DateOrder.DayFirst)]
    [InlineData("GBP", DateOrder.DayFirst)]
    [InlineData("INR", DateOrder.DayFirst)]
    [InlineData("CAD", DateOrder.Unknown)]
    [InlineData("JPY", DateOrder.Unknown)]
    [InlineData("SEK", DateOrder.Unknown)]
    public void Order_OfACurrency_IsThatOfWhereItIsUsed(string code, DateOrder order) => Assert.Equal(order, DateOrders.Of(Currency.FromCode(code)));

    [Fact]
    public void Parse_TheLeapDayOfLastYear_IsTaken() => Assert.Equal("2024-02-29", Iso(TypedDate.Parse("29 Feb", new LocalDate(2025, 3, 1))));

    [Theory]
    [InlineData("2026-11-31", "November 2026 has 30 days.")]
    [InlineData("29 Feb 2027", "February 2027 has 28 days.")]
    [InlineData("2026-03-00", "March 2026 has 31 days.")]
    [InlineData("2026-13-01", "There is no month 13; months go from 1 to 12.")]
    [InlineData("12.3.2026", "It can be 12 March or 3 December; write it like 2026-03-12 or 12 Mar 2026.")]
    [InlineData("12 Mar", "Which year? Write it like 12 Mar 2026.")]
    [InlineData("Fri 12 Mar 2026", "That day is a Thursday; correct the day, or leave the weekday out.")]
    public void Parse_NearlyADate_SaysWhatIsWrong(string text, string fault) => Assert.Equal(fault, TypedDate.Parse(text).Fault);

    [Theory]
    [InlineData("")]
    [InlineData("today")]
    [InlineData("soon")]
    [InlineData("Mar")]
    [InlineData("12 Ma 2026")]
    [InlineData("12 Mar 26")]
    [InlineData("12 Mar 2026 10")]
    [InlineData("1.2.26")]
    [InlineData("12-2026")]
    [InlineData("2026-03-12-1")]
    [InlineData("2026-03-012")]
    [InlineData("-2026-03-12")]
    [InlineData("٢٠٢٦-03-05")]
    [InlineData("99999999999-1-1")]
    [InlineData("\u001b[2J")]
    public void Parse_AnythingElse_SaysHowToWriteIt(string text) => Assert.Equal(TypedDate.NotADate, TypedDate.Parse(text).Fault);

    private static string Iso(Result<LocalDate> date) => date.Ok ? LocalDatePattern.Iso.Format(date.Value) : date.Fault;
}
