// What only the page can do: a handle follows the hand at once; the exact curve comes from the server behind it.

let gestures = 0;

export function attach(frame, server) {
    // The drawing may have gone from the page while this was on its way.
    if (!frame) return { stop() {} };
    const drawing = () => frame.querySelector("svg[data-drawing]");
    const ghost = frame.querySelector("[data-ghost]");
    const stopping = new AbortController();
    const on = { signal: stopping.signal };
    let held = null;
    let size = "";

    const watch = new ResizeObserver(() => {
        const width = frame.clientWidth;
        const height = frame.clientHeight;
        if (`${width} ${height}` !== size && width > 0) {
            size = `${width} ${height}`;
            server.invokeMethodAsync("Resized", width, height).then(() => { frame.dataset.sized = size; });
        }
    });
    watch.observe(frame);

    // One message is under way at a time; the latest place waits and replaces what waited before.
    function sender(send) {
        let busy = false;
        let next = null;
        return async function offer(value, join) {
            next = next && join ? join(next, value) : value;
            if (busy) return;
            busy = true;
            try {
                while (next) {
                    const now = next;
                    next = null;
                    await send(now);
                }
            } finally {
                busy = false;
            }
        };
    }

    const drag = sender(m => server.invokeMethodAsync("Drag", m.handle, m.axis, m.u, m.y, m.gesture));
    const nudge = sender(m => server.invokeMethodAsync("Nudge", m.handle, m.axis, m.along, m.across, m.shift));

    // Where the drawing lies on the screen. Asked while the drawing changes it costs a layout of the page, so a drag asks once.
    function lie() {
        const svg = drawing();
        const box = svg.getBoundingClientRect();
        return { left: box.left, top: box.top, ratio: svg.viewBox.baseVal.width / box.width };
    }

    function place(event, at) {
        return { x: (event.clientX - at.left) * at.ratio, y: (event.clientY - at.top) * at.ratio };
    }

    frame.addEventListener("pointerdown", event => {
        const near = event.target.closest("[data-touch]")?.dataset;
        const handle = near
            ? frame.querySelector(`[data-handle="${near.touch}"][data-axis="${near.touchAxis}"]`)
            : event.target.closest("[data-handle]");
        if (!handle || event.button > 0) return;
        event.preventDefault();
        handle.focus({ preventScroll: true });
        frame.setPointerCapture(event.pointerId);
        const lies = lie();
        const at = place(event, lies);
        const svg = drawing();
        held = {
            lies,
            handle: handle.dataset.handle,
            axis: handle.dataset.axis,
            gesture: `${Date.now()}-${++gestures}`,
            x: +handle.dataset.x, y: +handle.dataset.y,
            offX: +handle.dataset.x - at.x, offY: +handle.dataset.y - at.y,
            scale: +svg.dataset.scale, cx: +svg.dataset.cx, top: +svg.dataset.top,
            edge: handle.dataset.axis === "r" ? edgeOf(handle) : 0,
        };
        frame.classList.add("holding");
        point(null);
        show(held.x, held.y);
    }, on);

    // A radius is read from the outline inwards (at the waist outwards), so the side's place is needed.
    function edgeOf(handle) {
        const twin = frame.querySelector(`circle[data-handle="${handle.dataset.handle}"]`);
        return twin ? +twin.dataset.x : 0;
    }

    // A layer of its own: the hand's mark moves without the drawing being painted again.
    function show(x, y) {
        ghost.style.transform = `translate(${x / held.lies.ratio}px, ${y / held.lies.ratio}px)`;
    }

    frame.addEventListener("pointermove", event => {
        if (!held) { probe(event); return; }
        const at = place(event, held.lies);
        const x = held.axis === "u" ? held.x : at.x + held.offX;
        const y = held.axis === "r" ? held.y : at.y + held.offY;
        show(x, y);
        const across = held.axis === "r" ? Math.abs(x - held.edge) : x - held.cx;
        held.last = { handle: held.handle, axis: held.axis, u: (y - held.top) / held.scale, y: across / held.scale, gesture: held.gesture };
        // The scale may follow the drawing while it grows; places stay in that of the moment it was taken up.
        drag(held.last);
    }, on);

    function release() {
        if (!held) return;
        const last = held.last;
        held = null;
        frame.classList.remove("holding");
        if (last) drag(last);
    }
    frame.addEventListener("pointerup", release, on);
    frame.addEventListener("pointercancel", release, on);

    frame.addEventListener("keydown", event => {
        const handle = event.target.closest?.("[data-handle]");
        const step = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }[event.key];
        if (!handle || !step) return;
        event.preventDefault();
        nudge(
            { handle: handle.dataset.handle, axis: handle.dataset.axis, along: step[0], across: step[1], shift: event.shiftKey },
            (a, b) => a.handle === b.handle && a.axis === b.axis && a.shift === b.shift ? { ...b, along: a.along + b.along, across: a.across + b.across } : b
        );
    }, on);

    // Point at the outline and see its curvature, or the other way round.
    function probe(event) {
        const svg = drawing();
        const text = svg?.dataset.probe;
        if (!text) return;
        const at = place(event, lie());
        const onPlot = at.x >= +svg.dataset.plot;
        let best = null;
        let least = onPlot ? 40 : 26;
        for (const part of text.split(";")) {
            if (!part) continue;
            const [x, y, p, label] = part.split("|");
            const far = onPlot ? Math.abs(at.y - y) : Math.hypot(at.x - x, at.y - y);
            if (far < least) { least = far; best = { x: +x, y: +y, p: +p, label }; }
        }
        point(best);
    }

    function point(best) {
        const svg = drawing();
        const words = svg.querySelector("[data-probe-text]");
        if (!words) return;
        put("[data-probe-on]", best?.x ?? -50, best?.y ?? -50);
        put("[data-probe-plot]", best?.p ?? -50, best?.y ?? -50);
        words.textContent = best?.label ?? "";
        words.setAttribute("x", best ? best.p + 10 : -50);
        words.setAttribute("y", best ? best.y - 8 : -50);
        function put(what, cx, cy) {
            const mark = svg.querySelector(what);
            mark.setAttribute("cx", cx);
            mark.setAttribute("cy", cy);
        }
    }

    return { stop() { stopping.abort(); watch.disconnect(); } };
}

