// The two fronts: time runs to the right, depth from the surface down to the middle; salt above, heat below, on one clock.
import { ask, h, s } from "./dom.js";
import { clockTime, duration, length, round, temperature } from "./words.js";

const SALT = { light: ["#f4f1e8", "#c3d4d3", "#7faab6", "#3f7895", "#1c4a70", "#0c2344"], dark: ["#142328", "#1c4352", "#2b7089", "#5aa5be", "#a5d8e6", "#eefaff"] };
const HEAT = { light: ["#f4f1e8", "#f1d9a6", "#e6ab5d", "#cb6a38", "#93312f", "#4a0f22"], dark: ["#1b1613", "#55231a", "#a0411f", "#db7c34", "#f6bd72", "#fff3d6"] };
const WORDS = { soak: "soak", "dry-salt": "salted, in the refrigerator", heat: "heat", "heat-before": "first heat", "heat-after": "last heat", rest: "rest" };
const LEFT = 58, RIGHT = 12, BAND = 30, FIELD = 130, LINE = 62;

const dark = () => matchMedia("(prefers-color-scheme: dark)").matches && !matchMedia("print").matches;

function colors(stops, share) {
  const place = Math.min(1, Math.max(0, share)) * (stops.length - 1), i = Math.min(stops.length - 2, Math.floor(place)), rest = place - i;
  const part = (hex, k) => parseInt(hex.slice(1 + 2 * k, 3 + 2 * k), 16);
  return [0, 1, 2].map(k => Math.round(part(stops[i], k) + rest * (part(stops[i + 1], k) - part(stops[i], k))));
}

const isHeat = stage => stage.kind.startsWith("heat"), firstHeat = f => f.stages.find(isHeat);

// Time to the right. A long salting beside a short roast would leave the roast a sliver: unless asked for, each gets a half.
function timeScale(f, width, even) {
  const end = f.time_s.at(-1), heat = firstHeat(f).start_s;
  const inner = width - LEFT - RIGHT;
  const breaks = heat > 0 && !even && heat > (end - heat) ? [[0, heat, LEFT, LEFT + inner * .46], [heat, end, LEFT + inner * .46 + 8, LEFT + inner]] : [[0, end, LEFT, LEFT + inner]];
  return { parts: breaks,
    x(t) { const p = breaks.find(b => t <= b[1]) ?? breaks.at(-1); return p[2] + (t - p[0]) / (p[1] - p[0]) * (p[3] - p[2]); },
    t(x) { const p = breaks.find(b => x <= b[3]) ?? breaks.at(-1); return p[0] + Math.min(1, Math.max(0, (x - p[2]) / (p[3] - p[2]))) * (p[1] - p[0]); } };
}

function indexAt(times, t) {
  let low = 0, high = times.length - 1;
  while (high - low > 1) { const m = (low + high) >> 1; if (times[m] <= t) low = m; else high = m; }
  return [low, high, times[high] > times[low] ? Math.min(1, Math.max(0, (t - times[low]) / (times[high] - times[low]))) : 0];
}

const mix = ([a, b, w], of) => (1 - w) * of(a) + w * of(b);

function atDepth(depths, values, d) {
  if (d <= depths[0]) return values[0];
  if (d >= depths.at(-1)) return values.at(-1);
  const i = indexAt(depths, d);
  return mix(i, k => values[k]);
}

export const valueAt = (f, field, t, d) => mix(indexAt(f.time_s, t), k => atDepth(f.depth_mm, f[field][k], d));

