// Ties the live page together: one stream, one cook in large, the others in a row above it.
import { ask, h, send as request, Trouble } from "./dom.js";
import { ready } from "./entries.js";
import { dress, say, sayCount, withLanguage } from "./say.js";
import { currentUnits, duration, setUnits } from "./words.js";
import { alarmPanels, figures, picture, plate, safety, warnings } from "./live-view.js";
import { endPanel, happened, heatsPanel, sources, sourcePanel, tellPanel } from "./live-tell.js";
import { endedPanel, planOf, startPanel } from "./live-start.js";
import { frontsKey, frontsPanel, refreshFronts } from "./live-fronts.js";
import { allow, canNotify, canRing, canStayOn, mayNotify, ring, staysOn, stayOn } from "./live-alarm.js";
import { enqueue, hearQueue, send, waiting } from "./live-queue.js";

const SILENT_MS = 35_000;
const place = document.getElementById("now");
let cook = null, others = [], stream = null, heard = 0, parts = null, notice = "", away = null;

const acts = {
  tell: (id, event) => change("/api/cooks/" + id + "/events", event),
  acknowledge: (id, number) => change("/api/cooks/" + id + "/alarms/" + number, {}),
  connect: async (id, source) => (await change("/api/cooks/" + id + "/sources", source)) || say("live.connecting"),
  upload: async (id, file) => {
    try {
      const answer = await request("/api/cooks/" + id + "/readings", { method: "POST", headers: { "Content-Type": "text/csv" }, body: file });
      const content = await answer.json();
      const told = (content.problems ?? []).map(p => p.message).join(" ");
      return (content.accepted === undefined ? "" : say("live.readings", { accepted: content.accepted, known: content.known }) + " ") + told;
    } catch { return say("live.no-answer"); }
  },
  disconnect: (id, number) => change("/api/cooks/" + id + "/events", { kind: "undo", undone: number }),
  end: async (id, body) => (await change("/api/cooks/" + id + "/end", body)) || (await open(id), ""),
  read: async reading => {
    const words = await enqueue(cook.id, { ...reading, time_min: Math.round(nowMinutes() * 6000) / 6000 });
    return words || (say(waiting(cook.id).length ? "live.kept-here" : "live.kept"));
  },
};

async function change(path, body) {
  try {
    await ask("POST", path, body);
    notice = "";
    await refreshOthers();
    return "";
  } catch (trouble) {
    if (!(trouble instanceof Trouble)) throw trouble;
    notice = trouble.message;
    contact();
    return trouble.message;
  }
}

// minutes since the meat went in, by the server's clock as far as it was heard
function nowMinutes() {
  if (!cook || cook.time_min === undefined) return 0;
  const passed = cook.time_min + (Date.now() - cook.heard) / 60_000 * cook.speed;
  return Math.max(0, Math.min(passed, cook.clock_ends_min ?? Infinity));
}

function hear(event, take) {
  stream.addEventListener(event, message => { heard = Date.now(); take(JSON.parse(message.data)); show(); });
}

function listen(id) {
  stream?.close();
  stream = new EventSource(withLanguage("/api/cooks/" + id + "/stream"));
  hear("cook", data => { notice = ""; cook = { ...data, heard: Date.now() }; keep(); send(); });
  hear("look", data => { Object.assign(cook, data, { heard: Date.now() }); keep(); });
  hear("told", data => {
    const turned = String(data.fahrenheit) !== String(cook.fahrenheit);
    Object.assign(cook, data);
    if (turned || data.status === "ended") listen(id);
  });
  hear("sources", data => { cook.sources = data.sources; });
  hear("cooks", data => { others = data; });
  hear("readings", data => {
    for (const one of data.readings) {
      let probe = cook.readings.find(r => r.probe === one.probe);
      if (!probe) cook.readings.push(probe = { probe: one.probe, role: one.role, points: [] });
      probe.points.push(one.point);
      if (probe.points.length > 1 && probe.points.at(-2)[0] > one.point[0]) probe.points.sort((a, b) => a[0] - b[0]);
    }
  });
  stream.onerror = () => contact();
}

// what was last known is at hand after a reload without the network
function keep() {
  try { localStorage.setItem("live-cook", JSON.stringify(cook)); } catch { localStorage.removeItem("live-cook"); }
}

