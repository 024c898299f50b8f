// What the cook tells: a reading by hand, what was done, how it ended. Made once for a cook, so that typing is never disturbed.
import { h } from "./dom.js";
import { nextHeat } from "./live-view.js";
import { isMetric } from "./words.js";

const PLACES = [["core", "in the thickest part"], ["second-core", "in a second spot of it"], ["oven-air", "in the air of the oven"]];

export function tellPanel(cook, acts) {
  const place = h("select", { id: "reading-place" }, PLACES.map(([value, words]) => h("option", { value }, words)));
  const value = h("input", { id: "reading-value", class: "number", type: "text", inputmode: "decimal", autocomplete: "off", enterkeyhint: "send" });
  const note = h("p", { class: "status", role: "status", id: "reading-note" });
  const form = h("form", { class: "typed", novalidate: true, onsubmit: async event => {
    event.preventDefault();
    const number = Number(value.value.trim().replace(",", "."));
    if (!value.value.trim() || !Number.isFinite(number)) {
      note.textContent = "Type what the thermometer shows, such as 54.2.";
      value.focus();
      return;
    }
    value.value = "";
    note.textContent = await acts.read({ probe: place.value, value: number, unit: isMetric() ? "C" : "F" });
  } },
  h("div", {}, h("label", { for: "reading-value" }, "It shows, in " + (isMetric() ? "°C" : "°F")), value),
  h("div", {}, h("label", { for: "reading-place" }, "Where"), place),
  h("button", { class: "quiet-button" }, "Add"));
  const setting = h("input", { id: "new-setting", type: "text", inputmode: "decimal", autocomplete: "off", "aria-label": "New setting, in " + (isMetric() ? "°C" : "°F"), placeholder: isMetric() ? "150 °C" : "300 °F" });
  const tell = (words, event, extra = "") => h("button", { type: "button", class: "quiet-button " + extra, onclick: () => acts.tell(cook.id, event) }, words);
  return h("section", { class: "block no-print", "aria-labelledby": "tell-title" }, h("h2", { id: "tell-title" }, "Tell what you see and do"), form, note,
    h("div", { class: "tell" }, tell("It is out of the heat", { kind: "taken-out" }, "out-now"), tell("Turned over", { kind: "turned" }), tell("Door open for a minute", { kind: "door", duration: "1 min" }),
      tell("Probe moved", { kind: "probe-moved", probe: "core" })),
    h("details", {}, h("summary", {}, "Set to another temperature"), h("form", { class: "row", novalidate: true, onsubmit: event => {
      event.preventDefault();
      const text = setting.value.trim();
      if (text) acts.tell(cook.id, { kind: "setting", setting: /[a-z°]/i.test(text) ? text : text + (isMetric() ? " °C" : " °F") }).then(() => { setting.value = ""; });
    } }, setting, h("button", { class: "quiet-button" }, "Set"))),
    h("ul", { class: "happened", id: "happened" }));
}

// which heat of several is on, and the button that says the next one began
export function heatsPanel(cook, acts) {
  if (!cook.heats || cook.outlook?.phase === "rest") return null;
  const next = nextHeat(cook);
  return h("section", { class: "block", "aria-labelledby": "heats-title" }, h("h2", { id: "heats-title" }, "Heats"),
    h("ol", { class: "heats" }, cook.heats.map(heat => h("li", { "aria-current": heat.on ? "step" : null }, heat.on ? h("strong", {}, heat.words + ", now") : heat.words,
      heat.main ? ", till the thermometer says so" : "", heat.begin_min > 0 ? ", from " + Math.round(heat.begin_min) + " min" + (heat.told ? "" : " by the plan's clock") : ""))),
    next ? h("button", { type: "button", class: "quiet-button", onclick: () => acts.tell(cook.id, { kind: "heat-begun", number: next.number }) }, "It goes on now: " + next.words) : null);
}

const at = minutes => minutes < 1 ? "at the start" : "after " + Math.round(minutes) + " min";

export function happened(cook, acts) {
  return cook.events.filter(e => !(e.kind === "ending")).map(e => h("li", {}, h("span", {}, e.words + ", " + at(e.time_min)),
    h("button", { type: "button", class: "say", "aria-label": "Undo: " + e.words, onclick: () => acts.tell(cook.id, { kind: "undo", undone: e.number }) }, "Undo")));
}