// the image of one quantity, with the lines on which it has a value
function image(f, field, scale, lines, toShare, stops) {
  const ratio = Math.min(2, devicePixelRatio || 1);
  const canvas = document.createElement("canvas");
  const width = Math.round((scale.parts.at(-1)[3] - LEFT) * ratio), height = Math.round(FIELD * ratio);
  canvas.width = width; canvas.height = height;
  const context = canvas.getContext("2d"), pixels = context.createImageData(width, height);
  const table = Array.from({ length: 256 }, (_, i) => colors(stops, i / 255));
  const contrast = dark() ? [255, 255, 255] : [16, 24, 28];
  let before = null;
  for (let x = 0; x < width; x++) {
    const place = LEFT + (x + .5) / ratio;
    const gap = scale.parts.length > 1 && place > scale.parts[0][3] && place < scale.parts[1][2];
    const index = indexAt(f.time_s, scale.t(place)), column = new Float64Array(height);
    const values = f.depth_mm.map((_, k) => mix(index, i => f[field][i][k]));
    for (let y = 0; y < height; y++) {
      const at = 4 * (y * width + x), v = column[y] = atDepth(f.depth_mm, values, (y + .5) / height * f.depth_total_mm);
      if (gap) continue;
      let rgb = table[Math.round(255 * Math.min(1, Math.max(0, toShare(v))))];
      for (const line of lines) {
        const crosses = (y > 0 && (column[y - 1] - line.value) * (v - line.value) < 0) || (before && (before[y] - line.value) * (v - line.value) < 0);
        if (crosses) rgb = contrast;
      }
      pixels.data.set(rgb, at);
      pixels.data[at + 3] = 255;
    }
    before = gap ? null : column;
  }
  context.putImageData(pixels, 0, 0);
  return canvas.toDataURL("image/png");
}

export function clockAt(f, t) {
  const stage = f.stages.findLast(x => x.start_s < t) ?? f.stages[0];
  const [h0, m0] = clockTime(stage.start).split(":").map(Number);
  const minutes = Math.round(h0 * 60 + m0 + (t - stage.start_s) / 60);
  const base = new Date(stage.start.slice(0, 10) + "T00:00");
  base.setMinutes(minutes);
  return { stage, clock: String(base.getHours()).padStart(2, "0") + ":" + String(base.getMinutes()).padStart(2, "0") };
}

const saltEnd = f => [1, 2, 3, 5, 10, 30].find(m => m >= Math.max(...f.salt_pct.map(r => Math.max(...r))) * .75) ?? 30;

function linePlot(out, f, scale, top, field, show, low, high, label, color, ghost, mark) {
  const y = v => top + LINE - 6 - (Math.min(high, Math.max(low, v)) - low) / (high - low) * (LINE - 14);
  const path = (g, sc) => "M" + g.time_s.map((t, i) => sc.x(Math.min(t, f.time_s.at(-1))).toFixed(1) + " " + y(g[field][i]).toFixed(1)).join("L");
  if (mark !== undefined) out.push(s("path", { d: `M${LEFT} ${y(mark)}H${scale.parts.at(-1)[3]}`, class: "line", "stroke-dasharray": "2 3" }));
  out.push(s("path", { d: `M${LEFT} ${top + LINE - 6}H${scale.parts.at(-1)[3]}`, class: "line" }));
  if (ghost) out.push(s("path", { d: path(ghost, scale), class: "ghost", stroke: color }));
  out.push(s("path", { d: path(f, scale), class: "curve", stroke: color }), s("text", { x: LEFT + 4, y: top + 8 }, label),
    s("text", { x: LEFT - 5, y: y(high) + 5, "text-anchor": "end", class: "soft" }, show(high)), s("text", { x: LEFT - 5, y: y(low) + 1, "text-anchor": "end", class: "soft" }, show(low)));
}

function legend(id, stops, x, y, low, high) {
  const end = 6 + 7.6 * high.length, w = x < 330 ? 34 : 70;
  return [s("linearGradient", { id }, stops.map((c, i) => s("stop", { offset: i / (stops.length - 1), "stop-color": c }))),
    s("rect", { x: x - w - end, y: y - 10, width: w, height: 10, fill: `url(#${id})`, stroke: "var(--edge)", "stroke-width": .5 }),
    s("text", { x: x - w - end - 5, y, "text-anchor": "end", class: "soft" }, low), s("text", { x: x, y, "text-anchor": "end", class: "soft" }, high)];
}

