namespace ToolWear.Storage;

/// <summary>Where the files of one store lie: all beside FILE, which is the document file.</summary>
/// <param name="Documents">FILE, as the smith named it: a full path.</param>
public sealed record StorePaths(string Documents)
{
    /// <summary>The truth: FILE.journal.</summary>
    public string Journal => Documents + ".journal";

    /// <summary>Held while an entry is added: FILE.lock.</summary>
    public string Lock => Documents + ".lock";

    /// <summary>Held as long as a process keeps the documents: FILE-lock.</summary>
    public string DocumentsLock => Documents + "-lock";

    /// <summary>The folder of the backups the store makes by itself: FILE.backups.</summary>
    public string Backups => Documents + ".backups";

    /// <summary>The document file's second part while it is open, FILE-log: it goes where FILE goes.</summary>
    public string DocumentLog => Documents + "-log";

    /// <summary>The folder that holds them all.</summary>
    public string Folder => Disks.WholeFile.FolderOf(Documents);
}
