// Other ways of doing it, side by side with the plan, and what the result hangs on.
import { ask, h } from "./dom.js";
import { askKept } from "./offline.js";
import { duration, round, temperature } from "./words.js";

const WINS = { juice: "more juice", tender: "more tender", "even-salt": "more even salt", "crisp-skin": "a crisper outside", "little-work": "less work", short: "sooner", "low-sodium": "less sodium" };
const LOSES = { juice: "less juice", tender: "firmer", "even-salt": "less even salt", "crisp-skin": "a softer outside", "little-work": "more work", short: "later", "low-sodium": "more sodium" };
const RESULTS = { time_to_pull_min: "time in the heat", mean_salt_pct: "salt", mass_loss_pct: "weight lost" };

const rows = o => h("dl", {}, [["Weight left", round(o.weight_left_pct, 0) + " %"], ["Salt on average", round(o.mean_salt_pct, 2) + " %"], ["Middle against average", round(o.salt_evenness_pct, 0) + " %"],
  ["Outside when out", temperature(o.outside_c)], ["Take out at", temperature(o.pull_temperature_c, 1)], ["Your work", duration(o.work_min)], ["Whole time", duration(o.whole_time_min)],
  ["Sodium in 85 g", round(o.sodium_mg, 0) + " mg"]].map(([name, value]) => [h("dt", {}, name), h("dd", {}, value)]));

function changed(request, way) {
  const r = structuredClone(request);
  const salting = { treatment: way.treatment };
  if (way.strength_pct_of_water !== undefined) salting.strength = round(way.strength_pct_of_water, 2) + " % of water";
  if (way.time_min !== undefined) salting.time = Math.round(way.time_min) + " min";
  r.salting = salting;
  r.appliance = way.appliance;
  r.setting = round(way.setting_c, 1) + " °C";
  if (way.core_c !== undefined) (r.taste ??= {}).core = round(way.core_c, 1) + " °C";
  return r;
}

function list(words) {
  return words.length < 2 ? words.join("") : words.slice(0, -1).join(", ") + " and " + words.at(-1);
}

/** compare is called with the fronts of another way and its name, or with null. */
export async function showWays(place, request, take, compare) {
  const status = h("p", { class: "status", role: "status" }, "Looking for other ways ...");
  const block = (...children) => h("section", { class: "block", "aria-labelledby": "ways-title" }, h("h2", { id: "ways-title" }, "Other ways to do it"), children);
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
    } }, "Lay it over the picture", h("span", { class: "unseen" }, ": " + way.title));
    toggles.push(button);
    return button;
  };
  const note = h("p", { class: "status", role: "status" });
  const others = found.alternatives.map(way => h("div", {}, h("h3", {}, way.title.charAt(0).toUpperCase() + way.title.slice(1)),
    h("p", {}, way.wins.length ? "Better: " + list(way.wins.map(w => WINS[w] ?? w)) + ". " : "", way.loses.length ? "Worse: " + list(way.loses.map(w => LOSES[w] ?? w)) + "." : ""),
    rows(way.outcome), toggle(way), h("button", { type: "button", class: "quiet-button no-print", onclick: () => take(changed(request, way)) }, "Plan it this way", h("span", { class: "unseen" }, ": " + way.title))));
  const matters = Object.entries(RESULTS).map(([key, name]) => {
    const hits = found.sensitivities.filter(x => x.result === key).slice(0, 2);
    return hits.length ? h("li", {}, name.charAt(0).toUpperCase() + name.slice(1) + ": most on " + list(hits.map(x => x.words)) + ".") : null;
  });
  place.replaceChildren(block(
    others.length ? h("p", {}, "Each is computed as the plan is, on fewer pieces. The plan itself comes first.") : h("p", {}, "Of " + found.screening.tried + " ways tried, none differs enough from the plan to be worth telling."),
    h("div", { class: "ways" }, h("div", {}, h("h3", {}, "This plan"), rows(found.compared)), others), note,
    found.levers.length ? [h("h3", {}, "What would change it"), h("ul", {}, found.levers.map(l => h("li", {}, l.change + ": " + l.effect + ".")))] : null,
    h("h3", {}, "What the result hangs on"), h("ul", {}, matters), found.slack?.words ? [h("h3", {}, "How much room there is"), [found.slack.words].flat().map(w => h("p", {}, w))] : null));
}