export function draw(f, plan, width, even, ghost) {
  const tone = dark() ? "dark" : "light", scale = timeScale(f, width, even), out = [];
  const topSalt = BAND + 30, topHeat = topSalt + FIELD + 32, topKill = topHeat + FIELD + 16, topWeight = topKill + LINE + 10, axis = topWeight + LINE + 4;
  const right = scale.parts.at(-1)[3], most = saltEnd(f);
  const pull = f.pull_temperature_c, target = f.target_salt_pct;
  for (const stage of f.stages) {
    const a = scale.x(stage.start_s + .001), b = scale.x(stage.end_s), hot = isHeat(stage) || stage.kind === "rest";
    out.push(s("rect", { x: a, y: 2, width: Math.max(1, b - a - 1), height: BAND - 6, rx: 3, fill: hot ? "var(--heat-tint)" : "var(--salt-tint)", stroke: hot ? "var(--heat)" : "var(--salt)" }));
    const word = WORDS[stage.kind] ?? stage.kind;
    if (b - a > word.length * 7.2) out.push(s("text", { x: (a + b) / 2, y: BAND - 10, "text-anchor": "middle" }, word));
  }
  const saltLines = [target, .5].filter((v, i, all) => v < most && all.indexOf(v) === i).map(value => ({ value }));
  const heatLines = [54, pull].map(value => ({ value }));
  out.push(s("text", { x: LEFT, y: topSalt - 8 }, "Salt in the meat"), ...legend("salt-key", SALT[tone], right, topSalt - 7, "0", most + " %"),
    s("image", { href: image(f, "salt_pct", scale, saltLines, v => v / most, SALT[tone]), x: LEFT, y: topSalt, width: right - LEFT, height: FIELD, preserveAspectRatio: "none" }),
    s("text", { x: LEFT, y: topHeat - 8 }, "Temperature"), ...legend("heat-key", HEAT[tone], right, topHeat - 7, temperature(0), temperature(100)),
    s("image", { href: image(f, "temperature_c", scale, heatLines, v => v / 100, HEAT[tone]), x: LEFT, y: topHeat, width: right - LEFT, height: FIELD, preserveAspectRatio: "none" }));
  for (const top of [topSalt, topHeat]) {
    out.push(s("text", { x: LEFT - 5, y: top + 11, "text-anchor": "end", class: "soft" }, "surface"),
      s("text", { x: LEFT - 5, y: top + FIELD, "text-anchor": "end", class: "soft" }, f.two_faced ? "other" : "middle"));
  }
  linePlot(out, f, scale, topKill, "kill_share_of_hold", v => Math.round(v * 100) + " %", 0, 1, width < 480 ? "Required hold reached" : "Required hold reached at the worst place", "var(--heat)", ghost);
  const weights = [...f.weight_pct, ...(ghost?.weight_pct ?? [])], lowest = Math.floor(Math.min(...weights) / 5) * 5, highest = Math.ceil(Math.max(100, ...weights));
  linePlot(out, f, scale, topWeight, "weight_pct", v => v + " %", lowest, highest, "Weight left, juice and all", "var(--salt)", ghost, 100);
  const whisker = plan?.cooking?.time_to_pull_min, heat = f.stages.find(x => x.kind === "heat");
  if (whisker) {
    const [a, b] = [whisker.low, whisker.high].map(m => scale.x(Math.min(f.time_s.at(-1), heat.start_s + m * 60)));
    out.push(s("path", { d: `M${a} ${BAND - 1}V${BAND + 7}M${b} ${BAND - 1}V${BAND + 7}M${a} ${BAND + 3}H${b}`, stroke: "var(--heat)", "stroke-width": 2, fill: "none" }));
  }
  if (ghost) {
    const old = ghost.stages.find(x => x.kind === "heat"), x = scale.x(Math.min(f.time_s.at(-1), heat.start_s + old.end_s - old.start_s));
    out.push(s("path", { d: `M${x} ${topHeat}V${topHeat + FIELD}`, class: "ghost", stroke: "var(--ink)" }), s("text", { x: x - 3, y: topHeat + 14, "text-anchor": "end" }, "out before"));
  }
  let last = -99;
  for (const stage of [...f.stages, { start_s: f.time_s.at(-1) }]) {
    const x = scale.x(stage.start_s + .001);
    const low = x - last < 46 ? 16 : 0;
    last = x;
    out.push(s("path", { d: `M${x} ${axis - 4}V${axis + 3}`, class: "line" }), s("text", { x: Math.min(Math.max(x, 20), width - 20), y: axis + 17 + low, "text-anchor": x > width - 40 ? "end" : "middle" }, clockAt(f, stage.start_s + .5).clock));
  }
  const cursor = s("path", { class: "cursor", d: "" }), spot = s("circle", { r: 0, fill: "none", stroke: "var(--ink)", "stroke-width": 2 }), spot2 = spot.cloneNode();
  const node = s("svg", { viewBox: `0 0 ${width} ${axis + 40}`, role: "img", "aria-labelledby": "fronts-title fronts-words" }, out, cursor, spot, spot2);
  return { node, scale, move(t, d) {
    const x = scale.x(t);
    cursor.setAttribute("d", `M${x} ${BAND}V${axis - 4}`);
    for (const [c, top] of [[spot, topSalt], [spot2, topHeat]]) {
      c.setAttribute("cx", x); c.setAttribute("cy", top + d / f.depth_total_mm * FIELD); c.setAttribute("r", 6);
    }
  }, depthAt(y) {
    const top = y < topHeat - 16 ? topSalt : topHeat;
    return y < topSalt || y > topHeat + FIELD ? null : Math.min(1, Math.max(0, (y - top) / FIELD)) * f.depth_total_mm;
  } };
}

