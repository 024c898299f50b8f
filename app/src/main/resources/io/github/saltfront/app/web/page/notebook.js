// The notebook: cooks, comparisons, what was learned, thermometers, and all of it as one file.
import { ask, h, s, Trouble } from "./dom.js";

const at = id => document.getElementById(id);
const day = () => new Date().toISOString().slice(0, 10);
const scale = ["much too weak", "slightly too weak", "just about right", "slightly too strong", "much too strong"];
let saved = [];

function say(words, ...more) {
  at("note").replaceChildren(words, ...more);
}

async function attempt(what, words) {
  try {
    const answer = await what();
    if (words) say(typeof words === "function" ? words(answer) : words);
    return answer;
  } catch (trouble) {
    if (!(trouble instanceof Trouble)) throw trouble;
    say(trouble.problems.map(p => (p.field ? p.field + ": " : "") + p.message).join(" "));
    at("note").scrollIntoView({ block: "center" });
    return null;
  }
}

async function list() {
  const word = at("word").value.trim();
  const answer = await attempt(() => ask("GET", "/api/notebook" + (word ? "?word=" + encodeURIComponent(word) : "")));
  if (!answer) return;
  at("cooks").replaceChildren(...answer.cooks.map(cook => h("li", {},
    h("div", { class: "row" },
      h("label", { class: "check" }, h("input", { type: "checkbox", name: "cook", value: cook.id }), h("span", { class: "title" }, cook.title)),
      h("span", { class: "when" }, cook.cooked + (cook.tags ? ", " + cook.tags : "")),
      h("button", { type: "button", class: "quiet-button", "aria-label": "Open: " + cook.title, onclick: () => show(cook.id) }, "Open"),
      h("button", { type: "button", class: "quiet-button", "aria-label": "Delete: " + cook.title, onclick: () => remove(cook) }, "Delete")))));
  if (answer.cooks.length === 0) at("cooks").append(h("li", {}, word ? "No cook holds that word." : "Nothing is noted yet. Save a plan, cook it, then note it below."));
}

async function remove(cook) {
  await attempt(() => ask("DELETE", "/api/notebook/" + cook.id));
  await list();
  const undo = h("button", { type: "button", class: "say", onclick: async () => { await attempt(() => ask("POST", "/api/notebook/" + cook.id + "/restore"), "It is back."); list(); } }, "Undo");
  say("Deleted \"" + cook.title + "\". ", undo);
  undo.focus();
}

const words = {
  cooked: "day", profile: "kitchen", butcher: "butcher", tags: "tags", meat: "meat", treatment: "salting", salting_h: "time of salting, h", appliance: "cooked in", setting_c: "dial, °C",
  oven_c: "measured in the oven, °C", refrigerator_c: "measured in the refrigerator, °C", half_thickness_mm: "half thickness as planned, mm", thickness_mm: "thickness, mm", planned_pull_c: "take out, planned, °C", pull_c: "taken out, °C",
  planned_time_low_min: "time, planned, fast, min", planned_time_min: "time, planned, min", planned_time_high_min: "time, planned, slow, min", time_min: "time, min", planned_peak_c: "peak, planned, °C", peak_c: "peak, °C",
  raw_g: "raw, g", salted_g: "salted, g", cooked_g: "cooked, g", planned_gain_low_pct: "gain by salting, planned, low, %", planned_gain_pct: "gain by salting, planned, %", planned_gain_high_pct: "gain by salting, planned, high, %", gain_pct: "gain by salting, %",
  planned_loss_low_pct: "loss, planned, low, %", planned_loss_pct: "loss, planned, %", planned_loss_high_pct: "loss, planned, high, %", loss_pct: "loss, %", planned_salt_pct: "salt when served, planned, %", tasters: "tasters",
  salt_just_right_pct: "salt just about right, % of tasters", salt_too_weak_pct: "salt too weak, % of tasters", salt_too_strong_pct: "salt too strong, % of tasters", juice_mean: "juice, 1 to 9", tenderness_mean: "tenderness, 1 to 9", crispness_mean: "crispness, 1 to 9", notes: "notes", title: "title",
};
const number = value => typeof value === "number" ? (Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(1)) : String(value);

