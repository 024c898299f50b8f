// Without the network: the pages come from the worker, the last answers from here, and the cook is told.
import { ask, h, Trouble } from "./dom.js";
import { say } from "./say.js";
import { momentOf } from "./words.js";

const STORE = "last-answers";
const banner = () => document.getElementById("offline");

/** Sets the worker up; a browser lets it run on this computer or behind https only. */
export async function setUpOffline() {
  if (!("serviceWorker" in navigator)) return;
  const had = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (!had) return;
    tell(say("offline.newer") + " ", h("button", { type: "button", class: "say", onclick: () => location.reload() }, say("offline.load")));
    banner().dataset.newer = "yes";
  });
  try {
    for (const old of await navigator.serviceWorker.getRegistrations()) if (new URL(old.scope).pathname !== "/") await old.unregister();
    await navigator.serviceWorker.register("/worker.js");
  } catch { /* the page works without it, as long as there is a network */ }
}

export function tell(...words) {
  delete banner().dataset.newer;
  banner().replaceChildren(...words);
  banner().hidden = words.length === 0;
}

const place = name => "/kept-" + name;

async function find(name) {
  if (!("caches" in window)) return null;
  try {
    return await (await (await caches.open(STORE)).match(place(name)))?.json() ?? null;
  } catch {
    return null;
  }
}

/**
 * Asks, and keeps the last answer of that name. Without the network the kept one is given if the same was asked, and only then.
 */
export async function askKept(name, method, path, body) {
  const question = JSON.stringify([path, body ?? null]);
  try {
    const answer = await ask(method, path, body);
    if (!banner().dataset.newer) tell();
    if ("caches" in window) caches.open(STORE).then(store => store.put(place(name), new Response(JSON.stringify({ question, answer, at: Date.now() })))).catch(() => {});
    return answer;
  } catch (trouble) {
    if (!(trouble instanceof Trouble) || trouble.status !== 0) throw trouble;
    const kept = await find(name);
    if (kept?.question !== question) throw trouble;
    tell(say("offline.kept", { when: momentOf(kept.at) }));
    return kept.answer;
  }
}

/** The request of the last plan, or null. */
export async function lastRequest() {
  const kept = await find("plan");
  return kept ? JSON.parse(kept.question)[1] : null;
}
