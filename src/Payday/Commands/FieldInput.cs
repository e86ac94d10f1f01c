using System.Text;
using Payday.Screens.Setup.Forms;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Fields of a form as they are written on a command line: <c>FIELD=VALUE</c>, the field by its label on the full screen.</summary>
internal static class FieldInput
{
    /// <summary>What a field is called on a command line, such as <c>falls-due</c> for <c>Falls due</c>.</summary>
    public static string Name(string label)
    {
        var name = new StringBuilder();
        foreach (char sign in label.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(sign))
            {
                name.Append(sign);
            }
            else if (sign is ' ' or '-' && name.Length > 0 && name[^1] != '-')
            {
                name.Append('-');
            }
        }

        return name.ToString().Trim('-');
    }

    /// <summary>Puts fields into a form; one that another brings forth may come before it.</summary>
    /// <param name="form">The form.</param>
    /// <param name="texts">The fields.</param>
    /// <returns>What is wrong with the first that can't be taken, or null.</returns>
    public static string? Take(IItemForm form, IReadOnlyList<string> texts)
    {
        if (texts.FirstOrDefault(text => text.IndexOf('=') <= 0) is { } odd)
        {
            return $"'{odd}': write a field and its value, like amount=12.50.";
        }

        (string Name, string Value, string Text)[] fields = [.. texts.Select(text => (Name(text[..text.IndexOf('=')]), text[(text.IndexOf('=') + 1)..], text))];
        if (fields.GroupBy(field => field.Name).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            return $"{twice.Key} is there twice; give it once.";
        }

        var waiting = fields.ToList();
        while (waiting.Count > 0)
        {
            int next = waiting.FindIndex(field => RowOf(form, field.Name) >= 0);
            if (next < 0)
            {
                return $"{waiting[0].Text}: there is no such field here. {NearNames.Of(form.Rows.Select(row => Name(row.Label)), waiting[0].Name).Said()}";
            }

            (string name, string value, string text) = waiting[next];
            if (Put(form, RowOf(form, name), value) is { } fault)
            {
                return $"{text}: {fault}";
            }

            waiting.RemoveAt(next);
        }

        return null;
    }

    private static string? Put(IItemForm form, int at, string value)
    {
        FormRow row = form.Rows[at];
        if (row.Locked is { } locked)
        {
            return locked;
        }

        if (row.Choices.IsEmpty)
        {
            return form.Type(at, value);
        }

        int choice = row.Choices.ToList().FindIndex(one => Name(one) == Name(value));
        return choice >= 0 ? form.Choose(at, choice) : $"that is none of {string.Join(" / ", row.Choices)}.";
    }

    private static int RowOf(IItemForm form, string name) => form.Rows.ToList().FindIndex(row => Name(row.Label) == name);
}
