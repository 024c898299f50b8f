// The plan in plain words.
import { h, s } from "./dom.js";
import { bothTemperatures, clockTime, dayOf, duration, interval, mass, percent, round, temperature, TREATMENTS } from "./words.js";
import { focusField, knows } from "./form.js";
import { countParts, inSentence, parts, say } from "./say.js";

export function render(plan, request, catalog) {
  const appliance = catalog.appliances.find(a => a.id === plan.cooking.appliance);
  return [story(plan, appliance), salting(plan, catalog), cooking(plan, appliance), h("div", { id: "fronts-place" }), clock(plan), safety(plan), plate(plan),
    h("div", { id: "ways-place" }), h("div", { id: "whatif-place" }), care(plan), assumed(plan)];
}

const block = (id, title, ...children) => h("section", { class: "block", id, "aria-labelledby": id + "-title" }, h("h2", { id: id + "-title" }, title), children);
const strong = words => h("strong", {}, words);
const big = items => h("dl", { class: "big" }, items.map(([name, value, note, hot]) =>
  h("div", { class: hot ? "hot" : "" }, h("dt", {}, name), h("dd", {}, value, note ? h("small", {}, note) : null))));

const served = plan => plan.clock.at(-1);

export function title(plan) {
  const f = plan.food;
  return (f.pieces > 1 ? f.pieces + " × " : "") + f.name;
}

function takeOut(c, pieces) {
  if (c.by_hold || c.by_time_alone) return countParts(c.by_hold ? "plan.out.hold" : "plan.out.time", pieces, { time: strong(duration(Math.ceil(c.time_to_pull_min.high))) });
  return countParts("plan.out.reading", pieces, { reading: strong(bothTemperatures(c.pull_temperature_c, 1)), time: strong(duration(c.time_to_pull_min.median)) });
}

function story(plan, appliance) {
  const c = plan.cooking, x = plan.salting, f = plan.food;
  const start = plan.clock[0], cook = plan.clock.find(step => step.kind === "cook"), end = served(plan);
  const soaks = x.water_g > 0, weighed = strong(say("plan.salt-mass", { mass: mass(x.salt_g) }));
  const moment = time => say("plan.moment", { day: dayOf(time), clock: clockTime(time) }) + " ";
  const sentence = soaks
    ? countParts("plan.soak", f.pieces, { salt: weighed, water: strong(say("plan.water-mass", { mass: mass(x.water_g) })), time: strong(duration(x.time_min)) })
    : x.treatment === "none" ? [say("plan.no-salt")]
    : x.salt_g <= 0 ? [say("plan.add-none")]
    : x.treatment === "dry-salt" ? countParts("plan.rub", f.pieces, { salt: weighed, time: strong(duration(x.time_min)) })
    : countParts("plan.sprinkle", f.pieces, { salt: weighed });
  const thaw = plan.clock[0].kind === "thaw" ? h("p", {}, moment(start.time) + start.words) : null;
  const salt = plan.clock.find(step => step.kind === "salt") ?? start;
  const steps = [thaw,
    h("p", {}, (soaks || x.time_min > 0 ? moment(salt.time) : ""), sentence),
    h("p", {}, parts("plan.cook", { setting: strong(temperature(c.setting_c)), appliance: inSentence(appliance?.name ?? c.appliance), clock: clockTime(cook.time) }), " ", takeOut(c, f.pieces), " ",
      say("plan.climbs", { temperature: temperature(c.peak_core_temperature_c.median) })),
    h("p", {}, parts(c.rest_min > 0 ? "plan.rest-serve" : "plan.serve", { rest: duration(c.rest_min), clock: strong(clockTime(end.time)), day: dayOf(end.time) })),
  ];
  return h("section", { class: "block story", "aria-labelledby": "story-title" }, h("h2", { id: "story-title", tabindex: "-1" }, title(plan)), steps,
    c.safety.predicted_met ? null : h("p", { class: "verdict bad" }, h("span", { "aria-hidden": "true" }, "✕"), h("span", {}, c.safety.headline)), c.safety.predicted_met ? null : h("div", { id: "unmet", class: "no-print" }));
}

const nameOf = (list, id) => list.find(x => x.id === id)?.name ?? (id ?? "").replaceAll("-", " ");

