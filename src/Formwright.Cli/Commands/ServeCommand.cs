using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using Formwright.Web.Serving;

namespace Formwright.Cli.Commands;

/// <summary><c>serve [FOLDER] [--port N] [--no-browser]</c>: the workshop's page, on this machine only.</summary>
internal static class ServeCommand
{
    /// <summary>Folder of the designs where none is named, under the folder that the command is called from.</summary>
    public const string UsualFolder = "designs";

    /// <summary>Ports that are tried after the usual one.</summary>
    private const int Tries = 20;

    public static Command Make(Streams streams)
    {
        Argument<string> folder = new(CliWords.Of["argument.folder"])
        {
            Description = CliWords.Of["argument.designs-folder"],
            DefaultValueFactory = _ => UsualFolder,
        };
        Option<int?> port = new("--port")
        {
            Description = CliWords.Of.Format(
                "option.port",
                ServeOptions.UsualPort.ToString(System.Globalization.CultureInfo.InvariantCulture)
            ),
            HelpName = "N",
        };
        port.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !ushort.TryParse(given, out _))
            {
                result.AddError(CliWords.Of["usage.port"]);
            }
        });
        Option<bool> quiet = new("--no-browser") { Description = CliWords.Of["option.no-browser"] };
        Command command = new("serve", CliWords.Of["command.serve"]) { folder, port, quiet };
        command.SetAction(
            (parsed, stop) =>
                Run(
                    parsed.GetValue(folder)!,
                    parsed.GetValue(port),
                    !parsed.GetValue(quiet),
                    streams,
                    stop
                )
        );
        return command;
    }

    /// <summary>Serves until Ctrl+C.</summary>
    /// <param name="folder">Folder of the designs.</param>
    /// <param name="port">The port; null tries the usual one and those after it.</param>
    /// <param name="isOpened">Whether the person's browser is opened.</param>
    /// <param name="streams">Where it tells its address.</param>
    /// <param name="stop">Ends it.</param>
    public static async Task<int> Run(
        string folder,
        int? port,
        bool isOpened,
        Streams streams,
        CancellationToken stop
    )
    {
        int at = port ?? ServeOptions.UsualPort;
        int last = port is null ? at + Tries : at;
        while (true)
        {
            try
            {
                await WorkshopServer.RunAsync(new ServeOptions(folder, at), Started, stop);
                return (int)ExitStatus.Done;
            }
            catch (IOException taken)
                when (taken.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException
                )
            {
                if (at >= last)
                {
                    await streams.Error.WriteLineAsync(CliWords.Of.Format("serve.taken", $"{at}"));
                    return (int)ExitStatus.OutsideFailure;
                }

                at++;
            }
        }

        void Started(string address)
        {
            streams.Out.WriteLine(
                CliWords.Of.Format("serve.at", address, Path.GetFullPath(folder))
            );
            streams.Out.Flush();
            if (isOpened)
            {
                Open(address, streams);
            }
        }
    }

    private static void Open(string address, Streams streams)
    {
        try
        {
            using Process? started = Process.Start(
                new ProcessStartInfo(address) { UseShellExecute = true }
            );
        }
        catch (Exception none)
            when (none is Win32Exception or PlatformNotSupportedException or FileNotFoundException)
        {
            // No browser that can be opened from here: the address stands on the terminal.
            streams.Error.WriteLine(address);
        }
    }
}
