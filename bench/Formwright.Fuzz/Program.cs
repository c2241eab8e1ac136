using System.Globalization;
using Formwright.Fuzz;
using Formwright.Fuzz.Targets;

// dotnet run -c Release --project bench/Formwright.Fuzz -- design --cases 1000000 --seed 1
IFuzzTarget[] targets =
[
    new DesignTarget(),
    new EditTarget(),
    new LengthTarget(),
    new StudyTarget(),
    new SvgTarget(),
    new DxfTarget(),
    new CsvTarget(),
    new TraceTarget(),
    new CleanTracesTarget(),
    new PlantedBumpsTarget(),
];
IFuzzTarget? target = targets.FirstOrDefault(each => args.Length > 0 && each.Name == args[0]);
if (target is null)
{
    Console.Error.WriteLine(
        $"Name one of: {string.Join(", ", targets.Select(each => each.Name))}. Then --cases N --seed S --from I --out FOLDER."
    );
    return 2;
}

CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.GetCultureInfo("en");
string Option(string name, string standard) =>
    Array.IndexOf(args, name) is >= 0 and int i && i + 1 < args.Length ? args[i + 1] : standard;
long Number(string name, string standard) =>
    long.Parse(Option(name, standard), CultureInfo.InvariantCulture);
FuzzRun run = new(target, (int)Number("--seed", "1"));
return run.Run(Number("--from", "0"), Number("--cases", "100000"), Option("--out", "out/fuzz")) == 0
    ? 0
    : 1;