async function show(id) {
  const cook = await attempt(() => ask("GET", "/api/notebook/" + id));
  if (!cook) return;
  const rows = Object.entries(cook.figures).filter(([name]) => words[name] && name !== "title").map(([name, value]) => h("tr", {}, h("th", { scope: "row" }, words[name]), h("td", {}, number(value))));
  const photo = h("input", { type: "file", accept: "image/*", class: "unseen", onchange: () => addPhoto(id, photo) });
  const log = h("input", { type: "file", accept: ".csv,text/csv", class: "unseen", onchange: () => addLog(id, log) });
  at("shown").replaceChildren(h("h3", {}, cook.figures.title), h("div", { class: "scroll" }, h("table", {}, h("tbody", {}, rows))), curves([cook.readings], [cook.figures.title]) ?? "",
    h("div", { class: "photos" }, cook.photos.map(p => h("figure", {}, h("img", { src: "/api/notebook-photo/" + p.id, alt: p.caption || "Picture of " + cook.figures.title, width: p.width, height: p.height, loading: "lazy" }), p.caption ? h("figcaption", {}, p.caption) : null,
      h("button", { type: "button", class: "say", onclick: async () => { await attempt(() => ask("DELETE", "/api/notebook-photo/" + p.id), "The picture is deleted."); show(id); } }, "Delete this picture")))),
    h("div", { class: "row" }, h("label", { class: "quiet-button" }, "Add a picture ", photo), h("label", { class: "quiet-button" }, "Add the thermometer's log ", log)), h("div", { class: "fronts-of" }));
  at("shown").focus();
  front(at("shown").querySelector(".fronts-of"), cook.note.request, cook.figures.title);
}

async function raw(method, path, body, type) {
  const answer = await fetch(path, { method, headers: { "Content-Type": type }, body });
  const content = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Trouble(content.problems ?? [{ field: "", message: "The program answered with " + answer.status + "." }], answer.status);
  return content;
}

async function addPhoto(id, input) {
  const caption = prompt("What does the picture show?") ?? "";
  await attempt(() => raw("POST", "/api/notebook/" + id + "/photos?caption=" + encodeURIComponent(caption), input.files[0], input.files[0].type || "image/jpeg"), "The picture is here, drawn anew without place and camera.");
  show(id);
}

async function addLog(id, input) {
  await attempt(() => raw("PUT", "/api/notebook/" + id + "/log", input.files[0], "text/csv"), "The readings are here.");
  show(id);
}

// The planned fronts, as pictures made by the server.
async function front(place, request, title) {
  try {
    const answer = await fetch("/api/download/fronts.svg", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(request) });
    if (!answer.ok) return;
    const address = URL.createObjectURL(await answer.blob());
    place.append(h("figure", { class: "fronts" }, h("img", { src: address, alt: "Salt and heat in the meat as planned: " + title, class: "curve-picture" }), h("figcaption", {}, "As planned: " + title)));
  } catch { /* a picture less is no harm */ }
}

const strokes = ["", "7 4", "2 3", "9 3 2 3"];
function curves(all, titles) {
  const known = all.map((r, i) => ({ ...r, title: titles[i], dash: strokes[i % 4] })).filter(r => r.time_s?.length > 1);
  if (known.length === 0) return null;
  const w = 720, hgt = 300, l = 44, b = 34;
  const last = Math.max(...known.map(r => r.time_s.at(-1)));
  const top = Math.max(...known.flatMap(r => r.core_c), 40);
  const low = Math.min(...known.flatMap(r => r.core_c), 0);
  const x = t => l + (w - l - 10) * t / last;
  const y = c => hgt - b - (hgt - b - 12) * (c - low) / (top - low);
  const svg = s("svg", { viewBox: `0 0 ${w} ${hgt}`, class: "curve-picture", role: "img", "aria-label": "Core temperature over time: " + known.map(r => r.title).join(", ") });
  for (let i = 0; i <= 4; i++) {
    const c = low + (top - low) * i / 4, t = last * i / 4;
    svg.append(s("line", { x1: l, x2: w - 10, y1: y(c), y2: y(c), stroke: "var(--line)" }), s("text", { x: 4, y: y(c) + 4 }, c.toFixed(0) + " °C"), s("text", { x: x(t) - 12, y: hgt - 10 }, (t / 60).toFixed(0) + " min"));
  }
  known.forEach((r, i) => svg.append(s("polyline", { points: r.time_s.map((t, k) => x(t).toFixed(1) + "," + y(r.core_c[k]).toFixed(1)).join(" "), fill: "none", stroke: "var(--heat)", "stroke-width": 2.5, "stroke-dasharray": r.dash }),
    s("line", { x1: l + 12, x2: l + 48, y1: 22 + 18 * i, y2: 22 + 18 * i, stroke: "var(--heat)", "stroke-width": 2.5, "stroke-dasharray": r.dash }), s("text", { x: l + 54, y: 26 + 18 * i }, r.title)));
  return h("figure", { class: "fronts" }, svg, h("figcaption", {}, "What the thermometer showed."));
}

