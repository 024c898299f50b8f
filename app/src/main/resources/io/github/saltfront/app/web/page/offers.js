// What can be done instead of a request that cannot be met; one tap takes it.
import { ask, h } from "./dom.js";
import { say } from "./say.js";
import { clockTime, dayOf, temperature } from "./words.js";

function changed(request, changes) {
  const r = structuredClone(request);
  for (const [key, value] of Object.entries(changes)) {
    if (key === "salting") { r.salting = { ...value }; if (request.salting?.sugar && value.treatment.endsWith("brine")) r.salting.sugar = request.salting.sugar; }
    else if (typeof value === "object") r[key] = { ...r[key], ...value };
    else r[key] = value;
  }
  return r;
}

/** Shows offers in a place; take is called with the request that is chosen. */
export async function showOffers(place, request, take) {
  const status = h("p", { role: "status" }, say("offers.looking"));
  place.replaceChildren(status);
  let offers;
  try {
    ({ offers } = await ask("POST", "/api/offers", request));
  } catch {
    status.remove();
    return;
  }
  if (!status.isConnected) return;
  if (offers.length === 0) { status.textContent = say("offers.none"); return; }
  place.replaceChildren(h("h3", {}, say("offers.title")), h("ul", { class: "offers" }, offers.map(offer => h("li", {}, h("button", { type: "button", class: "quiet-button", onclick: () => take(changed(request, offer.changes)) }, offer.changes.serve ? say("offers.serve", { day: dayOf(offer.changes.serve), clock: clockTime(offer.changes.serve) }) : offer.words),
    h("p", { class: "hint" }, say("offers.about", { day: dayOf(offer.served), clock: clockTime(offer.served), temperature: temperature(offer.pull_temperature_c, 1), loss: offer.mass_loss_pct }))))));
}
