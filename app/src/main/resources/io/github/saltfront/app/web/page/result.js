// The plan in plain words.
import { h, s } from "./dom.js";
import { bothTemperatures, clockTime, dayOf, duration, interval, mass, percent, round, temperature, TREATMENTS } from "./words.js";
import { focusField, knows } from "./form.js";

export function render(plan, request, appliance) {
  return [story(plan, appliance), salting(plan), cooking(plan, appliance), h("div", { id: "fronts-place" }), clock(plan), safety(plan), plate(plan),
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

function takeOut(c) {
  if (c.by_hold) return ["after ", strong(duration(Math.ceil(c.time_to_pull_min.high))), ": in a bath the hold decides, not a reading"];
  return c.by_time_alone ? ["after ", strong(duration(Math.ceil(c.time_to_pull_min.high))), ", not before: without a thermometer the slowest piece sets the time"]
    : ["when the middle shows ", strong(bothTemperatures(c.pull_temperature_c, 1)), ", about ", strong(duration(c.time_to_pull_min.median)), " later"];
}

function story(plan, appliance) {
  const c = plan.cooking, x = plan.salting, f = plan.food;
  const start = plan.clock[0], cook = plan.clock.find(step => step.kind === "cook"), end = served(plan);
  const them = f.pieces > 1 ? "the " + f.pieces + " pieces" : "the piece";
  const soaks = x.water_g > 0;
  const sentence = soaks
    ? ["Stir ", strong(mass(x.salt_g) + " salt"), " into ", strong(mass(x.water_g) + " water"), " and soak " + them + " for ", strong(duration(x.time_min)), " in the refrigerator. "]
    : x.treatment === "none" ? ["Use no salt before cooking. "]
    : x.salt_g <= 0 ? ["Add no salt: it holds enough already. "]
    : x.treatment === "dry-salt" ? ["Rub ", strong(mass(x.salt_g) + " salt"), " over " + them + " and leave " + (f.pieces > 1 ? "them" : "it") + " for ", strong(duration(x.time_min)), " in the refrigerator. "]
    : ["Sprinkle ", strong(mass(x.salt_g) + " salt"), " over " + them + " just before the heat. "];
  const thaw = plan.clock[0].kind === "thaw" ? h("p", {}, dayOf(start.time) + " at " + clockTime(start.time) + ": " + start.words) : null;
  const salt = plan.clock.find(step => step.kind === "salt") ?? start;
  const steps = [thaw,
    h("p", {}, (soaks || x.time_min > 0 ? dayOf(salt.time) + " at " + clockTime(salt.time) + ": " : ""), sentence),
    h("p", {}, "Cook at ", strong(temperature(c.setting_c)), " (" + (appliance?.name ?? c.appliance).toLowerCase() + ") from " + clockTime(cook.time)
      + ". Take " + (f.pieces > 1 ? "each piece" : "it") + " out ", takeOut(c), ". Off the heat it still climbs to " + temperature(c.peak_core_temperature_c.median) + "."),
    h("p", {}, c.rest_min > 0 ? "Let it rest " + duration(c.rest_min) + ", then serve at " : "Serve at ", strong(clockTime(end.time)), " on " + dayOf(end.time) + "."),
  ];
  return h("section", { class: "block story", "aria-labelledby": "story-title" }, h("h2", { id: "story-title", tabindex: "-1" }, title(plan)), steps,
    c.safety.predicted_met ? null : h("p", { class: "verdict bad" }, h("span", { "aria-hidden": "true" }, "✕"), h("span", {}, c.safety.headline)), c.safety.predicted_met ? null : h("div", { id: "unmet", class: "no-print" }));
}

function salting(plan) {
  const x = plan.salting;
  const items = [];
  if (x.salt_g > 0) items.push(["Salt, by the scale", mass(x.salt_g), x.salt_spoons ? "or " + x.salt_spoons + " " + (x.salt_form ?? "").replaceAll("-", " ") + ", level" : ""]);
  for (const l of x.liquids ?? []) items.push([l.liquid.charAt(0).toUpperCase() + l.liquid.slice(1), mass(l.mass_g), round(l.volume_l, 2) + " liter"]);
  if (x.sugar_added_g > 0) items.push(["Sugar", mass(x.sugar_added_g)]);
  if (x.time_min > 0) items.push(["Time", duration(x.time_min), x.earliest_min === undefined ? "" : "seasoned from " + duration(x.earliest_min) + ", too salty after " + duration(x.latest_min)]);
  if (x.finish_g > 0) items.push(["Salt at the table", mass(x.finish_g)]);
  const body = [big(items)];
  if (x.strength_pct_of_water_mass !== undefined) {
    body.push(h("p", {}, "Strength: " + round(x.strength_pct_of_water_mass, 1) + " % of the weight of the water, which is the same as "
      + round(x.strength_pct_of_solution_mass, 1) + " % of the whole brine, or " + round(x.strength_g_per_liter_of_water, 0) + " g in a liter of water."));
  }
  if (x.vessel) body.push(h("p", {}, "Vessel: " + x.vessel + "."));
  if (x.allergens?.length) body.push(h("p", { class: "error" }, "Allergens in the liquid: " + x.allergens.join(", ") + "."));
  if (x.acid) body.push(h("p", {}, x.acid.words));
  body.push(h("h3", {}, "Why"), h("ul", {}, x.reasons.map(r => h("li", {}, r.reason))));
  return block("salting", TREATMENTS[x.treatment] ?? x.treatment, body);
}

function cooking(plan, appliance) {
  const c = plan.cooking;
  return block("cooking", "Cook and rest",
    big([["Set " + (appliance?.name ?? c.appliance).toLowerCase() + " to", temperature(c.setting_c), "", true],
      c.by_time_alone || c.by_hold ? ["Take out after", duration(Math.ceil(c.time_to_pull_min.high)), c.by_hold ? "the hold decides, not a reading" : "not before; there is no thermometer", true]
        : ["Take out at", bothTemperatures(c.pull_temperature_c, 1), "measured in the middle", true],
      ...(c.loads ? [["Loads", c.loads.count + " of " + c.loads.pieces, "one every " + duration(c.loads.cycle_min) + "; the first is kept hot for " + duration(c.loads.first_kept_hot_min), true]] : []),
      ["That takes about", duration(c.time_to_pull_min.median), duration(c.time_to_pull_min.low) + " to " + duration(c.time_to_pull_min.high), true],
      ["It climbs to", temperature(c.peak_core_temperature_c.median), temperature(c.peak_core_temperature_c.low) + " to " + temperature(c.peak_core_temperature_c.high), true],
      ["Rest", duration(c.rest_min), "uncovered unless the clock says otherwise", true]]),
    h("ul", {}, c.reasons.map(r => h("li", {}, r))));
}

function clock(plan) {
  let day = "";
  return block("clock", "The clock", h("ol", { class: "clock" }, plan.clock.map(step => {
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
  return block("safety", "Is it safe?",
    h("p", { class: "verdict" + (x.predicted_met ? "" : " bad") }, h("span", { "aria-hidden": "true" }, x.predicted_met ? "✓" : "✕"), h("span", {}, x.headline)),
    h("div", { class: "beside" },
      h("div", {}, h("h3", {}, "This plan: time at temperature"),
        h("b", {}, x.hold_share_low_end_pct >= 100 ? "100 % or more" : round(x.hold_share_low_end_pct, 0) + " %"),
        "of the required hold at the worst place, for 19 of 20 cooks. Table: " + x.hold_table + (x.salt_allowance ? ", with our own allowance for salt below "
          + temperature(x.salt_allowance.below_c) : "") + ".", x.hold_at_peak_s ? " At " + temperature(plan.cooking.peak_core_temperature_c.median) + " that hold is "
          + hold(x.hold_at_peak_s) + "." : ""),
      h("div", { class: "official" }, h("h3", {}, "Official minimum for consumers"), h("b", {}, bothTemperatures(m.temperature_c)),
        m.rest_min > 0 ? "and " + duration(m.rest_min) + " rest. " : "in the coldest spot. ", m.edition + ".")),
    x.reasons.length ? h("ul", {}, x.reasons.map(r => h("li", {}, r))) : null,
    h("p", {}, x.note),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Official limits of time" }, h("table", {}, h("caption", {}, "Official limits of time, along the day"),
      h("thead", {}, h("tr", {}, ["When", "Took", "At most", "Kept?"].map(t => h("th", { scope: "col" }, t)))),
      h("tbody", {}, x.limits.map(l => h("tr", {}, h("th", { scope: "row" }, l.when + ": " + l.text.split(":")[0]), h("td", {}, duration(l.time_min)), h("td", {}, duration(l.limit_min)),
        h("td", {}, l.outcome === "pass" ? "✓ kept" : l.outcome === "fail" ? "✕ broken" : "not covered"))))),
    ),
    h("p", {}, "At the table: keep it at " + bothTemperatures(x.serving.hot_holding_c) + " or above, or eat it within " + duration(x.serving.out_at_most_min)
      + " (" + duration(x.serving.out_in_hot_air_at_most_min) + " on a hot day)."));
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
  const rows = [["Salt on average", r.salt_mean_pct, percent(2), saltEnd, "salt"], ["Salt in the outer 5 mm", r.salt_outer_5mm_pct, percent(2), saltEnd, "salt"],
    ["Salt in the middle", r.salt_core_pct, percent(2), saltEnd, "salt"], ["Weight lost from raw to plate", r.mass_loss_pct, percent(0), lossEnd, "heat"],
    ["Sodium in " + round(t.serving_cooked_g, 0) + " g cooked", t.sodium_mg, v => round(v, 0) + " mg", Math.max(500, t.sodium_mg.high), "salt"]];
  const raw = plan.food.pieces * plan.food.piece_mass_g;
  return block("plate", "On the plate",
    h("p", {}, "About " + mass(raw * (1 - r.mass_loss_pct.median / 100)) + " in all. The brackets hold 9 of 10 pieces; the bar shows the same."),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "What to expect on the plate" }, h("table", {}, h("caption", { class: "unseen" }, "What to expect on the plate, with 90 percent intervals"),
      h("tbody", {}, rows.map(([name, band, show, end, kind]) => h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, interval(band, show)), h("td", {}, range(band, end, kind))))))));
}

