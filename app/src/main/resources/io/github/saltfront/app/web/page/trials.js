// Trials for the cook: lay out, hand out, watch answers arrive, and read what they show.
import { ask, h, Trouble } from "./dom.js";

const at = id => document.getElementById(id);
const methods = [["triangle", "Triangle: which of three is the odd one?"], ["duo-trio", "Duo-trio: which of two is like the reference?"], ["2-afc", "Pair: which of two has more of something?"], ["preference", "Preference: which of two is liked better?"], ["ratings", "Ratings: how much is each liked, 1 to 9?"]];
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
    h("div", { class: "fields" }, field("title", "What is it about?", "Pork chops, brined or plain"), field("sheet_title", "Title that tasters see", "Tasting"),
      h("label", {}, "Method", h("select", { name: "method" }, methods.map(([value, words]) => h("option", { value }, words)))), field("attribute", "For a pair: what do they look for?", "juicier"), field("samples", "Samples, with commas", "plain, brined")),
    h("div", { class: "fields" }, field("tasters", "Tasters", "12"), field("rounds", "Rounds each", "1"), field("blocks", "Animals or packages", "2"), field("count", "Pieces from each", "4"), field("portions", "Portions from a piece", "8"), field("seed", "Seed of the lot", String(Math.floor(Math.random() * 1e6)))),
    h("button", { class: "main-button" }, "Draw the design"));
  form.onsubmit = async event => {
    event.preventDefault();
    const get = name => form.elements[name].value.trim();
    const trial = { title: get("title"), sheet_title: get("sheet_title"), method: get("method"), samples: get("samples").split(",").map(t => t.trim()).filter(Boolean), tasters: Number(get("tasters")), rounds: Number(get("rounds")),
      portions_per_piece: Number(get("portions")), seed: Number(get("seed")), pieces: Array.from({ length: Number(get("blocks")) || 1 }, (_, i) => ({ block: "package " + (i + 1), count: Number(get("count")) })) };
    if (trial.method === "2-afc") trial.attribute = get("attribute");
    const made = await attempt(() => ask("POST", "/api/trials", trial), "Drawn. Hand out the codes, or print the sheets.");
    if (!made) return;
    await list();
    present(made);
  };
}

async function list() {
  const answer = await attempt(() => ask("GET", "/api/trials"));
  if (!answer) return;
  at("trials").replaceChildren(...answer.trials.map(t => h("li", {}, h("div", { class: "row" }, h("span", { class: "title" }, t.title), h("span", { class: "when" }, `${new Date(t.created).toLocaleDateString("en", { dateStyle: "medium" })}, ${t.answered} answered`),
    h("button", { type: "button", class: "quiet-button", "aria-label": "Open: " + t.title, onclick: () => open(t.id) }, "Open"),
    h("button", { type: "button", class: "quiet-button", "aria-label": "Delete: " + t.title, onclick: async () => { if (confirm("Delete the trial \"" + t.title + "\" with its answers?")) { await attempt(() => ask("DELETE", "/api/trials/" + t.id), "Deleted."); at("shown").hidden = true; list(); } } }, "Delete")))));
  if (answer.trials.length === 0) at("trials").append(h("li", {}, "No trial was drawn yet."));
}

async function open(id) {
  const trial = await attempt(() => ask("GET", "/api/trials/" + id));
  if (trial) present(trial);
}

function present(trial) {
  watched = trial.id;
  const base = "/api/trials/" + trial.id;
  const file = (name, words) => h("a", { class: "quiet-button", href: base + "/" + name, download: true }, words);
  at("shown").hidden = false;
  at("shown").replaceChildren(h("h2", {}, trial.title),
    h("div", { class: "row" }, file("codes.pdf", "Codes for phones (PDF)"), file("sheets.pdf", "Score sheets (PDF)"), file("answers.csv", "Answers (CSV)"), file("report.html", "Report (page)")), h("p"),
    trial.reachable ? "" : h("p", {}, "Only this computer can open the forms now. Start the program with --lan so that the phones in your network can; tasters then need no access code."),
    h("h3", {}, "Tasters"), h("p", { id: "arrived", role: "status" }, arrived(trial)),
    h("ol", { id: "tasters" }, trial.tasters.map(t => h("li", {}, h("a", { href: t.address, target: "_blank", rel: "noopener" }, "form of taster " + t.taster), t.answered ? " – answered" : ""))),
    h("div", { id: "finding" }),
    h("details", {}, h("summary", {}, "The design, with the key: for the cook only"), h("pre", { class: "words" }, trial.words)));
  at("shown").focus();
  analyze(trial);
}

const arrived = trial => `${trial.answered} of ${trial.tasters.length} tasters have answered.`;

// Nothing is shown before all are in: stopping early because it looks good makes findings out of luck.
async function analyze(trial) {
  const place = at("finding");
  if (trial.answered === 0) return place.replaceChildren();
  const waiting = trial.answered < trial.tasters.length;
  const look = async () => {
    const found = await attempt(() => ask("GET", "/api/trials/" + trial.id + "/analysis"));
    if (found) place.replaceChildren(h("h3", {}, "What it shows"), waiting ? h("p", {}, "Not all have answered: do not stop here because you like what you see.") : "", h("pre", { class: "words", id: "analysis" }, found.words));
  };
  if (!waiting) return look();
  place.replaceChildren(h("button", { type: "button", class: "quiet-button", onclick: look }, "Look before all are in"));
}

async function watch() {
  if (watched === null || document.hidden) return;
  try {
    const trial = await ask("GET", "/api/trials/" + watched);
    if (watched === trial.id && at("arrived")?.textContent !== arrived(trial)) present(trial);
  } catch { /* the next look will tell */ }
}

buildForm();
await list();
setInterval(watch, 3000);
document.documentElement.dataset.ready = "yes";
