// A piece of own shape and size, and a meat that is not in the catalog.
import { h } from "./dom.js";
import { bodyPicture } from "./shapes.js";

/** The lengths that a shape needs. */
const SIDES = { slab: ["thickness"], box: ["length", "width", "thickness"], cylinder: ["diameter", "length"], sphere: ["diameter"], ellipsoid: ["length", "width", "thickness"] };
const SHAPES = [["", "As usual for the cut"], ["slab", "Flat: much wider than thick"], ["box", "A block with three sides"], ["cylinder", "A roll or a log"], ["sphere", "A ball"], ["ellipsoid", "An egg, long and rounded"]];
const NAMES = { thickness: ["Thickness of it", "The shortest side, such as 45 mm"], width: ["Width", "Such as 9 cm or 3 1/2 in"], length: ["Length", "The longest side. A roll: empty for a long one."], diameter: ["Diameter", "Straight across at its thickest place"] };

let inputs;

export function shapeFields(theInputs, { text, choice }) {
  inputs = theInputs;
  const kind = choice("shape.kind", "Shape of one piece", SHAPES, "Give your own measures where the piece is not cut as usual. They replace the thickness above.");
  const sides = Object.entries(NAMES).map(([side, [label, hint]]) => text("shape." + side, label, hint));
  kind.append(h("div", { id: "shape-picture" }));
  kind.addEventListener("change", showShape);
  return [kind, h("div", { class: "two" }, sides)];
}

export function showShape() {
  const kind = inputs.get("shape.kind").value;
  for (const side of Object.keys(NAMES)) inputs.get("shape." + side).closest(".field").hidden = !SIDES[kind]?.includes(side);
  inputs.get("thickness").closest(".field").hidden = kind !== "";
  document.getElementById("measure").hidden = kind !== "";
  document.getElementById("shape-picture").replaceChildren(...(kind ? [bodyPicture(kind)] : []));
}

export function meatFields({ text, choice }, catalog) {
  const species = [...new Set(catalog.cuts.map(c => c.species))];
  return h("div", { id: "own-meat", hidden: true },
    h("p", { class: "hint" }, "From the label or a table of foods, for 100 g of raw meat. Choose its shape below too."),
    h("div", { class: "two" }, text("meat.water", "Water", "Such as 72 %"), text("meat.protein", "Protein", "Such as 21 %")),
    h("div", { class: "two" }, text("meat.fat", "Fat", "Such as 6 %"), text("meat.ash", "Minerals", "Empty: 1 %")),
    choice("meat.species", "Most like", species.map(s => [s, s.charAt(0).toUpperCase() + s.slice(1)]), "Decides the official rules and how salt and heat move."));
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