async function compare() {
  const ids = [...document.querySelectorAll("input[name=cook]:checked")].map(box => box.value);
  const answer = await attempt(() => ask("GET", "/api/notebook-compare?ids=" + ids.join(",")));
  if (!answer) return;
  const place = h("div", { class: "beside" });
  at("shown").replaceChildren(h("h3", {}, "Side by side"),
    h("div", { class: "scroll" }, h("table", {}, h("caption", {}, "Bold rows differ. Two cooks show what happened twice, not why: a trial tells what makes the difference."),
      h("thead", {}, h("tr", {}, h("td"), answer.cooks.map(c => h("th", { scope: "col" }, c.title)))),
      h("tbody", {}, answer.rows.filter(r => words[r.name] && r.name !== "title").map(r => h("tr", { class: r.differs ? "differs" : "" }, h("th", { scope: "row" }, words[r.name]), r.values.map(v => h("td", {}, v === "" ? "–" : number(v)))))))),
    curves(answer.readings, answer.cooks.map(c => c.title)) ?? "", place);
  at("shown").focus();
  for (let i = 0; i < answer.requests.length; i++) await front(place, answer.requests[i], answer.cooks[i].title);
}

const field = (name, label, hint, type = "text") => h("label", {}, label, h("input", { type, name, autocomplete: "off", placeholder: hint ?? "" }));
const nine = (name, label) => h("label", {}, label, h("select", { name }, h("option", { value: "" }, "not said"), [1, 2, 3, 4, 5, 6, 7, 8, 9].map(n => h("option", { value: n }, String(n)))));

function taster() {
  return h("div", { class: "fields taster" }, field("taster", "Taster"), h("label", {}, "Salt", h("select", { name: "saltiness" }, h("option", { value: "" }, "not said"), scale.map(w => h("option", { value: w }, w)))), nine("juice", "Juice (1 dry to 9 juicy)"), nine("tenderness", "Tenderness (1 tough to 9 tender)"), nine("crispness", "Crispness (1 soft to 9 crisp)"));
}

async function buildForm() {
  saved = (await attempt(() => ask("GET", "/api/saved")))?.plans ?? [];
  const form = at("add");
  const tasters = h("div", {}, taster());
  form.replaceChildren(
    h("label", {}, "Which plan was it?", h("select", { name: "plan" }, saved.length === 0 ? h("option", { value: "" }, "no plan is saved yet") : saved.map(p => h("option", { value: p.id }, p.title)))),
    h("div", { class: "fields" }, field("title", "Name of this cook", "Sunday chicken"), field("cooked", "Day", "", "date"), field("profile", "Kitchen", "home"), field("butcher", "Butcher"), field("tags", "Tags", "sunday brined")),
    h("div", { class: "fields" }, field("raw", "Weight raw, all pieces", "880 g"), field("salted", "Weight after salting", "896 g"), field("served", "Weight when served", "762 g"), field("thickness", "Thickness", "30 mm"), field("refrigerator", "In the refrigerator", "5 °C"), field("oven", "Thermometer in the oven", "171 °C"),
      field("reading", "Taken out at", "64 °C"), field("time", "Time in the heat", "31 min"), field("thermometer", "Thermometer", "blue-pen"), field("peak", "Highest after", "66.5 °C")),
    tasters, h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: () => tasters.append(taster()) }, "Another taster")),
    h("label", {}, "Notes", h("textarea", { name: "notes", rows: 3 })), h("button", { class: "main-button" }, "Note it"));
  form.elements.cooked.value = day();
  form.onsubmit = event => { event.preventDefault(); add(form, tasters); };
}

const put = (object, key, value) => { if (value !== "") object[key] = value; };

async function add(form, tasters) {
  const get = name => form.elements[name]?.value?.trim() ?? "";
  if (!get("plan")) return say("Save a plan on the first page before you note how it went.");
  say("Planning what was cooked ...");
  const { request } = await ask("GET", "/api/saved/" + get("plan"));
  const cook = { request, title: get("title") || saved.find(p => p.id === get("plan")).title };
  put(cook, "cooked", get("cooked"));
  put(cook, "profile", get("profile"));
  put(cook, "butcher", get("butcher"));
  const tags = get("tags").split(/[\s,]+/).filter(Boolean);
  if (tags.length > 0) cook.tags = tags;
  put(cook, "notes", get("notes"));
  const measured = {};
  for (const key of ["raw", "salted", "thickness", "refrigerator", "oven", "peak"]) put(measured, key, get(key));
  put(measured, "cooked", get("served"));
  if (get("reading") || get("time")) {
    measured.pull = { reading: get("reading"), time: get("time") };
    put(measured.pull, "thermometer", get("thermometer"));
  }
  if (Object.keys(measured).length > 0) cook.measured = measured;
  const ratings = [...tasters.children].map(row => {
    const rating = {};
    for (const control of row.querySelectorAll("input, select")) {
      if (control.value !== "") rating[control.name] = ["taster", "saltiness"].includes(control.name) ? control.value : Number(control.value);
    }
    return rating;
  }).filter(rating => Object.keys(rating).some(key => key !== "taster"));
  if (ratings.length > 0) cook.ratings = ratings;
  const noted = await attempt(() => ask("POST", "/api/notebook", cook), "Noted. Your kitchen has learned from it.");
  if (!noted) return;
  await Promise.all([list(), learned(), buildForm()]);
  show(noted.id);
}

