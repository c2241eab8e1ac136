using System.Security.Cryptography;
using System.Text;

namespace Formwright.Web.Serving;

/// <summary>
/// The devices that have joined, and the code with which the next one may: it is shown on the shop's computer only, serves once, for
/// ten minutes, and is withdrawn after five wrong tries. All of it is forgotten when the server stops. Safe to use from several threads.
/// </summary>
/// <param name="clock">The time.</param>
public sealed class Devices(TimeProvider clock) : IDisposable
{
    public const string CookieName = "formwright-device";

    /// <summary>Wrong tries after which a code is withdrawn (our choice; a guess hits one in 8 · 10¹¹).</summary>
    public const int MostTries = 5;

    /// <summary>How long a code may be used.</summary>
    public static readonly TimeSpan CodeLasts = TimeSpan.FromMinutes(10);

    // Without letters and digits that are mistaken for each other.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int CodeLength = 8;
    private const int SecretBytes = 32;
    private const int MostName = 40;
    private const int MostDevices = 20;

    private readonly Lock gate = new();
    private readonly List<Device> joined = [];
    private string? code;
    private DateTimeOffset until;
    private int tries;
    private int last;

    /// <summary>Told when a device joined or went, or the code changed; on any thread.</summary>
    public event Action? Changed;

    /// <summary>The devices, in the order in which they joined.</summary>
    public IReadOnlyList<Device> Joined
    {
        get
        {
            lock (gate)
            {
                return [.. joined];
            }
        }
    }

    /// <summary>The code that is good now, written in two groups; null where there is none.</summary>
    public string? Code
    {
        get
        {
            lock (gate)
            {
                return IsGood ? $"{code![..4]}-{code[4..]}" : null;
            }
        }
    }

    private bool IsGood => code is not null && clock.GetUtcNow() < until && tries < MostTries;

    /// <summary>Makes another code; the one before is void.</summary>
    public string NewCode()
    {
        lock (gate)
        {
            code = RandomNumberGenerator.GetString(Letters, CodeLength);
            until = clock.GetUtcNow() + CodeLasts;
            tries = 0;
        }

        Changed?.Invoke();
        return Code!;
    }

    /// <summary>Lets a device in that knows the code.</summary>
    /// <param name="typed">What it was told; blanks, hyphens and small letters don't matter.</param>
    /// <param name="name">What it is to be called.</param>
    /// <returns>The secret for its cookie, or null: wrong, too late, or no code.</returns>
    public string? Join(string typed, string name)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(name);
        string plain = string.Concat(typed.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
        string? secret = null;
        lock (gate)
        {
            if (!IsGood || joined.Count >= MostDevices)
            {
                return null;
            }

            bool fits = CryptographicOperations.FixedTimeEquals(
                SHA256.HashData(Encoding.UTF8.GetBytes(plain)),
                SHA256.HashData(Encoding.UTF8.GetBytes(code!))
            );
            if (fits)
            {
                code = null;
                secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
                string called = string.Concat(name.Where(c => !char.IsControl(c))).Trim();
                last++;
                joined.Add(
                    new Device(
                        last,
                        called.Length == 0
                            ? $"{last}"
                            : called[..Math.Min(called.Length, MostName)],
                        clock.GetLocalNow().DateTime,
                        Proof(secret),
                        new CancellationTokenSource()
                    )
                );
            }
            else
            {
                tries++;
            }
        }

        Changed?.Invoke();
        return secret;
    }

    /// <summary>The device of a cookie; null where it never joined or was sent away.</summary>
    public Device? Find(string? secret)
    {
        if (secret is not { Length: 2 * SecretBytes })
        {
            return null;
        }

        byte[] proof = Proof(secret);
        lock (gate)
        {
            return joined.FirstOrDefault(device =>
                CryptographicOperations.FixedTimeEquals([.. device.Proof], proof)
            );
        }
    }

    /// <summary>Sends a device away: its cookie is worth nothing from now on, and what it has open ends.</summary>
    public void Revoke(int id)
    {
        Device? gone;
        lock (gate)
        {
            gone = joined.FirstOrDefault(device => device.Id == id);
            if (gone is not null)
            {
                joined.Remove(gone);
            }
        }

        gone?.Gone.Cancel();
        Changed?.Invoke();
    }

    public void Dispose()
    {
        foreach (Device device in Joined)
        {
            device.Gone.Dispose();
        }
    }

    private static byte[] Proof(string secret) => SHA256.HashData(Encoding.UTF8.GetBytes(secret));
}
