// Writes the SVG files of the tests with libraries that are not ours: d3-path 3.1.1 (all absolute segments), svgo 4.1.0 (relative,
// shorthand and packed segments, merged flags), and librsvg's own SVG output (cairo; points, matrices).
// Run: npm install d3-path@3.1.1 svgo@4.1.0 && node make_svg.mjs   (rsvg-convert from Debian's librsvg2-bin)
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { path } from "d3-path";
import { optimize } from "svgo";

const page = (size, body, extra = "") =>
    `<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg" width="${size}mm" height="${size}mm" viewBox="0 0 ${size} ${size}"${extra}>\n${body}\n</svg>\n`;
const stroke = 'fill="none" stroke="black"';

// A circle of radius 70 as arcs.
const circle = path();
circle.arc(150, 150, 70, 0, 2 * Math.PI);
circle.closePath();
writeFileSync("d3-circle.svg", page(300, `<path id="circle" ${stroke} d="${circle}"/>`));

// A rounded rectangle 200 x 100, radius 25, by tangent arcs, under transforms that cancel each other's turn.
const round = path();
round.moveTo(50, 20);
for (const [x1, y1, x2, y2] of [[220, 20, 220, 120], [220, 120, 20, 120], [20, 120, 20, 20], [20, 20, 220, 20]]) {
    round.arcTo(x1, y1, x2, y2, 25);
}
round.closePath();
writeFileSync(
    "d3-rounded.svg",
    page(300, `<g transform="rotate(30 100 100) translate(3,4)"><path ${stroke} transform="translate(-3 -4), rotate(-30,100,100)" d="${round}"/></g>`),
);

// A closed shape of every segment kind: lines, both Béziers, smooth ones after each, arcs; as d3-path writes it, and shortened by svgo.
const all = path();
all.moveTo(20, 100);
all.bezierCurveTo(20, 60, 40, 30, 80, 30);
all.bezierCurveTo(120, 30, 130, 60, 150, 60);
all.quadraticCurveTo(170, 60, 180, 40);
all.quadraticCurveTo(190, 20, 210, 40);
all.lineTo(250, 40);
all.lineTo(250, 100);
all.arcTo(250, 180, 170, 180, 60);
all.lineTo(90, 180);
all.quadraticCurveTo(20, 180, 20, 100);
all.closePath();
const verbose = page(300, `<path id="all" ${stroke} d="${all}"/>`);
writeFileSync("d3-all.svg", verbose);
writeFileSync("svgo-all.svg", optimize(verbose, { multipass: true, floatPrecision: 6 }).data);
writeFileSync("rsvg-all.svg", execFileSync("rsvg-convert", ["-f", "svg", "d3-all.svg"]));
