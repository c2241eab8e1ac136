using Formwright.Design;

namespace Formwright.Web.Designs;

/// <summary>A design file that someone hands in: bounded, and read as text that may hold anything.</summary>
public static class DesignUpload
{
    public const int MostBytes = DesignText.MaxBytes;

    /// <summary>Reads at most <see cref="MostBytes"/>; more is a diagnostic.</summary>
    public static async Task<DesignReading> ReadAsync(Stream from, string name)
    {
        ArgumentNullException.ThrowIfNull(from);
        byte[] bytes = new byte[MostBytes + 1];
        int length = await from.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false);
        return DesignText.Read(bytes.AsSpan(0, length), name);
    }
}