function summary(f, plan) {
  const heat = f.stages.find(x => x.kind === "heat"), first = firstHeat(f), salted = first.start_s > 0, end = f.time_s.at(-1), deep = f.two_faced ? f.depth_total_mm / 2 : f.depth_total_mm;
  const salt = (t, d) => round(valueAt(f, "salt_pct", t, d), 2) + " %", heatAt = (t, d) => temperature(valueAt(f, "temperature_c", t, d));
  const near = Math.min(3, deep / 3);
  const done = f.time_s.find((_, i) => f.kill_share_of_hold[i] >= 1);
  return [salted ? "When salting ends at " + clockAt(f, first.start_s + .5).clock + ", the meat " + length(near) + " below the surface holds " + salt(first.start_s, near) + " salt and the middle " + salt(first.start_s, deep) + "."
      : "The salt goes on with the heat.",
    "The heat is quicker: after " + duration((heat.end_s - heat.start_s) / 60) + " the middle shows " + heatAt(heat.end_s, deep) + " while it is " + heatAt(heat.end_s, near) + " at " + length(near) + " and " + heatAt(heat.end_s, 0) + " at the surface.",
    done === undefined ? "In this median piece the required hold is not reached." : "The required hold at the worst place is reached at " + clockAt(f, done).clock + ".",
    "On the plate " + round(f.weight_pct.at(-1), 0) + " % of the raw weight is left, with " + salt(end, near) + " salt at " + length(near) + " and " + salt(end, deep) + " in the middle."].join(" ");
}

function table(f) {
  const deep = f.two_faced ? f.depth_total_mm / 2 : f.depth_total_mm, moments = new Set([0]);
  for (const stage of f.stages) for (const w of [.25, .5, .75, 1]) moments.add(stage.start_s + w * (stage.end_s - stage.start_s));
  const head = ["Clock", "Stage", "Salt at the surface", "Salt halfway in", "Salt in the middle", "Surface", "Halfway in", "Middle", "Hold reached", "Weight left"];
  return h("details", { class: "no-print" }, h("summary", {}, "Read it as a table"), h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "The two fronts as a table" }, h("table", {},
    h("caption", {}, "The median piece along the day"), h("thead", {}, h("tr", {}, head.map(t => h("th", { scope: "col" }, t)))),
    h("tbody", {}, [...moments].map(t => {
      const at = clockAt(f, t), i = indexAt(f.time_s, t);
      return h("tr", {}, h("th", { scope: "row" }, at.clock), h("td", {}, WORDS[at.stage.kind] ?? at.stage.kind), [0, deep / 2, deep].map(d => h("td", {}, round(valueAt(f, "salt_pct", t, d), 2) + " %")),
        [0, deep / 2, deep].map(d => h("td", {}, temperature(valueAt(f, "temperature_c", t, d)))), h("td", {}, Math.min(100, Math.round(100 * mix(i, k => f.kill_share_of_hold[k]))) + " %"),
        h("td", {}, round(mix(i, k => f.weight_pct[k]), 0) + " %"));
    })))));
}

