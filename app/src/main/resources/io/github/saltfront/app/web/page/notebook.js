// The notebook: cooks, comparisons, what was learned, thermometers, and all of it as one file.
import { ask, h, s, send, Trouble } from "./dom.js";
import { ready } from "./entries.js";
import { dress, parts, say } from "./say.js";
import { round, TREATMENTS } from "./words.js";

const at = id => document.getElementById(id);
const day = () => new Date().toISOString().slice(0, 10);
const scale = ["much too weak", "slightly too weak", "just about right", "slightly too strong", "much too strong"].map((value, i) => [value, say("notebook.scale." + (i + 1))]);
let saved = [];

function note(words, ...more) {
  at("note").replaceChildren(words, ...more);
}

async function attempt(what, words) {
  try {
    const answer = await what();
    if (words) note(typeof words === "function" ? words(answer) : words);
    return answer;
  } catch (trouble) {
    if (!(trouble instanceof Trouble)) throw trouble;
    note(trouble.problems.map(p => (p.field ? p.field + ": " : "") + p.message).join(" "));
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
      h("button", { type: "button", class: "quiet-button", "aria-label": say("common.open-what", { title: cook.title }), onclick: () => show(cook.id) }, say("common.open")),
      h("button", { type: "button", class: "quiet-button", "aria-label": say("common.delete-what", { title: cook.title }), onclick: () => remove(cook) }, say("common.delete"))))));
  if (answer.cooks.length === 0) at("cooks").append(h("li", {}, say(word ? "notebook.none-such" : "notebook.none")));
}

async function remove(cook) {
  await attempt(() => ask("DELETE", "/api/notebook/" + cook.id));
  await list();
  const undo = h("button", { type: "button", class: "say", onclick: async () => { await attempt(() => ask("POST", "/api/notebook/" + cook.id + "/restore"), say("common.back")); list(); } }, say("common.undo"));
  note(say("common.deleted-what", { title: cook.title }) + " ", undo);
  undo.focus();
}

const FIGURES = [
  "cooked", "profile", "butcher", "tags", "meat", "treatment", "salting_h", "appliance", "setting_c", "oven_c", "refrigerator_c", "half_thickness_mm", "thickness_mm",
  "planned_pull_c", "pull_c", "planned_time_low_min", "planned_time_min", "planned_time_high_min", "time_min", "planned_peak_c", "peak_c", "raw_g", "salted_g", "cooked_g",
  "planned_gain_low_pct", "planned_gain_pct", "planned_gain_high_pct", "gain_pct", "planned_loss_low_pct", "planned_loss_pct", "planned_loss_high_pct", "loss_pct",
  "planned_salt_pct", "tasters", "salt_just_right_pct", "salt_too_weak_pct", "salt_too_strong_pct", "juice_mean", "tenderness_mean", "crispness_mean", "notes"];
const figureName = name => say("notebook.figure." + name);
const told = (name, value) => typeof value === "number" ? round(value, Math.abs(value) >= 100 ? 0 : 1) : name === "treatment" ? TREATMENTS[value] ?? value : String(value);

async function show(id) {
  const cook = await attempt(() => ask("GET", "/api/notebook/" + id));
  if (!cook) return;
  const rows = Object.entries(cook.figures).filter(([name]) => FIGURES.includes(name)).map(([name, value]) => h("tr", {}, h("th", { scope: "row" }, figureName(name)), h("td", {}, told(name, value))));
  const photo = h("input", { type: "file", accept: "image/*", class: "unseen", onchange: () => addPhoto(id, photo) });
  const log = h("input", { type: "file", accept: ".csv,text/csv", class: "unseen", onchange: () => addLog(id, log) });
  at("shown").replaceChildren(h("h3", {}, cook.figures.title), h("div", { class: "scroll" }, h("table", {}, h("tbody", {}, rows))), curves([cook.readings], [cook.figures.title]) ?? "",
    h("div", { class: "photos" }, cook.photos.map(p => h("figure", {}, h("img", { src: "/api/notebook-photo/" + p.id, alt: p.caption || say("notebook.picture-of", { title: cook.figures.title }), width: p.width, height: p.height, loading: "lazy" }), p.caption ? h("figcaption", {}, p.caption) : null,
      h("button", { type: "button", class: "say", onclick: async () => { await attempt(() => ask("DELETE", "/api/notebook-photo/" + p.id), say("notebook.picture-deleted")); show(id); } }, say("notebook.delete-picture"))))),
    h("div", { class: "row" }, h("label", { class: "quiet-button" }, say("notebook.add-picture") + " ", photo), h("label", { class: "quiet-button" }, say("notebook.add-log") + " ", log)), h("div", { class: "fronts-of" }));
  at("shown").focus();
  front(at("shown").querySelector(".fronts-of"), cook.note.request, cook.figures.title);
}

