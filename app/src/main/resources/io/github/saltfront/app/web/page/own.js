// A piece of own shape and size, and a meat that is not in the catalog.
import { h } from "./dom.js";
import { say } from "./say.js";
import { bodyPicture } from "./shapes.js";

/** The lengths that a shape needs. */
const SIDES = { slab: ["thickness"], box: ["length", "width", "thickness"], cylinder: ["diameter", "length"], sphere: ["diameter"], ellipsoid: ["length", "width", "thickness"] };
const SHAPES = [["", say("own.as-usual")], ...Object.keys(SIDES).map(kind => [kind, say("own." + kind)])];
const NAMES = ["thickness", "width", "length", "diameter"];

let inputs;

export function shapeFields(theInputs, { text, choice }) {
  inputs = theInputs;
  const kind = choice("shape.kind", say("own.shape"), SHAPES, say("own.shape.hint"));
  const sides = NAMES.map(side => text("shape." + side, say("own." + side), say("own." + side + ".hint")));
  kind.append(h("div", { id: "shape-picture" }));
  kind.addEventListener("change", showShape);
  return [kind, h("div", { class: "two" }, sides)];
}

export function showShape() {
  const kind = inputs.get("shape.kind").value;
  for (const side of NAMES) inputs.get("shape." + side).closest(".field").hidden = !SIDES[kind]?.includes(side);
  inputs.get("thickness").closest(".field").hidden = kind !== "";
  document.getElementById("measure").hidden = kind !== "";
  document.getElementById("shape-picture").replaceChildren(...(kind ? [bodyPicture(kind)] : []));
}

export function meatFields({ text, choice }, catalog) {
  const species = [...new Set(catalog.cuts.map(c => c.species))];
  const part = name => text("meat." + name, say("own." + name), say("own." + name + ".hint"));
  return h("div", { id: "own-meat", hidden: true },
    h("p", { class: "hint" }, say("own.about")),
    h("div", { class: "two" }, ...["water", "protein"].map(part)),
    h("div", { class: "two" }, ...["fat", "ash"].map(part)),
    choice("meat.species", say("own.species"), species.map(name => [name, say("species." + name)]), say("own.species.hint")));
}

/** Whether an answer counts: that of another shape, or of another kind of meat, is left out. */
export function counts(key, isOwn) {
  const kind = inputs.get("shape.kind").value;
  if (key.startsWith("meat.")) return isOwn;
  if (key === "cut") return !isOwn;
  if (key === "thickness") return kind === "";
  if (key === "shape.kind") return kind !== "";
  return !key.startsWith("shape.") || Boolean(SIDES[kind]?.includes(key.slice(6)));
}