function section(f, t) {
  const tone = dark() ? "dark" : "light", most = saltEnd(f), n = 60, out = [];
  for (let i = 0; i < n; i++) {
    const share = (i + .5) / n, d = f.two_faced ? share * f.depth_total_mm : (share < .5 ? share : 1 - share) * 2 * f.depth_total_mm;
    const paint = (stops, v) => `rgb(${colors(stops, v).join(" ")})`;
    const y = 20 + i * 2;
    out.push(s("rect", { x: 62, y, width: 100, height: 2.3, fill: paint(SALT[tone], valueAt(f, "salt_pct", t, d) / most) }),
      s("rect", { x: 168, y, width: 100, height: 2.3, fill: paint(HEAT[tone], valueAt(f, "temperature_c", t, d) / 100) }));
  }
  out.push(s("text", { x: 112, y: 13, "text-anchor": "middle" }, "salt"), s("text", { x: 218, y: 13, "text-anchor": "middle" }, "heat"), s("text", { x: 56, y: 32, "text-anchor": "end", class: "soft" }, "top"),
    s("text", { x: 56, y: 84, "text-anchor": "end", class: "soft" }, "middle"), s("text", { x: 56, y: 139, "text-anchor": "end", class: "soft" }, "bottom"));
  return s("svg", { viewBox: "0 0 276 146", "aria-hidden": "true" }, out);
}

export async function showFronts(place, plan, request, ghost) {
  place.replaceChildren(h("section", { class: "block" }, h("h2", {}, "The two fronts"), h("p", { class: "status" }, "Drawing ...")));
  let f;
  try {
    f = await ask("POST", "/api/fronts", request);
  } catch (trouble) {
    place.replaceChildren(h("section", { class: "block" }, h("h2", {}, "The two fronts"), h("p", { class: "error" }, trouble.message)));
    return;
  }
  if (place.isConnected) paint(place, f, plan, request, ghost);
}

