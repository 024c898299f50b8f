// Saved plans: list, search, open, rename, duplicate, delete with undo, export and import as one file.
import { ask, h } from "./dom.js";
import { save } from "./fronts.js";
import { say } from "./say.js";
import { momentOf } from "./words.js";

let dialog, open, undo = null;

export function saveButton(current, name) {
  const button = h("button", { type: "button", class: "quiet-button", onclick: async () => {
    button.disabled = true;
    try {
      await ask("POST", "/api/saved", { title: name, request: current().request });
      button.textContent = say("saved.saved");
    } catch (trouble) {
      button.disabled = false;
      document.getElementById("plan-status").textContent = trouble.message;
    }
  } }, say("saved.save"));
  return button;
}

export function setUpSaved(opener, theDialog, onOpen) {
  dialog = theDialog;
  open = onOpen;
  const word = h("input", { type: "search", id: "saved-word", oninput: () => refresh() });
  const file = h("input", { type: "file", accept: "application/json,.json", class: "unseen", tabindex: "-1", "aria-label": say("saved.file"), onchange: () => take(file) });
  dialog.append(h("h2", { id: "saved-title" }, say("page.saved")), h("label", { class: "label", for: "saved-word" }, say("saved.search")), word,
    h("p", { id: "saved-note", class: "status", role: "status" }), h("ul", { class: "saved-list", id: "saved-list" }),
    h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: exportAll }, say("saved.export")),
      h("button", { type: "button", class: "quiet-button", onclick: () => file.click() }, say("saved.import")), file,
      h("button", { type: "button", class: "quiet-button", onclick: () => dialog.close() }, say("saved.close"))));
  opener.addEventListener("click", () => { dialog.showModal(); note(""); refresh(); });
}

function note(words, ...more) {
  document.getElementById("saved-note").replaceChildren(words, ...more);
}

async function attempt(what, words) {
  try {
    const answer = await what();
    if (words) note(typeof words === "function" ? words(answer) : words);
    await refresh();
  } catch (trouble) {
    note(trouble.message);
  }
}

async function refresh() {
  const word = document.getElementById("saved-word").value.trim();
  const { plans } = await ask("GET", "/api/saved" + (word ? "?word=" + encodeURIComponent(word) : ""));
  document.getElementById("saved-list").replaceChildren(...plans.map(item));
  if (plans.length === 0) document.getElementById("saved-list").append(h("li", {}, say(word ? "saved.none-such" : "saved.none")));
}

function item(plan) {
  const line = h("div", {}, h("span", { class: "title" }, plan.title), h("br"), h("span", { class: "when" }, say("saved.when", { when: momentOf(plan.created) })));
  const button = (key, act) => h("button", { type: "button", class: "quiet-button", "aria-label": say(key + "-what", { title: plan.title }), onclick: act }, say(key));
  const row = h("div", { class: "row" },
    button("common.open", () => attempt(async () => { const { request } = await ask("GET", "/api/saved/" + plan.id); dialog.close(); open(request); })),
    button("saved.rename", () => rename(plan, line)),
    button("saved.duplicate", () => attempt(() => ask("POST", "/api/saved/" + plan.id + "/copy"), say("saved.duplicated"))),
    button("common.delete", async () => {
      await attempt(() => ask("DELETE", "/api/saved/" + plan.id));
      undo = h("button", { type: "button", class: "say", onclick: () => attempt(() => ask("POST", "/api/saved/" + plan.id + "/restore"), say("common.back")) }, say("common.undo"));
      note(say("common.deleted-what", { title: plan.title }) + " ", undo);
      undo.focus();
    }));
  return h("li", {}, line, row);
}

function rename(plan, line) {
  const input = h("input", { type: "text", value: plan.title, maxlength: 200, "aria-label": say("saved.new-name", { title: plan.title }) });
  const form = h("form", { class: "row", onsubmit: event => {
    event.preventDefault();
    attempt(() => ask("PUT", "/api/saved/" + plan.id, { title: input.value }), say("saved.renamed"));
  } }, input, h("button", { class: "quiet-button" }, say("saved.keep-name")));
  line.replaceChildren(form);
  input.focus();
  input.select();
}

async function exportAll() {
  const all = await ask("GET", "/api/saved-file");
  save(new Blob([JSON.stringify(all, null, 1)], { type: "application/json" }), "saltfront-plans.json");
}

async function take(file) {
  let content;
  try {
    content = JSON.parse(await file.files[0].text());
  } catch {
    note(say("saved.no-export"));
    return;
  } finally {
    file.value = "";
  }
  await attempt(() => ask("POST", "/api/saved-file", content), answer => say("saved.added", { added: answer.added, known: answer.known }));
}
