import { holdsNumber, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import type { Form } from "./form";
import { isWater } from "./isWater";
import { itemInLabel } from "./itemInLabel";
import type { LabelledPair } from "./labelledPairs";
import { nameAbove } from "./nameAbove";
import { substanceInWords } from "./substanceInWords";
import { valueIn } from "./valueIn";

/** A substance, and where it is named. */
export interface Substance extends Place {
  readonly item: string;
}

/** A number of the calculation and the label it stands with. */
export interface Said {
  readonly place: Place;
  readonly pair: LabelledPair | undefined;
}

/** What may name the substance of a row. */
interface Clues {
  readonly row: number;
  /** Its molar mass, its particles, its mass. */
  readonly data: readonly Said[];
  readonly form: Form | undefined;
  /** The table's headings, and those of the row's answers. */
  readonly heads: readonly Place[];
  readonly answers: readonly LabelledPair[];
}

/** A title stands at most so many rows above. */
const REACH = 4;

function substance({ row, column }: Place, item: string | null | undefined): Substance | null {
  return item === null || item === undefined || isWater(item) ? null : { row, column, item };
}

const namedAt = ({ sheet, check }: FinderContext, place: Place | null | undefined) =>
  place === null || place === undefined
    ? null
    : substance(place, chemicalName(textAt(sheet, place.row, place.column), check));

/** The substance that a worked example's own labels ask for, in one of its columns. */
function inForm(context: FinderContext, form: Form | undefined, column: number): Substance | null {
  const [solute, ...more] = form?.solutes ?? [];
  if (solute === undefined || more.length > 0 || solute.named === null) return null;
  return namedAt(context, valueIn(solute.named, column));
}

/** The nearest words above a place, no label of a number, name a substance, alone or among others. */
function inTitle(context: FinderContext, { row, column }: Place): Substance | null {
  for (let at = row - 1; at >= Math.max(0, row - REACH); at -= 1) {
    const text = textAt(context.sheet, at, column);
    if (text === "" || holdsNumber(context.sheet, at, column + 1)) continue;
    return substance({ row: at, column }, substanceInWords(text, context));
  }
  return null;
}

/**
 * What is dissolved in a row of a table: what the labels of its data name, a name in the row itself or above its
 * numbers, else the one substance in a title above the data or the table.
 */
export function substanceOf(context: FinderContext, clues: Clues): Substance | null {
  const { row, data, form, heads, answers } = clues;
  const left = heads[0]?.column ?? 0;
  const labels = data.flatMap(({ pair }) => pair ?? []);
  const places = data.map(({ place }) => place);
  // The name of a working that goes on behind a gap stands before its mass.
  const before = places.flatMap((place) => (place.row === row ? [place.column - 1] : []));
  const ways: readonly (() => Substance | null)[] = [
    ...[left - 1, left, ...before].map((column) => () => namedAt(context, { row, column })),
    ...places.map(
      ({ column }) =>
        () =>
          inForm(context, form, column),
    ),
    ...labels.map((pair) => () => substance(pair, itemInLabel(pair.label, context))),
    ...[...places, ...heads].map((place) => () => namedAt(context, nameAbove(context, place))),
    ...answers.map((pair) => () => substance(pair, substanceInWords(pair.label, context))),
    ...[...labels, ...(form?.pairs ?? []), ...heads].map((place) => () => inTitle(context, place)),
  ];
  for (const way of ways) {
    const found = way();
    if (found !== null) return found;
  }
  return null;
}