const choice = (id, label, options) => h("div", {}, h("label", { for: id }, label), h("select", { id }, h("option", { value: "" }, "not said"), options.map(o => h("option", { value: o }, o.replaceAll("-", " ")))));
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
  field("end-before", "Weight before", isMetric() ? "1200 g" : "2 1/2 lb"), field("end-after", "Weight after", isMetric() ? "980 g" : "2 lb"),
  choice("end-salt", "Salt", ["too-mild", "just-right", "too-salty"]), choice("end-juice", "Juice", ["dry", "juicy", "very-juicy"]), choice("end-doneness", "Middle", ["underdone", "just-right", "overdone"]),
  h("div", { class: "all" }, h("label", { for: "end-note" }, "Notes"), h("textarea", { id: "end-note" })),
  h("label", { class: "check all", for: "end-notebook" }, h("input", { id: "end-notebook", type: "checkbox" }), "Into the notebook as well"),
  h("button", { class: "quiet-button all" }, "This cook is over"));
  return h("section", { class: "block no-print", "aria-labelledby": "end-title" }, h("details", {}, h("summary", { id: "end-title" }, "It is on the table: weights and taste"), form, note));
}

export function sourcePanel(cook, acts) {
  const note = h("p", { class: "status", role: "status" });
  const get = id => document.getElementById(id).value.trim();
  const form = h("form", { class: "ending", novalidate: true, onsubmit: async event => {
    event.preventDefault();
    note.textContent = await acts.connect(cook.id, { broker: get("mqtt-broker"), version: get("mqtt-version"), topic: get("mqtt-topic"), value_path: get("mqtt-path"), probe: get("mqtt-probe"), unit: get("mqtt-unit") });
  } },
  field("mqtt-broker", "Broker", "mqtt://192.168.1.10:1883"), field("mqtt-topic", "Topic", "kitchen/oven/probe1"), field("mqtt-path", "Where the value is", "empty, or probe.temperature"),
  h("div", {}, h("label", { for: "mqtt-probe" }, "The probe is"), h("select", { id: "mqtt-probe" }, PLACES.map(([value, words]) => h("option", { value }, words)))),
  h("div", {}, h("label", { for: "mqtt-unit" }, "Unit"), h("select", { id: "mqtt-unit" }, h("option", { value: "C" }, "°C"), h("option", { value: "F" }, "°F"))),
  h("div", {}, h("label", { for: "mqtt-version" }, "MQTT"), h("select", { id: "mqtt-version" }, h("option", { value: "3.1.1" }, "3.1.1"), h("option", { value: "5" }, "5"))),
  h("button", { class: "quiet-button all" }, "Connect"));
  const file = h("input", { id: "log-file", type: "file", accept: ".csv,text/csv,text/plain", onchange: async () => {
    if (file.files[0]) note.textContent = await acts.upload(cook.id, file.files[0]);
    file.value = "";
  } });
  return h("section", { class: "block no-print", "aria-labelledby": "source-title" }, h("details", {}, h("summary", { id: "source-title" }, "Other thermometers (MQTT, log file), and the record"),
    h("ul", { class: "happened", id: "sources" }), form, note,
    h("div", { class: "field" }, h("label", { for: "log-file" }, "Log of a thermometer (CSV), from when the meat went in"), file),
    h("p", { class: "row" }, h("a", { href: "/api/cooks/" + cook.id + "/record.html", target: "_blank" }, "Record for the file"), h("a", { href: "/api/cooks/" + cook.id + "/log.csv", download: "cook.csv" }, "Record as a table (CSV)"), h("a", { href: "/api/cooks/" + cook.id + "/log.json", download: "cook.json" }, "Whole record (JSON)"))));
}

export function sources(cook, acts) {
  return (cook.sources ?? []).map(source => h("li", {}, h("span", {}, source.words),
    h("button", { type: "button", class: "say", "aria-label": "Remove: " + source.words, onclick: () => acts.disconnect(cook.id, source.number) }, "Remove")));
}
