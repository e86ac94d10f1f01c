using System.Text.Json.Nodes;
using NodaTime;
using Payday.Commands;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Store;

namespace Payday.Tests.Commands;

/// <summary>The household from the shell: the fields of the forms, all or nothing.</summary>
public sealed class SetupCommandTests
{
    [Theory]
    [InlineData("change|bill|rent|amount=1700|day=last", "bills", "Rent", """{"amount":"1700.00","day":"last"}""")]
    [InlineData("change|bill|Rent|weeks=4|one-such-date=2026-03-01|falls-due=every so many weeks", "bills", "Rent", """{"weeks":4}""")]
    [InlineData("change|bill|Rent|changes-to=1480 from 1 Jan 2027", "bills", "Rent", """{"later":[{"from":"2027-01-01","amount":"1480.00"}]}""")]
    [InlineData("change|pot|Food|name=Groceries|at-least=300", "pots", "Groceries", """{"id":"food","floor":"300.00"}""")]
    [InlineData("change|source|Tobin, school kitchen|expected=1500", "sources", "Tobin, school kitchen", """{"expected":"1500.00"}""")]
    [InlineData("change|debt|Sofa card|yearly-rate=19.5", "debts", "Sofa card", """{"rate":"0.195"}""")]
    [InlineData("add|bill|Gym 29.90 5th|essential=no", "bills", "Gym", """{"id":"gym","amount":"29.90","essential":false}""")]
    [InlineData("add|bill|Gym 29.90 5th", "bills", "Gym", """{"essential":true}""")]
    [InlineData("add|pot|name=Garden|amount=20|per=payday|where=in cash", "pots", "Garden", """{"kind":"spending","amount":"20.00"}""")]
    [InlineData("add|debt|Card 1846 at 23.5% min 2% or 25 on the 12th", "debts", "Card", """{"balance":"1846.00"}""")]
    [InlineData("end|bill|Rent|2026-12-31", "bills", "Rent", """{"until":"2026-12-31"}""")]
    public void Setup_Fields_AreInTheHousehold(string line, string list, string name, string expected)
    {
        using TestShell shell = TestShell.WithDemo();

        shell.Run(line.Split('|')).Fine();

        JsonNode item = Household(shell)[list]!.AsArray().Single(one => (string?)one!["name"] == name)!;
        string all = item.ToJsonString();
        Assert.All(JsonNode.Parse(expected)!.AsObject(), field => Assert.Contains($"\"{field.Key}\":{field.Value!.ToJsonString()}", all, StringComparison.Ordinal));
    }

    [Fact]
    public void Set_Settings_AreInTheHousehold()
    {
        using TestShell shell = TestShell.WithDemo();

        shell.Run("set", "Buffer keeps", "250").Fine();
        shell.Run("set", "fill-day=saturday", "look=high contrast", "notes-of-20=4", "in-the-account=3400").Fine();

        JsonNode household = Household(shell);
        Assert.Equal(("250.00", "Saturday", "highContrast"), ((string?)household["bufferKeeps"], (string?)household["fillDay"], (string?)household["look"]));
        Assert.Equal((4, "3400.00"), ((int)household["opening"]!["notesOnHand"]!["20"]!, (string?)household["opening"]!["account"]));
        shell.Run("set", "buffer-keeps=").Fine();
        Assert.Null(Household(shell)["bufferKeeps"]);
    }

