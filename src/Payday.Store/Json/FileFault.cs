using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Store.Json;

/// <summary>What is wrong with a file that a person wrote, where it is the file's own matter. One of the nested cases.</summary>
public abstract record FileFault : Fault
{
    private FileFault()
    {
    }

    /// <summary>There is nothing in it.</summary>
    public sealed record Nothing : FileFault;

    /// <summary>It is too large.</summary>
    public sealed record TooLarge : FileFault;

    /// <summary>It isn't UTF-8.</summary>
    public sealed record NotUtf8 : FileFault;

    /// <summary>It ends amid something.</summary>
    public sealed record EndsTooEarly : FileFault;

    /// <summary>It is no JSON from here on.</summary>
    /// <param name="Next">The byte at which that shows.</param>
    public sealed record Broken(byte Next) : FileFault;

    /// <summary>It is nested too deep.</summary>
    public sealed record TooDeep(int Most) : FileFault;

    /// <summary>An escape that spells half a character.</summary>
    public sealed record HalfCharacter : FileFault;

    /// <summary>A field that stands in its object twice.</summary>
    public sealed record FieldTwice : FileFault;

    /// <summary>More faults than are listed.</summary>
    public sealed record More(int Listed) : FileFault;

    /// <summary>A version that isn't read.</summary>
    public sealed record OtherVersion(int Version, int Oldest, int Newest) : FileFault;

    /// <summary>A field that isn't known.</summary>
    public sealed record UnknownField(ImmutableArray<string> Known) : FileFault;

    /// <summary>Something is missing.</summary>
    public sealed record Missing(FileWanted Wanted) : FileFault;

    /// <summary>A value of another kind than belongs here.</summary>
    public sealed record WrongKind(JsonValueKind There, FileWanted Wanted) : FileFault;

    /// <summary>A number that must be in quotes, as other programs may round it in passing.</summary>
    public sealed record Unquoted(string Number) : FileFault;

    /// <summary>A word that isn't known.</summary>
    public sealed record UnknownWord(string Text, ImmutableArray<string> Words) : FileFault;

    /// <summary>A number that is no whole one, or too small or large.</summary>
    public sealed record NotACount(string Number, int Least, int Most) : FileFault;

    /// <summary>A text that is no fraction.</summary>
    public sealed record NotAFraction(string Text) : FileFault;

    /// <summary>A text that is no date.</summary>
    public sealed record NotADate(string Text) : FileFault;

    /// <summary>A date of a year that is no date's here.</summary>
    public sealed record DateTooFar(string Text) : FileFault;

    /// <summary>A date of no month.</summary>
    public sealed record NoSuchMonth(string Text) : FileFault;

    /// <summary>A date past its month's end.</summary>
    public sealed record NoSuchDay(string Text, int Year, int Month, int Days) : FileFault;

    /// <summary>A text that is no amount.</summary>
    public sealed record NotAnAmount(Fault Why) : FileFault;

    /// <summary>An amount with a currency in it.</summary>
    /// <param name="Text">What stands there.</param>
    /// <param name="Named">The code in it.</param>
    /// <param name="Currency">The currency of the file.</param>
    public sealed record CurrencyNamed(string Text, string Named, Currency Currency) : FileFault;

    /// <summary>An amount with a character that can't be shown.</summary>
    public sealed record HarmfulAmount(string Text, Currency Currency) : FileFault;

    /// <summary>A name that another item of the list has.</summary>
    /// <param name="Name">The name.</param>
    /// <param name="Place">The item that has it.</param>
    public sealed record NameTaken(string Name, string Place) : FileFault;
}
