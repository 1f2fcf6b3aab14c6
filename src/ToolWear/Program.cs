using System.Security.Cryptography;
using ToolWear;
using ToolWear.Commands;
using ToolWear.Storage.Disks;

Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
string data = Environment.GetFolderPath(
    Environment.SpecialFolder.LocalApplicationData,
    Environment.SpecialFolderOption.DoNotVerify
);
Site site = new(
    Console.Out,
    Console.Error,
    TimeProvider.System,
    new RealDisk(),
    () => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)),
    Path.Combine(data.Length == 0 ? "." : data, "toolwear", "shop.db"),
    Path.GetTempPath()
);
return Verbs.Run(site, args);
