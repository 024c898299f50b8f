// The cook's questions. Keys are those of the request file; empty answers are left out, so that the program's defaults hold.
import { h } from "./dom.js";
import { counts, meatFields, shapeFields, showShape } from "./own.js";
import { say, sayCount } from "./say.js";
import { measurePicture, picture, whereToMeasure } from "./shapes.js";
import { localIso, mass, temperature, length, TREATMENTS } from "./words.js";

const GROUPS = [["chicken", ["chicken"]], ["turkey", ["turkey"]], ["birds", ["duck", "goose", "quail"]], ["pork", ["pork"]], ["beef", ["beef"]],
  ["lamb", ["lamb"]], ["game", ["veal", "rabbit", "venison"]], ["fish", ["fish", "shellfish"]]];
const NOT_COOKING = /^(rest-|room$|refrigerator|ice-bath)/;
const inputs = new Map();
let catalog;
let form;
let cutId = "";
const OWN = "own";

const idOf = key => "f-" + key.replaceAll(".", "-");

function field(key, label, control, hint) {
  const id = idOf(key);
  control.id = id;
  control.setAttribute("aria-describedby", id + "-hint " + id + "-error");
  inputs.set(key, control);
  return h("div", { class: "field" }, h("label", { for: id }, label), control,
    h("p", { class: "hint", id: id + "-hint" }, hint ?? ""), h("p", { class: "error", id: id + "-error", hidden: true }));
}

const text = (key, label, hint, attributes = {}) =>
  field(key, label, h("input", { type: "text", autocomplete: "off", spellcheck: "false", enterkeyhint: "next", ...attributes }), hint);

const choice = (key, label, options, hint) =>
  field(key, label, h("select", {}, options.map(([value, words]) => h("option", { value }, words))), hint);

function pills(key, legend, options, initial) {
  const id = idOf(key);
  const radios = options.map(([value, words]) => h("label", {}, h("input", { type: "radio", name: key, value, checked: value === initial }), words));
  const set = h("fieldset", { id, "aria-describedby": id + "-error" }, h("legend", {}, legend), h("div", { class: "pills" }, radios),
    h("p", { class: "error", id: id + "-error", hidden: true }));
  inputs.set(key, { get value() { return set.querySelector(":checked")?.value ?? ""; },
    set value(v) { for (const r of set.querySelectorAll("input")) r.checked = r.value === v; },
    setAttribute() {}, removeAttribute() {}, focus() { (set.querySelector(":checked") ?? set.querySelector("input")).focus(); }, closest: x => set.closest(x) });
  return set;
}

function check(key, label, hint) {
  const id = idOf(key);
  const box = h("input", { type: "checkbox", id, "aria-describedby": id + "-hint" });
  inputs.set(key, { get value() { return box.checked ? "yes" : ""; }, set value(v) { box.checked = v === true || v === "yes"; },
    setAttribute() {}, removeAttribute() {}, focus: () => box.focus(), closest: x => box.closest(x) });
  return h("div", { class: "field" }, h("label", { class: "check", for: id }, box, label), h("p", { class: "hint", id: id + "-hint" }, hint ?? ""),
    h("p", { class: "error", id: id + "-error", hidden: true }));
}

const more = (title, ...children) => h("details", {}, h("summary", {}, title), children);

