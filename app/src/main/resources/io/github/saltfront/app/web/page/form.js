// The cook's questions. Keys are those of the request file; empty answers are left out, so that the program's defaults hold.
import { h } from "./dom.js";
import { counts, meatFields, shapeFields, showShape } from "./own.js";
import { measurePicture, picture, whereToMeasure } from "./shapes.js";
import { localIso, mass, temperature, length, TREATMENTS } from "./words.js";

const GROUPS = [["Chicken", ["chicken"]], ["Turkey", ["turkey"]], ["Duck and other birds", ["duck", "goose", "quail"]], ["Pork", ["pork"]], ["Beef", ["beef"]],
  ["Lamb", ["lamb"]], ["Veal and game", ["veal", "rabbit", "venison"]], ["Fish", ["fish", "shellfish"]]];
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
    h("fieldset", {}, h("legend", {}, "What have you got?"), cutChooser(), meatFields({ text, choice }, catalog),
      h("div", { class: "two" },
        text("mass", "Weight of one piece", "As bought: 220 g, 1 1/2 lb, 0,5 kg", { required: true }),
        text("pieces", "How many pieces?", "All about the same size", { inputmode: "numeric", value: "1" })),
      text("thickness", "Thickness", "Leave it empty for the usual one. A ruler does better: time goes with its square."),
      h("div", { id: "measure" }),
      h("details", { id: "own-shape" }, h("summary", {}, "A shape of its own"), shapeFields(inputs, { text, choice })),
      more("More about the meat",
        text("start_temperature", "How cold is it now?", "Empty: 4 °C, from the refrigerator. -2 °C to 30 °C."),
        text("label.solution", "Label: contains up to ... solution", "Such as 12 %. Meat that was pumped needs less salt."),
        text("label.sodium", "Label: sodium in 100 g", "Such as 173 mg"),
        check("label.kosher", "Salted at the plant (kosher or the like)"))),
    h("fieldset", { class: "heat" }, h("legend", {}, "What have you at hand?"),
      choice("appliance", "To cook with", catalog.appliances.filter(a => !NOT_COOKING.test(a.id)).map(a => [a.id, a.name])),
      text("setting", "Set to", ""),
      choice("salt", "Salt", catalog.salts.map(x => [x.id, x.name]), "Grains differ: a spoon of one can hold half the salt of another. The plan gives grams first."),
      choice("salting.treatment", "How may we salt it?", Object.entries(TREATMENTS)),
      more("More about salting and the kitchen",
        text("salting.time", "Time for salting", "Such as 12 h or overnight as 10 h. Empty: the best time."),
        text("salting.strength", "Strength of the brine", "Such as 6 % of water, 5 % of solution, 60 g per liter of water"),
        text("salting.sugar", "Sugar for the weight of salt", "Such as 50 %"),
        choice("liquid", "To soak in", [["", "What suits the treatment"], ...catalog.liquids.map(x => [x.id, x.name])]),
        text("vessel", "Vessel", "bag, tub, bird-in-pot, or the inner width of a round pot, such as 24 cm"),
        text("refrigerator", "Refrigerator", "Empty: 4 °C. -1 °C to 8 °C."),
        text("altitude", "Height above the sea", "Such as 1600 m or 5280 ft. Water boils cooler up there."))),
    h("fieldset", {}, h("legend", {}, "When do you eat?"),
      pills("when", "On the table", [["soon", "As soon as it can be"], ["at", "At a time"]], "soon"),
      field("serve", "Time to serve", serveAt, ""),
      text("guests.count", "How many guests?", "", { inputmode: "numeric", value: "2" }),
      check("guests.vulnerable", "Someone is pregnant, very young, old or weakened", "Then the plan goes to the official minimum temperature."),
      more("Whose kitchen?", choice("kitchen", "Kitchen", [["home", "At home"], ["teaching", "A cooking class"], ["professional", "A professional kitchen"]]))),
    h("fieldset", { class: "heat" }, h("legend", {}, "How do you like it?"),
      pills("taste.salt", "Salt", [["light", "Light"], ["usual", "Usual"], ["strong", "Strong"]], "usual"),
      text("taste.core", "Temperature in the middle", "Empty: usual for the cut."),
      more("Less sodium", text("taste.sodium", "Most sodium in 85 g cooked", "low, or a limit such as 300 mg"))),
    h("button", { class: "main-button", type: "submit", id: "make" }, "Make the plan"));
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
  document.getElementById("f-setting-hint").textContent = "Empty: " + temperature(t.typical) + ". Usual from " + temperature(t.low) + " to " + temperature(t.high)
    + ". Write 180 °C or 350F.";
}

function cutChooser() {
  const id = idOf("cut");
  const list = h("div", { class: "cuts", role: "radiogroup", "aria-label": "Cuts", tabindex: "-1" });
  const find = h("input", { type: "search", id, autocomplete: "off", placeholder: "Type: ribeye, drumstick ...", "aria-describedby": id + "-error", oninput: () => show() });
  const groups = h("div", { class: "pills", role: "group", "aria-label": "Kind of meat" });
  const other = h("button", { type: "button", class: "say", onclick: () => pickOwn() }, "It is none of these");
  const open = h("div", {}, h("label", { class: "label", for: id }, "Which cut?"), find, h("p", { class: "hint" }, "Or pick a kind:"), groups, list, other);
  const chosen = h("div", { class: "chosen", hidden: true });
  let group = "";
  for (const [name, species] of GROUPS) {
    groups.append(h("button", { type: "button", class: "quiet-button", "aria-pressed": "false", onclick: event => {
      group = group === name ? "" : name;
      for (const b of groups.children) b.setAttribute("aria-pressed", String(group !== "" && b === event.currentTarget));
      find.value = "";
      show(species);
    } }, name));
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
    if (hits.length === 0 && !list.hidden) list.append(h("p", { class: "none" }, "No such cut here. Try another word, or the nearest cut of that animal."));
  }
  function choose(...content) {
    chosen.replaceChildren(...content, h("button", { type: "button", class: "quiet-button", onclick: () => {
      chosen.hidden = true; open.hidden = false; if (cutId === OWN) { cutId = ""; showOwn(); } show(); find.focus();
    } }, "Change", h("span", { class: "unseen" }, " the cut")));
    chosen.hidden = false;
    open.hidden = true;
  }
  function pickOwn() {
    cutId = OWN;
    showOwn();
    choose(h("span", {}, "A meat of my own"));
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
    document.getElementById("f-taste-core-hint").textContent = "Empty: usual for this cut, from " + temperature(cut.core_temperature_c.low) + " to " + temperature(cut.core_temperature_c.high) + ".";
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
  document.getElementById("f-thickness-hint").textContent = "Measure " + whereToMeasure(cut) + ". Usual is about " + length(cut.thickness_mm)
    + ". Leave it empty if you cannot; a ruler does better, since time goes with its square.";
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
  box.append(h("h2", {}, problems.length === 1 ? "One answer needs a change" : problems.length + " answers need a change"),
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