async function raw(method, path, body, type) {
  const answer = await send(path, { method, headers: { "Content-Type": type }, body });
  const content = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Trouble(content.problems ?? [{ field: "", message: say("common.answered-with", { status: String(answer.status) }) }], answer.status);
  return content;
}

async function addPhoto(id, input) {
  const caption = prompt(say("notebook.what-picture")) ?? "";
  await attempt(() => raw("POST", "/api/notebook/" + id + "/photos?caption=" + encodeURIComponent(caption), input.files[0], input.files[0].type || "image/jpeg"), say("notebook.picture-here"));
  show(id);
}

async function addLog(id, input) {
  await attempt(() => raw("PUT", "/api/notebook/" + id + "/log", input.files[0], "text/csv"), say("notebook.readings-here"));
  show(id);
}

// The planned fronts, as pictures made by the server.
async function front(place, request, title) {
  try {
    const answer = await send("/api/download/fronts.svg", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(request) });
    if (!answer.ok) return;
    const address = URL.createObjectURL(await answer.blob());
    place.append(h("figure", { class: "fronts" }, h("img", { src: address, alt: say("notebook.front-alt", { title }), class: "curve-picture" }), h("figcaption", {}, say("notebook.front", { title }))));
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
  const svg = s("svg", { viewBox: `0 0 ${w} ${hgt}`, class: "curve-picture", role: "img", "aria-label": say("notebook.curves-alt", { titles: known.map(r => r.title).join(", ") }) });
  for (let i = 0; i <= 4; i++) {
    const c = low + (top - low) * i / 4, t = last * i / 4;
    svg.append(s("line", { x1: l, x2: w - 10, y1: y(c), y2: y(c), stroke: "var(--line)" }), s("text", { x: 4, y: y(c) + 4 }, round(c, 0) + " °C"), s("text", { x: x(t) - 12, y: hgt - 10 }, round(t / 60, 0) + " min"));
  }
  known.forEach((r, i) => svg.append(s("polyline", { points: r.time_s.map((t, k) => x(t).toFixed(1) + "," + y(r.core_c[k]).toFixed(1)).join(" "), fill: "none", stroke: "var(--heat)", "stroke-width": 2.5, "stroke-dasharray": r.dash }),
    s("line", { x1: l + 12, x2: l + 48, y1: 22 + 18 * i, y2: 22 + 18 * i, stroke: "var(--heat)", "stroke-width": 2.5, "stroke-dasharray": r.dash }), s("text", { x: l + 54, y: 26 + 18 * i }, r.title)));
  return h("figure", { class: "fronts" }, svg, h("figcaption", {}, say("notebook.curves")));
}

async function compare() {
  const ids = [...document.querySelectorAll("input[name=cook]:checked")].map(box => box.value);
  const answer = await attempt(() => ask("GET", "/api/notebook-compare?ids=" + ids.join(",")));
  if (!answer) return;
  const place = h("div", { class: "beside" });
  at("shown").replaceChildren(h("h3", {}, say("notebook.side-by-side")),
    h("div", { class: "scroll" }, h("table", {}, h("caption", {}, say("notebook.bold")),
      h("thead", {}, h("tr", {}, h("td"), answer.cooks.map(c => h("th", { scope: "col" }, c.title)))),
      h("tbody", {}, answer.rows.filter(r => FIGURES.includes(r.name)).map(r => h("tr", { class: r.differs ? "differs" : "" }, h("th", { scope: "row" }, figureName(r.name)), r.values.map(v => h("td", {}, v === "" ? "–" : told(r.name, v)))))))),
    curves(answer.readings, answer.cooks.map(c => c.title)) ?? "", place);
  at("shown").focus();
  for (let i = 0; i < answer.requests.length; i++) await front(place, answer.requests[i], answer.cooks[i].title);
}