export function build(root, theCatalog, onSubmit) {
  form = root;
  catalog = theCatalog;
  const serveAt = h("input", { type: "datetime-local", step: 300 });
  form.append(
    h("fieldset", {}, h("legend", {}, say("form.got")), cutChooser(), meatFields({ text, choice }, catalog),
      h("div", { class: "two" },
        text("mass", say("form.mass"), say("form.mass.hint"), { required: true }),
        text("pieces", say("form.pieces"), say("form.pieces.hint"), { inputmode: "numeric", value: "1" })),
      text("thickness", say("form.thickness"), say("form.thickness.hint")),
      h("div", { id: "measure" }),
      h("details", { id: "own-shape" }, h("summary", {}, say("form.own-shape")), shapeFields(inputs, { text, choice })),
      more(say("form.more-meat"),
        text("start_temperature", say("form.start"), say("form.start.hint")),
        text("label.solution", say("form.label.solution"), say("form.label.solution.hint")),
        text("label.sodium", say("form.label.sodium"), say("form.label.sodium.hint")),
        check("label.kosher", say("form.label.kosher")))),
    h("fieldset", { class: "heat" }, h("legend", {}, say("form.at-hand")),
      choice("appliance", say("form.appliance"), catalog.appliances.filter(a => !NOT_COOKING.test(a.id)).map(a => [a.id, a.name])),
      text("setting", say("form.setting"), ""),
      choice("salt", say("form.salt"), catalog.salts.map(x => [x.id, x.name]), say("form.salt.hint")),
      choice("salting.treatment", say("form.treatment"), Object.entries(TREATMENTS)),
      more(say("form.more-salting"),
        text("salting.time", say("form.time"), say("form.time.hint")),
        text("salting.strength", say("form.strength"), say("form.strength.hint")),
        text("salting.sugar", say("form.sugar"), say("form.sugar.hint")),
        choice("liquid", say("form.liquid"), [["", say("form.liquid.any")], ...catalog.liquids.map(x => [x.id, x.name])]),
        text("vessel", say("form.vessel"), say("form.vessel.hint")),
        text("refrigerator", say("form.refrigerator"), say("form.refrigerator.hint")),
        text("altitude", say("form.altitude"), say("form.altitude.hint")))),
    h("fieldset", {}, h("legend", {}, say("form.eat")),
      pills("when", say("form.when"), [["soon", say("form.when.soon")], ["at", say("form.when.at")]], "soon"),
      field("serve", say("form.serve"), serveAt, ""),
      text("guests.count", say("form.guests"), "", { inputmode: "numeric", value: "2" }),
      check("guests.vulnerable", say("form.vulnerable"), say("form.vulnerable.hint")),
      more(say("form.whose"), choice("kitchen", say("form.kitchen"), ["home", "teaching", "professional"].map(id => [id, say("form.kitchen." + id)])))),
    h("fieldset", { class: "heat" }, h("legend", {}, say("form.like")),
      pills("taste.salt", say("form.salt"), ["light", "usual", "strong"].map(id => [id, say("form.taste." + id)]), "usual"),
      text("taste.core", say("form.core"), say("form.core.hint")),
      more(say("form.less-sodium"), text("taste.sodium", say("form.sodium"), say("form.sodium.hint")))),
    h("button", { class: "main-button", type: "submit", id: "make" }, say("form.make")));
  inputs.get("appliance").value = "oven-conventional";
  inputs.get("serve").closest(".field").hidden = true;
  inputs.get("guests.vulnerable");
  form.addEventListener("change", event => {
    if (event.target.name === "when") showWhen();
    if (event.target.id === "f-appliance") showSetting();
  });
  form.addEventListener("submit", event => { event.preventDefault(); onSubmit(); });
  showSetting();
  showShape();
  const evening = new Date(Date.now() + 7 * 3600e3);
  evening.setMinutes(0);
  serveAt.value = localIso(evening).slice(0, 16);
}

function showWhen() {
  inputs.get("serve").closest(".field").hidden = inputs.get("when").value !== "at";
}

function showSetting() {
  const appliance = catalog.appliances.find(a => a.id === inputs.get("appliance").value);
  const t = appliance.temperature_c;
  document.getElementById("f-setting-hint").textContent = say("form.setting.hint", { typical: temperature(t.typical), low: temperature(t.low), high: temperature(t.high) });
}

