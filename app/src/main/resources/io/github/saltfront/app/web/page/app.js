// Ties the questions to the plan; the address of the page holds the answers, so that a bookmark opens the same plan.
import { h, Trouble } from "./dom.js";
import { carry } from "./entries.js";
import { build, fill, read, showProblems } from "./form.js";
import { showOffers } from "./offers.js";
import { render, title } from "./result.js";
import { download, emptyPicture, showFronts } from "./fronts.js";
import { showWays } from "./ways.js";
import { showWhatIf } from "./whatif.js";
import { saveButton, setUpSaved } from "./saved.js";
import { dress, say } from "./say.js";
import { askKept, lastRequest, setUpOffline, tell } from "./offline.js";
import { currentUnits, dayOf, setUnits } from "./words.js";

const form = document.getElementById("request");
const body = document.getElementById("plan-body");
const status = document.getElementById("plan-status");
let catalog;
let shown = null;
let turn = 0;

const pack = request => "#plan=" + btoa(String.fromCharCode(...new TextEncoder().encode(JSON.stringify(request)))).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");

function unpack(hash) {
  if (!hash.startsWith("#plan=")) return null;
  try {
    const bytes = atob(hash.slice(6).replaceAll("-", "+").replaceAll("_", "/"));
    return JSON.parse(new TextDecoder().decode(Uint8Array.from(bytes, c => c.charCodeAt(0))));
  } catch {
    status.textContent = say("app.cut-off");
    return null;
  }
}

export function open(request) {
  const hash = pack(request);
  if (location.hash === hash) return make(request);
  history.pushState(null, "", hash);
  return make(request);
}

async function make(request) {
  const mine = ++turn;
  const button = document.getElementById("make");
  button.disabled = true;
  status.textContent = say("app.working");
  const slow = setTimeout(() => { if (mine === turn) status.textContent = say("app.still-working"); }, 5000);
  try {
    const plan = await askKept("plan", "POST", "/api/plan?alternatives=no", request);
    if (mine !== turn) return;
    showProblems([]);
    present(plan, request);
  } catch (trouble) {
    if (mine !== turn) return;
    status.textContent = say("app.no-plan");
    if (!(trouble instanceof Trouble)) throw trouble;
    showProblems(trouble.problems);
    if (trouble.status === 0) await offerLast();
    // a plan that binds somewhere; what was written wrongly has no offers
    else if (trouble.status === 422 || trouble.problems.every(p => p.field === "serve")) showOffers(document.getElementById("offers"), request, take);
  } finally {
    clearTimeout(slow);
    if (mine === turn) button.disabled = false;
  }
}

async function offerLast() {
  const last = await lastRequest();
  tell(say("app.offline") + " ", last ? h("button", { type: "button", class: "say", onclick: () => { fill(last); open(last); } }, say("app.show-last")) : "");
}

const take = changed => { fill(changed); open(changed); };

function present(plan, request) {
  shown = { plan, request };
  document.title = title(plan) + " - Saltfront";
  const late = Date.parse(plan.clock.at(-1).time) < Date.now();
  status.textContent = late ? say("app.was-for", { day: dayOf(plan.clock.at(-1).time) }) : say("app.here");
  const again = late ? h("button", { type: "button", class: "quiet-button", onclick: () => { document.getElementById("make").focus(); form.requestSubmit(); } }, say("app.anew")) : null;
  body.replaceChildren(
    h("div", { class: "row no-print", id: "actions" }, saveButton(() => shown, title(plan)),
      h("button", { type: "button", class: "quiet-button", onclick: () => print() }, say("app.print")), fileChoice(request), again), h("p"),
    ...render(plan, request, catalog));
  if (!plan.cooking.safety.predicted_met) showOffers(document.getElementById("unmet"), request, take);
  showWays(document.getElementById("ways-place"), request, take, (other, name) => document.getElementById("fronts-place").compare?.(other, name));
  showFronts(document.getElementById("fronts-place"), plan, request, take);
  showWhatIf(document.getElementById("whatif-place"), plan, request, catalog, take);
  const heading = document.getElementById("story-title");
  if (matchMedia("(max-width: 61.99rem)").matches) document.getElementById("plan").scrollIntoView({ block: "start" });
  heading.focus({ preventScroll: true });
}

function fileChoice(request) {
  const names = [["", say("app.save-as-choose")], ["card.pdf", say("app.file.card")], ["calendar.ics", say("app.file.calendar")], ["recipe.jsonld", say("app.file.recipe")], ["plan.md", say("app.file.notes")]];
  const list = h("select", { "aria-label": say("app.save-as"), class: "files", onchange: async () => {
    const name = list.value;
    list.value = "";
    status.textContent = say("app.making");
    try { await download(request, name); status.textContent = say("app.saved-as", { name }); } catch (e) { status.textContent = e.message; }
  } }, names.map(([value, words]) => h("option", { value }, words)));
  return list;
}

function fromAddress() {
  const request = unpack(location.hash);
  if (request) {
    fill(request);
    make(request);
  } else {
    turn++;
    shown = null;
    document.title = say("page.plan.title");
    status.textContent = "";
    body.replaceChildren(emptyPicture());
  }
}

async function start() {
  const units = document.getElementById("units");
  units.value = currentUnits();
  units.addEventListener("change", () => { setUnits(units.value); if (shown) present(shown.plan, shown.request); });
  try {
    catalog = await askKept("catalog", "GET", "/api/catalog");
  } catch (trouble) {
    status.textContent = trouble.message;
    body.replaceChildren(h("button", { type: "button", class: "main-button", onclick: () => location.reload() }, say("app.try-again")));
    return;
  }
  build(form, catalog, () => open(read()));
  setUpSaved(document.getElementById("open-saved"), document.getElementById("saved"), request => { fill(request); open(request); });
  addEventListener("popstate", fromAddress);
  addEventListener("online", () => { tell(); if (shown) make(shown.request); });
  const last = location.hash === "" && !document.getElementById("offline").hidden ? await lastRequest() : null;
  if (last) history.replaceState(null, "", pack(last));
  fromAddress();
  carry(read, entries => { const place = document.activeElement; fill(entries); place.focus(); });
  setUpOffline();
  document.documentElement.dataset.ready = "yes";
}

dress(document);
start();