function kept(id) {
  try {
    const known = JSON.parse(localStorage.getItem("live-cook"));
    return known?.id === id ? known : null;
  } catch { return null; }
}

async function refreshOthers() {
  try { others = (await ask("GET", "/api/cooks")).cooks; } catch { /* the stream tells when it is back */ }
  show();
}

async function open(id) {
  parts = null;
  cook = kept(id);
  heard = 0;
  show();
  listen(id);
  try {
    cook = { ...(await ask("GET", "/api/cooks/" + id)), heard: Date.now() };
    heard = Date.now();
    keep();
  } catch (trouble) {
    if (trouble.status === 404) {
      stream.close();
      localStorage.removeItem("live-cook");
      cook = null;
      place.replaceChildren(h("p", { class: "error" }, trouble.message), h("a", { href: "/live.html" }, say("live.to-list")));
      return;
    }
    notice = trouble.message;
  }
  await refreshOthers();
}

function contact() {
  const box = document.getElementById("contact");
  const silent = cook && cook.status !== "ended" && Date.now() - heard > SILENT_MS;
  const lost = silent || stream?.readyState === EventSource.CONNECTING && heard > 0 && Date.now() - heard > 8000 || cook && heard === 0;
  const queue = waiting().length;
  const words = [];
  if (lost) words.push(heard ? say("live.silent", { time: duration((Date.now() - heard) / 60_000) }) : say("live.no-contact"));
  if (queue) words.push(sayCount("live.waiting", queue));
  if (notice) words.push(notice);
  box.hidden = words.length === 0;
  box.textContent = words.join(" ");
  return lost;
}

// without contact nobody else rings: by the last forecast it may be due
function ownAlarm(lost) {
  const left = cook?.outlook?.pull.time_left_min.p50;
  if (!lost || cook.status === "ended" || left === undefined || left === null || cook.outlook.phase === "rest") return [];
  if (nowMinutes() < cook.outlook.time_min + left) return [];
  away ??= { number: -1, kind: "pull-now", urgent: true, seen: false, text: say("live.own-alarm") };
  return away.seen ? [] : [{ cook, alarm: away }];
}

function openAlarms(lost) {
  const own = (cook?.alarms ?? []).filter(a => !a.acknowledged && cook.status !== "ended").map(alarm => ({ cook, alarm }));
  const foreign = others.filter(o => o.id !== cook?.id).flatMap(o => o.open_alarms.map(alarm => ({ cook: o, alarm })));
  if (!lost) away = null;
  return [...own, ...foreign, ...ownAlarm(lost)].sort((a, b) => b.alarm.urgent - a.alarm.urgent);
}

// what did not change stays, so that nobody loses the button under the finger or the place of the keyboard
function swap(parent, key, make) {
  const text = JSON.stringify(key);
  if (parent.shownKey === text) return;
  parent.shownKey = text;
  parent.replaceChildren(...[make()].flat().filter(Boolean));
}

const STATUS = ["starting", "following", "ended", "failed"];

function tabWords(o) {
  if (o.advice === "out") return say("live.tab.resting");
  if (o.advice === "now") return say("live.tab.take-out");
  if (o.time_left_min !== undefined) return say("live.tab.in", { time: duration(Math.max(0, o.time_left_min)) });
  return STATUS.includes(o.status) ? say("live.status." + o.status) : o.status;
}

function tabs() {
  const nav = document.getElementById("cooks");
  nav.hidden = others.length < (cook ? 2 : 1);
  swap(nav, [cook?.id, others], () => [...others.map(o => h("a", { href: "#cook=" + o.id, "aria-current": o.id === cook?.id ? "page" : null, class: o.open_alarms.some(a => a.urgent) ? "rings" : "" },
    h("b", {}, o.title), h("small", {}, tabWords(o))))]);
}

function keepers() {
  if (canRing() && (staysOn() || !canStayOn())) return h("p", { class: "keep" }, say(mayNotify() ? "live.rings-sends" : "live.rings") + " " + say(staysOn() ? "live.stays-on" : "live.set-screen"));
  return h("p", { class: "keep" }, h("button", { type: "button", class: "quiet-button", id: "allow", onclick: async () => { await allow(); show(); } }, say(canRing() ? "live.keep-screen" : "live.let-ring")),
    say(canNotify() ? canStayOn() ? "live.tap.both" : "live.tap.notify" : canStayOn() ? "live.tap.screen" : "live.tap"));
}

