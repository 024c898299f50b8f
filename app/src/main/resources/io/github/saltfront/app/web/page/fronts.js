// The picture of the two fronts with its readout, table, summary and cross-section.
import { h, s, send } from "./dom.js";
import { clockAt, colors, dark, draw, firstHeat, HEAT, indexAt, LEFT, middleOf, mix, SALT, saltEnd, valueAt, WORDS } from "./fronts-draw.js";
import { askKept } from "./offline.js";
import { say } from "./say.js";
import { stageHandles } from "./stages.js";
import { duration, length, round, temperature } from "./words.js";

function summary(f) {
  const heat = f.stages.find(x => x.kind === "heat"), first = firstHeat(f), salted = first.start_s > 0, end = f.time_s.at(-1), deep = middleOf(f);
  const salt = (t, d) => round(valueAt(f, "salt_pct", t, d), 2) + " %", heatAt = (t, d) => temperature(valueAt(f, "temperature_c", t, d));
  const near = Math.min(3, deep / 3);
  const done = f.time_s.find((_, i) => f.kill_share_of_hold[i] >= 1);
  return [salted ? say("fronts.summary.salted", { clock: clockAt(f, first.start_s + .5).clock, near: length(near), outside: salt(first.start_s, near), inside: salt(first.start_s, deep) }) : say("fronts.summary.unsalted"),
    say("fronts.summary.heat", { time: duration((heat.end_s - heat.start_s) / 60), middle: heatAt(heat.end_s, deep), near: length(near), inside: heatAt(heat.end_s, near), outside: heatAt(heat.end_s, 0) }),
    done === undefined ? say("fronts.summary.not-done") : say("fronts.summary.done", { clock: clockAt(f, done).clock }),
    say("fronts.summary.plate", { weight: round(f.weight_pct.at(-1), 0), near: length(near), outside: salt(end, near), inside: salt(end, deep) })].join(" ");
}