const field = (name, label, hint, type = "text") => h("label", {}, label, h("input", { type, name, autocomplete: "off", placeholder: hint ?? "" }));
const nine = (name, label) => h("label", {}, label, h("select", { name }, h("option", { value: "" }, say("common.not-said")), [1, 2, 3, 4, 5, 6, 7, 8, 9].map(n => h("option", { value: n }, String(n)))));

function taster() {
  return h("div", { class: "fields taster" }, field("taster", say("notebook.taster")), h("label", {}, say("notebook.salt"), h("select", { name: "saltiness" }, h("option", { value: "" }, say("common.not-said")), scale.map(([value, words]) => h("option", { value }, words)))), nine("juice", say("notebook.juice")), nine("tenderness", say("notebook.tenderness")), nine("crispness", say("notebook.crispness")));
}

async function buildForm() {
  saved = (await attempt(() => ask("GET", "/api/saved")))?.plans ?? [];
  const form = at("add");
  const tasters = h("div", {}, taster());
  form.replaceChildren(
    h("label", {}, say("notebook.which-plan"), h("select", { name: "plan" }, saved.length === 0 ? h("option", { value: "" }, say("notebook.no-plan")) : saved.map(p => h("option", { value: p.id }, p.title)))),
    h("div", { class: "fields" }, field("title", say("notebook.name"), say("notebook.name.example")), field("cooked", say("notebook.day"), "", "date"), field("profile", say("notebook.kitchen"), "home"), field("butcher", say("notebook.butcher")), field("tags", say("notebook.tags"), say("notebook.tags.example"))),
    h("div", { class: "fields" }, field("raw", say("notebook.raw"), "880 g"), field("salted", say("notebook.salted"), "896 g"), field("served", say("notebook.served"), "762 g"), field("thickness", say("notebook.thickness"), "30 mm"), field("refrigerator", say("notebook.in-refrigerator"), "5 °C"), field("oven", say("notebook.oven"), "171 °C"),
      field("reading", say("notebook.pull"), "64 °C"), field("time", say("notebook.time"), "31 min"), field("thermometer", say("notebook.thermometer"), say("notebook.thermometer.example")), field("peak", say("notebook.peak"), say("notebook.peak.example"))),
    tasters, h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: () => tasters.append(taster()) }, say("notebook.another-taster"))),
    h("label", {}, say("notebook.notes"), h("textarea", { name: "notes", rows: 3 })), h("button", { class: "main-button" }, say("notebook.note-it")));
  form.elements.cooked.value = day();
  form.onsubmit = event => { event.preventDefault(); add(form, tasters); };
}

const put = (object, key, value) => { if (value !== "") object[key] = value; };

async function add(form, tasters) {
  const get = name => form.elements[name]?.value?.trim() ?? "";
  if (!get("plan")) return note(say("notebook.save-first"));
  note(say("notebook.planning"));
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
  const noted = await attempt(() => ask("POST", "/api/notebook", cook), say("notebook.noted"));
  if (!noted) return;
  await Promise.all([list(), learned(), buildForm()]);
  show(noted.id);
}

const range = (v, digits, unit) => say("notebook.range", { x: round(v.value, digits), unit, low: round(v.low, digits), high: round(v.high, digits), count: v.count });

