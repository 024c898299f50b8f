// Sound, vibration, a message over other programs, and a screen that stays on. Browsers give each of them only on their own terms.
let audio = null, ringing = null, lock = null, told = new Set();

export const canRing = () => audio?.state === "running";
export const canNotify = () => "Notification" in window && isSecureContext;
export const mayNotify = () => canNotify() && Notification.permission === "granted";
export const canStayOn = () => "wakeLock" in navigator;
export const staysOn = () => lock !== null && !lock.released;

// must be called from a tap
export async function allow() {
  audio ??= new AudioContext();
  await audio.resume();
  beep(0.15);
  if (canNotify() && Notification.permission === "default") await Notification.requestPermission().catch(() => {});
  await stayOn();
}

export async function stayOn() {
  if (!canStayOn() || document.hidden || staysOn()) return;
  try { lock = await navigator.wakeLock.request("screen"); } catch { lock = null; }
}
document.addEventListener("visibilitychange", stayOn);

function tone(at, pitch, length, loud) {
  const sound = audio.createOscillator(), gain = audio.createGain();
  sound.type = "square";
  sound.frequency.value = pitch;
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(loud, at + .02);
  gain.gain.setValueAtTime(loud, at + length - .04);
  gain.gain.linearRampToValueAtTime(0, at + length);
  sound.connect(gain).connect(audio.destination);
  sound.start(at);
  sound.stop(at + length);
}

function beep(loud) {
  if (!canRing()) return;
  const t = audio.currentTime + .03;
  tone(t, 740, .18, loud);
  tone(t + .22, 988, .3, loud);
}

// browsers allow it after the first tap only
const vibrate = pattern => { if (navigator.userActivation?.hasBeenActive) navigator.vibrate?.(pattern); };

function ringOnce() {
  if (canRing()) { beep(.4); beep(.4); const t = audio.currentTime + .7; tone(t, 988, .18, .4); tone(t + .22, 1319, .45, .4); }
  vibrate([400, 150, 400, 150, 700]);
}

// rings as long as an urgent alarm is open; another one is told once
export function ring(alarms) {
  const urgent = alarms.filter(alarm => alarm.urgent);
  document.documentElement.dataset.ringing = urgent.length ? "yes" : "no";
  for (const alarm of alarms) {
    if (told.has(alarm.number)) continue;
    told.add(alarm.number);
    if (mayNotify()) notify(alarm);
    if (!alarm.urgent) { beep(.25); vibrate(300); }
  }
  if (urgent.length && ringing === null) {
    ringOnce();
    ringing = setInterval(ringOnce, 2500);
  } else if (!urgent.length && ringing !== null) {
    clearInterval(ringing);
    ringing = null;
    vibrate(0);
  }
}

async function notify(alarm) {
  const options = { body: alarm.text, tag: "alarm-" + alarm.number, requireInteraction: alarm.urgent, icon: "/icon.svg" };
  try {
    const worker = await navigator.serviceWorker?.getRegistration("/live.html");
    if (worker) await worker.showNotification("Saltfront", options);
    else new Notification("Saltfront", options);
  } catch { /* the page itself rings */ }
}
