import { higherSaccharides } from "../catalogue/higherSaccharides";
import type { Solute, SoluteKind } from "../catalogue/solute";
import type { HeldWaterCurve } from "../engine/heldWaterCurve";

/** What is dissolved, as a mix needs to know it: a solute of the catalogue, or a syrup's long saccharides. */
export interface Substance {
  readonly name: string;
  readonly kind: SoluteKind;
  /** Null for the higher saccharides of a syrup, which stand for many. */
  readonly solute: Solute | null;
  readonly food: boolean;
  readonly molarMassGPerMol: number;
  readonly particles: number; // the i of the ideal law
  readonly curve: HeldWaterCurve;
  readonly checkedToC: number;
  /** One standard uncertainty of the depression it causes, as a share of it. */
  readonly relativeUncertainty: number;
  readonly sweetness: number | null; // sucrose = 1, gram for gram; null when not known
  readonly glassTransitionDryC: number | null;
  readonly gordonTaylor: number | null;
  readonly maxFreezeTemperatureC: number | null;
  readonly maxFreezeSolidsFraction: number | null;
}

const ofSolutes = new Map<Solute, Substance>();
const ofLength = new Map<number, Substance>();
const LENGTHS_KEPT = 500;

/** A solute of the catalogue as a substance; not for hydrates, which give another solute and water. */
export function substanceOf(solute: Solute): Substance {
  const known = ofSolutes.get(solute);
  if (known !== undefined) return known;
  const { name, kind, food, curve, curveRecord } = solute;
  const substance: Substance = {
    ...{ name, kind, solute, food, curve },
    molarMassGPerMol: solute.molarMass.value,
    particles: solute.vantHoff.value,
    checkedToC: curveRecord.checkedToC,
    relativeUncertainty: curveRecord.relativeUncertainty,
    sweetness: solute.sweetness?.value ?? (TASTELESS.includes(kind) ? 0 : null),
    glassTransitionDryC: solute.glassTransitionDry?.value ?? null,
    gordonTaylor: solute.gordonTaylor?.value ?? null,
    maxFreezeTemperatureC: solute.maxFreezeTemperature?.value ?? null,
    maxFreezeSolidsFraction: solute.maxFreezeSolids?.value ?? null,
  };
  ofSolutes.set(solute, substance);
  return substance;
}

/** Kinds that have no sweetness to speak of: nothing is missing when the catalogue states none. */
const TASTELESS: readonly SoluteKind[] = [
  "salt",
  "acid",
  "alcohol",
  "lumped",
  "saccharide polymer",
  "other",
];

/** The saccharides above maltose of a syrup whose number-average molar mass this is. */
export function higherSaccharidesOf(molarMassGPerMol: number): Substance {
  const known = ofLength.get(molarMassGPerMol);
  if (known !== undefined) return known;
  const figures = higherSaccharides(molarMassGPerMol);
  const substance: Substance = {
    name: "higher saccharides",
    kind: "saccharide polymer",
    solute: null,
    food: true,
    molarMassGPerMol,
    particles: 1,
    curve: figures.curve,
    checkedToC: 0,
    relativeUncertainty: figures.relativeUncertainty,
    sweetness: 0,
    glassTransitionDryC: figures.glassTransitionDry.value,
    gordonTaylor: figures.gordonTaylor.value,
    maxFreezeTemperatureC: figures.maxFreezeTemperature.value,
    maxFreezeSolidsFraction: figures.maxFreezeSolids.value,
  };
  if (ofLength.size >= LENGTHS_KEPT) ofLength.clear();
  ofLength.set(molarMassGPerMol, substance);
  return substance;
}