/** Tells how large a frame is, now and whenever it changes. */
export function measure(frame, server) {
    if (!frame) return { stop() {} };
    let size = "";
    const watch = new ResizeObserver(() => {
        const style = getComputedStyle(frame);
        const width = frame.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
        const height = frame.clientHeight - parseFloat(style.paddingTop) - parseFloat(style.paddingBottom);
        if (`${width} ${height}` === size || width <= 0) return;
        size = `${width} ${height}`;
        // Room for its name over it: in a narrow frame two lines.
        server.invokeMethodAsync("Resized", width, height - (width < 600 ? 44 : 26));
    });
    watch.observe(frame);
    return { stop() { watch.disconnect(); } };
}

/** Goes to the field that cures a finding: the one in sight, or the one among all keys of the stage, which is made when they are opened. */
export async function jump(key) {
    const find = () => document.getElementById(`f-${key}`) ?? document.getElementById(`m-${key}`);
    // A list that the file leaves to the tool has no fields yet, but what writes it out; else the first of its group is where it would stand.
    const near = () => document.getElementById(`m-${key.split("[")[0]}`) ?? document.querySelector(`[id^="f-${CSS.escape(key.split(/[.[]/)[0])}\\."], [id^="m-${CSS.escape(key.split(/[.[]/)[0])}\\."]`);
    const more = document.querySelector("[data-more]");
    if (!find() && more && !more.open) {
        more.open = true;
        for (let i = 0; i < 40 && !find() && !more.querySelector(".field"); i++) await new Promise(done => setTimeout(done, 50));
    }
    const field = find() ?? near();
    if (!field) return false;
    field.closest("details")?.setAttribute("open", "");
    field.scrollIntoView({ block: "center" });
    field.focus();
    field.select?.();
    return true;
}

