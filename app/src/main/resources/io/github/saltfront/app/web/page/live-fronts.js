// The two fronts of a cook that goes on: heat as the readings make it likely, salt as it was planned, on the clock of the cook.
import { ask, h } from "./dom.js";
import { say } from "./say.js";
import { duration, temperature } from "./words.js";
import { draw, valueAt } from "./fronts-draw.js";

let shown = { id: null }, asking = false;

const plus = (iso, seconds) => { const t = new Date(Date.parse(iso) + 1000 * seconds), two = n => String(n).padStart(2, "0");
  return t.getFullYear() + "-" + two(t.getMonth() + 1) + "-" + two(t.getDate()) + "T" + two(t.getHours()) + ":" + two(t.getMinutes()); };

// the plan's salt at the same share of its heat and of the depth
function withSalt(live, plan) {
  if (!plan) return live.time_s.map(() => live.depth_mm.map(() => 0));
  const start = plan.stages.find(stage => stage.kind.startsWith("heat")).start_s, end = plan.time_s.at(-1), whole = live.time_s.at(-1) || 1;
  const deep = plan.two_faced ? plan.depth_total_mm / 2 : plan.depth_total_mm;
  return live.time_s.map(t => live.depth_mm.map(d => valueAt(plan, "salt_pct", start + t / whole * (end - start), d / live.depth_total_mm * deep)));
}

function stages(cook, end) {
  const out = cook.events.find(event => event.kind === "taken-out")?.time_min * 60;
  const begins = (cook.heats ?? []).map(heat => heat.begin_min * 60), main = (cook.heats ?? []).findIndex(heat => heat.main);
  const list = [], add = (kind, from, to) => { if (to > from) list.push({ kind, start_s: from, end_s: Math.min(to, end), start: plus(cook.started, from) }); };
  const over = out >= 0 ? out : end;
  if (begins.length < 2) add("heat", 0, over);
  else begins.forEach((begin, i) => { if (begin < over) add(i === main ? "heat" : i < main ? "heat-before" : "heat-after", begin, Math.min(over, begins[i + 1] || over)); });
  if (out >= 0) add("rest", out, end);
  return list;
}

export async function refreshFronts(cook, again) {
  if (asking || !cook?.outlook || cook.status === "ended" || (shown.id === cook.id && shown.asOf === cook.outlook.time_min)) return;
  asking = true;
  try {
    const plan = shown.id === cook.id ? shown.plan : await ask("POST", "/api/fronts", cook.request).catch(() => null);
    const live = await ask("GET", "/api/cooks/" + cook.id + "/front");
    shown = { id: cook.id, asOf: cook.outlook.time_min, plan, live };
    again();
  } catch { /* without contact the last picture stays */ } finally { asking = false; }
}

export const frontsKey = cook => shown.id === cook.id ? shown.live.as_of_min : null;

export function frontsPanel(cook, width) {
  if (shown.id !== cook.id) return null;
  const { live, plan } = shown, end = live.time_s.at(-1);
  const list = stages(cook, end), left = cook.outlook.pull.time_left_min;
  // the picture of a plan wants a stage that the thermometer ends
  if (!list.some(stage => stage.kind === "heat")) return null;
  const f = { ...live, two_faced: false, stages: list, target_salt_pct: plan?.target_salt_pct ?? .5, salt_pct: withSalt(live, plan) };
  const resting = cook.outlook.phase === "rest", at = cook.outlook.time_min;
  const mainFrom = list.find(stage => stage.kind === "heat").start_s / 60;
  const window = resting || left.p05 === null || left.p95 === null ? null : { cooking: { time_to_pull_min: { low: at + left.p05 - mainFrom, high: at + left.p95 - mainFrom } } };
  const picture = draw({ f, plan: window, width, even: true });
  picture.move(Math.min(end, at * 60), live.depth_total_mm);
  return h("section", { class: "block", "aria-labelledby": "fronts-title" }, h("h2", { id: "fronts-title" }, say("live-fronts.title")),
    h("figure", { class: "fronts" }, h("div", { class: "canvas" }, picture.node),
      h("figcaption", { id: "fronts-words" }, [say(resting ? "live-fronts.drawn.rest" : "live-fronts.drawn", { time: duration(live.as_of_min) }),
        say("live-fronts.depth", { temperature: temperature(cook.outlook.inferred.coldest_spot_c.p50, 0) }), say(plan ? "live-fronts.salt" : "live-fronts.no-salt"), say("live-fronts.no-proof")].join(" "))));
}
