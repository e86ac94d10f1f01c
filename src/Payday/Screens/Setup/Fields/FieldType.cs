using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>What a field of a form holds: how it is shown, typed and read.</summary>
internal abstract class FieldType
{
    /// <summary>The value as the form shows it.</summary>
    public abstract string Show(JsonNode value, SetupWork work);

    /// <summary>Reads what was typed.</summary>
    /// <returns>The value as the household file holds it; or one sentence on what is wrong.</returns>
    public abstract Result<JsonNode> Take(string text, SetupWork work);

    /// <summary>The value as it stands there to be changed.</summary>
    public virtual string Typed(JsonNode value, SetupWork work) => Show(value, work);

    /// <summary>How many characters can be typed.</summary>
    public virtual int MostTyped => Shell.CellEdit.Usual;

    /// <summary>What can be chosen; empty where something is typed.</summary>
    public virtual ImmutableArray<Choice> Choices(SetupWork work) => [];

    /// <summary>A text as the file holds it.</summary>
    protected static JsonNode Text(string text) => JsonValue.Create(text);

    /// <summary>A text that was not typed in right, cut so that a sentence stays readable.</summary>
    protected static string Shown(string text) => Store.Json.SafeText.Shown(text);
}