const range = (v, digits, unit) => `${v.value.toFixed(digits)} ${unit} (90 %: ${v.low.toFixed(digits)} to ${v.high.toFixed(digits)}; from ${v.count})`;

async function learned() {
  const profile = at("profile-choice")?.value ?? "";
  const known = await attempt(() => ask("GET", "/api/notebook-learned" + (profile ? "?profile=" + encodeURIComponent(profile) : "")));
  if (!known) return;
  const forget = what => h("button", { type: "button", class: "say", "aria-label": "Forget: " + what, onclick: async () => { await attempt(() => ask("POST", "/api/notebook-learned", { profile: known.profile, forget: what }), "Forgotten. Later cooks count again."); learned(); } }, "Forget");
  const rows = [];
  const row = (name, text, what) => rows.push(h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, text), h("td", {}, forget(what))));
  known.ovens.forEach(o => {
    row(o.appliance + ": true less dial", range(o.offset_k, 0, "K"), "oven");
    row(o.appliance + ": heat transfer over the usual", range(o.coefficient_factor, 2, "times"), "oven");
  });
  if (known.refrigerator_c) row("refrigerator", range(known.refrigerator_c, 1, "°C"), "refrigerator");
  if (known.raw_salt_pct) row("salt of the raw meat that suits you", range(known.raw_salt_pct, 2, "%"), "salt");
  if (known.thickness_factor) row("thickness over the usual", range(known.thickness_factor, 2, "times"), "thickness");
  known.meats.forEach(m => row("speed of salt, kind " + m.meat, range(m.speed_of_salt_factor, 2, "times"), "meat"));
  const names = [...new Set(["home", ...known.profiles, known.profile])];
  at("learned").replaceChildren(
    h("div", { class: "row" }, h("label", { for: "profile-choice" }, "Kitchen"), h("select", { id: "profile-choice", onchange: () => learned() }, names.map(n => h("option", { value: n, selected: n === known.profile }, n)))),
    rows.length > 0 ? h("div", { class: "scroll" }, h("table", {}, h("tbody", {}, rows))) : h("p", {}, "Nothing yet. Note when you took the meat out, what it weighed, and what your guests said of the salt."),
    h("p", {}, "A plan uses this when its request has the line ", h("code", {}, "notebook: " + known.profile), "; on the command line with --notebook."));
}

async function bench() {
  const answer = await attempt(() => ask("GET", "/api/thermometers"));
  if (!answer) return;
  at("bench").replaceChildren(...answer.thermometers.map(t => {
    const last = t.checks.at(-1);
    return h("p", { class: t.days_left > 0 ? "" : "error" }, h("strong", {}, t.instrument), ` last checked ${last.day}: take ${last.correction_at_63_k >= 0 ? "on" : "off"} ${Math.abs(last.correction_at_63_k).toFixed(1)} °C at 63 °C (within ${last.bound_at_63_k.toFixed(1)}). `,
      t.days_left > 0 ? "Next check on " + t.due + "." : "A check is due now.");
  }));
  if (answer.thermometers.length === 0) at("bench").append(h("p", {}, "No thermometer was checked yet. Crushed ice filled up with water, stirred: it should show 0 °C."));
}

function buildCheck() {
  const form = at("check");
  form.replaceChildren(h("div", { class: "fields" }, field("instrument", "Thermometer", "blue-pen"), field("ice", "In ice water", "0.4 °C"), field("boiling", "In boiling water", "99.1 °C"), field("altitude", "Altitude", "250 m"), field("pressure", "or pressure of the air here", "985 hPa")), h("div", { class: "row" }, h("button", { class: "quiet-button" }, "Keep this check")));
  form.onsubmit = async event => {
    event.preventDefault();
    const check = {};
    for (const name of ["instrument", "ice", "boiling", "altitude", "pressure"]) put(check, name, form.elements[name].value.trim());
    if (await attempt(() => ask("POST", "/api/thermometers", check), "The check is kept.")) { buildCheck(); bench(); }
  };
}

at("word").addEventListener("input", list);
at("compare").addEventListener("click", compare);
at("archive").addEventListener("change", async () => {
  const file = at("archive").files[0];
  at("archive").value = "";
  if (file) await attempt(() => raw("POST", "/api/notebook-file", file, "application/zip"), a => `${a.added} cooks added, ${a.known} were here already; ${a.pictures} pictures, ${a.trials} trials, ${a.plans} saved plans.`);
  list();
});
buildCheck();
await Promise.all([list(), buildForm(), learned(), bench()]);
document.documentElement.dataset.ready = "yes";
