// Pictures of shapes with the place to measure, drawn here.
import { s } from "./dom.js";
import { say } from "./say.js";

const INK = "currentColor";
const FLESH = { chicken: "#e9b59a", turkey: "#e4ab90", duck: "#b9655a", goose: "#b9655a", quail: "#d79c84", pork: "#e39c93", beef: "#b04a45",
  lamb: "#c0605a", veal: "#dd9a90", rabbit: "#e6b7a6", venison: "#8c3f3d", fish: "#ec9a72", shellfish: "#f0a58a" };

const BODIES = {
  slab: f => [s("path", { d: "M13 41c-2 20 20 26 47 26c28 0 44-8 46-17v-11z", fill: f, stroke: INK, "stroke-width": 2, "stroke-linejoin": "round" }),
    s("path", { d: "M14 40c6-16 26-20 54-18c28 2 40 8 38 20c-2 9-20 14-48 14c-28 0-50-5-44-16z", fill: f, stroke: INK, "stroke-width": 2 })],
  box: f => [s("path", { d: "M16 32l20-14h68l-18 14z", fill: f, stroke: INK, "stroke-width": 2, "stroke-linejoin": "round" }),
    s("path", { d: "M16 32h70v32h-70z", fill: f, stroke: INK, "stroke-width": 2, "stroke-linejoin": "round" }),
    s("path", { d: "M86 32l18-14v30l-18 16z", fill: f, stroke: INK, "stroke-width": 2, "stroke-linejoin": "round" })],
  cylinder: f => [s("path", { d: "M22 26h74a9 17 0 0 1 0 34h-74a9 17 0 0 1 0-34z", fill: f, stroke: INK, "stroke-width": 2 }),
    s("ellipse", { cx: 22, cy: 43, rx: 9, ry: 17, fill: f, stroke: INK, "stroke-width": 2 })],
  ellipsoid: f => [s("ellipse", { cx: 60, cy: 43, rx: 44, ry: 24, fill: f, stroke: INK, "stroke-width": 2 }),
    s("path", { d: "M22 38q38 16 76 0", fill: "none", stroke: INK, "stroke-width": 1.2 })],
  sphere: f => [s("circle", { cx: 60, cy: 43, r: 30, fill: f, stroke: INK, "stroke-width": 2 }), s("path", { d: "M31 38q29 14 58 0", fill: "none", stroke: INK, "stroke-width": 1.2 })],
  bird: f => [s("path", { d: "M20 48c0-20 22-30 44-28c20 2 34 12 34 28c0 12-16 18-38 18c-24 0-40-6-40-18z", fill: f, stroke: INK, "stroke-width": 2 }),
    s("path", { d: "M84 54c8-8 18-8 22-14c3-4 9 0 6 4c-5 7-10 16-20 18z", fill: f, stroke: INK, "stroke-width": 2 }),
    s("path", { d: "M40 34c10-4 22 0 24 10c-10 6-22 4-24-10z", fill: "none", stroke: INK, "stroke-width": 1.5 })],
};

export function kindOf(cut) {
  return /whole|flattened|hen$/.test(cut.id) && ["chicken", "turkey", "duck", "goose", "quail"].includes(cut.species) ? "bird" : cut.shape;
}

export function picture(cut) {
  const kind = kindOf(cut);
  return s("svg", { viewBox: "0 0 124 82", "aria-hidden": "true", focusable: "false" }, BODIES[kind in BODIES ? kind : "slab"](FLESH[cut.species] ?? "#d99"));
}

export const bodyPicture = kind => s("svg", { viewBox: "0 0 124 82", class: "measure", "aria-hidden": "true", focusable: "false" }, BODIES[kind](FLESH.pork));

const PLACES = ["box", "cylinder", "bird"];

export const whereToMeasure = cut => say("shape." + (PLACES.includes(kindOf(cut)) ? kindOf(cut) : "slab"));

export function measurePicture(cut) {
  const kind = kindOf(cut);
  const [top, bottom] = { box: [32, 64], cylinder: [26, 60], ellipsoid: [19, 67], bird: [19, 66] }[kind] ?? [22, 67];
  const x = 142;
  return s("svg", { viewBox: "0 0 220 82", class: "measure", role: "img", "aria-label": say("shape.measure", { where: whereToMeasure(cut) }) },
    BODIES[kind in BODIES ? kind : "slab"](FLESH[cut.species] ?? "#d99"),
    s("path", { d: `M118 ${top}h30M118 ${bottom}h30`, stroke: INK, "stroke-width": 1, "stroke-dasharray": "3 3" }),
    s("path", { d: `M${x} ${top + 1}v${bottom - top - 2}m-5 -7l5 7l5 -7M${x - 5} ${top + 8}l5 -7l5 7`, stroke: "#c2500f", "stroke-width": 2.5, fill: "none" }),
    s("text", { x: x + 12, y: (top + bottom) / 2 + 5, "font-size": 14, fill: INK }, say("shape.thickness")));
}
