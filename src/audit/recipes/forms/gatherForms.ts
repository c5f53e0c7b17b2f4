import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import { isOfParticles } from "../amounts/ofParticles";
import type { Place } from "../recipeBlock";
import { bareLabel, type FormKind } from "./formLabels";
import type { Form, FormSolute } from "./form";
import { goesOnFrom } from "./goesOnFrom";
import { isSameSubstance } from "./isSameSubstance";
import { itemInLabel } from "./itemInLabel";
import type { LabelledPair } from "./labelledPairs";
import { saysAnyOfKind } from "./saysAnyOfKind";
import { soluteByLetter } from "./soluteByLetter";

const emptyForm = (): Form => ({
  ...{ solutes: [], water: null, others: [], pairs: [] },
  ...{ isOtherSolvent: false, isAboutWater: false, isWaterLast: false },
});

const soluteNamed = (item: string | null, named: LabelledPair | null): FormSolute => ({
  ...{ named, item, mass: null, details: new Map() },
});

function itemFor(context: FinderContext, form: Form, label: string): string | null {
  const isSaid = form.solutes.some(({ named }) => named !== null);
  return isSaid && saysAnyOfKind(label) ? null : itemInLabel(label, context);
}

/** "Molar mass of sodium" is that of a part of the salt, "molar mass of B" that of the second solute. */
const OF_ANOTHER =
  /\b(molar mass|mass|moles|masse|stoffmenge) (of|von) (?![a-z\d]$|(one |a |1 |einem |einer )?mole?\b|.*(solute|substance|salt|sugar|compound|particles|ions|stoff|substanz|salz|zucker|teilchen))/;

const valueAt = (sheet: WorkbookSheet, at: Place | undefined) =>
  at === undefined ? undefined : sheet.cellAt(at.row, at.column)?.value;

/** A mass said again in another unit is no new one. */
const isConversion = ({ sheet }: FinderContext, { values: [first] }: LabelledPair): boolean =>
  first !== undefined && sheet.cellAt(first.row, first.column)?.formula !== undefined;

const hasAnswer = ({ others }: Form): boolean => others.some(({ kind }) => kind === "answer");

/** Whether a pair begins another worked example. */
function beginsAnother(context: FinderContext, form: Form, pair: LabelledPair): boolean {
  const { kind } = pair;
  if (kind === "water") return form.water !== null && !isConversion(context, pair);
  if (kind !== "solute" && kind !== "mass" && kind !== "solvent") return false;
  // Water given before all is that of every substance; given after one, it ends that example's data.
  if (kind === "solute" && form.isWaterLast) return true;
  return hasAnswer(form) && !isConversion(context, pair);
}

function addMass(context: FinderContext, form: Form, pair: LabelledPair): void {
  const item = itemFor(context, form, pair.label);
  const last = soluteByLetter(form, pair.label) ?? form.solutes.at(-1);
  if (item !== null) {
    const known = form.solutes.find((one) => isSameSubstance(one.item, item) && one.mass === null);
    const solute = known ?? soluteNamed(item, null);
    if (known === undefined && isConversion(context, pair) && last !== undefined) return;
    solute.mass = pair;
    if (known === undefined) form.solutes.push(solute);
  } else if (form.isAboutWater && form.water === null) form.water = pair;
  else if (last === undefined) form.solutes.push({ ...soluteNamed(null, null), mass: pair });
  else if (last.mass === null) last.mass = pair;
}

function addSolute(context: FinderContext, form: Form, pair: LabelledPair): void {
  const [first] = pair.values;
  if (first === undefined) return;
  if (typeof valueAt(context.sheet, first) === "number") {
    addMass(context, form, pair);
    return;
  }
  form.isAboutWater = false;
  const item = chemicalName(textAt(context.sheet, first.row, first.column), context.check);
  const last = form.solutes.at(-1);
  const waits = last !== undefined && last.item === null && last.named === null ? last : undefined;
  const waiting =
    form.solutes.find((one) => isSameSubstance(one.item, item) && one.named === null) ?? waits;
  if (waiting === undefined) form.solutes.push(soluteNamed(item, pair));
  else Object.assign(waiting, { item, named: pair });
}

function addSolvent(context: FinderContext, form: Form, pair: LabelledPair): void {
  const value = valueAt(context.sheet, pair.values[0]);
  if (typeof value === "number") form.water = pair;
  else if (typeof value === "string" && !/water|wasser|h2o/i.test(value))
    form.isOtherSolvent = true;
  else form.isAboutWater = true;
}

/** One number where there are several solutes beside each other is that of all of them. */
const isOfAll = ({ solutes }: Form, { values }: LabelledPair, kind: FormKind): boolean =>
  kind === "moles" &&
  values.length === 1 &&
  solutes.some(({ mass, details }) => mass !== null && mass.values.length > 1 && details.has(kind));

/** What is worked out of the moles of a substance are moles of its particles, not how many fall out of one. */
const detailKind = ({ sheet }: FinderContext, { solutes }: Form, pair: LabelledPair): FormKind =>
  pair.kind === "particles" && goesOnFrom(sheet, pair, solutes.at(-1)?.details.get("moles"))
    ? "moles"
    : pair.kind;

function addDetail(context: FinderContext, form: Form, pair: LabelledPair): void {
  const kind = detailKind(context, form, pair);
  if (kind !== "molar mass" && kind !== "moles" && kind !== "particles") return;
  const bare = bareLabel(pair.label);
  if (/\b(water|wasser|solvent|h2o)\b/.test(bare) || isOfAll(form, pair, kind)) return;
  const item = itemFor(context, form, pair.label);
  const named =
    form.solutes.find((one) => isSameSubstance(one.item, item)) ?? soluteByLetter(form, pair.label);
  const last = form.solutes.at(-1);
  const goesOn = goesOnFrom(context.sheet, pair, last?.details.get(kind));
  if (item === null && !goesOn && OF_ANOTHER.test(bare)) return;
  if (item !== null && named === undefined) form.solutes.push(soluteNamed(item, null));
  const solute = named ?? form.solutes.at(-1) ?? soluteNamed(null, null);
  if (!form.solutes.includes(solute)) form.solutes.push(solute);
  // The sheet goes on with the moles of particles.
  const isLast = kind === "moles" && (goesOn || isOfParticles(pair.label));
  if (isLast || !solute.details.has(kind)) solute.details.set(kind, pair);
}

function addWater(form: Form, pair: LabelledPair): void {
  if (form.water !== null) return;
  form.isWaterLast = form.solutes.length > 0;
  form.water = pair;
}

function add(context: FinderContext, form: Form, pair: LabelledPair): void {
  form.pairs.push(pair);
  if (pair.kind === "solute") addSolute(context, form, pair);
  else if (pair.kind === "solvent") addSolvent(context, form, pair);
  else if (pair.kind === "mass") addMass(context, form, pair);
  else if (pair.kind === "water") addWater(form, pair);
  else if (pair.kind === "answer" || pair.kind === "constant") form.others.push(pair);
  else addDetail(context, form, pair);
}

/** Puts labelled values together to worked examples, in the order in which they stand. */
export function gatherForms(context: FinderContext, pairs: readonly LabelledPair[]): Form[] {
  const forms: Form[] = [];
  for (const pair of pairs) {
    const last = forms.at(-1);
    const form = last === undefined || beginsAnother(context, last, pair) ? emptyForm() : last;
    if (form !== last) forms.push(form);
    add(context, form, pair);
  }
  return forms;
}
