import { eachFormula } from "../../../workbook/eachFormula";
import { IDEAL_KF_K_KG_PER_MOL } from "../../../foundation/constants";
import { solutes } from "../../../catalogue/solutes";
import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import { withNumbersOf } from "./numbersElsewhere";
import { productOf, type Product } from "./productOf";

/** What a number of a class calculation is, as its formulas use it. */
export type ClassRole =
  | ("mass" | "water" | "molar mass" | "moles" | "particles" | "constant")
  | ("molality" | "depression" | "freezing point");

interface Step extends Product {
  readonly place: Place;
}

/** The cells of a calculation, and what is known of them so far. */
interface Cells {
  /** The number typed into a cell; 0 for anything else. */
  readonly typedAt: (place: Place) => number;
  readonly isInCelsius: (place: Place) => boolean;
  readonly roleOf: (place: Place) => ClassRole | undefined;
  readonly say: (place: Place | undefined, role: ClassRole) => void;
}

/** A sheet with more formulas than this is a ledger, no worked example. */
const MOST_FORMULAS = 2000;
const PASSES = 6;

export const keyOf = ({ row, column }: Place): string => `${row},${column}`;

function stepsOf({ sheet, workbook }: FinderContext): Step[] {
  const steps: Step[] = [];
  let seen = 0;
  eachFormula(sheet, (row, column, { formula }) => {
    if (formula === undefined || (seen += 1) > MOST_FORMULAS) return;
    const product = productOf(withNumbersOf(workbook, formula));
    if (product !== null && product.above.length > 0)
      steps.push({ ...product, place: { row, column } });
  });
  return seen > MOST_FORMULAS ? [] : steps;
}

const isNear = (value: number, other: number): boolean => Math.abs(value / other - 1) < 0.002;
/** As printed, with its decimals: a round number may be any mass. */
const isMolarMass = (value: number): boolean =>
  !Number.isInteger(value) && solutes.some(({ molarMass }) => isNear(value, molarMass.value));
const isConstant = (value: number): boolean => isNear(value, IDEAL_KF_K_KG_PER_MOL);
const isCount = (value: number): boolean => value === 1 || value === 2 || value === 3;

/** Numbers of particles and what turns grams into kilograms; any other may be a constant that is wrong. */
const isPlain = (value: number): boolean => isCount(value) || Number.isInteger(Math.log10(value));

/** The only one of some cells of which nothing is known. */
function onlyUnknown({ roleOf }: Cells, places: readonly Place[]): Place | undefined {
  const [only, ...more] = places.filter((place) => roleOf(place) === undefined);
  return more.length === 0 ? only : undefined;
}

/** Numbers of particles and the constant are known by their values. */
function readFactors(cells: Cells, above: readonly Place[]): void {
  const isCounted = above.some((place) => cells.roleOf(place) === "particles");
  for (const place of above) {
    const value = cells.typedAt(place);
    if (cells.roleOf(place) !== undefined) continue;
    if (isConstant(value)) cells.say(place, "constant");
    else if (isCount(value) && above.length > 1 && !isCounted) cells.say(place, "particles");
  }
}

/** A mass over its molar mass is moles; over its water, too, a molality; times Kf a depression. */
function readStep(cells: Cells, { above, below, factors, isNegative, place }: Step): void {
  const { roleOf, typedAt, say } = cells;
  const has = (places: readonly Place[], role: ClassRole) =>
    places.some((each) => roleOf(each) === role);
  if (!has(below, "molar mass")) {
    const molar = below.find((each) => roleOf(each) === undefined && isMolarMass(typedAt(each)));
    say(molar, "molar mass");
  }
  const isByConstant = has(above, "constant") || factors.some(isConstant);
  const isMassOverMolar = has(below, "molar mass");
  const isOfMoles = has(above, "moles");
  if (isMassOverMolar || isOfMoles || isByConstant || has(above, "molality")) {
    readFactors(cells, above);
    if (isMassOverMolar && !has(above, "mass")) say(onlyUnknown(cells, above), "mass");
    if (isMassOverMolar || isOfMoles) say(onlyUnknown(cells, below), "water");
  }
  const isPerWater = has(below, "water");
  if (isByConstant) {
    if (isPerWater || has(above, "molality")) say(place, "depression");
  } else if (isMassOverMolar || isOfMoles) say(place, isPerWater ? "molality" : "moles");
  else if (has(above, "molality") && below.length === 0 && factors.every(isPlain))
    say(place, "molality");
  else if (above.length === 1 && below.length === 0 && has(above, "depression")) {
    // Without its minus only the unit tells that it is no difference.
    if (isNegative || cells.isInCelsius(place)) say(place, "freezing point");
  }
}

/**
 * What the cells of a sheet's multiplications are, from those of which it is known: what divides what tells it,
 * whatever the labels say.
 */
export function rolesByFormula(
  context: FinderContext,
  known: ReadonlyMap<string, ClassRole>,
): ReadonlyMap<string, ClassRole> {
  const { sheet } = context;
  const roles = new Map(known);
  const steps = stepsOf(context);
  const cells: Cells = {
    typedAt: ({ row, column }) => {
      const cell = sheet.cellAt(row, column);
      return typeof cell?.value === "number" && cell.formula === undefined ? cell.value : 0;
    },
    isInCelsius: ({ row, column }) => /^°\s?c$/i.test(textAt(sheet, row, column + 1)),
    roleOf: (place) => roles.get(keyOf(place)),
    say: (place, role) => {
      if (place !== undefined && !roles.has(keyOf(place))) roles.set(keyOf(place), role);
    },
  };
  for (let pass = 0, size = -1; pass < PASSES && size !== roles.size; pass += 1) {
    size = roles.size;
    for (const step of steps) readStep(cells, step);
  }
  return roles;
}
