using Payday.Core.Books;
using Payday.Store.Folders;

namespace Payday.Screens.Watching;

/// <summary>What a look at a data folder saw.</summary>
/// <param name="Book">The book as it is stored.</param>
/// <param name="Holder">Who has the folder open; null for nobody.</param>
internal sealed record Seen(Book Book, FolderHolder? Holder);
