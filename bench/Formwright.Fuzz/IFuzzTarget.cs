namespace Formwright.Fuzz;

/// <summary>A reader under test. It must keep its promises for any bytes whatever.</summary>
internal interface IFuzzTarget
{
    /// <summary>Name on the command line.</summary>
    string Name { get; }

    /// <summary>Good inputs that the mutator starts from.</summary>
    IReadOnlyList<byte[]> Seeds { get; }

    /// <summary>Pieces that mean something to the reader; the mutator throws them in.</summary>
    IReadOnlyList<string> Pieces { get; }

    /// <summary>Most changes that the mutator makes to one input.</summary>
    int MostChanges { get; }

    /// <summary>Reads one input.</summary>
    /// <param name="input">The input; not to be changed.</param>
    /// <param name="random">For what the target itself draws, such as which key to set.</param>
    /// <returns>What kind of answer came out, for the tally.</returns>
    /// <exception cref="BrokenPromiseException">The reader broke a promise. Any other exception is a find too.</exception>
    string Try(byte[] input, Random random);
}
