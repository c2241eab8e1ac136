using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Formwright.PageBench;
using Microsoft.Playwright;

// Measures the page of the program that ./formwright built in Debian's Chromium and prints a table:
// ./formwright --help && dotnet run -c Release --project bench/Formwright.PageBench -- [minutes of dragging]
// Frames come 60 times a second; both times that are compared are rounded to a tenth of a ms.
const double FrameMs = (1000 / 60.0) + 0.2;
double minutes = args is [{ } given, ..] ? double.Parse(given, CultureInfo.InvariantCulture) : 2;
Rows rows = new();
using IPlaywright playwright = await Playwright.CreateAsync();
await using IBrowser browser = await playwright.Chromium.LaunchAsync(
    new()
    {
        ExecutablePath = "/usr/bin/chromium",
        Args =
        [
            "--no-sandbox",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--enable-precise-memory-info",
        ],
    }
);
await Small();
await Many();
rows.Print(Console.Out);

async Task Small()
{
    using Served served = new();
    served.Fill(3);
    IPage page = await NewPageAsync();
    DateTimeOffset started = DateTimeOffset.UtcNow;
    Stopwatch watch = Stopwatch.StartNew();
    await served.StartAsync();
    await OpenAsync(page, served.Address + "/");
    double live = watch.Elapsed.TotalMilliseconds;
    // Painted with all it says by the server's first answer; live once its line to the server is up.
    double paint = await page.EvaluateAsync<double>(Scripts.Painted);
    double painted = (
        DateTimeOffset.FromUnixTimeMilliseconds((long)paint) - started
    ).TotalMilliseconds;
    rows.Add("from the command to the first page, painted", [painted], "1500 ms");
    rows.Add("from the command to the first page, live", [live], "");
    List<double> first = [];
    for (int i = 0; i < 5; i++)
    {
        watch.Restart();
        await OpenAsync(page, served.Address + "/d/heron%201/outline");
        first.Add(watch.Elapsed.TotalMilliseconds);
    }

    rows.Add("a page of a running server, live", first, "1500 ms");
    await DragAsync(page, served);
    await OpenAsync(page, served.Address + "/d/heron%201/outline");
    await StagesAsync(page);
    await OpenAsync(page, served.Address + "/d/heron%201/outline");
    await LongDragAsync(page, served);
}

async Task Many()
{
    using Served served = new();
    served.Fill(200);
    await served.StartAsync();
    IPage page = await NewPageAsync();
    Stopwatch watch = Stopwatch.StartNew();
    await OpenAsync(page, served.Address + "/");
    rows.Add("200 designs in the list, live", [watch.Elapsed.TotalMilliseconds], "no lag");
    double[] frames = await page.EvaluateAsync<double[]>(Scripts.ScrollFrames);
    rows.Add("200 designs, from frame to frame while the list scrolls", frames, "16 ms");
}

async Task<IPage> NewPageAsync()
{
    IBrowserContext context = await browser.NewContextAsync(
        new()
        {
            ViewportSize = new() { Width = 1440, Height = 900 },
        }
    );
    context.SetDefaultTimeout(120_000);
    return await context.NewPageAsync();
}

static async Task OpenAsync(IPage page, string address)
{
    await page.GotoAsync(address);
    await page.WaitForFunctionAsync(
        "() => document.querySelector('[data-live=yes]') && (!document.querySelector('svg[data-drawing]') || document.querySelector('[data-sized]'))"
    );
}

// Processor time of the page's main thread since it was opened, ms: it doesn't count what others on the machine take.
static async Task<double> MainThreadAsync(ICDPSession session)
{
    JsonElement told = (await session.SendAsync("Performance.getMetrics"))!.Value;
    return told.GetProperty("metrics")
            .EnumerateArray()
            .First(each => each.GetProperty("name").GetString() == "TaskDuration")
            .GetProperty("value")
            .GetDouble() * 1000;
}

static async Task<(float X, float Y)> HandleAsync(IPage page)
{
    LocatorBoundingBoxResult box = (
        await page.Locator("[data-handle='lower_bout'][data-axis='uy']").BoundingBoxAsync()
    )!;
    return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
}

