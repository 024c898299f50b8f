// Numbers as a cook reads them.
import { locale, number, say } from "./say.js";

const DAY = new Intl.DateTimeFormat(locale, { weekday: "short", day: "numeric", month: "short" });

let units = localStorage.getItem("units") ?? "metric";
export const isMetric = () => units === "metric";
export function setUnits(name) { units = name; localStorage.setItem("units", name); }
export const currentUnits = () => units;

/** To be read. */
export const round = number;
/** To be sent: with a point, whatever the language. */
export const plain = (x, digits) => Number(x).toFixed(digits);

export function mass(grams) {
  const metric = grams < 10 ? round(grams, 1) + " g" : grams < 3000 ? round(grams, 0) + " g" : round(grams / 1000, 2) + " kg";
  if (isMetric()) return metric;
  const ounces = grams / 28.349523125;
  return ounces < 32 ? round(ounces, ounces < 10 ? 2 : 1) + " oz" : round(ounces / 16, 2) + " lb";
}

export function temperature(celsius, digits = 0) {
  const fahrenheit = celsius * 1.8 + 32;
  return isMetric() ? round(celsius, digits) + " °C" : round(fahrenheit, 0) + " °F";
}

// both scales, where a thermometer may show either
export function bothTemperatures(celsius, digits = 0) {
  const c = (digits ? round(Math.ceil(celsius * 10 - .05) / 10, 1) : round(celsius, 0)) + " °C";
  // a reading to wait for is never rounded down
  const f = round(digits ? Math.ceil(celsius * 1.8 + 32 - .05) : Math.round(celsius * 1.8 + 32), 0) + " °F";
  return isMetric() ? c + " (" + f + ")" : f + " (" + c + ")";
}

export function length(mm) {
  return isMetric() ? round(mm, mm < 10 && mm % 1 ? 1 : 0) + " mm" : round(mm / 25.4, 2) + " in";
}

export function duration(minutes) {
  if (minutes < 1) return Math.round(minutes * 60) + " s";
  if (minutes < 10) return round(minutes, 0) + " min";
  if (minutes < 90) return Math.round(minutes) + " min";
  const total = Math.round(minutes / 5) * 5;
  const hours = Math.floor(total / 60);
  if (hours >= 48) return say("unit.days", { x: round(hours / 24, 1) });
  return hours + " h" + (total % 60 ? " " + (total % 60) + " min" : "");
}

export function interval(band, show) {
  const [low, middle, high] = [band.low, band.median, band.high].map(show);
  return low === high ? middle : say("unit.interval", { low, middle, high });
}

export const percent = digits => x => round(x, digits) + " %";

// the wall time as the server wrote it, whatever zone this device is in
export function clockTime(iso) { return iso.slice(11, 16); }
export function dayOf(iso) {
  const [y, m, d] = iso.slice(0, 10).split("-").map(Number);
  return DAY.format(new Date(y, m - 1, d));
}

export function localIso(date) {
  const two = n => String(Math.trunc(Math.abs(n))).padStart(2, "0");
  const offset = -date.getTimezoneOffset();
  return date.getFullYear() + "-" + two(date.getMonth() + 1) + "-" + two(date.getDate()) + "T" + two(date.getHours()) + ":"
    + two(date.getMinutes()) + (offset < 0 ? "-" : "+") + two(offset / 60) + ":" + two(offset % 60);
}

const moment = new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short" });
const date = new Intl.DateTimeFormat(locale, { dateStyle: "medium" });

/** A day and time, or a day, of this device. */
export const momentOf = time => moment.format(new Date(time));
export const dateOf = time => date.format(new Date(time));

export const TREATMENTS = Object.fromEntries(["auto", "wet-brine", "equilibrium", "dairy", "marinade", "dry-salt", "surface-salt", "none"].map(id => [id, say("treatment." + id)]));
