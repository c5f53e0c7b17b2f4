import { a1, put, shown, span, type CorpusSheet, type Spot } from "./book";
import { trueValue, type MarkedRecipe, type States } from "./marks";
import type { Language } from "./stock";

export interface ResultPlan {
  readonly states: States;
  readonly as: "typed" | "formula";
  /** The temperature, for ice: named in the label when typed, read from `temperature` by a formula. */
  readonly temperatureC?: number;
  readonly temperature?: Spot;
  /** Per cent as a plain number, or a fraction shown by its number format. */
  readonly percent?: "number" | "format";
  readonly decimals?: number;
  /** Which of the usual wordings. */
  readonly wording?: number;
  readonly format?: string;
}

type Wordings = Readonly<Record<Language, readonly [string, string]>>;

const LABELS: Readonly<Record<States, Wordings>> = {
  "freezing point": {
    en: ["Freezing point (°C)", "Freezing point, °C"],
    de: ["Gefrierpunkt (°C)", "Gefrierpunkt in °C"],
  },
  depression: {
    en: ["Freezing-point depression (K)", "Depression, K"],
    de: ["Gefrierpunktserniedrigung (K)", "Gefrierpunktserniedrigung in K"],
  },
  "ice of water": {
    en: ["Share of the water frozen {t} (%)", "Water frozen {t}, %"],
    de: ["Anteil des Wassers gefroren {t} (%)", "Ausgefrorenes Wasser {t} (%)"],
  },
  "ice of mix": {
    en: ["Ice, share of the mix, {t} (%)", "Ice in the mix {t} (%)"],
    de: ["Eis, Anteil der Mischung, {t} (%)", "Eisanteil der Mischung {t} (%)"],
  },
  water: {
    en: ["Water in the mix (g)", "Total water, g"],
    de: ["Wasser in der Mischung (g)", "Wasser gesamt in g"],
  },
  dissolved: {
    en: ["Dissolved solids (g)", "Solids in solution, g"],
    de: ["Gelöste Feststoffe (g)", "Gelöste Stoffe in g"],
  },
  alcohol: {
    en: ["Alcohol (g)", "Pure alcohol, g"],
    de: ["Alkohol (g)", "Reiner Alkohol in g"],
  },
  "sugar per 100 g water": {
    en: ["Sugars, g per 100 g water", "Sugars (g/100 g water)"],
    de: ["Zucker, g je 100 g Wasser", "Zucker (g/100 g Wasser)"],
  },
  "sugar share": {
    en: ["Sugars, share of the mix (%)", "Sugars in the mix, % by mass"],
    de: ["Zucker, Anteil der Mischung (%)", "Zucker in der Mischung, Massen-%"],
  },
};

const SERVED = { en: "at serving temperature", de: "bei Serviertemperatur" } as const;
const AT = { en: "at", de: "bei" } as const;

const isShare = (states: States): boolean => /^ice|share/.test(states);

/** The words for a result, its unit with them. */
export function labelFor(plan: ResultPlan, language: Language): string {
  const { states, temperatureC, temperature, percent, wording = 0 } = plan;
  const served =
    temperature === undefined ? `${AT[language]} ${temperatureC} °C` : SERVED[language];
  const label = LABELS[states][language][wording % 2]!.replace("{t}", served.replace("-", "−"));
  return percent === "format" ? label.replace(/ \(%\)|, %$/, "") : label;
}

const CALLS: Readonly<Record<States, (lines: string, at: string) => string>> = {
  "freezing point": (lines) => `RIME.FREEZINGPOINT(${lines})`,
  depression: (lines) => `RIME.DEPRESSION(${lines})`,
  "ice of water": (lines, at) => `RIME.ICEFRACTION(${lines},${at},"water")`,
  "ice of mix": (lines, at) => `RIME.ICEFRACTION(${lines},${at},"mix")`,
  water: (lines) => `RIME.COMPONENT(${lines},"water")`,
  dissolved: (lines) => `RIME.COMPONENT(${lines},"dissolved solids")`,
  alcohol: (lines) => `RIME.COMPONENT(${lines},"ethanol")`,
  "sugar per 100 g water": (lines) =>
    `100*RIME.COMPONENT(${lines},"sugars")/RIME.COMPONENT(${lines},"water")`,
  "sugar share": (lines) => `RIME.COMPONENT(${lines},"sugars")/SUM(${lines.split(",")[1]})`,
};

const fixedColumns = (range: string): string => range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

function contentFor(
  recipe: MarkedRecipe,
  plan: ResultPlan,
  linesOf: (recipe: MarkedRecipe) => string,
): number | string | null {
  const { states, as, temperature, temperatureC = null } = plan;
  const value = trueValue(recipe.made, states, temperatureC);
  if (value === null) return null;
  const scale = scaleOf(plan);
  if (as === "typed") return Number((value * scale).toFixed(decimalsOf(plan)));
  const at = temperature === undefined ? "" : fixedColumns(a1(temperature));
  const call = CALLS[states](linesOf(recipe), at);
  return scale === 1 ? `=${call}` : `=100*${call}`;
}

const scaleOf = ({ states, percent }: ResultPlan): number =>
  isShare(states) && percent !== "format" ? 100 : 1;

const decimalsOf = ({ decimals, states, percent }: ResultPlan): number =>
  isShare(states) && percent === "format" ? 3 : (decimals ?? (isShare(states) ? 1 : 2));

const formatOf = ({ format, states, percent, as }: ResultPlan): string | undefined =>
  percent === "format" && isShare(states)
    ? "0.0%"
    : (format ?? (as === "formula" ? "0.00" : undefined));

const listLines = ({ names, amounts }: MarkedRecipe): string => `${span(names)},${span(amounts)}`;

/** Writes a result at a place, under or beside a label that is there; false where there is no such number. */
export function resultAt(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  label: Spot,
  place: { readonly row: number; readonly column: number },
  plan: ResultPlan,
  linesOf: (recipe: MarkedRecipe) => string = listLines,
): boolean {
  const content = contentFor(recipe, plan, linesOf);
  if (content === null) return false;
  const format = formatOf(plan);
  const spot = put(
    sheet,
    place.row,
    place.column,
    format === undefined ? content : shown(content, format),
  );
  recipe.results.push({
    ...{ states: plan.states, spot, label, temperatureC: plan.temperatureC ?? null },
    ...{ scale: scaleOf(plan), decimals: decimalsOf(plan), typed: plan.as === "typed" },
  });
  return true;
}

export interface ResultsPlan {
  readonly row: number;
  readonly column: number;
  readonly language: Language;
  readonly plans: readonly ResultPlan[];
  /** A unit in a cell of its own, right of the number. */
  readonly unitCell?: boolean;
  /** Columns from the label to the number. */
  readonly right?: number;
}

/** Results one below the other, each with its label at the left; gives the next free row. */
export function results(sheet: CorpusSheet, recipe: MarkedRecipe, plan: ResultsPlan): number {
  const { column, language, plans, unitCell = false, right = 1 } = plan;
  let { row } = plan;
  for (const each of plans) {
    const label = labelFor(each, language);
    const unit = /^(.*?)(?: \((°C|K|%|g)\)|, (°C|K|%|g)| in (°C|K|g))$/.exec(label);
    const split = unitCell && unit !== null;
    const labelSpot = { sheet: sheet.name, row, column };
    if (!resultAt(sheet, recipe, labelSpot, { row, column: column + right }, each)) continue;
    put(sheet, row, column, split ? unit[1] : label);
    if (split) put(sheet, row, column + right + 1, unit[2] ?? unit[3] ?? unit[4]);
    row += 1;
  }
  return row;
}
