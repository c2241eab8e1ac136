using BenchmarkDotNet.Running;

// Run with a filter, for example: dotnet run -c Release --project bench/Formwright.Bench -- --filter '*Membrane*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
