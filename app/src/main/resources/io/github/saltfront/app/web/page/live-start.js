// Begins a cook: from the plan in the address, or from a saved one.
import { ask, h } from "./dom.js";
import { parts, say, withLanguage } from "./say.js";
import { momentOf, round } from "./words.js";

export function planOf(hash) {
  if (!hash.startsWith("#plan=")) return null;
  try {
    const bytes = atob(hash.slice(6).replaceAll("-", "+").replaceAll("_", "/"));
    return JSON.parse(new TextDecoder().decode(Uint8Array.from(bytes, c => c.charCodeAt(0))));
  } catch {
    return null;
  }
}

const words = request => [request.pieces > 1 ? request.pieces + " ×" : "", (request.cut ?? say("start.meat")).replaceAll("-", " "), request.mass ?? ""].filter(Boolean).join(" ");

export async function startPanel(plan, begin, list) {
  const note = h("p", { class: "error", role: "status" });
  const checked = h("input", { id: "checked", type: "text", inputmode: "decimal", autocomplete: "off", placeholder: say("start.error.example") });
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
  const choices = saved.map(one => h("li", {}, h("span", {}, one.title), h("button", { type: "button", class: "quiet-button", "aria-label": say("start.goes-in-what", { title: one.title }), onclick: async () => {
    try { await go((await ask("GET", "/api/saved/" + one.id)).request); } catch (trouble) { note.textContent = trouble.message; }
  } }, say("start.goes-in"))));
  return h("section", { class: "block", "aria-labelledby": "start-title" }, h("h2", { id: "start-title" }, say(plan ? "start.follow-plan" : "start.follow")),
    plan ? [h("p", {}, parts("start.press", { meat: h("strong", {}, words(plan)) })), h("button", { type: "button", class: "main-button", id: "goes-in", onclick: () => go(plan) }, say("start.now"))] : null,
    h("details", { open: false }, h("summary", {}, say("start.thermometer")),
      h("div", { class: "field" }, h("label", { for: "checked" }, say("start.error")), checked),
      h("label", { class: "check", for: "coldest" }, coldest, say("start.coldest")),
      h("p", { class: "hint" }, say("start.only-both"))),
    h("h3", {}, say(plan ? "start.or-saved" : "start.saved")),
    saved.length ? h("ul", { class: "start-list" }, choices) : h("p", {}, parts("start.none", { link: h("a", { href: "/" }, say("start.make")) })), note,
    list?.length ? [h("h3", {}, say("start.over")), h("ul", { class: "start-list" }, list.slice(0, 20).map(c => h("li", {}, h("span", {}, c.title + ", " + momentOf(c.started)),
      h("a", { href: "#cook=" + c.id }, say("start.look")))))] : null);
}

/** What a cook chose from: the key of the record, and its words. */
export const TASTES = { salt: ["too-mild", "just-right", "too-salty"], juice: ["dry", "juicy", "very-juicy"], doneness: ["underdone", "just-right", "overdone"] };
const tasted = name => Object.values(TASTES).flat().includes(name) ? say("taste." + name) : name;

/** Where the record of a cook is. */
export const recordLinks = cook => [h("a", { href: withLanguage("/api/cooks/" + cook.id + "/log.csv"), download: "cook.csv" }, say("ended.table")), h("a", { href: withLanguage("/api/cooks/" + cook.id + "/log.json"), download: "cook.json" }, say("ended.whole"))];
export const recordPage = (cook, attributes = {}) => h("a", { href: withLanguage("/api/cooks/" + cook.id + "/record.html"), target: "_blank", ...attributes }, say("ended.record"));

export function endedPanel(cook) {
  const e = cook.events.find(x => x.kind === "ending")?.ending ?? {};
  const rows = [[say("ended.loss"), e.mass_loss_pct === undefined ? null : e.outlook ? say("ended.expected", { loss: round(e.mass_loss_pct, 0), expected: round(e.outlook.plate.mass_loss_pct.p50, 0) }) : round(e.mass_loss_pct, 0) + " %"],
    [say("ended.salt"), tasted(e.salt)], [say("ended.juice"), tasted(e.juice)], [say("ended.middle"), tasted(e.doneness)], [say("ended.notes"), e.note], [say("ended.measured"), e.outlook?.measured.headline]].filter(r => r[1]);
  return h("section", { class: "block", "aria-labelledby": "over-title" }, h("h2", { id: "over-title" }, say("ended.title", { title: cook.title })),
    h("table", {}, h("tbody", {}, rows.map(([name, value]) => h("tr", {}, h("th", { scope: "row" }, name), h("td", {}, value))))),
    h("p", { class: "row" }, e.outlook?.measured.headline ? recordPage(cook, { id: "record" }) : null, h("a", { href: "/notebook.html" }, say("page.notebook")), recordLinks(cook), h("a", { href: "/live.html" }, say("ended.another"))));
}
