// Begins a cook: from the plan in the address, or from a saved one.
import { ask, h } from "./dom.js";

export function planOf(hash) {
  if (!hash.startsWith("#plan=")) return null;
  try {
    const bytes = atob(hash.slice(6).replaceAll("-", "+").replaceAll("_", "/"));
    return JSON.parse(new TextDecoder().decode(Uint8Array.from(bytes, c => c.charCodeAt(0))));
  } catch {
    return null;
  }
}

const words = request => [request.pieces > 1 ? request.pieces + " ×" : "", (request.cut ?? "meat").replaceAll("-", " "), request.mass ?? ""].filter(Boolean).join(" ");

export async function startPanel(plan, begin, list) {
  const note = h("p", { class: "error", role: "status" });
  const checked = h("input", { id: "checked", type: "text", inputmode: "decimal", autocomplete: "off", placeholder: "0.5" });
  const coldest = h("input", { id: "coldest", type: "checkbox" });
  const go = async request => {
    note.textContent = "";
    const body = { request };
    // a clock set while planning says nothing about now
    delete request.now;
    if (request.serve && Date.parse(request.serve) < Date.now()) delete request.serve;
    if (checked.value.trim()) body.probe_error_k = Number(checked.value.trim().replace(",", "."));
    if (coldest.checked) body.distance_k = 0;
    try { await begin(body); } catch (trouble) { note.textContent = trouble.message; }
  };
  let saved = [];
  try { saved = (await ask("GET", "/api/saved")).plans; } catch (trouble) { note.textContent = trouble.message; }
  const choices = saved.map(one => h("li", {}, h("span", {}, one.title), h("button", { type: "button", class: "quiet-button", "aria-label": "The meat goes in: " + one.title, onclick: async () => {
    try { await go((await ask("GET", "/api/saved/" + one.id)).request); } catch (trouble) { note.textContent = trouble.message; }
  } }, "It goes in")));
  return h("section", { class: "block", "aria-labelledby": "start-title" }, h("h2", { id: "start-title" }, plan ? "Follow this plan" : "Follow a cook"),
    plan ? [h("p", {}, "Press when the meat goes into the heat: ", h("strong", {}, words(plan)), "."), h("button", { type: "button", class: "main-button", id: "goes-in", onclick: () => go(plan) }, "The meat goes in now")] : null,
    h("details", { open: false }, h("summary", {}, "What do you know about the thermometer?"),
      h("div", { class: "field" }, h("label", { for: "checked" }, "Largest error, if you checked it in ice water (°C)"), checked),
      h("label", { class: "check", for: "coldest" }, coldest, "Its tip is in the coldest spot, I vouch for that"),
      h("p", { class: "hint" }, "Only with both can your readings show that a hold was reached. Without them they still sharpen the prediction.")),
    h("h3", {}, plan ? "Or one of your saved plans" : "Your saved plans"),
    saved.length ? h("ul", { class: "start-list" }, choices) : h("p", {}, "None yet. ", h("a", { href: "/" }, "Make a plan"), ", then come here from it."), note,
    list?.length ? [h("h3", {}, "Cooks that are over"), h("ul", { class: "start-list" }, list.slice(0, 20).map(c => h("li", {}, h("span", {}, c.title + ", " + new Date(c.started).toLocaleString("en", { dateStyle: "medium", timeStyle: "short" })),
      h("a", { href: "#cook=" + c.id }, "Look"))))] : null);
}

export function endedPanel(cook) {
  const e = cook.events.find(x => x.kind === "ending")?.ending ?? {};
  const rows = [["Weight lost", e.mass_loss_pct === undefined ? null : e.mass_loss_pct.toFixed(0) + " %" + (e.outlook ? ", expected " + e.outlook.plate.mass_loss_pct.p50.toFixed(0) + " %" : "")],
    ["Salt", e.salt], ["Juice", e.juice], ["Middle", e.doneness], ["Notes", e.note], ["Measured", e.outlook?.measured.headline]].filter(r => r[1]);
  return h("section", { class: "block", "aria-labelledby": "over-title" }, h("h2", { id: "over-title" }, cook.title + ": over"),
    h("table", {}, h("tbody", {}, rows.map(([name, value]) => h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, value.replaceAll?.("-", " ") ?? value))))),
    h("p", { class: "row" }, e.outlook?.measured.headline ? h("a", { href: "/api/cooks/" + cook.id + "/record.html", target: "_blank", id: "record" }, "Record for the file") : null, h("a", { href: "/notebook.html" }, "Notebook"), h("a", { href: "/api/cooks/" + cook.id + "/log.csv", download: "cook.csv" }, "Record as a table (CSV)"), h("a", { href: "/api/cooks/" + cook.id + "/log.json", download: "cook.json" }, "Whole record (JSON)"), h("a", { href: "/live.html" }, "Follow another cook")));
}
