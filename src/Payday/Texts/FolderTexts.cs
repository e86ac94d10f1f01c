using Payday.Store.Checks;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Texts;

/// <summary>What is said of a data folder that can't be used, or is better not used as it is.</summary>
internal static class FolderTexts
{
    private const string Or = "name a folder with --data.";

    /// <summary>What is wrong and what to do.</summary>
    public static string Of(FolderFault fault) => fault switch
    {
        FolderFault.Denied denied =>
            $"Payday may not {Verb(denied.Action)} in {denied.Path}. Nothing was changed; change the permissions of the folder and its files, or choose another folder with --data.",
        FolderFault.CantBeMade => $"{fault.Path} can't be made a folder. Choose another with --data.",
        FolderFault.NoFolder no => $"{no.Path} is {FileNouns.Of(no.Kind)}, not a folder. Choose another with --data.",
        FolderFault.LinkToNothing => $"{fault.Path} is a link to something that is not there. Choose another folder with --data.",
        FolderFault.NothingToLookInto => $"{fault.Path} is no folder. Choose another with --data.",
        FolderFault.Blocked => $"{fault.Path} can't be a folder, as a part of that path is none. Choose another with --data.",
        FolderFault.Closed => $"Payday may not look into {fault.Path}. Change the permissions of the folder, or choose another with --data.",
        FolderFault.DiskFull => $"The disk that holds {fault.Path} is full. Nothing was changed; free some room and try again.",
        FolderFault.DiskReadOnly =>
            $"The disk that holds {fault.Path} is read-only. Nothing was changed; make it writable, or choose a folder on another with --data.",
        FolderFault.DiskFailed failed =>
            $"The disk that holds {failed.Path} failed when Payday tried to {Verb(failed.Action)} there. Nothing was changed; check the disk and try again.",
        FolderFault.DiskFailedAmid =>
            $"The disk that holds {fault.Path} failed while it stored what you entered. Close Payday, open it again and look whether it is there.",
        FolderFault.NotStored =>
            $"What you entered could not be stored in {fault.Path}. Nothing was changed; close Payday, open it again and look before you enter it once more.",
        FolderFault.Taken taken => $"Another Payday has {taken.Path} open ({Holder(taken.Holder)}). Close it there and try again.",
        FolderFault.NoLocks =>
            $"Files in {fault.Path} can't be locked, so two programs could write there at once. Nothing was changed; choose a folder on a local disk with --data.",
        FolderFault.HouseholdGone => $"There is no household in {fault.Path} any more.",
        FolderFault.Newer => $"{fault.Path} was written by a newer Payday. Nothing was changed; use that version, or another folder with --data.",
        FolderFault.Strange { Kind: FileKind.Link } =>
            $"{fault.Path} is a link, and Payday keeps its files in the folder itself. Nothing was changed; put the file itself in its place, or move the link away.",
        FolderFault.Strange strange =>
            $"{strange.Path} is {FileNouns.Of(strange.Kind)}, not a file of Payday's. Nothing was changed; move it away, then start Payday again.",
        FolderFault.Replaced replaced =>
            $"{replaced.Path} is not the file any more that Payday has open: another program, such as one that syncs the folder, has replaced, changed or deleted it. "
            + (replaced.IsWritten
                ? "Close Payday, open it again, and look whether what you entered is there."
                : "What you entered is not stored; close Payday, open it again, and look at what is there."),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>Why there is no folder where none is named, and what to do.</summary>
    public static string Of(DefaultPlaceFault fault) => fault switch
    {
        DefaultPlaceFault.OfAnotherUser other => $"{other.Path} belongs to another user of this machine, so it is left alone. Run Payday as that user, or {Or}",
        DefaultPlaceFault.NotSet not => $"{not.Variable} is not set, so there is no place for your data. Set it, or {Or}",
        DefaultPlaceFault.NoFullPath no => $"{no.Variable} is {no.Path}, which is no full path. Set it right, or {Or}",
        DefaultPlaceFault.NotUsable { Kind: FileKind.None } not => $"{not.Variable} is {not.Path}, which is not there. Set it right, or {Or}",
        DefaultPlaceFault.NotUsable { Kind: FileKind.Closed } not => $"{not.Variable} is {not.Path}, which you may not look into. Change its permissions, or {Or}",
        DefaultPlaceFault.NotUsable not => $"{not.Variable} is {not.Path}, which is no folder. Set it right, or {Or}",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What about a folder may harm what is stored there, and what to do or was done.</summary>
    public static string Of(FolderDoubt doubt) => doubt switch
    {
        FolderDoubt.OpenToOthers => $"Other users of this machine can look into {doubt.Path}. Close it to them with payday check --mend.",
        FolderDoubt.ClosedToOthers => $"{doubt.Path} is now readable by you alone.",
        FolderDoubt.ClosedToStrangers => $"{doubt.Path} is now readable by you and its group alone.",
        FolderDoubt.OnSharedDrive shared =>
            $"{shared.Path} is on a drive that other machines can reach ({shared.Kind}). Payday can't be sure to see another machine that has it open: use it from one machine at a time, or choose a folder on a local disk with --data.",
        FolderDoubt.HasForeignCopies copies =>
            $"{copies.Path} has copies of its files that Payday did not make: {string.Join(", ", copies.Names)}. If you did not either, the folder is synced between machines, and what was entered on another one may be in them alone. Stop that syncing, put such a copy as payday.journal or payday.db into an empty folder to look at it with --data, then move it away.",
        _ => throw new ArgumentOutOfRangeException(nameof(doubt), doubt, "There is no text for it."),
    };

    /// <summary>Who has a folder open, as it stands in brackets.</summary>
    public static string Holder(FolderHolder holder) => holder == FolderHolder.Unknown ? "by whom is not known" : holder.ToString();

    private static string Verb(StoreAction action) => action switch
    {
        StoreAction.Open => "open its files",
        StoreAction.Read => "read",
        _ => "write",
    };
}
