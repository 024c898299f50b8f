// Handles on the ends of the stages: dragged or moved by arrow keys, the rest of the day follows.
import { ask, h } from "./dom.js";
import { clockAt, WORDS } from "./fronts-draw.js";
import { say } from "./say.js";
import { clockTime, dayOf, duration, interval, plain, round, temperature } from "./words.js";

const STEPS = [[6 * 3600, 900], [90 * 60, 300], [20 * 60, 60], [0, 15]];
const stepOf = seconds => STEPS.find(([from]) => seconds >= from)[1];
const lasting = seconds => seconds < 600 ? Math.floor(seconds / 60) + " min" + (Math.round(seconds % 60) ? " " + Math.round(seconds % 60) + " s" : "") : duration(seconds / 60);
const share = x => Math.min(100, Math.round(100 * x)) + " %";

const ROWS = [
  ["served", d => say("stages.served-at", { clock: clockTime(d.served), day: dayOf(d.served) })],
  ["out", d => temperature(d.pull_temperature_c, 1)],
  ["takes", d => interval(d.time_to_pull_min, x => duration(x))],
  ["climbs", d => interval(d.peak_core_temperature_c, x => temperature(x, 1))],
  ["salt-middle", d => interval(d.stages.at(-1).salt_core_pct, x => round(x, 2) + " %")],
  ["salt-mean", d => interval(d.stages.at(-1).salt_mean_pct, x => round(x, 2) + " %")],
  ["weight", d => interval(d.stages.at(-1).weight_pct, x => round(x, 0) + " %")],
  ["hold", d => say("stages.at-least", { share: share(d.stages.at(-1).kill_share_of_hold.low) })]];

/** The request whose plan has about these stages, or null where a request cannot say them. */
function requestOf(request, plan, base, day, lengths) {
  const changed = structuredClone(request), kinds = base.stages.map(x => x.kind), minutes = s => Math.round(s / 60) + " min";
  let before = 0, after = 0, said = false;
  for (const [i, kind] of kinds.entries()) {
    const moved = Math.abs(lengths[i] - base.stages[i].planned_s) >= 1;
    const step = kind === "heat-before" ? changed.before?.[before++] : kind === "heat-after" ? changed.after?.[after++] : null;
    if (!moved || (kind === "heat" && plan.cooking.appliance === "water-bath")) continue;
    said = true;
    if (kind === "soak" || kind === "dry-salt") changed.salting = { ...changed.salting, treatment: plan.salting.treatment, time: minutes(lengths[i]) };
    else if (kind === "rest") changed.rest = { ...changed.rest, time: minutes(lengths[i]) };
    else if (kind === "heat") changed.taste = { ...changed.taste, core: plain(day.peak_core_temperature_c.median, 1) + " °C" };
    else if (step) step.time = lengths[i] < 600 ? lasting(lengths[i]) : minutes(lengths[i]);
  }
  return said ? changed : null;
}

/**
 * Sets handles on a picture. show(view) draws it: { day } as planned, or { f, day, ghost, quick } while something is moved.
 */
