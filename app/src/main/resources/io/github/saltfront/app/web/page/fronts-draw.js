// Draws the two fronts: time runs to the right, depth from the surface down to the middle; salt above, heat below, on one clock.
import { s } from "./dom.js";
import { figure, say } from "./say.js";
import { clockTime, temperature } from "./words.js";

export const SALT = { light: ["#f4f1e8", "#c3d4d3", "#7faab6", "#3f7895", "#1c4a70", "#0c2344"], dark: ["#142328", "#1c4352", "#2b7089", "#5aa5be", "#a5d8e6", "#eefaff"] };
export const HEAT = { light: ["#f4f1e8", "#f1d9a6", "#e6ab5d", "#cb6a38", "#93312f", "#4a0f22"], dark: ["#1b1613", "#55231a", "#a0411f", "#db7c34", "#f6bd72", "#fff3d6"] };
export const WORDS = Object.fromEntries(["soak", "dry-salt", "heat", "heat-before", "heat-after", "rest"].map(kind => [kind, say("stage." + kind)]));
export const LEFT = 58, RIGHT = 12, BAND = 30, FIELD = 130, LINE = 62;

export const dark = () => matchMedia("(prefers-color-scheme: dark)").matches && !matchMedia("print").matches;

export function colors(stops, share) {
  const place = Math.min(1, Math.max(0, share)) * (stops.length - 1), i = Math.min(stops.length - 2, Math.floor(place)), rest = place - i;
  const part = (hex, k) => parseInt(hex.slice(1 + 2 * k, 3 + 2 * k), 16);
  return [0, 1, 2].map(k => Math.round(part(stops[i], k) + rest * (part(stops[i + 1], k) - part(stops[i], k))));
}

export const isHeat = stage => stage.kind.startsWith("heat");
export const firstHeat = f => f.stages.find(isHeat);

// Time to the right. A long salting beside a short roast would leave the roast a sliver: unless asked for, each gets a half.
// With a ghost there is room for the longer of both days, and the ghost's heat begins where the new one does.
function timeScale(f, width, even, ghost) {
  const end = f.time_s.at(-1), heat = firstHeat(f).start_s, wide = ghost ?? f, inner = width - LEFT - RIGHT;
  const oldEnd = wide.time_s.at(-1), oldHeat = firstHeat(wide).start_s;
  const ahead = Math.max(heat, oldHeat), cook = Math.max(end - heat, oldEnd - oldHeat), split = !even && ahead > cook;
  const parts = split ? [[0, ahead, LEFT, LEFT + inner * .46], [heat, heat + cook, LEFT + inner * .46 + 8, LEFT + inner]] : [[0, heat + cook, LEFT, LEFT + inner]];
  const place = (p, t) => p[2] + (t - p[0]) / (p[1] - p[0]) * (p[3] - p[2]);
  const of = t => split && t > heat ? parts[1] : parts[0];
  return { parts, of, split,
    x: t => place(of(t), t),
    ghostX: t => t < oldHeat && split ? place(parts[0], t) : place(parts.at(-1), t < oldHeat ? t : t - oldHeat + heat),
    t(x) {
      const p = parts.find(b => x <= b[3]) ?? parts.at(-1), t = p[0] + Math.min(1, Math.max(0, (x - p[2]) / (p[3] - p[2]))) * (p[1] - p[0]);
      return Math.min(t, split && p === parts[0] ? heat : end);
    },
    isFree(x) {
      const p = parts.find(b => x <= b[3]) ?? parts.at(-1);
      return x < p[2] || p[0] + (x - p[2]) / (p[3] - p[2]) * (p[1] - p[0]) > (split && p === parts[0] ? heat : end);
    } };
}

export function indexAt(times, t) {
  let low = 0, high = times.length - 1;
  while (high - low > 1) { const m = (low + high) >> 1; if (times[m] <= t) low = m; else high = m; }
  return [low, high, times[high] > times[low] ? Math.min(1, Math.max(0, (t - times[low]) / (times[high] - times[low]))) : 0];
}

export const mix = ([a, b, w], of) => (1 - w) * of(a) + w * of(b);

function depthIndex(depths, d) {
  if (d <= depths[0]) return [0, 0, 0];
  if (d >= depths.at(-1)) return [depths.length - 1, depths.length - 1, 0];
  return indexAt(depths, d);
}

const atDepth = (depths, values, d) => mix(depthIndex(depths, d), k => values[k]);

