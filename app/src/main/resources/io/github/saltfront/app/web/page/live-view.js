// One cook in large figures, what to watch, and what is measured beside what is inferred.
import { h } from "./dom.js";
import { locale, say } from "./say.js";
import { bothTemperatures, duration, isMetric, round, temperature } from "./words.js";
import { chart } from "./live-chart.js";

const table = (prefix, names) => Object.fromEntries(names.map(name => [name, say(prefix + name)]));
const DO = table("view.do.", ["wait", "soon", "now", "not-safe-yet", "out"]);
const ALARMS = table("view.alarm.", ["pull-now", "serve", "safety", "probe", "get-ready", "next-heat"]);
const QUIET = new Set(["brine", "refrigerator"]);

const big = (value, unit, less) => h("span", { class: "huge" + (less ? " less" : "") }, value, h("small", {}, unit));

function bigTime(minutes) {
  if (minutes === null || minutes === undefined) return big("–", say("view.not-in-sight"), true);
  const whole = Math.max(0, Math.round(minutes));
  if (whole < 100) return big(String(whole), "min");
  return big(Math.floor(whole / 60) + ":" + String(whole % 60).padStart(2, "0"), "h");
}

const bigTemperature = celsius => celsius === undefined ? big("–", say("view.no-reading"), true) : big(isMetric() ? round(celsius, 1) : round(celsius * 1.8 + 32, 0), isMetric() ? "°C" : "°F");

const hour = iso => new Date(iso).toLocaleTimeString(locale, { hour: "2-digit", minute: "2-digit", hour12: false });
const minutes = x => Math.round(Math.max(0, x));
// half a line on a phone
function span(low, high) {
  if (low === null || low === undefined) return "";
  if (high === null || high === undefined) return say("view.at-least", { time: duration(Math.max(0, low)) });
  if (minutes(low) === minutes(high)) return "";
  return high < 90 ? say("view.span-min", { low: minutes(low), high: minutes(high) }) : say("view.span", { low: duration(Math.max(0, low)), high: duration(high) });
}

export function newest(cook, role) {
  const probes = cook.readings.filter(r => r.role === role && r.points.length);
  return probes.length ? { probe: probes[0].probe, at: probes[0].points.at(-1) } : null;
}

// the heat after the present one, if there is one
export function nextHeat(cook) {
  const heats = cook.heats ?? [], on = heats.findIndex(heat => heat.on);
  return on >= 0 && heats[on + 1] ? { ...heats[on + 1], number: on + 2, afterMain: heats[on].main } : null;
}

export function alarmPanels(list, acts) {
  return list.map(({ cook, alarm }) => h("section", { class: "alarm " + (alarm.urgent ? "urgent" : "notice"), role: alarm.urgent ? "alert" : "status", "data-alarm": alarm.kind },
    h("h2", {}, ALARMS[alarm.kind] ?? say("view.alarm.other")), h("p", {}, h("strong", {}, cook.title + ": "), alarm.text),
    h("div", { class: "row" },
      alarm.kind === "next-heat" && cook.heats ? h("button", { type: "button", onclick: () => acts.tell(cook.id, { kind: "heat-begun", number: cook.heats.findIndex(x => x.on) + 1 }) }, say("view.is-there")) : null,
      alarm.kind === "pull-now" && nextHeat(cook) ? h("button", { type: "button", onclick: () => acts.tell(cook.id, { kind: "heat-begun", number: nextHeat(cook).number }) }, say("view.is-there")) : null,
      alarm.kind === "pull-now" ? h("button", { type: "button", onclick: () => acts.tell(cook.id, { kind: "taken-out" }) }, say("view.is-out")) : null,
      h("button", { type: "button", onclick: () => acts.acknowledge(cook.id, alarm.number) }, say(alarm.urgent ? "view.stop" : "view.seen")))));
}

// minutes of the cook that went by since the numbers were made
export function figures(cook, ago) {
  const out = cook.outlook;
  if (cook.status === "ended") return null;
  if (!out) {
    return h("section", { class: "figures" }, h("h2", {}, cook.title), h("p", { class: "do" }, say(cook.status === "failed" ? "view.no-prediction" : "view.getting-ready")),
      h("p", {}, cook.problem ?? say("view.ahead")), h("dl", { class: "pair" }, reading(cook, out)));
  }
  const resting = out.phase === "rest";
  const left = resting ? out.plate.served_in_min : out.pull.time_left_min;
  const off = v => v === null ? null : v - ago;
  const notSafe = out.pull.advice === "not-safe-yet";
  const time = notSafe ? off(out.pull.safe_in_min) : off(left.p50);
  const at = resting ? cook.serve_at : cook.take_out_at;
  const next = nextHeat(cook), on = next?.afterMain;
  const first = h("div", {}, h("dt", {}, say(resting ? "view.serve-in" : (on ? "view.next-heat" : "view.take-out") + (out.pull.advice === "now" ? "" : "-in"))),
    h("dd", {}, out.pull.advice === "now" ? big(say("view.now"), "") : bigTime(time),
      h("span", { class: "note" }, notSafe ? say("view.till-safe") : span(off(left.p05), off(left.p95))),
      at?.p50 && cook.speed === 1 && !notSafe ? h("span", { class: "note" }, say("view.about", { clock: hour(at.p50) })) : null));
  return h("section", { class: "figures" + (["now", "soon"].includes(out.pull.advice) ? " hot" : ""), "data-advice": out.pull.advice },
    h("h2", {}, cook.title), h("p", { class: "do" }, on && out.pull.advice === "now" ? say("view.on-to", { heat: next.words }) : DO[out.pull.advice]), h("dl", { class: "pair" }, first, reading(cook, out)));
}

