using Payday.Store.Checks;

namespace Payday.Store.Tests.Checks;

public sealed class SharedDriveTests
{
    [Theory]
    [InlineData("ext4", null)]
    [InlineData("btrfs", null)]
    [InlineData("xfs", null)]
    [InlineData("apfs", null)]
    [InlineData("tmpfs", null)]
    [InlineData("overlay", null)]
    [InlineData("vfat", null)]
    [InlineData("fuseblk", null)]
    [InlineData("fuse.encfs", null)]
    [InlineData("nfs", "nfs")]
    [InlineData("nfs4", "nfs4")]
    [InlineData("cifs", "cifs")]
    [InlineData("smb3", "smb3")]
    [InlineData("smbfs", "smbfs")]
    [InlineData("9p", "9p")]
    [InlineData("vboxsf", "vboxsf")]
    [InlineData("virtiofs", "virtiofs")]
    [InlineData("fuse.sshfs", "sshfs")]
    [InlineData("fuse.vmhgfs-fuse", "vmhgfs-fuse")]
    [InlineData("", null)]
    public void Kind_TypeOfFileSystem_IsNamedWhereOthersCanReachIt(string type, string? kind) => Assert.Equal(kind, SharedDrive.Kind(type));

    [Fact]
    public void KindOf_FolderOnALocalDrive_IsNone()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux has /proc.");

        // What is asked of the system is the type of the drive a folder is on, also below where that is mounted.
        Assert.Equal("proc", new DriveInfo("/proc/self").DriveFormat);
        Assert.Null(SharedDrive.KindOf("/proc/self"));
    }
}