async function learned() {
  const profile = at("profile-choice")?.value ?? "";
  const known = await attempt(() => ask("GET", "/api/notebook-learned" + (profile ? "?profile=" + encodeURIComponent(profile) : "")));
  if (!known) return;
  const forget = what => h("button", { type: "button", class: "say", "aria-label": say("notebook.forget-what", { what: say("notebook.learned." + what) }), onclick: async () => { await attempt(() => ask("POST", "/api/notebook-learned", { profile: known.profile, forget: what }), say("notebook.forgotten")); learned(); } }, say("notebook.forget"));
  const rows = [], times = say("notebook.times");
  const row = (name, text, what) => rows.push(h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, text), h("td", {}, forget(what))));
  known.ovens.forEach(o => {
    row(say("notebook.learned.offset", { appliance: o.appliance }), range(o.offset_k, 0, "K"), "oven");
    row(say("notebook.learned.coefficient", { appliance: o.appliance }), range(o.coefficient_factor, 2, times), "oven");
  });
  if (known.refrigerator_c) row(say("notebook.learned.refrigerator"), range(known.refrigerator_c, 1, "°C"), "refrigerator");
  if (known.raw_salt_pct) row(say("notebook.learned.raw-salt"), range(known.raw_salt_pct, 2, "%"), "salt");
  if (known.thickness_factor) row(say("notebook.learned.over-usual"), range(known.thickness_factor, 2, times), "thickness");
  known.meats.forEach(m => row(say("notebook.learned.speed", { meat: m.meat }), range(m.speed_of_salt_factor, 2, times), "meat"));
  const names = [...new Set(["home", ...known.profiles, known.profile])];
  at("learned").replaceChildren(
    h("div", { class: "row" }, h("label", { for: "profile-choice" }, say("notebook.kitchen")), h("select", { id: "profile-choice", onchange: () => learned() }, names.map(n => h("option", { value: n, selected: n === known.profile }, n)))),
    rows.length > 0 ? h("div", { class: "scroll" }, h("table", {}, h("tbody", {}, rows))) : h("p", {}, say("notebook.nothing")),
    h("p", {}, parts("notebook.uses", { line: h("code", {}, "notebook: " + known.profile) })));
}

async function bench() {
  const answer = await attempt(() => ask("GET", "/api/thermometers"));
  if (!answer) return;
  at("bench").replaceChildren(...answer.thermometers.map(t => {
    const last = t.checks.at(-1);
    return h("p", { class: t.days_left > 0 ? "" : "error" }, h("strong", {}, t.instrument), " " + say(last.correction_at_63_k >= 0 ? "notebook.checked.on" : "notebook.checked.off", { day: last.day, error: round(Math.abs(last.correction_at_63_k), 1), bound: round(last.bound_at_63_k, 1) }) + " ",
      t.days_left > 0 ? say("notebook.next-check", { day: t.due }) : say("notebook.due"));
  }));
  if (answer.thermometers.length === 0) at("bench").append(h("p", {}, say("notebook.no-thermometer")));
}

function buildCheck() {
  const form = at("check");
  form.replaceChildren(h("div", { class: "fields" }, field("instrument", say("notebook.thermometer"), say("notebook.thermometer.example")), field("ice", say("notebook.ice"), say("notebook.ice.example")), field("boiling", say("notebook.boiling"), say("notebook.boiling.example")), field("altitude", say("notebook.altitude"), "250 m"), field("pressure", say("notebook.pressure"), "985 hPa")), h("div", { class: "row" }, h("button", { class: "quiet-button" }, say("notebook.keep-check"))));
  form.onsubmit = async event => {
    event.preventDefault();
    const check = {};
    for (const name of ["instrument", "ice", "boiling", "altitude", "pressure"]) put(check, name, form.elements[name].value.trim());
    if (await attempt(() => ask("POST", "/api/thermometers", check), say("notebook.check-kept"))) { buildCheck(); bench(); }
  };
}

at("word").addEventListener("input", list);
at("compare").addEventListener("click", compare);
at("archive").addEventListener("change", async () => {
  const file = at("archive").files[0];
  at("archive").value = "";
  if (file) await attempt(() => raw("POST", "/api/notebook-file", file, "application/zip"), a => say("notebook.imported", { added: a.added, known: a.known, pictures: a.pictures, trials: a.trials, plans: a.plans }));
  list();
});
dress(document);
buildCheck();
await Promise.all([list(), buildForm(), learned(), bench()]);
ready();
