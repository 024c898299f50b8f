// Readings typed here wait until the program has said that it keeps them: through a lost network, a reload and a flat battery.
import { ask } from "./dom.js";

const KEY = "live-queue";
let sending = false;
let onChange = () => {};

const load = () => { try { return JSON.parse(localStorage.getItem(KEY)) ?? []; } catch { return []; } };
const store = list => localStorage.setItem(KEY, JSON.stringify(list));

export const waiting = cook => load().filter(item => !cook || item.cook === cook);
export function hearQueue(listener) { onChange = listener; }

export function enqueue(cook, reading) {
  store([...load(), { cook, id: crypto.getRandomValues(new Uint32Array(2)).join("-"), reading }]);
  onChange();
  return send();
}

function remove(items) {
  const gone = new Set(items.map(item => item.id));
  store(load().filter(item => !gone.has(item.id)));
  onChange();
}

// sends what waits, cook by cook; what is refused is told once and dropped
export async function send() {
  if (sending) return "";
  sending = true;
  let words = "";
  try {
    const cooks = new Set(load().map(item => item.cook));
    for (const cook of cooks) {
      const items = load().filter(item => item.cook === cook);
      try {
        const answer = await ask("POST", "/api/cooks/" + cook + "/readings", items.map(item => item.reading));
        remove(items);
        words = answer.problems.map(p => p.message).join(" ");
      } catch (trouble) {
        if (trouble.status === 0 || trouble.status >= 500 || trouble.status === 401) continue; // later
        remove(items);
        words = trouble.message;
      }
    }
  } finally {
    sending = false;
  }
  return words;
}

addEventListener("online", send);
document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
setInterval(() => { if (load().length) send(); }, 5000);