function cutChooser() {
  const id = idOf("cut");
  const list = h("div", { class: "cuts", role: "radiogroup", "aria-label": say("form.cut.list"), tabindex: "-1" });
  const find = h("input", { type: "search", id, autocomplete: "off", placeholder: say("form.cut.type"), "aria-describedby": id + "-error", oninput: () => show() });
  const groups = h("div", { class: "pills", role: "group", "aria-label": say("form.cut.kind") });
  const other = h("button", { type: "button", class: "say", onclick: () => pickOwn() }, say("form.cut.other"));
  const open = h("div", {}, h("label", { class: "label", for: id }, say("form.cut")), find, h("p", { class: "hint" }, say("form.cut.pick")), groups, list, other);
  const chosen = h("div", { class: "chosen", hidden: true });
  let group = "";
  for (const [name, species] of GROUPS) {
    groups.append(h("button", { type: "button", class: "quiet-button", "aria-pressed": "false", onclick: event => {
      group = group === name ? "" : name;
      for (const b of groups.children) b.setAttribute("aria-pressed", String(group !== "" && b === event.currentTarget));
      find.value = "";
      show(species);
    } }, say("form.group." + name)));
  }
  function show() {
    const word = find.value.trim().toLowerCase();
    const species = GROUPS.find(g => g[0] === group)?.[1];
    const hits = catalog.cuts.filter(c => word ? [c.id, c.name, c.species, ...c.aliases].some(x => x.toLowerCase().includes(word)) : species?.includes(c.species));
    list.hidden = !word && !species;
    list.replaceChildren(...hits.map(c => h("label", {}, h("input", { type: "radio", name: "cut-choice", value: c.id, checked: c.id === cutId, onclick: event => {
      // arrow keys also click: they only move the choice, a pointer or the space bar also closes the list
      if (event.detail > 0) pick(c.id, true); else pick(c.id, false);
    }, onkeydown: event => { if (event.key === "Enter" || event.key === " ") { event.preventDefault(); pick(c.id, true); } } }), picture(c), h("span", {}, c.name))));
    if (hits.length === 0 && !list.hidden) list.append(h("p", { class: "none" }, say("form.cut.none")));
  }
  function choose(...content) {
    chosen.replaceChildren(...content, h("button", { type: "button", class: "quiet-button", onclick: () => {
      chosen.hidden = true; open.hidden = false; if (cutId === OWN) { cutId = ""; showOwn(); } show(); find.focus();
    } }, say("form.cut.change"), h("span", { class: "unseen" }, " " + say("form.cut.change-what"))));
    chosen.hidden = false;
    open.hidden = true;
  }
  function pickOwn() {
    cutId = OWN;
    showOwn();
    choose(h("span", {}, say("form.cut.own")));
    document.getElementById("own-shape").open = true;
    if (!inputs.get("shape.kind").value) { inputs.get("shape.kind").value = "slab"; showShape(); }
    clearProblem("cut");
    inputs.get("meat.water").focus({ preventScroll: true });
  }
  function pick(value, close) {
    cutId = value;
    showOwn();
    const cut = catalog.cuts.find(c => c.id === value);
    const massInput = inputs.get("mass");
    if (massInput && (!massInput.value || massInput.dataset.usual === massInput.value)) {
      massInput.value = mass(cut.mass_g.typical);
      massInput.dataset.usual = massInput.value;
    }
    showMeasure();
    document.getElementById("f-taste-core-hint").textContent = say("form.core.cut", { low: temperature(cut.core_temperature_c.low), high: temperature(cut.core_temperature_c.high) });
    clearProblem("cut");
    if (!close) return;
    choose(picture(cut), h("span", {}, cut.name));
    massInput?.focus({ preventScroll: true });
  }
  inputs.set("cut", { get value() { return cutId === OWN ? "" : cutId; }, set value(v) { if (v === OWN) pickOwn(); else if (v && catalog.cuts.some(c => c.id === v)) pick(v, true); },
    setAttribute: (n, v) => find.setAttribute(n, v), removeAttribute: n => find.removeAttribute(n), closest: x => find.closest(x),
    focus() { if (open.hidden) chosen.querySelector("button").focus(); else find.focus(); } });
  list.hidden = true;
  return h("div", { class: "field" }, chosen, open, h("p", { class: "error", id: id + "-error", hidden: true }));
}

function showOwn() {
  document.getElementById("own-meat").hidden = cutId !== OWN;
}

function showMeasure() {
  const cut = catalog.cuts.find(c => c.id === cutId);
  if (!cut) return;
  document.getElementById("measure").replaceChildren(measurePicture(cut));
  document.getElementById("f-thickness-hint").textContent = say("form.thickness.where", { where: whereToMeasure(cut), length: length(cut.thickness_mm) });
}