function table(f) {
  const deep = middleOf(f), moments = new Set([0]);
  for (const stage of f.stages) for (const w of [.25, .5, .75, 1]) moments.add(stage.start_s + w * (stage.end_s - stage.start_s));
  const head = ["clock", "stage", "salt-surface", "salt-half", "salt-middle", "surface", "half", "middle", "hold", "weight"].map(name => say("fronts.table." + name));
  return h("details", { class: "no-print" }, h("summary", {}, say("fronts.table")), h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("fronts.table.region") }, h("table", {},
    h("caption", {}, say("fronts.table.caption")), h("thead", {}, h("tr", {}, head.map(t => h("th", { scope: "col" }, t)))),
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
  out.push(s("text", { x: 112, y: 13, "text-anchor": "middle" }, say("fronts.cut.salt")), s("text", { x: 218, y: 13, "text-anchor": "middle" }, say("fronts.cut.heat")), s("text", { x: 56, y: 32, "text-anchor": "end", class: "soft" }, say("fronts.cut.top")),
    s("text", { x: 56, y: 84, "text-anchor": "end", class: "soft" }, say("fronts.cut.middle")), s("text", { x: 56, y: 139, "text-anchor": "end", class: "soft" }, say("fronts.cut.bottom")));
  return s("svg", { viewBox: "0 0 276 146", class: "cut", "aria-hidden": "true" }, out);
}

export async function showFronts(place, plan, request, take) {
  place.replaceChildren(h("section", { class: "block" }, h("h2", {}, say("fronts.title")), h("p", { class: "status" }, say("fronts.drawing"))));
  let f;
  try {
    f = await askKept("fronts", "POST", "/api/fronts", request);
  } catch (trouble) {
    place.replaceChildren(h("section", { class: "block" }, h("h2", {}, say("fronts.title")), h("p", { class: "error" }, trouble.message)));
    return;
  }
  if (place.isConnected) paint(place, f, plan, request, { take });
}

/** Draws fronts; ghost holds those to compare with, take is called with a request whose stages were dragged. */
export function paint(place, planned, plan, request, { ghost: compared, take } = {}) {
  const canvas = h("div", { class: "canvas" }), readout = h("div", { class: "readout", "aria-live": "off" }), cut = h("div"), words = h("figcaption", { id: "fronts-words" }), numbers = h("div");
  const lines = h("p"), time = h("input", { type: "range", id: "fronts-time", min: 0, max: 1000, value: 0, oninput: () => show(picture.scale.t(LEFT + time.value / 1000 * (picture.scale.parts.at(-1)[3] - LEFT)), depth) });
  const depthInput = h("input", { type: "range", id: "fronts-depth", min: 0, max: 100, value: 100, oninput: () => show(now, depthInput.value / 100 * planned.depth_total_mm) });
  const even = h("input", { type: "checkbox", onchange: () => redraw() });
  let f = planned, ghost = compared, named = "", day, picture, now = planned.stages.find(x => x.kind === "heat").end_s, depth = planned.depth_total_mm;
  const handles = stageHandles(canvas, plan, request, view => {
    f = view.f ?? planned;
    ghost = view.ghost ? planned : compared;
    day = view.day;
    now = Math.min(now, f.time_s.at(-1));
    redraw(view.quick);
    if (!view.quick) tell();
  }, take);
  function show(t, d) {
    now = t; depth = d;
    picture.move(t, d);
    const at = clockAt(f, t), i = indexAt(f.time_s, t);
    const line = [[say("fronts.table.clock"), at.clock], [say("fronts.table.stage"), WORDS[at.stage.kind] ?? at.stage.kind], [say("fronts.read.depth"), length(d)], [say("fronts.read.temperature"), temperature(valueAt(f, "temperature_c", t, d), 1)],
      [say("fronts.read.salt"), round(valueAt(f, "salt_pct", t, d), 2) + " %"], [say("fronts.table.hold"), Math.min(100, Math.round(100 * mix(i, k => f.kill_share_of_hold[k]))) + " %"], [say("fronts.table.weight"), round(mix(i, k => f.weight_pct[k]), 1) + " %"]];
    readout.replaceChildren(...line.map(([name, value]) => h("div", {}, name, h("b", {}, value))));
    time.value = (picture.scale.x(t) - LEFT) / (picture.scale.parts.at(-1)[3] - LEFT) * 1000;
    time.setAttribute("aria-valuetext", line.map(p => p.join(" ")).join(", "));
    depthInput.value = d / f.depth_total_mm * 100;
    depthInput.setAttribute("aria-valuetext", line.slice(2, 5).map(p => p.join(" ")).join(", "));
    cut.replaceChildren(section(f, t));
  }
  function redraw(quick) {
    const width = Math.max(280, Math.round(canvas.clientWidth || 700));
    picture = draw({ f, plan, width, even: even.checked, ghost, day, quick });
    canvas.replaceChildren(picture.node);
    handles.place(picture);
    show(now, depth);
  }
  function tell() {
    const pull = day?.pull_temperature_c ?? f.pull_temperature_c;
    lines.replaceChildren([say(dark() ? "fronts.about.dark" : "fronts.about"), say("fronts.about.lines", { one: f.target_salt_pct, two: .5, warm: temperature(54), pull: temperature(pull, 1) }),
      ghost ? say("fronts.about.dashed", { name: ghost === compared && named ? named : say("fronts.about.was") }) : ""].join(" "));
    words.textContent = summary(f);
    numbers.replaceChildren(table(f));
  }
  function point(event) {
    const box = picture.node.getBoundingClientRect(), k = picture.node.viewBox.baseVal.width / box.width;
    show(picture.scale.t((event.clientX - box.left) * k), picture.depthAt((event.clientY - box.top) * k) ?? depth);
  }
  canvas.addEventListener("pointermove", point);
  canvas.addEventListener("pointerdown", point);
  place.replaceChildren(h("section", { class: "block", "aria-labelledby": "fronts-title" }, h("h2", { id: "fronts-title" }, say("fronts.title")), lines,
    h("p", { class: "no-print" }, say("fronts.drag")),
    h("figure", { class: "fronts" }, h("div", { class: "stage-field" }, canvas), words), handles.note, handles.panel,
    readout,
    h("div", { class: "no-print" }, h("div", { class: "two" }, h("div", { class: "slide" }, h("label", { for: "fronts-time" }, say("fronts.moment")), time), h("div", { class: "slide" }, h("label", { for: "fronts-depth" }, say(f.two_faced ? "fronts.depth.other" : "fronts.depth.middle")), depthInput)),
      h("div", { class: "two" }, h("div", {}, h("h3", {}, say("fronts.cut")), cut),
        h("div", {}, h("label", { class: "check" }, even, say("fronts.one-scale")), h("p", { class: "hint" }, say("fronts.one-scale.hint")),
          h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: () => download(request, "fronts.svg") }, say("fronts.save-svg")), h("button", { type: "button", class: "quiet-button", onclick: () => download(request, "fronts.png") }, say("fronts.save-png")))))),
    numbers));
  place.compare = (other, name = "") => { compared = ghost = other ?? undefined; named = name; redraw(); tell(); };
  redraw();
  tell();
  handles.start();
  let width = canvas.clientWidth;
  new ResizeObserver(() => { if (canvas.clientWidth && canvas.clientWidth !== width) { width = canvas.clientWidth; redraw(); } }).observe(canvas);
  const again = () => { if (canvas.isConnected) redraw(); };
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", again);
  matchMedia("print").addEventListener("change", again);
}

export async function download(request, name) {
  const answer = await send("/api/download/" + name, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(request) });
  if (!answer.ok) throw new Error(say("fronts.no-file"));
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
  return h("section", { class: "block empty" }, h("h2", {}, say("fronts.empty")),
    h("figure", {}, s("svg", { viewBox: "0 0 600 300", "aria-hidden": "true" },
      field(20, "e-salt", ["#17657f", "#a8cfdb", "var(--salt-tint)"], "M20 20H580V96C560 95 520 94 470 92C330 86 160 70 20 20z"),
      field(160, "e-heat", ["#ad410c", "#f0b98c", "var(--heat-tint)"], "M430 160H580V262C540 262 520 256 500 240C475 220 450 180 430 160z"),
      s("text", { x: 30, y: 120, fill: "var(--ink)", "font-size": 17 }, say("fronts.empty.salt")), s("text", { x: 30, y: 260, fill: "var(--ink)", "font-size": 17 }, say("fronts.empty.heat"))),
      h("figcaption", { class: "lead" }, say("fronts.empty.about"))));
}
