using System.Text.Json;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>The kind of a refusal as scripts know it: the feature, and what is wrong there, such as <c>count.moreThanThere</c>. It stays when a sentence changes.</summary>
internal static class FaultKind
{
    /// <summary>A refusal that has only a sentence.</summary>
    public const string Refused = "refused";

    /// <summary>A command line that is not called right.</summary>
    public const string Usage = "usage";

    /// <summary>A fault of the program itself.</summary>
    public const string Own = "own";

    private const string Ending = "Fault";

    /// <summary>The kind of a fault; where it only says at which option another is, of that.</summary>
    public static string Of(Fault fault)
    {
        if (fault is ArgumentFault.Of of)
        {
            return Of(of.Why);
        }

        Type kind = fault.GetType();
        return kind.DeclaringType is { } feature ? $"{Word(feature)}.{Word(kind)}" : Word(kind);
    }

    /// <summary>The kind of what was thrown.</summary>
    public static string Of(Exception fault) => fault switch
    {
        Store.Files.StoreException store => Of(store.Fault),
        OverflowException => "amounts.tooLarge",
        IOException or UnauthorizedAccessException => "system",
        _ => Own,
    };

    private static string Word(Type type)
    {
        string name = type.Name.Length > Ending.Length && type.Name.EndsWith(Ending, StringComparison.Ordinal) ? type.Name[..^Ending.Length] : type.Name;
        return JsonNamingPolicy.CamelCase.ConvertName(name);
    }
}
