using Formwright.Cli;

return CommandLine.Run(args, Streams.OfProcess());
