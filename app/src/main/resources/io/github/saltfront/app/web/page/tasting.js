// The form of one taster. What is chosen stays on the phone until it is sent.
import { ask, h, Trouble } from "./dom.js";

const token = location.hash.slice(1);
const form = document.getElementById("sheet");
const note = document.getElementById("note");

function say(words) {
  note.textContent = words;
  note.focus();
}

function choice(name, value, ...words) {
  return h("label", { class: "choice" }, h("input", { type: "radio", name, value }), ...words);
}

function round(sheet, part) {
  const several = sheet.rounds.length > 1 ? "Round " + part.round + ": " : "";
  if (sheet.kind === "rate") {
    return part.codes.map(code => h("fieldset", { "data-round": part.round, "data-code": code }, h("legend", {}, several, h("span", { class: "code" }, code)),
      sheet.words.map((words, i) => choice(part.round + "-" + code, String(i + 1), words)).reverse()));
  }
  return h("fieldset", { "data-round": part.round, "data-code": "" }, h("legend", {}, several + sheet.question),
    part.codes.map(code => code === "R" ? h("p", { class: "fixed" }, h("span", { class: "code" }, "R"), "the reference; taste it first") : choice(String(part.round), code, h("span", { class: "code" }, code))),
    sheet.no_preference ? choice(String(part.round), "none", "no preference") : null);
}

async function start() {
  let sheet;
  try {
    sheet = await ask("GET", "/api/tasting/" + encodeURIComponent(token));
  } catch (trouble) {
    say(trouble.message);
    return;
  }
  document.getElementById("title").textContent = sheet.title + ", taster " + sheet.taster;
  document.title = sheet.title;
  if (sheet.answered) return say("Your answers have arrived. Thank you.");
  form.append(h("div", {}, h("p", {}, "Taste in the order shown, from top to bottom. Take a sip of water before each one. " + (sheet.kind === "choose" && !sheet.no_preference ? "If you are not sure, guess. " : "") + "Please do not talk about it until all have answered."),
    sheet.kind === "rate" ? h("h2", {}, sheet.question) : "", sheet.rounds.map(part => round(sheet, part)),
    h("label", { for: "notes" }, "Anything you noticed?"), h("textarea", { id: "notes", maxlength: 1000 }), h("p"), h("button", { class: "main-button" }, "Send my answers")));
  form.addEventListener("submit", send);
}

async function send(event) {
  event.preventDefault();
  const answers = [];
  for (const set of form.querySelectorAll("fieldset")) {
    const chosen = set.querySelector("input:checked");
    if (!chosen) {
      say("One plate has no answer yet: " + set.querySelector("legend").textContent);
      set.scrollIntoView({ block: "center" });
      return;
    }
    answers.push({ round: Number(set.dataset.round), code: set.dataset.code, answer: chosen.value });
  }
  try {
    await ask("POST", "/api/tasting/" + encodeURIComponent(token), { answers, note: document.getElementById("notes").value });
  } catch (trouble) {
    if (!(trouble instanceof Trouble) || trouble.status !== 409) return say(trouble.message);
  }
  form.replaceChildren();
  say("Your answers have arrived. Thank you.");
}

start();
document.documentElement.dataset.ready = "yes";
