// The words of the pages in the language of the cook, and numbers as that language writes them.
const SPOKEN = ["en", "de"];
const TURNED = "language-turned";

export const language = choose();
export const locale = language;

const plural = new Intl.PluralRules(locale);
const formats = new Map();
const words = await load(language);

function choose() {
  const told = localStorage.getItem("language");
  if (SPOKEN.includes(told)) return told;
  return navigator.languages.map(name => name.slice(0, 2).toLowerCase()).find(name => SPOKEN.includes(name)) ?? "en";
}

async function load(name) {
  try {
    const answer = await fetch("/words-" + name + ".json");
    if (!answer.ok) throw new Error("answered with " + answer.status);
    return await answer.json();
  } catch (trouble) {
    console.error("no words in " + name + ": " + trouble.message);
    return name === "en" ? {} : load("en");
  }
}

function textOf(key) {
  if (words[key] === undefined) console.error("no words for " + key + " in " + language);
  return words[key];
}

const slot = (key, slots, name) => {
  if (slots[name] === undefined) console.error("no slot " + name + " for " + key);
  return typeof slots[name] === "number" ? figure(slots[name]) : slots[name] ?? "";
};

/** The text of a key, with its slots filled; a number in a slot is written as the language does. */
export function say(key, slots = {}) {
  return (textOf(key) ?? key).replace(/\{([a-z]+)\}/g, (_, name) => slot(key, slots, name));
}

/** The same as a list of texts and whatever the slots hold, such as elements. */
export function parts(key, slots) {
  return (textOf(key) ?? key).split(/\{([a-z]+)\}/).map((part, i) => i % 2 ? slot(key, slots, part) : part);
}

/** The form of a key for a number, such as KEY.one or KEY.other; the number is in the slot n. */
export const sayCount = (key, n, slots = {}) => say(key + "." + plural.select(n), { n, ...slots });
export const countParts = (key, n, slots = {}) => parts(key + "." + plural.select(n), { n, ...slots });

/** A number with so many digits after the decimal sign. */
export function number(x, digits) {
  return format(digits, digits).format(x);
}

/** A number with the digits that it has, two after the decimal sign at most. */
export function figure(x) {
  return format(0, 2).format(x);
}

function format(least, most) {
  const key = least + "-" + most;
  // thousands are set apart from 10000 on
  if (!formats.has(key)) formats.set(key, new Intl.NumberFormat(locale, { minimumFractionDigits: least, maximumFractionDigits: most, useGrouping: "min2" }));
  return formats.get(key);
}

/** A name in the middle of a sentence or of a list: German nouns stay as they are. */
export const inSentence = name => language === "en" ? name.toLowerCase() : name;

/** The address of something that the server words, for links and streams, which carry no header. */
export const withLanguage = path => path + (path.includes("?") ? "&" : "?") + "language=" + language;

/** Keeps a language and opens the page anew in it; who holds entries keeps them at "language-turns". */
export function setLanguage(name) {
  localStorage.setItem("language", name);
  sessionStorage.setItem(TURNED, "yes");
  dispatchEvent(new Event("language-turns"));
  location.reload();
}

/** Puts the words into what the page brings along, and sets its switch of the language. */
export function dress(root) {
  document.documentElement.lang = language;
  const each = (name, put) => root.querySelectorAll("[data-" + name + "]").forEach(element => {
    const text = textOf(element.getAttribute("data-" + name));
    if (text !== undefined) put(element, text);
  });
  each("say", (element, text) => { element.textContent = text; });
  each("say-label", (element, text) => element.setAttribute("aria-label", text));
  each("say-title", (element, text) => { element.title = text; });
  each("say-content", (element, text) => { element.content = text; });
  for (const link of root.querySelectorAll("a[data-worded]")) link.href = withLanguage(link.getAttribute("href"));
  setSwitch(document.getElementById("language"));
}

function setSwitch(list) {
  list.value = language;
  list.addEventListener("change", () => setLanguage(list.value));
  if (sessionStorage.getItem(TURNED)) list.focus();
  sessionStorage.removeItem(TURNED);
}
