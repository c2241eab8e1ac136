using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Net;
using Formwright.Web.Serving;

namespace Formwright.Cli.Commands;

/// <summary><c>serve [FOLDER] [--port N] [--no-browser] [--share]</c>: the workshop's page, on this machine, and for devices that join.</summary>
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
        Option<bool> share = new("--share") { Description = CliWords.Of["option.share"] };
        Option<string?> shareOn = new("--share-on")
        {
            Description = CliWords.Of["option.share-on"],
            HelpName = "192.168.1.20",
        };
        shareOn.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: { } given }] && !IPAddress.TryParse(given, out _))
            {
                result.AddError(CliWords.Of["usage.share-on"]);
            }
        });
        Command command = new("serve", CliWords.Of["command.serve"])
        {
            folder,
            port,
            quiet,
            share,
            shareOn,
        };
        command.SetAction(
            (parsed, stop) =>
                Run(
                    parsed.GetValue(folder)!,
                    parsed.GetValue(port),
                    !parsed.GetValue(quiet),
                    SharingOf(parsed.GetValue(share), parsed.GetValue(shareOn)),
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
    /// <param name="sharing">That other devices may join; null for this computer alone.</param>
    /// <param name="streams">Where it tells its address.</param>
    /// <param name="stop">Ends it.</param>
    public static async Task<int> Run(
        string folder,
        int? port,
        bool isOpened,
        Sharing? sharing,
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
                await WorkshopServer.RunAsync(new ServeOptions(folder, at, sharing), Started, stop);
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

        void Started(string address, string? code)
        {
            streams.Out.WriteLine(
                CliWords.Of.Format("serve.at", address, Path.GetFullPath(folder))
            );
            if (sharing is not null && code is not null)
            {
                streams.Out.WriteLine(
                    CliWords.Of.Format(
                        "serve.shared",
                        sharing.Addresses is [{ } first, ..] ? first : "-",
                        code
                    )
                );
            }

            streams.Out.Flush();
            if (isOpened)
            {
                Open(address, streams);
            }
        }
    }

    private static Sharing? SharingOf(bool isShared, string? on) =>
        on is not null ? new Sharing(IPAddress.Parse(on))
        : isShared ? new Sharing(IPAddress.Any)
        : null;

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
