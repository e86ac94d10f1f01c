using Payday.Store.Checks;
using Payday.Store.Files;
using Payday.Texts;

namespace Payday.Store.Tests;

/// <summary>What a person reads of what the store refuses and finds: cases are told apart in these tests by their sentences, values and all.</summary>
internal static class StoreSentences
{
    /// <summary>What is said of a refusal.</summary>
    public static string Said(this StoreException fault) => StoreTexts.Of(fault.Fault);

    /// <summary>What is said of what is wrong.</summary>
    public static string Said(this Finding finding) => CheckTexts.What(finding);

    /// <summary>What was told since a store was opened.</summary>
    public static string[] Told(this BookStore store) => [.. store.Notices.Select(StoreTexts.Of)];
}