function care(plan) {
  const handling = plan.salting.cautions ?? [];
  return block("care", "Take care",
    handling.length ? [h("h3", {}, "When salting"), h("ul", { class: "care" }, handling.map(c => h("li", { class: c.level === "danger" ? "danger" : "" }, c.text)))] : null,
    h("h3", {}, "When cooking"), h("ul", { class: "care" }, plan.cautions.map(c => h("li", {}, c))));
}

function assumed(plan) {
  return block("assumed", "What was assumed",
    h("p", {}, "You did not say, so the plan took this. Say it where you know better."),
    h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Assumptions" }, h("table", {}, h("tbody", {}, plan.assumptions.map(a => h("tr", {},
      h("th", { scope: "row" }, a.field.replaceAll(/[._]/g, " ")), h("td", {}, a.value, h("br", {}), h("span", { class: "hint" }, a.reason)),
      h("td", { class: "no-print" }, knows(a.field) ? h("button", { type: "button", class: "say", onclick: () => focusField(a.field) }, "Say it", h("span", { class: "unseen" }, ": " + a.field)) : null)))))),
    h("p", { class: "hint" }, "Read off " + plan.ensemble.members + " simulated pieces, seed " + plan.ensemble.seed + ", Saltfront " + plan.program_version + "."));
}
