using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>Prints every property of a value, however deep: two values are the same when they print the same.</summary>
internal static class Structure
{
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Print(text, value);
        return text.ToString();
    }

    private static void Print(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null or string or Enum:
                text.Append('<').Append(value ?? "null").Append('>');
                break;
            case decimal number:
                // 0.20 and 0.2 are the same rate.
                text.Append(number.ToString("0.############################", CultureInfo.InvariantCulture));
                break;
            case IFormattable plain:
                text.Append(plain.ToString(null, CultureInfo.InvariantCulture));
                break;
            case IEnumerable items:
                text.Append('[');
                foreach (object? item in items)
                {
                    Print(text, item);
                    text.Append(' ');
                }

                text.Append(']');
                break;
            default:
                text.Append(value.GetType().Name).Append('{');
                foreach (PropertyInfo property in value.GetType().GetProperties().Where(property => property.CanRead && property.GetIndexParameters().Length == 0 && property.GetMethod!.IsStatic is false))
                {
                    text.Append(property.Name).Append('=');
                    Print(text, value is bool flag ? flag.ToString() : property.GetValue(value));
                    text.Append("; ");
                }

                text.Append(value is bool own ? own.ToString() : "").Append('}');
                break;
        }
    }
}
