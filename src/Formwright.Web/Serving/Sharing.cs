using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Formwright.Web.Serving;

/// <summary>That other devices of the shop may join, and where. There is none unless it was asked for.</summary>
/// <param name="Listen">Address to listen on; <see cref="IPAddress.Any"/> for every one of this computer.</param>
public sealed record Sharing(IPAddress Listen)
{
    /// <summary>The port that was bound; known once the server has started.</summary>
    public int Port { get; internal set; }

    /// <summary>Addresses that a device of the shop can open, the likeliest first.</summary>
    public IReadOnlyList<string> Addresses =>
        [.. Hosts().Select(host => $"http://{host}:{Port}/join")];

    private IEnumerable<IPAddress> Hosts() =>
        !Listen.Equals(IPAddress.Any)
            ? [Listen]
            : NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(each =>
                    each.OperationalStatus == OperationalStatus.Up
                    && each.NetworkInterfaceType != NetworkInterfaceType.Loopback
                )
                .OrderByDescending(each => each.GetIPProperties().GatewayAddresses.Count > 0)
                .SelectMany(each => each.GetIPProperties().UnicastAddresses)
                .Select(each => each.Address)
                .Where(each => each.AddressFamily == AddressFamily.InterNetwork);
}
