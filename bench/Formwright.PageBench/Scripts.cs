namespace Formwright.PageBench;

/// <summary>What is measured inside the page.</summary>
internal static class Scripts
{
    /// <summary>Times of pointer moves, of the curve's change and of the end of what is pending.</summary>
    public const string Watch = """
        () => {
            const bench = window.bench = { frames: [], begun: [], settled: [], rest: [], at: 0, curve: 0, end: 0 };
            document.addEventListener("pointermove", event => {
                bench.at = event.timeStamp;
                requestAnimationFrame(begun => {
                    bench.frames.push(performance.now() - event.timeStamp);
                    bench.begun.push(begun - event.timeStamp);
                });
            }, true);
            bench.start = () => { bench.curve = bench.end = bench.at = 0; };
            bench.isDone = () => {
                if (!bench.curve || !bench.end) return false;
                bench.settled.push(bench.curve);
                bench.rest.push(bench.end);
                return true;
            };
            const outline = document.querySelector("path.outline");
            new MutationObserver(changes => {
                if (!bench.at) return;
                const now = performance.now() - bench.at;
                if (!bench.curve && changes.some(each => each.target === outline || each.target.parentElement?.closest("[data-figure]"))) bench.curve = now;
                if (bench.curve && !document.querySelector("p.pending")) bench.end = bench.end || now;
            }).observe(document.querySelector(".office"), { subtree: true, childList: true, attributes: true, characterData: true });
        }
        """;

    /// <summary>When the page was first painted with its letters, ms since 1970.</summary>
    public const string Painted = """
        () => performance.timeOrigin + performance.getEntriesByName("first-contentful-paint")[0].startTime
        """;

    /// <summary>Clicks the stage of a number and waits for its fields and its drawing.</summary>
    public const string ChangeStage = """
        i => new Promise(done => {
            const link = document.querySelectorAll(".stages a")[i];
            const name = link.querySelector(".name").textContent;
            const start = performance.now();
            let shown = 0;
            const look = () => {
                const now = performance.now() - start;
                if (!shown && document.querySelector("main").getAttribute("aria-label") === name && document.querySelector(".schedules section")) shown = now;
                if (shown && document.querySelector("main svg, main .second.wide") && !document.querySelector(".pending.wide, .pending-drawing")) { done([shown, now]); return; }
                if (now > 60000) { done([shown || now, now]); return; }
                requestAnimationFrame(look);
            };
            link.click();
            requestAnimationFrame(look);
        })
        """;

    /// <summary>Times between frames while the list scrolls down for two seconds.</summary>
    public const string ScrollFrames = """
        () => new Promise(done => {
            const box = document.querySelector(".scrolls");
            const times = [];
            const start = performance.now();
            let last = start;
            const step = () => {
                const now = performance.now();
                times.push(now - last);
                last = now;
                box.scrollTop += 40;
                if (now - start < 2000) requestAnimationFrame(step); else done(times.slice(1));
            };
            requestAnimationFrame(step);
        })
        """;
}