function show() {
  const lost = contact();
  const alarms = openAlarms(lost);
  const seen = { ...acts, acknowledge: (id, number) => { if (number === -1) { away.seen = true; show(); return Promise.resolve(); } return acts.acknowledge(id, number); } };
  swap(document.getElementById("alarms"), alarms.map(a => [a.cook.id, a.alarm.number]), () => alarmPanels(alarms, seen));
  ring(alarms.map(a => a.alarm));
  tabs();
  if (!cook || parts === "start") return;
  document.title = cook.title + " - Saltfront";
  if (cook.status === "ended") {
    stream?.close();
    parts = null;
    place.replaceChildren(endedPanel(cook), picture(cook, Math.min(1100, place.clientWidth || 800)));
    ready();
    return;
  }
  if (!parts || parts.id !== cook.id || parts.units !== currentUnits()) layOut();
  const passed = cook.outlook ? Math.max(0, nowMinutes() - cook.outlook.time_min) : 0;
  parts.head.replaceChildren(figures(cook, passed));
  swap(parts.keep, [canRing(), mayNotify(), staysOn()], keepers);
  swap(parts.warn, cook.outlook?.warnings ?? [], () => warnings(cook, acts));
  const width = Math.min(1300, place.clientWidth || 800);
  swap(parts.chart, [width, cook.outlook?.time_min, cook.readings.map(r => r.points.length)], () => picture(cook, width));
  swap(parts.fronts, [width, frontsKey(cook)], () => frontsPanel(cook, Math.max(280, Math.min(1000, width - 30))));
  refreshFronts(cook, show);
  swap(parts.heats, [cook.heats ?? [], cook.outlook?.phase], () => heatsPanel(cook, acts));
  swap(parts.facts, [cook.outlook?.time_min], () => [safety(cook), plate(cook)]);
  swap(document.getElementById("happened"), cook.events, () => happened(cook, acts));
  swap(document.getElementById("sources"), cook.sources ?? [], () => sources(cook, acts));
  ready();
}

function layOut() {
  parts = { id: cook.id, units: currentUnits(), head: h("div"), keep: h("div"), warn: h("div"), heats: h("div"), chart: h("div"), fronts: h("div"), facts: h("div", { class: "board" }) };
  place.replaceChildren(parts.head, parts.keep, parts.heats, parts.warn, parts.chart, parts.facts, parts.fronts,
    h("div", { class: "board" }, tellPanel(cook, acts), h("div", {}, sourcePanel(cook, acts), endPanel(cook, acts))));
}

async function begin(body) {
  const begun = await ask("POST", "/api/cooks", body);
  location.hash = "#cook=" + begun.id;
}

async function route() {
  const id = location.hash.startsWith("#cook=") ? location.hash.slice(6) : null;
  if (id) return open(id);
  stream?.close();
  cook = null;
  parts = "start";
  heard = 0;
  let list = { cooks: [], ended: [] };
  try { list = await ask("GET", "/api/cooks"); notice = ""; } catch (trouble) { notice = trouble.message; }
  others = list.cooks;
  const plan = planOf(location.hash);
  if (!plan && location.hash !== "#new" && others.length) {
    location.replace("#cook=" + others[0].id);
    return;
  }
  place.replaceChildren(await startPanel(plan, begin, list.ended));
  show();
  ready();
}

const units = document.getElementById("units");
units.value = currentUnits();
units.addEventListener("change", () => { setUnits(units.value); show(); });
hearQueue(() => contact());
addEventListener("hashchange", () => { parts = null; route(); });
document.addEventListener("visibilitychange", () => { if (!document.hidden && cook) { stayOn(); if (stream?.readyState === EventSource.CLOSED || Date.now() - heard > SILENT_MS) listen(cook.id); } });
addEventListener("online", () => { if (cook && cook.status !== "ended") listen(cook.id); });
setInterval(() => {
  if (cook && cook.status !== "ended" && (stream?.readyState === EventSource.CLOSED || Date.now() - heard > SILENT_MS && Date.now() - heard < SILENT_MS * 2)) listen(cook.id);
  if (cook) show();
}, 5000);
if ("serviceWorker" in navigator) navigator.serviceWorker.register("/worker.js").catch(() => {});
dress(document);
route();