function reading(cook, out) {
  const core = newest(cook, "core") ?? newest(cook, "second-core");
  const goal = out && out.phase !== "rest" ? out.pull.probe_then_c : undefined;
  const since = core ? (cook.time_min ?? 0) - core.at[0] : 0;
  return h("div", {}, h("dt", {}, say(core ? "view.shows" : "view.thermometer")), h("dd", {}, bigTemperature(core?.at[1]),
    h("span", { class: "note" }, !core ? say("view.type-below") : since > 2 * cook.speed ? say("view.ago", { time: duration(since) }) : goal !== undefined ? say("view.comes-out", { temperature: temperature(goal, 0) }) : "")));
}

export function picture(cook, width) {
  return h("section", { class: "block", "aria-labelledby": "chart-title" }, h("h2", { id: "chart-title" }, say("view.so-far")), chart(cook, width));
}

export function warnings(cook, acts) {
  const list = cook.outlook?.warnings ?? [];
  if (!list.length) return null;
  return h("section", { class: "block", "aria-labelledby": "warn-title" }, h("h2", { id: "warn-title" }, say("view.watch-out")), h("ul", { class: "warn" }, list.map(w =>
    h("li", { class: w.kind === "safety" ? "grave" : "" }, w.text, w.kind === "unit" ? unitQuestion(cook, w, acts) : null))));
}

function unitQuestion(cook, warning, acts) {
  const probe = cook.readings.map(r => r.probe).find(name => warning.text.includes('"' + name + '"'));
  const tell = unit => () => acts.tell(cook.id, { kind: "unit", probe, unit });
  return h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: tell("F") }, say("view.are-f")), h("button", { type: "button", class: "quiet-button", onclick: tell("C") }, say("view.are-c")));
}

const rows = list => h("table", {}, h("tbody", {}, list.filter(Boolean).map(([name, ...value]) => h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, value)))));

export function safety(cook) {
  const out = cook.outlook;
  if (!out) return null;
  const m = out.measured, official = out.consumer_minimum, hold = out.inferred.hold_time_left_min;
  return h("section", { class: "block", "aria-labelledby": "safe-title" }, h("h2", { id: "safe-title" }, say("view.safe")),
    h("p", { class: "verdict" + (m.met ? "" : " bad") }, h("span", { "aria-hidden": "true" }, m.met ? "✓" : "✕"), h("span", {}, m.headline ?? say("view.nothing-measured"))),
    rows([[say("view.measured"), (m.hold_share_pct === undefined ? say("view.no-count") : say(m.verdict === "cannot-tell" ? "view.share-if" : "view.share", { share: round(m.hold_share_pct, 0) }))
        + (m.hold_time_left_min && !m.met && m.hold_time_left_min.p50 !== null ? say("view.shown-in", { time: duration(m.hold_time_left_min.p50) }) : "")],
      [say("view.inferred"), hold.p95 !== null && hold.p95 <= 0 ? say("view.fulfilled") : hold.p50 === null ? say("view.not-within-sight") : say("view.fulfilled-in", { time: duration(Math.max(0, hold.p50)) })],
      [say("view.official"), official.rest_min > 0 ? say("view.minimum-rest", { temperature: bothTemperatures(official.temperature_c), time: duration(official.rest_min), edition: official.edition }) : bothTemperatures(official.temperature_c) + ", " + official.edition]]),
    (m.reasons ?? []).length ? h("ul", {}, m.reasons.map(r => h("li", {}, r))) : null);
}

const between = (spread, show) => say("unit.interval", { middle: show(spread.p50), low: show(spread.p05), high: show(spread.p95) });

export function plate(cook) {
  const out = cook.outlook;
  if (!out) return null;
  const others = cook.readings.filter(r => !["core", "second-core"].includes(r.role) && !QUIET.has(r.role) && r.points.length);
  const above = out.inferred.probe_above_coldest_k;
  return h("section", { class: "block", "aria-labelledby": "plate-title" }, h("h2", { id: "plate-title" }, say("view.expect")), rows([
    [say("view.coldest"), between(out.inferred.coldest_spot_c, v => temperature(v, 0)), above && above.p50 >= .5 ? h("span", { class: "hint" }, " " + say("view.tip", { x: round(isMetric() ? above.p50 : above.p50 * 1.8, 1) })) : null],
    out.phase === "heat" ? [say("view.if-out"), say("view.would-rise", { temperature: between(out.pull.peak_if_now_c, v => temperature(v, 0)) })] : null,
    [say("view.rises"), between(out.plate.peak_core_temperature_c, v => temperature(v, 0))],
    [say("view.rest"), duration(out.plate.rest_min)],
    [say("view.serve"), cook.serve_at?.p50 && cook.speed === 1 ? say("view.about", { clock: hour(cook.serve_at.p50) }) : out.plate.served_in_min.p50 === null ? say("view.not-within-sight") : say("view.in", { time: duration(Math.max(0, out.plate.served_in_min.p50)) }),
      out.plate.behind_min > 5 ? say("view.late", { time: duration(out.plate.behind_min) }) : ""],
    [say("view.loss"), between(out.plate.mass_loss_pct, v => round(v, 0) + " %")],
    ...others.map(r => [r.probe, temperature(r.points.at(-1)[1], 0)]),
    [say("view.readings"), out.quality.readings_left_out ? say("view.count-out", { used: out.quality.readings_used, out: out.quality.readings_left_out }) : say("view.count", { used: out.quality.readings_used })],
  ]));
}
