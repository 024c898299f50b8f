// What the cook tells: a reading by hand, what was done, how it ended. Made once for a cook, so that typing is never disturbed.
import { h } from "./dom.js";
import { recordLinks, recordPage, TASTES } from "./live-start.js";
import { nextHeat } from "./live-view.js";
import { say } from "./say.js";
import { isMetric } from "./words.js";

const PLACES = ["core", "second-core", "oven-air"].map(place => [place, say("tell.place." + place)]);

export function tellPanel(cook, acts) {
  const place = h("select", { id: "reading-place" }, PLACES.map(([value, words]) => h("option", { value }, words)));
  const value = h("input", { id: "reading-value", class: "number", type: "text", inputmode: "decimal", autocomplete: "off", enterkeyhint: "send" });
  const note = h("p", { class: "status", role: "status", id: "reading-note" });
  const form = h("form", { class: "typed", novalidate: true, onsubmit: async event => {
    event.preventDefault();
    const number = Number(value.value.trim().replace(",", "."));
    if (!value.value.trim() || !Number.isFinite(number)) {
      note.textContent = say("tell.what");
      value.focus();
      return;
    }
    value.value = "";
    note.textContent = await acts.read({ probe: place.value, value: number, unit: isMetric() ? "C" : "F" });
  } },
  h("div", {}, h("label", { for: "reading-value" }, say("tell.shows", { unit: isMetric() ? "°C" : "°F" })), value),
  h("div", {}, h("label", { for: "reading-place" }, say("tell.where")), place),
  h("button", { class: "quiet-button" }, say("tell.add")));
  const setting = h("input", { id: "new-setting", type: "text", inputmode: "decimal", autocomplete: "off", "aria-label": say("tell.new-setting", { unit: isMetric() ? "°C" : "°F" }), placeholder: isMetric() ? "150 °C" : "300 °F" });
  const tell = (words, event, extra = "") => h("button", { type: "button", class: "quiet-button " + extra, onclick: () => acts.tell(cook.id, event) }, words);
  return h("section", { class: "block no-print", "aria-labelledby": "tell-title" }, h("h2", { id: "tell-title" }, say("tell.title")), form, note,
    h("div", { class: "tell" }, tell(say("tell.is-out"), { kind: "taken-out" }, "out-now"), tell(say("tell.turned"), { kind: "turned" }), tell(say("tell.door"), { kind: "door", duration: "1 min" }),
      tell(say("tell.moved"), { kind: "probe-moved", probe: "core" })),
    h("details", {}, h("summary", {}, say("tell.set-other")), h("form", { class: "row", novalidate: true, onsubmit: event => {
      event.preventDefault();
      const text = setting.value.trim();
      if (text) acts.tell(cook.id, { kind: "setting", setting: /[a-z°]/i.test(text) ? text : text + (isMetric() ? " °C" : " °F") }).then(() => { setting.value = ""; });
    } }, setting, h("button", { class: "quiet-button" }, say("tell.set")))),
    h("ul", { class: "happened", id: "happened" }));
}

// which heat of several is on, and the button that says the next one began
export function heatsPanel(cook, acts) {
  if (!cook.heats || cook.outlook?.phase === "rest") return null;
  const next = nextHeat(cook);
  return h("section", { class: "block", "aria-labelledby": "heats-title" }, h("h2", { id: "heats-title" }, say("tell.heats")),
    h("ol", { class: "heats" }, cook.heats.map(heat => h("li", { "aria-current": heat.on ? "step" : null }, heat.on ? h("strong", {}, say("tell.heat-now", { heat: heat.words })) : heat.words,
      heat.main ? ", " + say("tell.heat-till") : "", heat.begin_min > 0 ? ", " + say(heat.told ? "tell.heat-from" : "tell.heat-planned", { minutes: Math.round(heat.begin_min) }) : ""))),
    next ? h("button", { type: "button", class: "quiet-button", onclick: () => acts.tell(cook.id, { kind: "heat-begun", number: next.number }) }, say("tell.goes-on", { heat: next.words })) : null);
}

export function happened(cook, acts) {
  return cook.events.filter(e => !(e.kind === "ending")).map(e => h("li", {}, h("span", {}, say(e.time_min < 1 ? "tell.at-start" : "tell.after", e.time_min < 1 ? { what: e.words } : { what: e.words, minutes: Math.round(e.time_min) })),
    h("button", { type: "button", class: "say", "aria-label": say("common.undo-what", { what: e.words }), onclick: () => acts.tell(cook.id, { kind: "undo", undone: e.number }) }, say("common.undo"))));
}

