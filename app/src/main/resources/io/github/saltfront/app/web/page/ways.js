// Other ways of doing it, side by side with the plan, and what the result hangs on.
import { ask, h } from "./dom.js";
import { askKept } from "./offline.js";
import { say } from "./say.js";
import { duration, plain, round, temperature } from "./words.js";

const MERITS = ["juice", "tender", "even-salt", "crisp-skin", "little-work", "short", "low-sodium"];
const merit = (kind, name) => MERITS.includes(name) ? say(kind + name) : name;
const RESULTS = ["time_to_pull_min", "mean_salt_pct", "mass_loss_pct"];

const rows = o => h("dl", {}, [[say("ways.weight"), round(o.weight_left_pct, 0) + " %"], [say("ways.salt"), round(o.mean_salt_pct, 2) + " %"], [say("ways.evenness"), round(o.salt_evenness_pct, 0) + " %"],
  [say("ways.outside"), temperature(o.outside_c)], [say("ways.out"), temperature(o.pull_temperature_c, 1)], [say("ways.work"), duration(o.work_min)], [say("ways.whole"), duration(o.whole_time_min)],
  [say("ways.sodium"), round(o.sodium_mg, 0) + " mg"]].map(([name, value]) => [h("dt", {}, name), h("dd", {}, value)]));

function changed(request, way) {
  const r = structuredClone(request);
  const salting = { treatment: way.treatment };
  if (way.strength_pct_of_water !== undefined) salting.strength = plain(way.strength_pct_of_water, 2) + " % of water";
  if (way.time_min !== undefined) salting.time = Math.round(way.time_min) + " min";
  r.salting = salting;
  r.appliance = way.appliance;
  r.setting = plain(way.setting_c, 1) + " °C";
  if (way.core_c !== undefined) (r.taste ??= {}).core = plain(way.core_c, 1) + " °C";
  return r;
}

function list(words) {
  return words.length < 2 ? words.join("") : say("common.list.last", { list: words.slice(0, -1).join(", "), last: words.at(-1) });
}

/** compare is called with the fronts of another way and its name, or with null. */
export async function showWays(place, request, take, compare) {
  const status = h("p", { class: "status", role: "status" }, say("ways.looking"));
  const block = (...children) => h("section", { class: "block", "aria-labelledby": "ways-title" }, h("h2", { id: "ways-title" }, say("ways.title")), children);
  place.replaceChildren(block(status));
  let found;
  try {
    found = await askKept("ways", "POST", "/api/plan", request);
  } catch (trouble) {
    status.textContent = trouble.message;
    return;
  }
  if (!place.isConnected) return;
  const toggles = [];
  const toggle = way => {
    const button = h("button", { type: "button", class: "quiet-button no-print", "aria-pressed": "false", onclick: async () => {
      const on = button.getAttribute("aria-pressed") === "false";
      for (const other of toggles) other.setAttribute("aria-pressed", String(on && other === button));
      if (!on) { compare(null); return; }
      try {
        const fronts = await ask("POST", "/api/fronts", changed(request, way));
        if (button.getAttribute("aria-pressed") === "true") compare(fronts, way.title);
      } catch (trouble) {
        button.setAttribute("aria-pressed", "false");
        note.textContent = trouble.message;
      }
    } }, say("ways.lay-over"), h("span", { class: "unseen" }, ": " + way.title));
    toggles.push(button);
    return button;
  };
  const note = h("p", { class: "status", role: "status" });
  const others = found.alternatives.map(way => h("div", {}, h("h3", {}, way.title.charAt(0).toUpperCase() + way.title.slice(1)),
    h("p", {}, way.wins.length ? say("ways.better", { list: list(way.wins.map(w => merit("ways.wins.", w))) }) + " " : "", way.loses.length ? say("ways.worse", { list: list(way.loses.map(w => merit("ways.loses.", w))) }) : ""),
    rows(way.outcome), toggle(way), h("button", { type: "button", class: "quiet-button no-print", onclick: () => take(changed(request, way)) }, say("ways.take"), h("span", { class: "unseen" }, ": " + way.title))));
  const matters = RESULTS.map(key => {
    const hits = found.sensitivities.filter(x => x.result === key).slice(0, 2);
    return hits.length ? h("li", {}, say("ways.on." + key, { list: list(hits.map(x => x.words)) })) : null;
  });
  place.replaceChildren(block(
    others.length ? h("p", {}, say("ways.computed")) : h("p", {}, say("ways.none", { n: found.screening.tried })),
    h("div", { class: "ways" }, h("div", {}, h("h3", {}, say("ways.this")), rows(found.compared)), others), note,
    found.levers.length ? [h("h3", {}, say("ways.change")), h("ul", {}, found.levers.map(l => h("li", {}, l.change + ": " + l.effect + ".")))] : null,
    h("h3", {}, say("ways.hangs-on")), h("ul", {}, matters), found.slack?.words ? [h("h3", {}, say("ways.room")), [found.slack.words].flat().map(w => h("p", {}, w))] : null));
}