function salting(plan, catalog) {
  const x = plan.salting;
  const items = [];
  if (x.salt_g > 0) items.push([say("plan.salt.scale"), mass(x.salt_g), x.salt_spoons ? say("plan.salt.spoons", { spoons: x.salt_spoons, salt: inSentence(nameOf(catalog.salts, x.salt_form)) }) : ""]);
  for (const l of x.liquids ?? []) items.push([nameOf(catalog.liquids, l.liquid), mass(l.mass_g), say("unit.liter", { x: round(l.volume_l, 2) })]);
  if (x.sugar_added_g > 0) items.push([say("plan.salt.sugar"), mass(x.sugar_added_g)]);
  if (x.time_min > 0) items.push([say("plan.salt.time"), duration(x.time_min), x.earliest_min === undefined ? "" : say("plan.salt.window", { early: duration(x.earliest_min), late: duration(x.latest_min) })]);
  if (x.finish_g > 0) items.push([say("plan.salt.table"), mass(x.finish_g)]);
  const body = [big(items)];
  if (x.strength_pct_of_water_mass !== undefined) {
    body.push(h("p", {}, say("plan.salt.strength", { water: round(x.strength_pct_of_water_mass, 1), solution: round(x.strength_pct_of_solution_mass, 1),
      liter: round(x.strength_g_per_liter_of_water, 0) })));
  }
  if (x.vessel) body.push(h("p", {}, say("plan.salt.vessel", { vessel: x.vessel })));
  if (x.allergens?.length) body.push(h("p", { class: "error" }, say("plan.salt.allergens", { allergens: x.allergens.join(", ") })));
  if (x.acid) body.push(h("p", {}, x.acid.words));
  body.push(h("h3", {}, say("plan.why")), h("ul", {}, x.reasons.map(r => h("li", {}, r.reason))));
  return block("salting", TREATMENTS[x.treatment] ?? x.treatment, body);
}

const fromTo = (band, show) => say("unit.range", { low: show(band.low), high: show(band.high) });

function cooking(plan, appliance) {
  const c = plan.cooking;
  return block("cooking", say("plan.heat"),
    big([[say("plan.heat.set", { appliance: inSentence(appliance?.name ?? c.appliance) }), temperature(c.setting_c), "", true],
      c.by_time_alone || c.by_hold ? [say("plan.heat.after"), duration(Math.ceil(c.time_to_pull_min.high)), say(c.by_hold ? "plan.heat.by-hold" : "plan.heat.by-time"), true]
        : [say("plan.heat.at"), bothTemperatures(c.pull_temperature_c, 1), say("plan.heat.measured"), true],
      ...(c.loads ? [[say("plan.heat.loads"), say("plan.heat.loads-of", { count: c.loads.count, pieces: c.loads.pieces }), say("plan.heat.loads-note", { cycle: duration(c.loads.cycle_min), kept: duration(c.loads.first_kept_hot_min) }), true]] : []),
      [say("plan.heat.takes"), duration(c.time_to_pull_min.median), fromTo(c.time_to_pull_min, duration), true],
      [say("plan.heat.climbs"), temperature(c.peak_core_temperature_c.median), fromTo(c.peak_core_temperature_c, x => temperature(x)), true],
      [say("plan.heat.rest"), duration(c.rest_min), say("plan.heat.uncovered"), true]]),
    h("ul", {}, c.reasons.map(r => h("li", {}, r))));
}

function clock(plan) {
  let day = "";
  return block("clock", say("plan.clock"), h("ol", { class: "clock" }, plan.clock.map(step => {
    const d = dayOf(step.time), show = d !== day;
    day = d;
    return h("li", { class: step.active ? "" : "wait" }, h("time", { datetime: step.time }, clockTime(step.time), show ? h("small", {}, d) : null), h("span", {}, step.words));
  })));
}

// a hold is never told shorter than it is
function hold(seconds) {
  if (seconds >= 600) return Math.ceil(seconds / 60) + " min";
  const s = Math.ceil(seconds);
  return (s >= 60 ? Math.floor(s / 60) + " min " : "") + s % 60 + " s";
}

function safety(plan) {
  const x = plan.cooking.safety, m = x.consumer_minimum;
  return block("safety", say("plan.safe"),
    h("p", { class: "verdict" + (x.predicted_met ? "" : " bad") }, h("span", { "aria-hidden": "true" }, x.predicted_met ? "✓" : "✕"), h("span", {}, x.headline)),
    h("div", { class: "beside" },
      h("div", {}, h("h3", {}, say("plan.safe.this")),
        h("b", {}, x.hold_share_low_end_pct >= 100 ? say("plan.safe.full") : round(x.hold_share_low_end_pct, 0) + " %"),
        x.salt_allowance ? say("plan.safe.share-salt", { table: x.hold_table, below: temperature(x.salt_allowance.below_c) }) : say("plan.safe.share", { table: x.hold_table }),
        x.hold_at_peak_s ? " " + say("plan.safe.at-peak", { temperature: temperature(plan.cooking.peak_core_temperature_c.median), time: hold(x.hold_at_peak_s) }) : ""),
      h("div", { class: "official" }, h("h3", {}, say("plan.safe.official")), h("b", {}, bothTemperatures(m.temperature_c)),
        m.rest_min > 0 ? say("plan.safe.with-rest", { time: duration(m.rest_min), edition: m.edition }) : say("plan.safe.in-spot", { edition: m.edition }))),
    x.reasons.length ? h("ul", {}, x.reasons.map(r => h("li", {}, r))) : null,
    h("p", {}, x.note),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("plan.safe.limits") }, h("table", {}, h("caption", {}, say("plan.safe.limits-day")),
      h("thead", {}, h("tr", {}, ["when", "took", "at-most", "kept-q"].map(t => h("th", { scope: "col" }, say("plan.safe." + t))))),
      h("tbody", {}, x.limits.map(l => h("tr", {}, h("th", { scope: "row" }, l.when + ": " + l.text.split(":")[0]), h("td", {}, duration(l.time_min)), h("td", {}, duration(l.limit_min)),
        h("td", {}, say(l.outcome === "pass" ? "plan.safe.kept" : l.outcome === "fail" ? "plan.safe.broken" : "plan.safe.not-covered")))))),
    ),
    h("p", {}, say("plan.safe.table", { hot: bothTemperatures(x.serving.hot_holding_c), time: duration(x.serving.out_at_most_min),
      summer: duration(x.serving.out_in_hot_air_at_most_min) })));
}

