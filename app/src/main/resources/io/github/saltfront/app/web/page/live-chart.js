// Readings so far, and the fan of what is expected: dark half of the cooks, light nine of ten.
import { h, s } from "./dom.js";
import { figure, say } from "./say.js";
import { duration, isMetric, temperature } from "./words.js";

const LEFT = 46, RIGHT = 14, TOP = 22, BOTTOM = 46;
const GAP_MIN = 5;
const IN_MEAT = ["core", "second-core", "surface"];

const shown = celsius => isMetric() ? celsius : celsius * 1.8 + 32;

function steps(low, high, most) {
  const raw = (high - low) / most, unit = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map(f => f * unit).find(x => x >= raw);
  const list = [];
  for (let v = Math.ceil(low / step) * step; v <= high + 1e-9; v += step) list.push(v);
  return list;
}

function timeSteps(end) {
  const step = [5, 10, 15, 20, 30, 60, 120, 240, 480, 720].find(x => end / x <= 7) ?? 1440;
  const list = [];
  for (let t = 0; t <= end; t += step) list.push(t);
  return list;
}

const pathOf = points => points.map((p, i) => (i ? "L" : "M") + p[0].toFixed(1) + " " + p[1].toFixed(1)).join("");
const band = (upper, lower) => pathOf(upper) + pathOf(lower.reverse()).replace("M", "L") + "Z";

export function chart(cook, width) {
  const height = Math.max(230, Math.min(400, width * .55));
  const probes = cook.readings.filter(r => IN_MEAT.includes(r.role));
  const fan = cook.fan ?? [], key = fan[0]?.probe_c ? "probe_c" : "core_c";
  const now = cook.outlook?.time_min ?? cook.time_min ?? 0;
  const left = cook.outlook?.pull.time_left_min;
  const resting = cook.outlook?.phase === "rest";
  const end = Math.max(30, now * 1.05, fan.at(-1)?.time_min ?? 0);
  const start = Math.min(0, Math.max(-30, ...[probes[0]?.points[0]?.[0] ?? 0]));
  const values = [...probes.flatMap(p => p.points.filter(q => q[0] >= start).map(q => q[1])), ...fan.flatMap(f => [f[key][0], f[key][4]]), cook.wished_core_c ?? 60, 0];
  const low = Math.floor(Math.max(-30, Math.min(...values)) / 10) * 10, high = Math.ceil((Math.min(120, Math.max(...values)) + 2) / 10) * 10;
  const x = t => LEFT + (t - start) / (end - start) * (width - LEFT - RIGHT);
  const y = c => TOP + (high - Math.min(high, Math.max(low, c))) / (high - low) * (height - TOP - BOTTOM);
  const picture = s("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": say("chart.label") });
  for (const v of steps(shown(low), shown(high), 6)) {
    const at = y(isMetric() ? v : (v - 32) / 1.8);
    picture.append(s("path", { class: "grid", d: `M${LEFT} ${at}H${width - RIGHT}` }), s("text", { class: "soft", x: LEFT - 6, y: at + 4, "text-anchor": "end" }, figure(v) + "°"));
  }
  for (const t of timeSteps(end)) picture.append(s("text", { class: "soft", x: x(t), y: height - 8, "text-anchor": t === 0 ? "start" : "middle" }, t === 0 ? say("chart.in") : clock(t)));
  if (left && !resting && left.p05 !== null) {
    const from = x(Math.min(end, now + left.p05)), to = x(Math.min(end, now + (left.p95 ?? end)));
    picture.append(s("rect", { class: "window", x: from, y: TOP, width: Math.max(2, to - from), height: height - TOP - BOTTOM }),
      s("text", { x: Math.min(width - RIGHT - 30, (from + to) / 2), y: TOP - 7, "text-anchor": "middle" }, say("chart.take-out")));
  }
  if (fan.length) {
    const at = k => fan.map(f => [x(f.time_min), y(f[key][k])]);
    picture.append(s("path", { class: "fan90", d: band(at(4), at(0)) }), s("path", { class: "fan50", d: band(at(3), at(1)) }), s("path", { class: "middle", d: pathOf(at(2)) }));
  }
  const goal = cook.outlook?.pull.probe_then_c ?? cook.planned_pull_temperature_c;
  if (goal && !resting) picture.append(s("path", { class: "goal", d: `M${LEFT} ${y(goal)}H${width - RIGHT}` }));
  probes.forEach((probe, i) => picture.append(...line(probe, i, x, y, start)));
  for (const r of cook.left_out ?? []) {
    if (r.time_min >= start) picture.append(s("circle", { class: "out", cx: x(r.time_min), cy: y(r.temperature_c), r: 4 }, s("title", {}, say("chart.left-out", { why: r.why }))));
  }
  picture.append(s("path", { class: "today", d: `M${x(now)} ${TOP}V${height - BOTTOM}` }), s("text", { class: "soft", x: Math.min(width - RIGHT - 14, x(now)), y: height - BOTTOM + 16, "text-anchor": "middle" }, say("chart.now")));
  return h("figure", { class: "chart" }, picture, h("figcaption", {}, caption(cook, probes, key, goal)));
}

// a gap is shown as a gap
function line(probe, number, x, y, start) {
  const parts = [], gaps = [];
  let run = [];
  let before = null;
  for (const [t, c] of probe.points) {
    if (t < start) continue;
    if (before !== null && t - before > GAP_MIN) {
      gaps.push([before, t]);
      parts.push(run);
      run = [];
    }
    run.push([x(t), y(c)]);
    before = t;
  }
  parts.push(run);
  return [...gaps.map(([a, b]) => s("rect", { class: "gap", x: x(a), y: TOP, width: x(b) - x(a), height: y(-1e9) - TOP }, s("title", {}, say("chart.gap", { time: duration(b - a) })))),
    ...parts.map(p => p.length === 1 ? s("circle", { cx: p[0][0], cy: p[0][1], r: 3.5, fill: "var(--ink)" }) : s("path", { class: "read" + (number ? " second" : ""), d: pathOf(p) }))];
}

const clock = minutes => minutes < 60 ? minutes + " min" : Math.floor(minutes / 60) + ":" + String(minutes % 60).padStart(2, "0") + " h";

function caption(cook, probes, key, goal) {
  const names = probes.map((p, i) => say(i ? "chart.line.blue" : "chart.line.solid", { probe: p.probe })).join(", ");
  return [(names || say("chart.none")) + ".", say(key === "probe_c" ? "chart.fan.probe" : "chart.fan.core"),
    goal && cook.outlook?.phase !== "rest" ? say("chart.goal", { temperature: temperature(goal, 0) }) : "",
    (cook.left_out ?? []).length ? say("chart.circles") : ""].filter(Boolean).join(" ");
}
