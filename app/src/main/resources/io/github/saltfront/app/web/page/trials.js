// Trials for the cook: lay out, hand out, watch answers arrive, and read what they show.
import { ask, h, Trouble } from "./dom.js";
import { ready } from "./entries.js";
import { dress, say, withLanguage } from "./say.js";
import { dateOf } from "./words.js";

const at = id => document.getElementById(id);
const methods = ["triangle", "duo-trio", "2-afc", "preference", "ratings"].map(method => [method, say("trials." + method)]);
let watched = null;

async function attempt(what, words) {
  try {
    const answer = await what();
    if (words) at("note").textContent = words;
    return answer;
  } catch (trouble) {
    if (!(trouble instanceof Trouble)) throw trouble;
    at("note").textContent = trouble.problems.map(p => (p.field ? p.field + ": " : "") + p.message).join(" ");
    at("note").scrollIntoView({ block: "center" });
    return null;
  }
}

const field = (name, label, value) => h("label", {}, label, h("input", { type: "text", name, value, autocomplete: "off" }));

function buildForm() {
  const form = at("new");
  form.replaceChildren(
    h("div", { class: "fields" }, field("title", say("trials.about"), say("trials.about.example")), field("sheet_title", say("trials.sheet-title"), say("trials.sheet-title.example")),
      h("label", {}, say("trials.method"), h("select", { name: "method" }, methods.map(([value, words]) => h("option", { value }, words)))), field("attribute", say("trials.attribute"), say("trials.attribute.example")), field("samples", say("trials.samples"), say("trials.samples.example"))),
    h("div", { class: "fields" }, field("tasters", say("trials.tasters"), "12"), field("rounds", say("trials.rounds"), "1"), field("blocks", say("trials.blocks"), "2"), field("count", say("trials.pieces"), "4"), field("portions", say("trials.portions"), "8"), field("seed", say("trials.seed"), String(Math.floor(Math.random() * 1e6)))),
    h("button", { class: "main-button" }, say("trials.draw")));
  form.onsubmit = async event => {
    event.preventDefault();
    const get = name => form.elements[name].value.trim();
    const trial = { title: get("title"), sheet_title: get("sheet_title"), method: get("method"), samples: get("samples").split(",").map(t => t.trim()).filter(Boolean), tasters: Number(get("tasters")), rounds: Number(get("rounds")),
      portions_per_piece: Number(get("portions")), seed: Number(get("seed")), pieces: Array.from({ length: Number(get("blocks")) || 1 }, (_, i) => ({ block: say("trials.package", { n: i + 1 }), count: Number(get("count")) })) };
    if (trial.method === "2-afc") trial.attribute = get("attribute");
    const made = await attempt(() => ask("POST", "/api/trials", trial), say("trials.drawn"));
    if (!made) return;
    await list();
    present(made);
  };
}

async function list() {
  const answer = await attempt(() => ask("GET", "/api/trials"));
  if (!answer) return;
  at("trials").replaceChildren(...answer.trials.map(t => h("li", {}, h("div", { class: "row" }, h("span", { class: "title" }, t.title), h("span", { class: "when" }, say("trials.when", { day: dateOf(t.created), n: t.answered })),
    h("button", { type: "button", class: "quiet-button", "aria-label": say("common.open-what", { title: t.title }), onclick: () => open(t.id) }, say("common.open")),
    h("button", { type: "button", class: "quiet-button", "aria-label": say("common.delete-what", { title: t.title }), onclick: async () => { if (confirm(say("trials.delete-q", { title: t.title }))) { await attempt(() => ask("DELETE", "/api/trials/" + t.id), say("trials.deleted")); at("shown").hidden = true; list(); } } }, say("common.delete"))))));
  if (answer.trials.length === 0) at("trials").append(h("li", {}, say("trials.none")));
}

async function open(id) {
  const trial = await attempt(() => ask("GET", "/api/trials/" + id));
  if (trial) present(trial);
}

function present(trial) {
  watched = trial.id;
  const base = "/api/trials/" + trial.id;
  const file = (name, words) => h("a", { class: "quiet-button", href: withLanguage(base + "/" + name), download: true }, words);
  at("shown").hidden = false;
  at("shown").replaceChildren(h("h2", {}, trial.title),
    h("div", { class: "row" }, file("codes.pdf", say("trials.codes")), file("sheets.pdf", say("trials.sheets")), file("answers.csv", say("trials.answers")), file("report.html", say("trials.report"))), h("p"),
    trial.reachable ? "" : h("p", {}, say("trials.only-here")),
    h("h3", {}, say("trials.tasters")), h("p", { id: "arrived", role: "status" }, arrived(trial)),
    h("ol", { id: "tasters" }, trial.tasters.map(t => h("li", {}, h("a", { href: t.address, target: "_blank", rel: "noopener" }, say("trials.form-of", { taster: String(t.taster) })), t.answered ? " – " + say("trials.answered") : ""))),
    h("div", { id: "finding" }),
    h("details", {}, h("summary", {}, say("trials.design")), h("pre", { class: "words" }, trial.words)));
  at("shown").focus();
  analyze(trial);
}

const arrived = trial => say("trials.arrived", { answered: trial.answered, n: trial.tasters.length });

// Nothing is shown before all are in: stopping early because it looks good makes findings out of luck.
async function analyze(trial) {
  const place = at("finding");
  if (trial.answered === 0) return place.replaceChildren();
  const waiting = trial.answered < trial.tasters.length;
  const look = async () => {
    const found = await attempt(() => ask("GET", "/api/trials/" + trial.id + "/analysis"));
    if (found) place.replaceChildren(h("h3", {}, say("trials.shows")), waiting ? h("p", {}, say("trials.not-all")) : "", h("pre", { class: "words", id: "analysis" }, found.words));
  };
  if (!waiting) return look();
  place.replaceChildren(h("button", { type: "button", class: "quiet-button", onclick: look }, say("trials.look")));
}

async function watch() {
  if (watched === null || document.hidden) return;
  try {
    const trial = await ask("GET", "/api/trials/" + watched);
    if (watched === trial.id && at("arrived")?.textContent !== arrived(trial)) present(trial);
  } catch { /* the next look will tell */ }
}

dress(document);
buildForm();
await list();
setInterval(watch, 3000);
ready();
