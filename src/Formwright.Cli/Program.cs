Console.WriteLine("formwright");
