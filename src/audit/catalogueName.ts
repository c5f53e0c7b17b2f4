import { spelledItem } from "../catalogue/names/spelledItem";
import { matchByWords, wordIndex, type WordIndex } from "../catalogue/names/wordIndex";
import type { Cell, Matrix } from "../foundation/cell";
import { ownHeaderMeaning } from "../worksheet/ownHeaderMeaning";
import { plainWords } from "./recipes/headings/plainWords";

type Row = readonly Cell[];

interface OwnNames {
  readonly spelled: ReadonlyMap<string, Row>;
  readonly worded: WordIndex<Row>;
  /** The column that names what each is the same as; -1 without one. */
  readonly sameAt: number;
}

const known = new WeakMap<Matrix, OwnNames>();

function ownNames([headers = [], ...rows]: Matrix): OwnNames {
  const at = (wanted: string) =>
    headers.findIndex(
      (header) => typeof header === "string" && ownHeaderMeaning(plainWords(header)) === wanted,
    );
  const nameAt = at("name");
  const named = rows.flatMap((row) => {
    const name = row[nameAt];
    return typeof name === "string" ? [{ name, match: row, language: null }] : [];
  });
  return {
    spelled: new Map(named.map(({ name, match }) => [plainWords(name), match])),
    worded: wordIndex(named, (row) => row),
    sameAt: at("same as"),
  };
}

/** The row that describes an item: as it is spelled, else, where the catalogue has no such name, by its words. */
function ownRow({ spelled, worded }: OwnNames, item: string): Row | null {
  const row = spelled.get(plainWords(item));
  if (row !== undefined) return row;
  return spelledItem(item) === undefined ? (matchByWords(worded, item) ?? null) : null;
}

/**
 * The catalogue's name for an item of a recipe: what the own-ingredients range says it is the same as, else
 * the name itself. Null for an ingredient that the user describes by its parts.
 */
export function catalogueName(item: string, ownIngredients: Matrix | null): string | null {
  if (ownIngredients === null) return item;
  const own = known.get(ownIngredients) ?? ownNames(ownIngredients);
  known.set(ownIngredients, own);
  const row = ownRow(own, item);
  if (row === null) return item;
  const same = row[own.sameAt];
  return typeof same === "string" && same.trim() !== "" ? same : null;
}
