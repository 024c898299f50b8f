// Saved plans: list, search, open, rename, duplicate, delete with undo, export and import as one file.
import { ask, h } from "./dom.js";
import { save } from "./fronts.js";

let dialog, open, undo = null;

export function saveButton(current, name) {
  const button = h("button", { type: "button", class: "quiet-button", onclick: async () => {
    button.disabled = true;
    try {
      await ask("POST", "/api/saved", { title: name, request: current().request });
      button.textContent = "Saved";
    } catch (trouble) {
      button.disabled = false;
      document.getElementById("plan-status").textContent = trouble.message;
    }
  } }, "Save this plan");
  return button;
}

export function setUpSaved(opener, theDialog, onOpen) {
  dialog = theDialog;
  open = onOpen;
  const word = h("input", { type: "search", id: "saved-word", oninput: () => refresh() });
  const file = h("input", { type: "file", accept: "application/json,.json", class: "unseen", tabindex: "-1", "aria-label": "File to import", onchange: () => take(file) });
  dialog.append(h("h2", { id: "saved-title" }, "Saved plans"), h("label", { class: "label", for: "saved-word" }, "Search"), word,
    h("p", { id: "saved-note", class: "status", role: "status" }), h("ul", { class: "saved-list", id: "saved-list" }),
    h("div", { class: "row" }, h("button", { type: "button", class: "quiet-button", onclick: exportAll }, "Export all"),
      h("button", { type: "button", class: "quiet-button", onclick: () => file.click() }, "Import"), file,
      h("button", { type: "button", class: "quiet-button", onclick: () => dialog.close() }, "Close")));
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
  if (plans.length === 0) document.getElementById("saved-list").append(h("li", {}, word ? "No saved plan holds that word." : "Nothing is saved yet. Make a plan, then press \"Save this plan\"."));
}

function item(plan) {
  const line = h("div", {}, h("span", { class: "title" }, plan.title), h("br"), h("span", { class: "when" }, "saved " + new Date(plan.created).toLocaleString("en", { dateStyle: "medium", timeStyle: "short" })));
  const button = (words, act) => h("button", { type: "button", class: "quiet-button", "aria-label": words + ": " + plan.title, onclick: act }, words);
  const row = h("div", { class: "row" },
    button("Open", () => attempt(async () => { const { request } = await ask("GET", "/api/saved/" + plan.id); dialog.close(); open(request); })),
    button("Rename", () => rename(plan, line)),
    button("Duplicate", () => attempt(() => ask("POST", "/api/saved/" + plan.id + "/copy"), "Duplicated.")),
    button("Delete", async () => {
      await attempt(() => ask("DELETE", "/api/saved/" + plan.id));
      undo = h("button", { type: "button", class: "say", onclick: () => attempt(() => ask("POST", "/api/saved/" + plan.id + "/restore"), "It is back.") }, "Undo");
      note("Deleted \"" + plan.title + "\". ", undo);
      undo.focus();
    }));
  return h("li", {}, line, row);
}

function rename(plan, line) {
  const input = h("input", { type: "text", value: plan.title, maxlength: 200, "aria-label": "New name of " + plan.title });
  const form = h("form", { class: "row", onsubmit: event => {
    event.preventDefault();
    attempt(() => ask("PUT", "/api/saved/" + plan.id, { title: input.value }), "Renamed.");
  } }, input, h("button", { class: "quiet-button" }, "Keep this name"));
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
    note("This file is no export of saved plans: it is not JSON.");
    return;
  } finally {
    file.value = "";
  }
  await attempt(() => ask("POST", "/api/saved-file", content), answer => answer.added + " added, " + answer.known + " were here already.");
}