if (!globalThis.formwright) {
    globalThis.formwright = true;

    document.addEventListener("click", event => {
        const link = event.target.closest?.("[data-jump]");
        if (event.target.closest?.("[data-skip]")) document.querySelector(".schedules")?.focus();
        if (event.target.closest?.("[data-to-findings]")) {
            const findings = document.querySelector(".schedules .findings");
            findings?.scrollIntoView({ block: "start" });
            findings?.focus({ preventScroll: true });
        }
        // The answer comes below its question, where the window may end.
        if (event.target.closest?.("[data-solve]")) setTimeout(() => document.querySelector("[data-take]")?.scrollIntoView({ block: "nearest" }), 150);
        // A cure on this very stage needs no new page.
        if (link && link.hasAttribute("data-here")) { event.preventDefault(); jump(link.dataset.jump); }
    }, true);

    // How a figure is measured, and where a hole stands: told for what is pointed at, touched or reached by Tab.
    const tell = event => {
        const figure = event.target.closest?.("[data-how]");
        const how = document.querySelector("[data-how-here]");
        if (figure && how) how.textContent = figure.dataset.how;
        const hole = event.target.closest?.("[data-hole]");
        const tip = document.querySelector("[data-hole-tip]");
        if (tip && (hole || event.type === "click")) tip.textContent = hole?.dataset.hole ?? "";
    };
    for (const each of ["pointerover", "focusin", "click"]) document.addEventListener(each, tell);

    // A dimension on the drawing and its row in the schedule are one thing: point at one and the other lights up.
    const light = on => event => {
        const key = event.target.closest?.("[data-lit]")?.dataset.lit;
        if (!key) return;
        for (const each of document.querySelectorAll(`[data-lit="${CSS.escape(key)}"]`)) each.classList.toggle("lit", on);
    };
    document.addEventListener("pointerover", light(true));
    document.addEventListener("pointerout", light(false));
    document.addEventListener("focusin", light(true));
    document.addEventListener("focusout", light(false));

    // A button that is pressed before the line to the server is up answers as soon as it is: the last one, once.
    const isUp = () => document.querySelector("[data-live=yes]");
    const buttons = () => [...document.querySelectorAll("button")];
    let early = null;
    document.addEventListener("click", event => {
        const button = event.target.closest?.("button");
        if (button && !isUp()) early = { at: buttons().indexOf(button), says: button.textContent };
    }, true);
    new MutationObserver((_, waiting) => {
        if (!isUp()) return;
        waiting.disconnect();
        const same = early && buttons()[early.at];
        if (same?.textContent === early?.says) same?.click();
    }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-live"] });

    let edited = null;
    document.addEventListener("input", event => { edited = event.target; });
    document.addEventListener("change", () => { edited = null; });
    document.addEventListener("focusout", () => { edited = null; });

    document.addEventListener("keydown", event => {
        if (event.target.matches?.("input[data-length]")) {
            const isArrow = event.key === "ArrowUp" || event.key === "ArrowDown";
            if (isArrow) event.preventDefault();
            // An arrow steps on from what was typed; Escape takes it back.
            if (isArrow && event.target === edited) event.target.dispatchEvent(new Event("change", { bubbles: true }));
        }
        if (event.key === "Escape" && event.target.dataset?.was !== undefined) { event.target.value = event.target.dataset.was; edited = null; }
        if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
        const back = document.querySelector(event.shiftKey ? '[data-do="redo"]' : '[data-do="undo"]');
        // A field that is being typed in takes its own typing back first.
        const typing = event.target === edited;
        if (back && !typing) { event.preventDefault(); back.click(); }
    }, true);

    // A server that was killed and started again knows nothing of this page: take the page anew.
    const lost = document.getElementById("components-reconnect-modal");
    const again = async () => {
        try { await fetch("/set", { method: "HEAD", cache: "no-store" }); location.reload(); } catch { setTimeout(again, 700); }
    };
    lost?.addEventListener("components-reconnect-state-changed", event => {
        if (event.detail.state === "rejected") location.reload();
        if (event.detail.state === "failed") again();
    });
}
