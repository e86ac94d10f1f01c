using System.Collections.Immutable;
using Humanizer;

namespace Payday.Screens.Asking;

/// <summary>One of some things, by its name.</summary>
/// <typeparam name="T">What is named.</typeparam>
/// <param name="items">All there are, each by its name.</param>
internal sealed class NamedChoice<T>(ImmutableArray<(string Name, T Value)> items)
{
    /// <summary>Their names, for help.</summary>
    public string Names => items.IsEmpty ? "There is none." : $"One of: {string.Join(", ", items.Select(item => item.Name))}.";

    /// <summary>The one that is meant: by its whole name, or by a beginning that no other has, whatever the case.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="value">The one that is meant.</param>
    /// <returns>Why none is, one sentence; or null.</returns>
    public string? Find(string text, out T value)
    {
        (string Name, T Value)[] found = [.. items.Where(item => string.Equals(item.Name, text, StringComparison.OrdinalIgnoreCase))];
        if (found.Length == 0 && text.Length > 0)
        {
            found = [.. items.Where(item => item.Name.StartsWith(text, StringComparison.OrdinalIgnoreCase))];
        }

        value = found.Length > 0 ? found[0].Value : default!;
        return found.Length switch
        {
            1 => null,
            0 => $"There is no \"{text}\" here. {Names}",
            _ => $"\"{text}\" can be {found.Select(item => item.Name).Humanize("or")}; type more of it.",
        };
    }
}
