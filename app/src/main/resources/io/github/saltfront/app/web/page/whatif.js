// What if: a few sliders; the plan as it was stays beside the new one.
import { ask, h } from "./dom.js";
import { paint } from "./fronts.js";
import { say } from "./say.js";
import { clockTime, dayOf, duration, length, mass, round, temperature } from "./words.js";

const clone = x => structuredClone(x);
const snap = (x, step) => Math.round(x / step) * step;

function knobs(plan, request, catalog) {
  const list = [], appliance = catalog.appliances.find(a => a.id === plan.cooking.appliance), thick = 2 * plan.food.half_thickness_mm;
  const side = request.shape?.diameter === undefined ? "thickness" : "diameter";
  if (request.shape) list.push({ id: "thickness", name: say("whatif." + side), low: snap(.6 * thick, 1), high: snap(1.5 * thick, 1), step: 1, value: snap(thick, 1), show: length, put: (r, v) => { r.shape[side] = v + " mm"; } });
  else list.push({ id: "thickness", name: say("whatif.thickness"), low: snap(.6 * thick, 1), high: snap(1.5 * thick, 1), step: 1, value: snap(thick, 1), show: length, put: (r, v) => { r.thickness = v + " mm"; } });
  const x = plan.salting;
  if (x.treatment === "wet-brine") {
    list.push({ id: "strength", name: say("whatif.strength"), low: 2, high: 10, step: .5, value: snap(x.strength_pct_of_water_mass, .5), show: v => say("whatif.of-water", { x: round(v, 1) }),
      put: (r, v) => { (r.salting ??= {}).treatment = "wet-brine"; r.salting.strength = v + " % of water"; } });
  }
  if (x.time_min > 0) {
    list.push({ id: "time", name: say("whatif.time"), low: 15, high: Math.max(1440, snap(1.5 * x.time_min, 15)), step: 15, value: snap(x.time_min, 15), show: duration,
      put: (r, v) => { (r.salting ??= {}).treatment = x.treatment; r.salting.time = v + " min"; } });
  }
  const t = appliance.temperature_c, c = plan.cooking;
  list.push({ id: "setting", name: appliance.name, low: Math.max(40, Math.min(t.low, c.setting_c)), high: Math.max(t.high, c.setting_c), step: 1, value: Math.round(c.setting_c), show: v => temperature(v), put: (r, v) => { r.setting = v + " °C"; } },
    { id: "core", name: say("whatif.core"), low: 45, high: 95, step: .5, value: snap(c.wished_core_c, .5), show: v => temperature(v, 1), put: (r, v) => { (r.taste ??= {}).core = v + " °C"; } });
  return list;
}

const ROWS = [
  ["salt", p => mass(p.salting.salt_g)], ["salting", p => p.salting.time_min > 0 ? duration(p.salting.time_min) : say("whatif.none-ahead")],
  ["begin", p => dayOf(p.clock[0].time) + " " + clockTime(p.clock[0].time)], ["heat", p => duration(p.cooking.time_to_pull_min.median)],
  ["out", p => temperature(p.cooking.pull_temperature_c, 1)], ["climbs", p => temperature(p.cooking.peak_core_temperature_c.median, 1)],
  ["salt-mean", p => round(p.result.salt_mean_pct.median, 2) + " %"], ["salt-middle", p => round(p.result.salt_core_pct.median, 2) + " %"],
  ["loss", p => round(p.result.mass_loss_pct.median, 0) + " %"], ["hold", p => say(p.cooking.safety.predicted_met ? "whatif.met" : "whatif.not-met")]];

export function showWhatIf(place, plan, request, catalog, take) {
  const values = new Map(), list = knobs(plan, request, catalog), note = h("p", { class: "status", role: "status" }), body = h("tbody"), area = h("div");
  const takeButton = h("button", { type: "button", class: "quiet-button", hidden: true, onclick: () => take(changed()) }, say("stages.take"));
  const back = h("button", { type: "button", class: "quiet-button", hidden: true, onclick: () => { for (const k of list) { k.input.value = k.value; k.out.textContent = k.show(k.value); } values.clear(); settle(plan, null); } }, say("stages.back"));
  let timer, running = 0, old, looking = false, again = false;
  function changed() {
    const r = clone(request);
    for (const [knob, v] of values) knob.put(r, v);
    return r;
  }
  function settle(now, fronts, rough = false) {
    body.replaceChildren(...ROWS.map(([name, show]) => {
      const was = show(plan), is = show(now);
      return h("tr", {}, h("th", { scope: "row" }, say("whatif." + name)), h("td", {}, was === is ? is : [h("span", { class: "was" }, h("span", { class: "unseen" }, say("stages.was") + " "), was), " ", h("strong", {}, h("span", { class: "unseen" }, say("stages.now") + " "), is)]));
    }));
    takeButton.hidden = back.hidden = values.size === 0;
    note.textContent = rough ? say("whatif.rough", { n: now.ensemble.members }) : "";
    if (fronts) paint(document.getElementById("fronts-place"), fronts, now, changed(), { ghost: old, take });
    else if (old) paint(document.getElementById("fronts-place"), old, plan, request, { take });
  }
  // while a slider moves: one look after the other, and only the newest values count
  async function look() {
    if (looking) { again = true; return; }
    looking = true;
    const mine = running;
    try {
      old ??= await ask("POST", "/api/fronts", request);
      const { plan: now, fronts } = await ask("POST", "/api/glance", { request: changed(), before: request });
      if (mine === running && place.isConnected) settle(now, fronts, true);
    } catch (trouble) {
      if (mine === running) note.textContent = trouble.message;
    }
    looking = false;
    if (again) { again = false; look(); }
  }
  async function compute() {
    const mine = ++running;
    try {
      old ??= await ask("POST", "/api/fronts", request);
      const now = await ask("POST", "/api/plan?alternatives=no", changed());
      const fronts = await ask("POST", "/api/fronts", changed());
      if (mine === running && place.isConnected) settle(now, fronts);
    } catch (trouble) {
      if (mine === running) note.textContent = trouble.message;
    }
  }
  const sliders = list.map(k => {
    const id = "if-" + k.id;
    k.out = h("output", { for: id }, k.show(k.value));
    k.input = h("input", { type: "range", id, min: k.low, max: k.high, step: k.step, value: String(k.value), "aria-valuetext": k.show(k.value), oninput: event => {
      const v = Number(event.target.value);
      k.out.textContent = k.show(v);
      k.input.setAttribute("aria-valuetext", k.show(v));
      values.set(k, v);
      look();
      clearTimeout(timer);
      timer = setTimeout(compute, 500);
    } });
    return h("div", { class: "slide" }, h("label", { for: id }, k.name, k.out), k.input);
  });
  place.replaceChildren(h("section", { class: "block no-print", "aria-labelledby": "whatif-title" }, h("h2", { id: "whatif-title" }, say("whatif.title")),
    h("p", {}, say("whatif.about")), sliders, note,
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("whatif.changes") }, h("table", {}, h("caption", { class: "unseen" }, say("whatif.changes")), body)), h("p"), h("div", { class: "row" }, takeButton, back), area));
  settle(plan, null);
}