/** Returns the answers as a request. */
export function read(now = new Date()) {
  const request = {};
  for (const [key, control] of inputs) {
    const value = control.value.trim?.() ?? control.value;
    if (value === "" || key === "when" || (key === "salting.treatment" && value === "auto") || (key === "kitchen" && value === "home")) continue;
    if (key === "serve" || !counts(key, cutId === OWN)) continue;
    const path = key.split(".");
    let place = request;
    for (const step of path.slice(0, -1)) place = place[step] ??= {};
    place[path.at(-1)] = (key === "pieces" || key === "guests.count") && /^\d+$/.test(value) ? Number(value) : value;
  }
  request.guests ??= {};
  request.guests.vulnerable ??= "no";
  request.now = localIso(now);
  const at = inputs.get("serve").value;
  request.serve = inputs.get("when").value === "at" && at ? localIso(new Date(at)) : "as soon as possible";
  return request;
}

/** Shows the answers of a request. */
export function fill(request) {
  for (const [key, control] of inputs) {
    if (key === "when" || key === "serve") continue;
    let value = request;
    for (const step of key.split(".")) value = value?.[step];
    if (key === "cut" && request.meat) value = OWN;
    const usual = { pieces: "1", "meat.species": "chicken", "guests.count": "2", "salting.treatment": "auto", kitchen: "home", "taste.salt": "usual", appliance: "oven-conventional", salt: "table-salt" }[key];
    control.value = value === undefined ? usual ?? "" : typeof value === "number" ? String(value) : value;
    if (value !== undefined && control.closest?.("details")) control.closest("details").open = true;
  }
  const timed = request.serve && request.serve !== "as soon as possible";
  inputs.get("when").value = timed ? "at" : "soon";
  if (timed) inputs.get("serve").value = request.serve.slice(0, 16);
  showWhen();
  showSetting();
  showShape();
  document.activeElement?.blur?.();
}

function clearProblem(key) {
  const error = document.getElementById(idOf(key) + "-error");
  if (error) { error.hidden = true; error.textContent = ""; }
  inputs.get(key)?.removeAttribute("aria-invalid");
}

/** Shows each problem beside its field and all of them on top. */
export function showProblems(problems) {
  for (const key of inputs.keys()) clearProblem(key);
  const box = document.getElementById("problems");
  box.hidden = problems.length === 0;
  box.replaceChildren();
  if (problems.length === 0) return;
  box.append(h("h2", {}, sayCount("form.problems", problems.length)),
    h("ul", {}, problems.map(({ field: key, message }) => {
      const known = inputs.has(key) ? key : [...inputs.keys()].find(k => k.startsWith(key + ".") || key.startsWith(k + "."));
      if (!known) return h("li", {}, (key ? key + ": " : "") + message);
      const error = document.getElementById(idOf(known) + "-error");
      error.textContent = message;
      error.hidden = false;
      inputs.get(known).setAttribute("aria-invalid", "true");
      return h("li", {}, h("a", { href: "#" + idOf(known), onclick: event => { event.preventDefault(); focusField(known); } }, labelOf(known)), ": " + message);
    })));
  box.append(h("div", { id: "offers" }));
  box.focus();
  box.scrollIntoView({ block: "start" });
}

function labelOf(key) {
  return document.querySelector(`label[for="${idOf(key)}"]`)?.textContent ?? document.querySelector("#" + idOf(key) + " legend")?.textContent ?? key;
}

/** Opens the place of an answer and goes there. */
export function focusField(key) {
  const known = inputs.has(key) ? key : [...inputs.keys()].find(k => k.startsWith(key));
  if (!known) return;
  const control = inputs.get(known);
  const folded = control.closest("details");
  if (folded) folded.open = true;
  if (known === "serve") { inputs.get("when").value = "at"; showWhen(); }
  control.focus();
}

export const knows = key => inputs.has(key) || [...inputs.keys()].some(k => k.startsWith(key));
