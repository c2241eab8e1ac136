using System.Diagnostics;
using System.Globalization;
using BenchmarkDotNet.Running;
using Formwright.Bench;
using Formwright.Fields.Plates;

// Run with a filter, for example: dotnet run -c Release --project bench/Formwright.Bench -- --filter '*Membrane*'
// Or write the bare soundboard for CalculiX and tell our own cost of it: ... -- calculix 5000 heron.inp, then: ccx heron
if (args is ["calculix", string unknowns, string path])
{
    int wanted = int.Parse(unknowns, CultureInfo.InvariantCulture);
    PlateModel model = PlateModel.Of(CalculixDeck.Bare, wanted);
    File.WriteAllText(path, CalculixDeck.Of(model));
    double best = double.PositiveInfinity;
    PlateModes modes = model.Modes(20);
    for (int run = 0; run < 4; run++)
    {
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        modes = PlateModel.On(CalculixDeck.Bare, model.Mesh).Modes(20);
        TimeSpan used = Process.GetCurrentProcess().TotalProcessorTime - before;
        best = Math.Min(best, used.TotalSeconds);
    }

    Console.WriteLine(
        $"{model.Mesh.TriangleCount} triangles, {model.UnknownCount} unknowns of ours, twenty modes from the mesh in {best:0.00} s of processor time: "
            + string.Join(' ', modes.Modes.Select(mode => $"{mode.FrequencyHz:0.0}"))
    );
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
