namespace Formwright.Web.Serving;

/// <summary>A device that has joined.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Name">What its owner called it.</param>
/// <param name="JoinedAt">When it joined.</param>
/// <param name="Proof">SHA-256 of the secret in its cookie; the secret itself is kept nowhere here.</param>
/// <param name="Gone">Cancelled when it is sent away: its open connections end.</param>
public sealed record Device(
    int Id,
    string Name,
    DateTime JoinedAt,
    IReadOnlyList<byte> Proof,
    CancellationTokenSource Gone
);