export const valueAt = (f, field, t, d) => mix(indexAt(f.time_s, t), k => atDepth(f.depth_mm, f[field][k], d));

// the image of one quantity, with the lines on which it has a value
function image(f, field, scale, lines, toShare, stops, quick) {
  const ratio = quick ? 1 : Math.min(2, devicePixelRatio || 1);
  const canvas = document.createElement("canvas");
  const width = Math.round((scale.parts.at(-1)[3] - LEFT) * ratio), height = Math.round(FIELD * ratio);
  canvas.width = width; canvas.height = height;
  const context = canvas.getContext("2d"), pixels = context.createImageData(width, height);
  const table = Array.from({ length: 256 }, (_, i) => colors(stops, i / 255));
  const contrast = dark() ? [255, 255, 255] : [16, 24, 28];
  const rows = Array.from({ length: height }, (_, y) => depthIndex(f.depth_mm, (y + .5) / height * f.depth_total_mm));
  let before = null;
  for (let x = 0; x < width; x++) {
    const place = LEFT + (x + .5) / ratio;
    if (scale.isFree(place)) { before = null; continue; }
    const index = indexAt(f.time_s, scale.t(place)), column = new Float64Array(height);
    const values = f.depth_mm.map((_, k) => mix(index, i => f[field][i][k]));
    for (let y = 0; y < height; y++) {
      const at = 4 * (y * width + x), [a, b, w] = rows[y], v = column[y] = (1 - w) * values[a] + w * values[b];
      let rgb = table[Math.round(255 * Math.min(1, Math.max(0, toShare(v))))];
      for (const line of lines) {
        const crosses = (y > 0 && (column[y - 1] - line) * (v - line) < 0) || (before && (before[y] - line) * (v - line) < 0);
        if (crosses) rgb = contrast;
      }
      pixels.data.set(rgb, at);
      pixels.data[at + 3] = 255;
    }
    before = column;
  }
  context.putImageData(pixels, 0, 0);
  return canvas.toDataURL("image/png");
}

// where a value lies along the day, from the surface inward, as a path
function contour(g, field, value, x, y) {
  const last = g.depth_mm.length - 1;
  let path = "", pen = "M";
  for (let i = 0; i < g.time_s.length; i++) {
    const row = g[field][i];
    let k = 0;
    while (k < last && (row[k] - value) * (row[k + 1] - value) > 0) k++;
    if (k === last || row[k] === row[k + 1]) { pen = "M"; continue; }
    const w = (value - row[k]) / (row[k + 1] - row[k]);
    path += pen + x(g.time_s[i]).toFixed(1) + " " + y((1 - w) * g.depth_mm[k] + w * g.depth_mm[k + 1]).toFixed(1);
    pen = "L";
  }
  return path;
}

export function clockAt(f, t) {
  const stage = f.stages.findLast(x => x.start_s < t) ?? f.stages[0];
  const [h0, m0] = clockTime(stage.start).split(":").map(Number);
  const minutes = Math.round(h0 * 60 + m0 + (t - stage.start_s) / 60);
  const base = new Date(stage.start.slice(0, 10) + "T00:00");
  base.setMinutes(minutes);
  return { stage, clock: String(base.getHours()).padStart(2, "0") + ":" + String(base.getMinutes()).padStart(2, "0") };
}

// the end of the scale: a crust of salt on the surface must not make everything below it pale
export const saltEnd = f => {
  const near = f.depth_total_mm / 12, most = Math.max(...f.salt_pct.map(row => atDepth(f.depth_mm, row, near)));
  return [.5, 1, 2, 3, 5, 10, 30].find(m => m >= most) ?? 30;
};

export const middleOf = f => f.two_faced ? f.depth_total_mm / 2 : f.depth_total_mm;

