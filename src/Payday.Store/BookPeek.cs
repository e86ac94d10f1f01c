using Payday.Core.Books;
using Payday.Store.Folders;

namespace Payday.Store;

/// <summary>A look at a folder that another process has open.</summary>
/// <param name="Book">The book as that process last stored it; null where no household is stored yet.</param>
/// <param name="Holder">Who has it.</param>
public sealed record BookPeek(Book? Book, FolderHolder Holder);
