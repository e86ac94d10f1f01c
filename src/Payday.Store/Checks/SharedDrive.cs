namespace Payday.Store.Checks;

/// <summary>Tells drives that another machine, or the machine that this one runs in, may write to at the same time.</summary>
internal static class SharedDrive
{
    // Types of file systems as Linux names them (/proc/filesystems, mount.fuse) and macOS does (statfs).
    private static readonly HashSet<string> Shared = new(StringComparer.OrdinalIgnoreCase)
    {
        "9p", "afpfs", "afs", "ceph", "cifs", "coda", "davfs", "glusterfs", "gvfsd-fuse", "lustre", "ncpfs", "nfs", "nfs4",
        "prl_fs", "smb", "smb2", "smb3", "smbfs", "sshfs", "v9fs", "vboxsf", "virtiofs", "vmhgfs", "vmhgfs-fuse", "webdav",
    };

    /// <summary>The kind of drive a folder is on, where that is a shared one; else null.</summary>
    public static string? KindOf(string folder)
    {
        try
        {
            var drive = new DriveInfo(folder);
            return OperatingSystem.IsWindows()
                ? drive.DriveType == DriveType.Network ? "network" : null
                : Kind(drive.DriveFormat);
        }
        catch (ArgumentException)
        {
            // Windows has drives by letters; a path without one names another machine.
            return "network";
        }
    }

    /// <summary>A type of file system, where it is a shared one; else null.</summary>
    public static string? Kind(string type)
    {
        string kind = type.StartsWith("fuse.", StringComparison.Ordinal) ? type["fuse.".Length..] : type;
        return Shared.Contains(kind) ? kind : null;
    }
}