function linePlot(out, f, scale, top, values, show, low, high, label, color, ghost, bands, mark) {
  const y = v => top + LINE - 6 - (Math.min(high, Math.max(low, v)) - low) / (high - low) * (LINE - 14);
  const path = (g, x) => "M" + g.time_s.map((t, i) => x(t).toFixed(1) + " " + y(values(g, i)).toFixed(1)).join("L");
  const right = scale.parts.at(-1)[3];
  if (mark !== undefined) out.push(s("path", { d: `M${LEFT} ${y(mark)}H${right}`, class: "line", "stroke-dasharray": "2 3" }));
  out.push(s("path", { d: `M${LEFT} ${top + LINE - 6}H${right}`, class: "line" }));
  if (ghost) out.push(s("path", { d: path(ghost, scale.ghostX), class: "ghost", stroke: color }));
  out.push(s("path", { d: path(f, scale.x), class: "curve", stroke: color }));
  for (const [t, band] of bands) {
    const x = Math.min(scale.x(t), right - 4);
    out.push(s("path", { d: `M${x - 4} ${y(band.high)}H${x + 4}M${x - 4} ${y(band.low)}H${x + 4}M${x} ${y(band.high)}V${y(band.low)}`, class: "band", stroke: color }));
  }
  out.push(s("text", { x: LEFT + 4, y: top + 8, class: "on-line" }, label),
    s("text", { x: LEFT - 5, y: y(high) + 5, "text-anchor": "end", class: "soft" }, show(high)), s("text", { x: LEFT - 5, y: y(low) + 1, "text-anchor": "end", class: "soft" }, show(low)));
}

function legend(id, stops, x, y, low, high) {
  const end = 6 + 7.6 * high.length, w = x < 330 ? 34 : 70;
  return [s("linearGradient", { id }, stops.map((c, i) => s("stop", { offset: i / (stops.length - 1), "stop-color": c }))),
    s("rect", { x: x - w - end, y: y - 10, width: w, height: 10, fill: `url(#${id})`, stroke: "var(--edge)", "stroke-width": .5 }),
    s("text", { x: x - w - end - 5, y, "text-anchor": "end", class: "soft" }, low), s("text", { x: x, y, "text-anchor": "end", class: "soft" }, high)];
}

const niceEnd = most => [.25, .5, 1, 1.5, 2, 3, 5, 10].find(m => m >= most) ?? 30;

