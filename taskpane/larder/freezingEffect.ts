import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import type { CellFormula } from "./cellFormula";
import { callText } from "./formulaText";

/** How strongly something lowers the freezing point, against sucrose = 1. */
export interface FreezingEffect extends CellFormula {
  readonly shows: number;
  /** One standard uncertainty of the ratio. */
  readonly uncertainty: number;
}

/** The mix in which the two are compared: so much of it, made up to 100 g with water. */
export const COMPARED_GRAMS = 10;

type Depression = { readonly kelvin: number; readonly band: number; readonly text: string };

function depressionOf(name: string, grams: number, water: number, own: Matrix | null) {
  const items = [["water"], [name]];
  const amounts = [[water], [grams]];
  const kelvin = callFunction("DEPRESSION", items, amounts, own)[0]?.[0];
  const band = callFunction("UNCERTAINTY", items, amounts, "freezing point", null, own)[0]?.[0];
  const text = callText("DEPRESSION", [items, amounts]);
  return typeof kelvin === "number" && typeof band === "number" ? { kelvin, band, text } : null;
}

function ratioOf(one: Depression | null, sucrose: Depression | null, isSucrose: boolean) {
  if (one === null || sucrose === null) return null;
  const shows = one.kelvin / sucrose.kelvin;
  // Sucrose against itself is 1 by definition; elsewhere the two curves count as known apart from each other.
  const uncertainty = isSucrose
    ? 0
    : Math.hypot(one.band, shows * sucrose.band) / Math.abs(sucrose.kelvin);
  return { formula: `=${one.text}/${sucrose.text}`, shows, uncertainty };
}

/**
 * Gram for gram of it as it is, the water in it counted: 10 g of it in 90 g of water against 10 g of sucrose in
 * 90 g of water. Null where a function declines.
 */
export function effectPerGram(name: string, own: Matrix | null = null): FreezingEffect | null {
  const water = 100 - COMPARED_GRAMS;
  const its = depressionOf(name, COMPARED_GRAMS, water, own);
  const sucrose = depressionOf("sucrose", COMPARED_GRAMS, water, null);
  return ratioOf(its, sucrose, name === "sucrose");
}

/**
 * Per gram of what is dissolved in it: the same 10 g of it against as much sucrose as it holds of dissolved
 * matter, in the same water. Null where it is nearly all dissolved matter, or holds next to none.
 */
export function effectPerDissolvedGram(
  name: string,
  own: Matrix | null = null,
): FreezingEffect | null {
  const inIt = (component: string) => {
    const grams = callFunction("COMPONENT", name, COMPARED_GRAMS, component, own)[0]?.[0];
    return typeof grams === "number" ? Number(grams.toPrecision(4)) : 0;
  };
  const [dissolved, water] = [inIt("dissolved"), inIt("water")];
  if (dissolved < 0.01 * COMPARED_GRAMS || dissolved > 0.95 * COMPARED_GRAMS) return null;
  const its = depressionOf(name, COMPARED_GRAMS, 100 - COMPARED_GRAMS, own);
  return ratioOf(
    its,
    depressionOf("sucrose", dissolved, 100 - COMPARED_GRAMS + water, null),
    false,
  );
}