export function stageHandles(canvas, plan, request, show, take) {
  const panel = h("div", { class: "stages no-print", hidden: true }), body = h("tbody"), note = h("p", { class: "status", role: "status" });
  const verdict = h("p", { class: "verdict" }), handles = [];
  const takeButton = h("button", { type: "button", class: "quiet-button", onclick: () => { const wanted = requestOf(request, plan, base, day, lengths); if (wanted) take(wanted); } }, say("stages.take"));
  const back = h("button", { type: "button", class: "quiet-button", onclick: () => { lengths = planned(); day = base; settle(); handles[0].focus(); } }, say("stages.back"));
  const buttons = h("div", { class: "row" }, takeButton, back);
  let base, day, lengths, picture, dragged = null, asking = false, again = false;
  const planned = () => base.stages.map(x => x.planned_s);
  const isMoved = () => lengths.some((x, i) => Math.abs(x - base.stages[i].planned_s) >= 1);

  function fill() {
    body.replaceChildren(...ROWS.map(([name, tell]) => {
      const was = tell(base), is = tell(day);
      return h("tr", {}, h("th", { scope: "row" }, say("stages." + name)), h("td", {}, was === is ? is : [h("span", { class: "was" }, h("span", { class: "unseen" }, say("stages.was") + " "), was), " ", h("strong", {}, h("span", { class: "unseen" }, say("stages.now") + " "), is)]));
    }));
    verdict.className = "verdict" + (day.predicted_met ? "" : " bad");
    verdict.replaceChildren(h("span", { "aria-hidden": "true" }, day.predicted_met ? "✓" : "✕"), h("span", {}, day.headline));
    panel.hidden = !isMoved();
    takeButton.hidden = !isMoved() || requestOf(request, plan, base, day, lengths) === null;
  }

  function settle() {
    fill();
    if (isMoved()) show({ f: day.fronts, day, ghost: true });
    else show({ day: base });
    note.textContent = isMoved() ? say("stages.note", { clock: clockTime(day.served), temperature: temperature(day.pull_temperature_c, 1), headline: day.headline }) : say("stages.as-planned");
  }

  async function ask1() {
    if (asking) { again = true; return; }
    asking = true;
    do {
      again = false;
      try {
        const asked = performance.now(), answer = await ask("POST", "/api/stages", { request, lengths_s: lengths });
        if (!canvas.isConnected) return;
        day = answer;
        canvas.dataset.answered = Math.round(performance.now() - asked);
        if (dragged === null && !again) settle();
        else { fill(); show({ f: day.fronts, day, ghost: true, quick: true }); }
        canvas.dataset.drawn = Math.round(performance.now() - asked);
      } catch (trouble) {
        note.textContent = trouble.message;
        panel.hidden = false;
      }
    } while (again);
    asking = false;
  }

  function limits(i) {
    const x = base.stages[i];
    return [x.shortest_s, Math.min(x.longest_s, Math.max(3 * x.planned_s, x.shortest_s))];
  }

  function set(i, seconds) {
    const [low, high] = limits(i), step = stepOf(base.stages[i].planned_s);
    const near = Math.abs(seconds - base.stages[i].planned_s) < step / 2 ? base.stages[i].planned_s : Math.round(seconds / step) * step;
    const value = Math.min(high, Math.max(low, near));
    if (value === lengths[i]) return;
    lengths = lengths.with?.(i, value) ?? lengths.map((x, k) => k === i ? value : x);
    tell(i);
    ask1();
  }

  function tell(i) {
    const [low, high] = limits(i), handle = handles[i], end = lengths.slice(0, i + 1).reduce((a, b) => a + b, 0);
    handle.setAttribute("aria-valuemin", plain(low / 60, 1));
    handle.setAttribute("aria-valuemax", plain(high / 60, 1));
    handle.setAttribute("aria-valuenow", plain(lengths[i] / 60, 1));
    const f = day?.fronts ?? base.fronts, stage = f.stages[i];
    handle.setAttribute("aria-valuetext", say("stages.lasts", { time: lasting(lengths[i]), clock: clockAt({ stages: [{ ...stage, start_s: end - lengths[i] }] }, end).clock }));
    handle.title = (WORDS[stage.kind] ?? stage.kind) + ": " + lasting(lengths[i]);
  }

  function makeHandle(stage, i) {
    let from, length, perPixel;
    const handle = h("div", { class: "handle", role: "slider", tabindex: "0", "aria-label": say("stages.end-of", { stage: WORDS[stage.kind] ?? stage.kind }),
      onkeydown: event => {
        const step = stepOf(base.stages[i].planned_s), [low, high] = limits(i);
        const to = { ArrowRight: lengths[i] + step, ArrowUp: lengths[i] + step, ArrowLeft: lengths[i] - step, ArrowDown: lengths[i] - step, PageUp: lengths[i] + 5 * step, PageDown: lengths[i] - 5 * step, Home: low, End: high,
          Escape: base.stages[i].planned_s }[event.key];
        if (to === undefined) return;
        event.preventDefault();
        set(i, to);
      },
      onpointerdown: event => {
        event.stopPropagation();
        event.preventDefault();
        handle.focus();
        handle.setPointerCapture(event.pointerId);
        const part = picture.scale.of(lengths.slice(0, i + 1).reduce((a, b) => a + b, 0));
        [dragged, from, length, perPixel] = [i, event.clientX, lengths[i], (part[1] - part[0]) / (part[3] - part[2]) * picture.node.viewBox.baseVal.width / picture.node.getBoundingClientRect().width];
      },
      onpointermove: event => {
        event.stopPropagation();
        if (dragged === i) set(i, length + (event.clientX - from) * perPixel);
      },
      onpointerup: () => drop(), onpointercancel: () => drop() });
    const drop = () => {
      if (dragged !== i) return;
      dragged = null;
      if (!asking) settle();
    };
    return handle;
  }

  function place(thePicture) {
    picture = thePicture;
    if (!base) return;
    const stages = (isMoved() ? day : base).fronts.stages, k = 100 / picture.node.viewBox.baseVal.width;
    for (const [i, handle] of handles.entries()) {
      handle.style.left = picture.scale.x(stages[i].end_s) * k + "%";
      tell(i);
    }
  }

  async function start() {
    try {
      base = await ask("POST", "/api/stages", { request });
    } catch {
      return; // the picture is there without its handles
    }
    if (!canvas.isConnected) return;
    day = base;
    lengths = planned();
    handles.push(...base.stages.map(makeHandle));
    canvas.after(h("div", { class: "handles no-print", role: "group", "aria-label": say("stages.ends") }, handles));
    show({ day: base });
    fill();
    canvas.dataset.ready = "yes";
  }

  panel.append(h("h3", {}, say("stages.title")), h("p", { class: "hint" }, say("stages.about")),
    verdict, h("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": say("stages.changes") }, h("table", {}, h("caption", { class: "unseen" }, say("stages.changes")), body)), h("p"), buttons);
  return { panel, note, place, start };
}