async Task DragAsync(IPage page, Served served)
{
    const int Moves = 200;
    await page.WaitForTimeoutAsync(3000);
    await page.EvaluateAsync(Scripts.Watch);
    ICDPSession session = await page.Context.NewCDPSessionAsync(page);
    await session.SendAsync("Performance.enable", new() { ["timeDomain"] = "threadTicks" });
    (float x, float y) = await HandleAsync(page);
    await page.Mouse.MoveAsync(x, y);
    await page.Mouse.DownAsync();
    (double work, TimeSpan cpu) = (await MainThreadAsync(session), served.Cpu);
    for (int i = 1; i <= Moves; i++)
    {
        await page.Mouse.MoveAsync(x + (8 * MathF.Sin(i * 0.1f)), y + (4 * MathF.Cos(i * 0.1f)));
    }

    (work, cpu) = (await MainThreadAsync(session) - work, served.Cpu - cpu);
    rows.Add(
        "from a pointer's move to the frame that shows the handle there",
        await page.EvaluateAsync<double[]>("() => bench.frames"),
        "16 ms at the 95th percentile"
    );
    // A move waits up to the time of a frame for the next one, whatever the page does: what it does shows in how many miss it.
    double[] begun = await page.EvaluateAsync<double[]>("() => bench.begun");
    rows.Add(
        "of these moves, shown by the very next frame",
        string.Create(
            CultureInfo.InvariantCulture,
            $"{100.0 * begun.Count(wait => wait <= FrameMs) / begun.Length:0.0} % of {begun.Length}"
        ),
        "95 %"
    );
    rows.Add(
        "work of the page's main thread for a move and its answer, processor time",
        string.Create(CultureInfo.InvariantCulture, $"{work / Moves:0.0} ms"),
        "16 ms"
    );
    rows.Add(
        "work of the server for a move, with the studies that fall among them, processor time",
        string.Create(CultureInfo.InvariantCulture, $"{cpu.TotalMilliseconds / Moves:0.0} ms"),
        ""
    );

    // One move at a time, with a rest after it: what the last move of a drag sees.
    for (int i = 1; i <= 25; i++)
    {
        await page.EvaluateAsync("() => bench.start()");
        await page.Mouse.MoveAsync(x + 4 + (i % 2), y + (i % 5));
        await page.WaitForFunctionAsync(
            "() => bench.isDone()",
            null,
            new() { Timeout = 20_000, PollingInterval = 40 }
        );
    }

    await page.Mouse.UpAsync();
    rows.Add(
        "from the last move to the settled curve and its figures",
        await page.EvaluateAsync<double[]>("() => bench.settled"),
        "60 ms"
    );
    rows.Add(
        "from the last move to all the rest, marked as pending until then",
        await page.EvaluateAsync<double[]>("() => bench.rest"),
        "300 ms"
    );
}

async Task StagesAsync(IPage page)
{
    await page.EvaluateAsync("() => { window.kept = true; }");
    int count = await page.Locator(".stages a").CountAsync();
    foreach (string time in (string[])["the first time", "again"])
    {
        List<double> shown = [];
        List<double> drawn = [];
        for (int i = 0; i < count; i++)
        {
            double[] times = await page.EvaluateAsync<double[]>(
                Scripts.ChangeStage,
                (i + 1) % count
            );
            shown.Add(times[0]);
            drawn.Add(times[1]);
        }

        rows.Add($"stage change {time}, its fields in sight", shown, "200 ms");
        rows.Add($"stage change {time}, its drawing in sight", drawn, "");
    }

    rows.Add(
        "the page was kept through all stages",
        await page.EvaluateAsync<bool>("() => window.kept === true") ? "yes" : "no",
        "yes"
    );
}

async Task LongDragAsync(IPage page, Served served)
{
    // A hand at work for so long; as fast as the page takes moves it would only be a shorter time.
    TimeSpan pace = TimeSpan.FromMilliseconds(40);
    await page.WaitForTimeoutAsync(3000);
    (float x, float y) = await HandleAsync(page);
    await page.Mouse.MoveAsync(x, y);
    await page.Mouse.DownAsync();
    Stopwatch watch = Stopwatch.StartNew();
    List<(long Server, double Heap)> seen = [];
    int moves = 0;
    int steps = 8;
    for (int step = 0; step < steps; step++)
    {
        while (watch.Elapsed.TotalMinutes < minutes * (step + 1) / steps)
        {
            moves++;
            await Task.Delay(pace);
            await page.Mouse.MoveAsync(
                x + (10 * MathF.Sin(moves * 0.05f)),
                y + (6 * MathF.Cos(moves * 0.05f))
            );
        }

        seen.Add(
            (
                served.MemoryMb,
                await page.EvaluateAsync<double>(
                    "() => performance.memory.usedJSHeapSize / 1048576"
                )
            )
        );
    }

    await page.Mouse.UpAsync();
    rows.Add(
        string.Create(
            CultureInfo.InvariantCulture,
            $"memory of the server over {minutes:0.#} minutes of dragging, {moves} moves, MB"
        ),
        string.Join(", ", seen.Select(each => each.Server)),
        "steady"
    );
    rows.Add(
        "memory of the page's script over the same, MB",
        string.Join(
            ", ",
            seen.Select(each => each.Heap.ToString("0.0", CultureInfo.InvariantCulture))
        ),
        "steady"
    );
}