export function paint(place, f, plan, request, ghost) {
  const canvas = h("div", { class: "canvas" }), readout = h("div", { class: "readout", "aria-live": "off" }), cut = h("div");
  const end = f.time_s.at(-1), heat = f.stages.find(x => x.kind === "heat");
  const time = h("input", { type: "range", id: "fronts-time", min: 0, max: 1000, value: 0, oninput: () => show(picture.scale.t(LEFT + time.value / 1000 * (picture.scale.parts.at(-1)[3] - LEFT)), depth) });
  const depthInput = h("input", { type: "range", id: "fronts-depth", min: 0, max: 100, value: 100, oninput: () => show(now, depthInput.value / 100 * f.depth_total_mm) });
  const even = h("input", { type: "checkbox", onchange: () => redraw() });
  let picture, now = heat.end_s, depth = f.depth_total_mm;
  function show(t, d) {
    now = t; depth = d;
    picture.move(t, d);
    const at = clockAt(f, t), i = indexAt(f.time_s, t);
    const line = [["Clock", at.clock], ["Stage", WORDS[at.stage.kind] ?? at.stage.kind], ["Depth", length(d)], ["Temperature there", temperature(valueAt(f, "temperature_c", t, d), 1)],
      ["Salt there", round(valueAt(f, "salt_pct", t, d), 2) + " %"], ["Hold reached", Math.min(100, Math.round(100 * mix(i, k => f.kill_share_of_hold[k]))) + " %"], ["Weight left", round(mix(i, k => f.weight_pct[k]), 1) + " %"]];
    readout.replaceChildren(...line.map(([name, value]) => h("div", {}, name, h("b", {}, value))));
    time.value = (picture.scale.x(t) - LEFT) / (picture.scale.parts.at(-1)[3] - LEFT) * 1000;
    time.setAttribute("aria-valuetext", line.map(p => p.join(" ")).join(", "));
    depthInput.value = d / f.depth_total_mm * 100;
    depthInput.setAttribute("aria-valuetext", line.slice(2, 5).map(p => p.join(" ")).join(", "));
    cut.replaceChildren(section(f, t));
  }
  function redraw() {
    const width = Math.max(280, Math.round(canvas.clientWidth || 700));
    picture = draw(f, plan, width, even.checked, ghost);
    canvas.replaceChildren(picture.node);
    show(now, depth);
  }
  function point(event) {
    const box = picture.node.getBoundingClientRect(), k = picture.node.viewBox.baseVal.width / box.width;
    show(picture.scale.t((event.clientX - box.left) * k), picture.depthAt((event.clientY - box.top) * k) ?? depth);
  }
  canvas.addEventListener("pointermove", point);
  canvas.addEventListener("pointerdown", point);
  place.replaceChildren(h("section", { class: "block", "aria-labelledby": "fronts-title" }, h("h2", { id: "fronts-title" }, "The two fronts"),
    h("p", {}, "Time runs to the right, depth runs down from the surface to the middle. Darker means more" + (dark() ? " (here in the dark: lighter)" : "") + ". The thin lines: " + [f.target_salt_pct, .5].map(v => round(v, 2).replace(/0$/, "") + " % salt").join(" and ") + "; "
      + temperature(54) + " and the " + temperature(f.pull_temperature_c, 1) + " at which you take it out. The bracket over the picture holds 9 of 10 take-out times."),
    h("figure", { class: "fronts" }, canvas, h("figcaption", { id: "fronts-words" }, summary(f, plan))),
    readout,
    h("div", { class: "no-print" }, h("div", { class: "two" }, h("div", { class: "slide" }, h("label", { for: "fronts-time" }, "Moment"), time), h("div", { class: "slide" }, h("label", { for: "fronts-depth" }, "Depth, surface to " + (f.two_faced ? "other side" : "middle")), depthInput)),
      h("div", { class: "two" }, h("div", {}, h("h3", {}, "Cut open at that moment"), cut),
        h("div", {}, h("label", { class: "check" }, even, "One scale of time for the whole day"), h("p", { class: "hint" }, "Otherwise a long salting and a short roast get about half of the width each."),
          h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: () => download(request, "fronts.svg") }, "Save as SVG"), h("button", { type: "button", class: "quiet-button", onclick: () => download(request, "fronts.png") }, "Save as PNG"))))),
    table(f)));
  redraw();
  let width = canvas.clientWidth;
  new ResizeObserver(() => { if (canvas.clientWidth && canvas.clientWidth !== width) { width = canvas.clientWidth; redraw(); } }).observe(canvas);
  const again = () => { if (canvas.isConnected) redraw(); };
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", again);
  matchMedia("print").addEventListener("change", again);
}

export async function download(request, name) {
  const answer = await fetch("/api/download/" + name, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(request) });
  if (!answer.ok) throw new Error("The file could not be made.");
  save(await answer.blob(), name);
}

export function save(blob, name) {
  const link = h("a", { href: URL.createObjectURL(blob), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

// what the page shows before there is a plan
export function emptyPicture() {
  const field = (top, id, stops, paths) => [s("linearGradient", { id, x1: 0, y1: 0, x2: 0, y2: 1 }, s("stop", { offset: 0, "stop-color": stops[0] }), s("stop", { offset: 1, "stop-color": stops[1] })),
    s("rect", { x: 20, y: top, width: 560, height: 110, rx: 6, fill: stops[2] }), s("path", { d: paths, fill: `url(#${id})` })];
  return h("section", { class: "block empty" }, h("h2", {}, "Salt creeps. Heat runs."),
    h("figure", {}, s("svg", { viewBox: "0 0 600 300", "aria-hidden": "true" },
      field(20, "e-salt", ["#17657f", "#a8cfdb", "var(--salt-tint)"], "M20 20H580V96C560 95 520 94 470 92C330 86 160 70 20 20z"),
      field(160, "e-heat", ["#ad410c", "#f0b98c", "var(--heat-tint)"], "M430 160H580V262C540 262 520 256 500 240C475 220 450 180 430 160z"),
      s("text", { x: 30, y: 120, fill: "var(--ink)", "font-size": 17 }, "salt: hours to the middle"), s("text", { x: 30, y: 260, fill: "var(--ink)", "font-size": 17 }, "heat: minutes")),
      h("figcaption", { class: "lead" }, "Both come from the surface and meet in the middle. Say what you have got, and the plan shows when, how much and how sure.")));
}
