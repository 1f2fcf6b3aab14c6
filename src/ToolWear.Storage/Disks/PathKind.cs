namespace ToolWear.Storage.Disks;

/// <summary>What stands at a path.</summary>
public enum PathKind
{
    /// <summary>Nothing at all: a file could be made there, if its folder exists.</summary>
    Nothing,

    /// <summary>A plain file that can be read at any place.</summary>
    PlainFile,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A symbolic link that leads to no folder. Two names for one file would be two locks.</summary>
    Link,

    /// <summary>A device, a pipe, a socket: nothing that can hold a shop.</summary>
    Other,
}
