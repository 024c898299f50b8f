// The form of one taster. What is chosen stays on the phone until it is sent.
import { ask, h, Trouble } from "./dom.js";
import { ready } from "./entries.js";
import { dress, say } from "./say.js";

const token = location.hash.slice(1);
const form = document.getElementById("sheet");
const place = document.getElementById("note");

function note(words) {
  place.textContent = words;
  place.focus();
}

function choice(name, value, ...words) {
  return h("label", { class: "choice" }, h("input", { type: "radio", name, value }), ...words);
}

function round(sheet, part) {
  const several = sheet.rounds.length > 1 ? say("tasting.round", { round: part.round }) + " " : "";
  if (sheet.kind === "rate") {
    return part.codes.map(code => h("fieldset", { "data-round": part.round, "data-code": code }, h("legend", {}, several, h("span", { class: "code" }, code)),
      sheet.words.map((words, i) => choice(part.round + "-" + code, String(i + 1), words)).reverse()));
  }
  return h("fieldset", { "data-round": part.round, "data-code": "" }, h("legend", {}, several + sheet.question),
    part.codes.map(code => code === "R" ? h("p", { class: "fixed" }, h("span", { class: "code" }, "R"), say("tasting.reference")) : choice(String(part.round), code, h("span", { class: "code" }, code))),
    sheet.no_preference ? choice(String(part.round), "none", say("tasting.no-preference")) : null);
}

async function start() {
  let sheet;
  try {
    sheet = await ask("GET", "/api/tasting/" + encodeURIComponent(token));
  } catch (trouble) {
    note(trouble.message);
    return;
  }
  document.getElementById("title").textContent = say("tasting.title", { title: sheet.title, taster: String(sheet.taster) });
  document.title = sheet.title;
  if (sheet.answered) return note(say("tasting.arrived"));
  form.append(h("div", {}, h("p", {}, [say("tasting.order"), sheet.kind === "choose" && !sheet.no_preference ? say("tasting.guess") : "", say("tasting.hush")].filter(Boolean).join(" ")),
    sheet.kind === "rate" ? h("h2", {}, sheet.question) : "", sheet.rounds.map(part => round(sheet, part)),
    h("label", { for: "notes" }, say("tasting.noticed")), h("textarea", { id: "notes", maxlength: 1000 }), h("p"), h("button", { class: "main-button" }, say("tasting.send"))));
  form.addEventListener("submit", send);
}

async function send(event) {
  event.preventDefault();
  const answers = [];
  for (const set of form.querySelectorAll("fieldset")) {
    const chosen = set.querySelector("input:checked");
    if (!chosen) {
      note(say("tasting.unanswered", { plate: set.querySelector("legend").textContent }));
      set.scrollIntoView({ block: "center" });
      return;
    }
    answers.push({ round: Number(set.dataset.round), code: set.dataset.code, answer: chosen.value });
  }
  try {
    await ask("POST", "/api/tasting/" + encodeURIComponent(token), { answers, note: document.getElementById("notes").value });
  } catch (trouble) {
    if (!(trouble instanceof Trouble) || trouble.status !== 409) return note(trouble.message);
  }
  form.replaceChildren();
  note(say("tasting.arrived"));
}

dress(document);
await start();
ready();