    [Theory]
    [InlineData("change|bill|Rnt|amount=2", 2, "there is no bill 'Rnt'. Did you mean \"Rent\"?")]
    [InlineData("change|bill|Rent|amout=3", 2, "amout=3: there is no such field here. Did you mean \"amount\"?")]
    [InlineData("change|bill|Rent|amount=1700|day=32", 2, "day=32: '32' is no day of a month")]
    [InlineData("change|bill|Rent|amount=1700|amount=1800", 2, "amount is there twice; give it once.")]
    [InlineData("change|bill|Rent|amount=1700|name=", 2, "name=: ")]
    [InlineData("change|bill|Rent|1700", 2, "'1700': write a field and its value, like amount=12.50.")]
    [InlineData("change|bill|Rent|falls-due=sometimes", 2, "falls-due=sometimes: that is none of every month /")]
    [InlineData("change|pot|Food|amount=300|name=Fuel", 1, "\"Fuel\" is already the name of another one")]
    [InlineData("change|rent|Rent", 2, "KIND rent: write bill, debt, pot or source.")]
    [InlineData("add|bill|name=Paper|amount=12", 2, "Still to fill in: day.")]
    [InlineData("add|bill|Rent 12 1st", 2, "\"Rent\" is already the name of another one")]
    [InlineData("add|bill", 2, "Give it as one line, like \"Rent 1450 1st\", or as fields: name, amount, falls-due, day,")]
    [InlineData("end|pot|Food|2026-12-31", 2, "payday pot POT --finished")]
    [InlineData("order|pot|Food|99", 2, "write a whole number from 1 to 16.")]
    [InlineData("remove|pot|Food", 1, "Food: ")]
    [InlineData("set|currency|EUR", 2, "The ledger is in this currency")]
    [InlineData("set|in-the-account=9000|fill-day=Monday", 2, "It is part of the ledger since a payday was closed")]
    [InlineData("set|slip-lines=One|fillday=Monday", 2, "there is no such field here. Did you mean \"fill-day\"?")]
    public void Setup_ThatCantBe_IsRefusedAndNothingIsStored(string line, int exit, string part)
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        long before = new FileInfo(shell.Data.Journal).Length;

        Ran ran = shell.Run(line.Split('|'));

        Assert.Equal((exit, ""), (ran.Exit, ran.Out));
        Assert.Contains(part, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, new FileInfo(shell.Data.Journal).Length);
    }

    [Fact]
    public void Order_APot_IsRankedThere()
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.StartsWith("In order: Reserve; Food; ", shell.Run("order", "pot", "reserve", "1").Fine().Out, StringComparison.Ordinal);
        Assert.StartsWith("In order: Food; Reserve; ", shell.Run("order", "pot", "Food", "1").Fine().Out, StringComparison.Ordinal);
        Assert.StartsWith("In order: Car loan; Dental plan; Sofa card.", shell.Run("order", "debt", "Sofa card", "3").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Remove_WhatNoLineNames_IsGone()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("add", "bill", "Gym 29.90 5th").Fine();
        string with = shell.Run("export").Fine().Out;

        shell.Run("remove", "bill", "Gym").Fine();

        Assert.DoesNotContain("Gym", shell.Run("export").Fine().Out, StringComparison.Ordinal);
        Assert.Contains("Gym", with, StringComparison.Ordinal);
    }

    [Fact]
    public void Change_WithoutFields_ShowsThemAndChangesNothing()
    {
        using TestShell shell = TestShell.WithDemo();
        long before = new FileInfo(shell.Data.Journal).Length;

        JsonNode shown = JsonNode.Parse(shell.Run("change", "bill", "Rent", "--json").Fine().Out)!;

        Assert.Equal(("1,640.00", "every month", false), ((string?)shown["fields"]!["amount"], (string?)shown["fields"]!["falls-due"], (bool)shown["stored"]!));
        Assert.Contains("buffer-keeps", shell.Run("set").Fine().Out, StringComparison.Ordinal);
        Assert.Equal(before, new FileInfo(shell.Data.Journal).Length);
    }

    // A value as it stands can be given back: so each field of each form is reached, and by one name alone.
    [Fact]
    public void Fields_OfAllForms_TakeWhatStandsInThem()
    {
        using TestShell shell = TestShell.WithDemo();
        using BookStore store = BookStore.Open(shell.Data);
        var work = new StagedWork(store.Load()!, new LocalDate(2026, 3, 6));
        IEnumerable<IItemForm> forms =
        [
            new HouseholdForm(work, [.. HouseholdFields.All, .. HouseholdFields.Opening(work)]),
            .. SetupList.All.SelectMany(list => list.Ordered(work.Draft).Select(one => list.Form(work, one.Index))),
        ];

        Assert.All(forms, form =>
        {
            string[] names = [.. form.Rows.Select(row => FieldInput.Name(row.Label))];
            Assert.Equal(names.Distinct(), names);
            Assert.All(names, name => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", name));
            Assert.Null(FieldInput.Take(form, [.. form.Rows.Where(row => row.Locked is null && row.Typed.Length > 0).Select(row => $"{row.Label}={row.Typed}")]));
        });
        Assert.NotNull(work.Done(out _));
    }

    private static JsonNode Household(TestShell shell) => JsonNode.Parse(shell.Run("export").Fine().Out)!;
}
