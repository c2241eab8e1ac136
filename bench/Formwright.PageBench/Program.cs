using System.Diagnostics;
using System.Globalization;
using Formwright.PageBench;
using Microsoft.Playwright;

// Measures the page in Debian's Chromium and prints a table: dotnet run -c Release --project bench/Formwright.PageBench -- [minutes of dragging]
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
    Stopwatch watch = Stopwatch.StartNew();
    await served.StartAsync();
    IPage page = await NewPageAsync();
    await OpenAsync(page, served.Address + "/");
    rows.Add(
        "from the command to the first page, live",
        [watch.Elapsed.TotalMilliseconds],
        "1500 ms"
    );
    List<double> first = [];
    for (int i = 0; i < 5; i++)
    {
        watch.Restart();
        await OpenAsync(page, served.Address + "/d/heron%201/outline");
        first.Add(watch.Elapsed.TotalMilliseconds);
    }

    rows.Add("a page of a running server, live", first, "1500 ms");
    await DragAsync(page);
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

static async Task<(float X, float Y)> HandleAsync(IPage page)
{
    LocatorBoundingBoxResult box = (
        await page.Locator("[data-handle='lower_bout'][data-axis='uy']").BoundingBoxAsync()
    )!;
    return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
}

async Task DragAsync(IPage page)
{
    await page.WaitForTimeoutAsync(3000);
    await page.EvaluateAsync(Scripts.Watch);
    (float x, float y) = await HandleAsync(page);
    await page.Mouse.MoveAsync(x, y);
    await page.Mouse.DownAsync();
    for (int i = 1; i <= 200; i++)
    {
        await page.Mouse.MoveAsync(x + (8 * MathF.Sin(i * 0.1f)), y + (4 * MathF.Cos(i * 0.1f)));
    }

    rows.Add(
        "from a pointer's move to the frame that shows the handle there",
        await page.EvaluateAsync<double[]>("() => bench.frames"),
        "16 ms at the 95th percentile"
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
    List<double> shown = [];
    List<double> drawn = [];
    int lost = 0;
    int count = await page.Locator(".stages a").CountAsync();
    for (int round = 0; round < 2; round++)
    {
        for (int i = 0; i < count; i++)
        {
            try
            {
                double[] times = await page.EvaluateAsync<double[]>(Scripts.ChangeStage, i);
                if (times[1] > 0)
                {
                    shown.Add(times[0]);
                    drawn.Add(times[1]);
                }
            }
            catch (PlaywrightException gone)
            {
                // The page was loaded anew: its line to the server broke on a busy machine.
                lost++;
                Console.Error.WriteLine(gone.Message);
                await page.WaitForTimeoutAsync(3000);
            }
        }
    }

    rows.Add("stage change, its fields in sight", shown, "200 ms");
    if (lost > 0)
    {
        rows.Add("stage changes at which the page was loaded anew", $"{lost}", "0");
    }

    rows.Add("stage change, its drawing in sight (the first time it is made)", drawn, "");
}

async Task LongDragAsync(IPage page, Served served)
{
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
