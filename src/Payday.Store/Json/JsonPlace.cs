using System.Globalization;

namespace Payday.Store.Json;

/// <summary>Writes places in a JSON text: <c>bills[2].amount</c>, empty for the outermost value.</summary>
internal static class JsonPlace
{
    public static string Field(string parent, string name)
    {
        string shown = SafeText.Shown(name);
        return parent.Length == 0 ? shown : $"{parent}.{shown}";
    }

    public static string Item(string parent, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{parent}[{index}]");
}
