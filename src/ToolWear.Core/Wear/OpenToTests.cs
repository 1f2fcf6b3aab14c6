using System.Runtime.CompilerServices;

// the parts that no caller needs (curves, the normal curve, root finding) have laws of their own to be tested
[assembly: InternalsVisibleTo("ToolWear.Core.Tests")]
