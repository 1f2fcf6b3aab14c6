namespace ToolWear.Testing.Disks;

/// <summary>A stream over an image, for the document database; its writes are no crash points, since nothing rests on them.</summary>
internal sealed class DocumentStream : MemoryStream
{
    private readonly DiskImage _image;

    internal DocumentStream(DiskImage image)
    {
        _image = image;
        base.Write(image.Seen, 0, image.Seen.Length);
        Position = 0;
    }

    protected override void Dispose(bool disposing)
    {
        _image.Overwrite(ToArray());
        base.Dispose(disposing);
    }
}