const choice = (id, label, options) => h("div", {}, h("label", { for: id }, label), h("select", { id }, h("option", { value: "" }, say("common.not-said")), options.map(o => h("option", { value: o }, say("taste." + o)))));
const field = (id, label, example) => h("div", {}, h("label", { for: id }, label), h("input", { id, type: "text", autocomplete: "off", placeholder: example }));

export function endPanel(cook, acts) {
  const note = h("p", { class: "error", role: "status" });
  const get = id => document.getElementById(id).value.trim();
  const form = h("form", { class: "ending", novalidate: true, onsubmit: async event => {
    event.preventDefault();
    const body = {};
    for (const [key, id] of [["weight_before", "end-before"], ["weight_after", "end-after"], ["salt", "end-salt"], ["juice", "end-juice"], ["doneness", "end-doneness"], ["note", "end-note"]]) {
      if (get(id)) body[key] = get(id);
    }
    if (document.getElementById("end-notebook").checked) body.notebook = true;
    note.textContent = await acts.end(cook.id, body);
  } },
  field("end-before", say("tell.before"), isMetric() ? "1200 g" : "2 1/2 lb"), field("end-after", say("tell.weight-after"), isMetric() ? "980 g" : "2 lb"),
  choice("end-salt", say("tell.salt"), TASTES.salt), choice("end-juice", say("tell.juice"), TASTES.juice), choice("end-doneness", say("tell.middle"), TASTES.doneness),
  h("div", { class: "all" }, h("label", { for: "end-note" }, say("tell.notes")), h("textarea", { id: "end-note" })),
  h("label", { class: "check all", for: "end-notebook" }, h("input", { id: "end-notebook", type: "checkbox" }), say("tell.into-notebook")),
  h("button", { class: "quiet-button all" }, say("tell.over")));
  return h("section", { class: "block no-print", "aria-labelledby": "end-title" }, h("details", {}, h("summary", { id: "end-title" }, say("tell.on-table")), form, note));
}

export function sourcePanel(cook, acts) {
  const note = h("p", { class: "status", role: "status" });
  const get = id => document.getElementById(id).value.trim();
  const form = h("form", { class: "ending", novalidate: true, onsubmit: async event => {
    event.preventDefault();
    note.textContent = await acts.connect(cook.id, { broker: get("mqtt-broker"), version: get("mqtt-version"), topic: get("mqtt-topic"), value_path: get("mqtt-path"), probe: get("mqtt-probe"), unit: get("mqtt-unit") });
  } },
  field("mqtt-broker", say("tell.broker"), "mqtt://192.168.1.10:1883"), field("mqtt-topic", say("tell.topic"), say("tell.topic.example")), field("mqtt-path", say("tell.path"), say("tell.path.example")),
  h("div", {}, h("label", { for: "mqtt-probe" }, say("tell.probe-is")), h("select", { id: "mqtt-probe" }, PLACES.map(([value, words]) => h("option", { value }, words)))),
  h("div", {}, h("label", { for: "mqtt-unit" }, say("tell.unit")), h("select", { id: "mqtt-unit" }, h("option", { value: "C" }, "°C"), h("option", { value: "F" }, "°F"))),
  h("div", {}, h("label", { for: "mqtt-version" }, "MQTT"), h("select", { id: "mqtt-version" }, h("option", { value: "3.1.1" }, "3.1.1"), h("option", { value: "5" }, "5"))),
  h("button", { class: "quiet-button all" }, say("tell.connect")));
  const file = h("input", { id: "log-file", type: "file", accept: ".csv,text/csv,text/plain", onchange: async () => {
    if (file.files[0]) note.textContent = await acts.upload(cook.id, file.files[0]);
    file.value = "";
  } });
  return h("section", { class: "block no-print", "aria-labelledby": "source-title" }, h("details", {}, h("summary", { id: "source-title" }, say("tell.sources")),
    h("ul", { class: "happened", id: "sources" }), form, note,
    h("div", { class: "field" }, h("label", { for: "log-file" }, say("tell.log")), file),
    h("p", { class: "row" }, recordPage(cook), recordLinks(cook))));
}

export function sources(cook, acts) {
  return (cook.sources ?? []).map(source => h("li", {}, h("span", {}, source.words),
    h("button", { type: "button", class: "say", "aria-label": say("tell.remove-what", { what: source.words }), onclick: () => acts.disconnect(cook.id, source.number) }, say("tell.remove"))));
}