// f: the fronts; day: what /api/stages tells of their uncertainty, if it is there; ghost: the fronts as they were
export function draw({ f, plan, width, even, ghost, day, quick }) {
  const tone = dark() ? "dark" : "light", scale = timeScale(f, width, even, ghost), out = [];
  const topSalt = BAND + 30, topHeat = topSalt + FIELD + 32, topKill = topHeat + FIELD + 16, topMiddle = topKill + LINE + 10, topWeight = topMiddle + LINE + 10, axis = topWeight + LINE + 4;
  const right = scale.parts.at(-1)[3], most = saltEnd(ghost ?? f), pull = day?.pull_temperature_c ?? f.pull_temperature_c, target = f.target_salt_pct;
  for (const stage of f.stages) {
    const a = scale.x(stage.start_s + .001), b = scale.x(stage.end_s), hot = isHeat(stage) || stage.kind === "rest";
    out.push(s("rect", { x: a, y: 2, width: Math.max(1, b - a - 1), height: BAND - 6, rx: 3, fill: hot ? "var(--heat-tint)" : "var(--salt-tint)", stroke: hot ? "var(--heat)" : "var(--salt)" }));
    const word = WORDS[stage.kind] ?? stage.kind;
    if (b - a > word.length * 7.2) out.push(s("text", { x: (a + b) / 2, y: BAND - 10, "text-anchor": "middle" }, word));
  }
  const saltLines = [target, .5].filter((v, i, all) => v <= most && all.indexOf(v) === i), heatLines = [54, pull];
  const fields = [["salt_pct", topSalt, saltLines, v => v / most, SALT[tone]], ["temperature_c", topHeat, heatLines, v => v / 100, HEAT[tone]]];
  out.push(s("text", { x: LEFT, y: topSalt - 8 }, say("draw.salt")), ...legend("salt-key", SALT[tone], right, topSalt - 7, "0", say("draw.and-up", { x: most })),
    s("text", { x: LEFT, y: topHeat - 8 }, say("draw.temperature")), ...legend("heat-key", HEAT[tone], right, topHeat - 7, temperature(0), temperature(100)));
  for (const [field, top, lines, share, stops] of fields) {
    out.push(s("image", { href: image(f, field, scale, lines, share, stops, quick), x: LEFT, y: top, width: right - LEFT, height: FIELD, preserveAspectRatio: "none" }),
      s("text", { x: LEFT - 5, y: top + 11, "text-anchor": "end", class: "soft" }, say("draw.surface")),
      s("text", { x: LEFT - 5, y: top + FIELD, "text-anchor": "end", class: "soft" }, say(f.two_faced ? "draw.other" : "draw.middle")));
    if (ghost) for (const line of lines) out.push(s("path", { d: contour(ghost, field, line, scale.ghostX, d => top + d / ghost.depth_total_mm * FIELD), class: "ghost", stroke: "var(--ink)" }));
  }
  const bands = key => (day?.stages ?? []).map((stage, i) => [f.stages[i].end_s, stage[key]]);
  linePlot(out, f, scale, topKill, (g, i) => g.kill_share_of_hold[i], v => Math.round(v * 100) + " %", 0, 1, say(width < 480 ? "draw.hold" : "draw.hold-worst"), "var(--heat)", ghost, bands("kill_share_of_hold"));
  const middle = (g, i) => atDepth(g.depth_mm, g.salt_pct[i], middleOf(g));
  const saltiest = Math.max(...bands("salt_core_pct").map(b => b[1].high), middle(f, f.time_s.length - 1), ghost ? middle(ghost, ghost.time_s.length - 1) : 0);
  const top = niceEnd(saltiest);
  linePlot(out, f, scale, topMiddle, middle, v => figure(v) + " %", 0, top, say("draw.salt-middle"), "var(--salt)", ghost, bands("salt_core_pct"), target < top ? target : undefined);
  const weights = [...f.weight_pct, ...(ghost?.weight_pct ?? []), ...bands("weight_pct").flatMap(b => [b[1].low, b[1].high])];
  linePlot(out, f, scale, topWeight, (g, i) => g.weight_pct[i], v => figure(v) + " %", Math.floor(Math.min(...weights) / 5) * 5, Math.ceil(Math.max(100, ...weights)), say("draw.weight"), "var(--salt)", ghost, bands("weight_pct"), 100);
  const whisker = day?.time_to_pull_min ?? plan?.cooking?.time_to_pull_min, heat = f.stages.find(x => x.kind === "heat");
  if (whisker) {
    const [a, b] = [whisker.low, whisker.high].map(m => Math.min(right, scale.x(heat.start_s + m * 60)));
    out.push(s("path", { d: `M${a} ${BAND - 1}V${BAND + 7}M${b} ${BAND - 1}V${BAND + 7}M${a} ${BAND + 3}H${b}`, stroke: "var(--heat)", "stroke-width": 2, fill: "none" }));
  }
  for (const [i, stage] of f.stages.entries()) {
    const old = ghost?.stages[i];
    if (!old || old.kind !== stage.kind || Math.abs(old.end_s - old.start_s - stage.end_s + stage.start_s) < 1) continue;
    const x = Math.min(right, scale.x(stage.start_s + .001) + (old.end_s - old.start_s) * (scale.of(stage.end_s)[3] - scale.of(stage.end_s)[2]) / (scale.of(stage.end_s)[1] - scale.of(stage.end_s)[0]));
    out.push(s("path", { d: `M${x} ${BAND}V${topHeat + FIELD}`, class: "ghost", stroke: "var(--ink)" }), s("text", { x: x - 4, y: topSalt + FIELD - 6, "text-anchor": "end", class: "on-line" }, say("draw.before")));
  }
  let last = -99;
  for (const stage of [...f.stages, { start_s: f.time_s.at(-1) }]) {
    const x = scale.x(stage.start_s + .001), low = x - last < 46 ? 16 : 0;
    last = x;
    out.push(s("path", { d: `M${x} ${axis - 4}V${axis + 3}`, class: "line" }), s("text", { x: Math.min(Math.max(x, 20), width - 20), y: axis + 17 + low, "text-anchor": x > width - 40 ? "end" : "middle" }, clockAt(f, stage.start_s + .5).clock));
  }
  const cursor = s("path", { class: "cursor", d: "" }), spot = s("circle", { r: 0, fill: "none", stroke: "var(--ink)", "stroke-width": 2 }), spot2 = spot.cloneNode();
  const node = s("svg", { viewBox: `0 0 ${width} ${axis + 40}`, role: "img", "aria-labelledby": "fronts-title fronts-words" }, out, cursor, spot, spot2);
  return { node, scale, move(t, d) {
    const x = scale.x(t);
    cursor.setAttribute("d", `M${x} ${BAND}V${axis - 4}`);
    for (const [c, y] of [[spot, topSalt], [spot2, topHeat]]) {
      c.setAttribute("cx", x); c.setAttribute("cy", y + d / f.depth_total_mm * FIELD); c.setAttribute("r", 6);
    }
  }, depthAt(y) {
    const start = y < topHeat - 16 ? topSalt : topHeat;
    return y < topSalt || y > topHeat + FIELD ? null : Math.min(1, Math.max(0, (y - start) / FIELD)) * f.depth_total_mm;
  } };
}