// a band with its middle, on a scale from zero to a common end
function range(band, end, kind) {
  const x = v => 4 + 192 * Math.min(1, v / end);
  return s("svg", { class: "range", viewBox: "0 0 200 26", preserveAspectRatio: "none", "aria-hidden": "true" },
    s("path", { d: "M4 20H196", stroke: "var(--line)", "stroke-width": 2 }),
    s("rect", { x: x(band.low), y: 7, width: Math.max(2, x(band.high) - x(band.low)), height: 12, rx: 2, fill: `var(--${kind})`, opacity: .35 }),
    s("rect", { x: x(band.median) - 1.5, y: 3, width: 3, height: 20, fill: `var(--${kind})` }));
}

function plate(plan) {
  const r = plan.result, t = r.table;
  const saltEnd = Math.max(1, r.salt_outer_5mm_pct.high), lossEnd = Math.max(20, r.mass_loss_pct.high);
  const rows = [[say("plan.plate.salt-mean"), r.salt_mean_pct, percent(2), saltEnd, "salt"], [say("plan.plate.salt-outer"), r.salt_outer_5mm_pct, percent(2), saltEnd, "salt"],
    [say("plan.plate.salt-core"), r.salt_core_pct, percent(2), saltEnd, "salt"], [say("plan.plate.loss"), r.mass_loss_pct, percent(0), lossEnd, "heat"],
    [say("plan.plate.sodium", { grams: round(t.serving_cooked_g, 0) }), t.sodium_mg, v => round(v, 0) + " mg", Math.max(500, t.sodium_mg.high), "salt"]];
  const raw = plan.food.pieces * plan.food.piece_mass_g;
  return block("plate", say("plan.plate"),
    h("p", {}, say("plan.plate.about", { mass: mass(raw * (1 - r.mass_loss_pct.median / 100)) })),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("plan.plate.expect") }, h("table", {}, h("caption", { class: "unseen" }, say("plan.plate.caption")),
      h("tbody", {}, rows.map(([name, band, show, end, kind]) => h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, interval(band, show)), h("td", {}, range(band, end, kind))))))));
}

function care(plan) {
  const handling = plan.salting.cautions ?? [];
  return block("care", say("plan.care"),
    handling.length ? [h("h3", {}, say("plan.care.salting")), h("ul", { class: "care" }, handling.map(c => h("li", { class: c.level === "danger" ? "danger" : "" }, c.text)))] : null,
    h("h3", {}, say("plan.care.cooking")), h("ul", { class: "care" }, plan.cautions.map(c => h("li", {}, c))));
}

// what a plan assumes most; another field keeps its key
const FIELDS = ["pieces", "start_temperature", "liquid", "vessel", "refrigerator", "setting", "altitude", "taste.salt", "taste.core", "mass", "thickness", "appliance", "salt", "serve",
  "salting.treatment", "salting.time", "salting.strength", "guests.vulnerable"];
const fieldName = key => FIELDS.includes(key) ? say("field." + key) : key.replaceAll(/[._]/g, " ");

function assumed(plan) {
  return block("assumed", say("plan.assumed"),
    h("p", {}, say("plan.assumed.about")),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("plan.assumed.region") }, h("table", {}, h("tbody", {}, plan.assumptions.map(a => h("tr", {},
      h("th", { scope: "row" }, fieldName(a.field)), h("td", {}, a.value, h("br", {}), h("span", { class: "hint" }, a.reason)),
      h("td", { class: "no-print" }, knows(a.field) ? h("button", { type: "button", class: "say", onclick: () => focusField(a.field) }, say("plan.assumed.say"), h("span", { class: "unseen" }, ": " + fieldName(a.field))) : null)))))),
    h("p", { class: "hint" }, say("plan.read-off", { members: plan.ensemble.members, seed: String(plan.ensemble.seed), version: plan.program_version })));
}
