// Keeps the files of the pages at hand, so that they open without the network. What /api answers is never kept here.
// The server puts a hash of the files in place of the version: other files make another worker and another store.
const STORE = "pages-@VERSION@";
const FILES = ["/", "/app.js", "/app.webmanifest", "/dom.js", "/entries.js", "/form.js", "/fronts-draw.js", "/fronts.js", "/icon.svg", "/live-alarm.js", "/live-chart.js", "/live-fronts.js",
  "/live-link.js", "/live-queue.js", "/live-start.js", "/live-tell.js", "/live-view.js", "/live.css", "/live.html", "/live.js", "/notebook.css", "/notebook.html",
  "/notebook.js", "/offers.js", "/offline.js", "/own.js", "/result.js", "/saved.js", "/say.js", "/shapes.js", "/stages.js", "/style.css", "/trials.html", "/trials.js", "/ways.js", "/whatif.js", "/words-de.json",
  "/words-en.json", "/words.js"];

addEventListener("install", event => event.waitUntil(
  caches.open(STORE).then(store => store.addAll(FILES.map(file => new Request(file, { cache: "reload" })))).then(() => skipWaiting())));

addEventListener("activate", event => event.waitUntil(
  caches.keys().then(names => Promise.all(names.filter(name => name !== STORE && (name.startsWith("pages-") || name.startsWith("live-"))).map(name => caches.delete(name)))).then(() => clients.claim())));

addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin || !FILES.includes(url.pathname) || event.request.cache === "reload") return;
  event.respondWith(caches.open(STORE).then(store => store.match(url.pathname)).then(kept => kept ?? fetch(event.request)));
});

addEventListener("notificationclick", event => {
  event.notification.close();
  event.waitUntil(clients.matchAll({ type: "window" }).then(list => list[0] ? list[0].focus() : clients.openWindow("/live.html")));
});
