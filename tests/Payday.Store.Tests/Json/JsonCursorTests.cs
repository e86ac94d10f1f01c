using System.Text.Json;
using Payday.Store.Json;

namespace Payday.Store.Tests.Json;

public sealed class JsonCursorTests
{
    [Fact]
    public void Fields_OfSomethingElse_IsOneFaultAndNoneFromInside() =>
        Assert.Equal(
            ["a, line 1: A list stands here; write an object in { }."],
            Faults("{\"a\": [1]}", root =>
            {
                JsonFields inside = root.Fields().Find("a")!.Fields();
                Assert.Null(inside.Find("b"));
                inside.Missing<int>("c", new JsonWanted.Date());
                inside.RefuseOthers();
            }));

    [Fact]
    public void Missing_AField_IsOneFaultWithTheLineOfItsObject() =>
        Assert.Equal(
            ["a.b, line 2: This is missing; add an object in { }."],
            Faults("{\n\"a\":\n{}}", root => root.Fields().Find("a")!.Fields().Missing<int>("b", new JsonWanted.Object())));

    [Fact]
    public void RefuseOthers_HarmfulName_IsShownHarmless() =>
        Assert.Equal(
            ["a?[2Jb, line 1: This field is not known here; remove it, or write one of c."],
            Faults("{\"a\\u001b[2Jb\": 1}", root =>
            {
                JsonFields fields = root.Fields();
                fields.Find("c");
                fields.RefuseOthers();
            }));

    [Fact]
    public void RefuseChecked_WhatCouldNotBeRead_IsNotJudged()
    {
        IEnumerable<string> faults = Faults("{\"a\":\n{\"b\": 1,\n\"c\": {\"d\": 2}}}", root =>
        {
            JsonFields a = root.Fields().Find("a")!.Fields();
            a.Find("b")!.Is(JsonValueKind.String, new JsonWanted.Text());

            // At a place that could not be read, around it, and inside it; then beside it.
            root.RefuseChecked(["a.b", "a", ""], new JsonTextFault.Missing(new JsonWanted.Date()));
            root.RefuseChecked(["a", ""], new JsonTextFault.Missing(new JsonWanted.Date()));
            root.RefuseChecked(["a.b.e", "a.b", "a", ""], new JsonTextFault.Missing(new JsonWanted.Date()));
            root.RefuseChecked(["a.c.f", "a.c", "a", ""], new JsonTextFault.Missing(new JsonWanted.Flag()));
        });

        Assert.Equal(
            ["a.b, line 2: A number stands here; write a text in quotes.", "a.c.f, line 3: This is missing; add true or false, without quotes."],
            faults);
    }

    private static IEnumerable<string> Faults(string json, Action<JsonCursor> read) =>
        JsonInput.Read(json, root =>
        {
            read(root);
            return root;
        }).Faults.Select(fault => fault.ToString());
}
