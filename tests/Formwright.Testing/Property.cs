using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using CsCheck;

namespace Formwright.Testing;

/// <summary>
/// Properties, each tried on cases that its name alone decides: a run that was green is green again on the same code, and what fails, fails
/// on every machine. With FORMWRIGHT_FRESH=1 every run draws other cases, which is how new faults are hunted.
/// </summary>
public static class Property
{
    private const int Usual = 100;
    private const int Shrinking = 1000;

    private static readonly ulong Fresh =
        Environment.GetEnvironmentVariable("FORMWRIGHT_FRESH") == "1"
            ? (ulong)DateTime.UtcNow.Ticks
            : 0;

    /// <summary>Tries a property on so many cases. What fails is made smaller and told with its seed.</summary>
    /// <param name="gen">What the cases are drawn from.</param>
    /// <param name="check">Throws where the property does not hold.</param>
    /// <param name="iter">How many cases.</param>
    /// <param name="name">The property's name.</param>
    [SuppressMessage("Design", "CA1031", Justification = "Whatever is thrown is a failure.")]
    public static void Holds<T>(
        this Gen<T> gen,
        Action<T> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    )
    {
        PCG drawn = new(1, Seed(name) ^ Fresh);
        for (int i = 0; i < iter; i++)
        {
            string seed = drawn.ToString();
            T given = gen.Generate(drawn, null, out _);
            try
            {
                check(given);
            }
            catch (Exception)
            {
                gen.Sample(check, iter: Shrinking, threads: 1, seed: seed);
                throw;
            }
        }
    }

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T>(
        this Gen<T> gen,
        Func<T, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) =>
        gen.Holds(
            given =>
            {
                if (!check(given))
                {
                    throw new CsCheckException($"{name} does not hold.");
                }
            },
            iter,
            name
        );

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2>(
        this Gen<(T1, T2)> gen,
        Action<T1, T2> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2>(
        this Gen<(T1, T2)> gen,
        Func<T1, T2, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen,
        Action<T1, T2, T3> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen,
        Func<T1, T2, T3, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen,
        Action<T1, T2, T3, T4> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen,
        Func<T1, T2, T3, T4, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen,
        Action<T1, T2, T3, T4, T5> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen,
        Func<T1, T2, T3, T4, T5, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen,
        Action<T1, T2, T3, T4, T5, T6> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) => gen.Holds(t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6), iter, name);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4, T5, T6, T7>(
        this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen,
        Action<T1, T2, T3, T4, T5, T6, T7> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) =>
        gen.Holds(
            t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6, t.Item7),
            iter,
            name
        );

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int, string)"/>
    public static void Holds<T1, T2, T3, T4, T5, T6, T7>(
        this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen,
        Func<T1, T2, T3, T4, T5, T6, T7, bool> check,
        int iter = Usual,
        [CallerMemberName] string name = ""
    ) =>
        gen.Holds(
            t => check(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6, t.Item7),
            iter,
            name
        );

    // FNV-1a (Fowler, Noll and Vo): the same on every machine, which the runtime's own hash of a text is not.
    private static ulong Seed(string name) =>
        name.Aggregate(14695981039346656037UL, (hash, letter) => (hash ^ letter) * 1099511628211UL);
}
