// Keeps the files of the live page at hand, so that it opens again without the network. Data are never kept here.
const STORE = "live-2";
const FILES = ["/live.html", "/live.css", "/style.css", "/icon.svg", "/live.js", "/live-view.js", "/live-tell.js", "/live-start.js", "/live-chart.js", "/live-fronts.js", "/fronts.js",
  "/live-alarm.js", "/live-queue.js", "/dom.js", "/words.js"];

addEventListener("install", event => event.waitUntil(caches.open(STORE).then(store => store.addAll(FILES)).then(() => skipWaiting())));
addEventListener("activate", event => event.waitUntil(
  caches.keys().then(names => Promise.all(names.filter(name => name !== STORE).map(name => caches.delete(name)))).then(() => clients.claim())));

addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || !FILES.includes(url.pathname)) return;
  event.respondWith(fetch(event.request).then(async answer => {
    if (answer.ok) (await caches.open(STORE)).put(url.pathname, answer.clone());
    return answer;
  }).catch(async () => (await caches.match(url.pathname)) ?? Response.error()));
});

addEventListener("notificationclick", event => {
  event.notification.close();
  event.waitUntil(clients.matchAll({ type: "window" }).then(list => list[0] ? list[0].focus() : clients.openWindow("/live.html")));
});
