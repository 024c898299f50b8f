// What was entered and not sent yet goes along when the page opens anew in another language.
const KEY = "entries";

/** Takes what is entered when the language turns, and gives back what the page before this one took. */
export function carry(take, give) {
  addEventListener("language-turns", () => sessionStorage.setItem(KEY, JSON.stringify({ page: location.pathname, entries: take() })));
  const kept = sessionStorage.getItem(KEY);
  sessionStorage.removeItem(KEY);
  if (kept && JSON.parse(kept).page === location.pathname) give(JSON.parse(kept).entries);
}

const controls = () => [...document.querySelectorAll("main :is(input:not([type=file]), select, textarea)")].filter(control => nameOf(control));
const isBox = control => ["radio", "checkbox"].includes(control.type);
const nameOf = control => control.id || control.name ? [control.form?.id ?? "", control.id || control.name, isBox(control) ? control.value : ""].join("/") : "";

const takeAll = () => Object.fromEntries(controls().map(control => [nameOf(control), isBox(control) ? control.checked : control.value]));

function giveAll(entries) {
  for (const control of controls()) {
    const value = entries[nameOf(control)];
    if (value === undefined) continue;
    if (isBox(control)) control.checked = value;
    else control.value = value;
  }
}

let isReady = false;

/** Says that the page is there; the first time it gets its entries back. */
export function ready() {
  document.documentElement.dataset.ready = "yes";
  if (!isReady) carry(takeAll, giveAll);
  isReady = true;
}
