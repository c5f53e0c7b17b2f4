import type { Cell, Matrix } from "../../src/foundation/cell";
import { normalName } from "../../src/catalogue/normalName";
import { callFunction } from "../../src/worksheet/callFunction";
import { usedNames } from "./usedNames";
import type { RecognisedRecipe } from "./recognised";

/** One thing to tell the eater, and the ingredients it comes from. */
export interface EaterFact {
  readonly text: string;
  readonly items: readonly string[];
}

export interface EaterFacts {
  readonly allergens: readonly EaterFact[];
  readonly cautions: readonly EaterFact[];
  /** Ingredients of whose allergens nothing is known: never passed over in silence. */
  readonly unknown: readonly string[];
}

const folded = (cell: Cell | undefined): string =>
  typeof cell === "string" ? normalName(cell) : "";

/** What the own ingredients say of a name: each header with its cell; null when the name is not among them. */
function ownRow(name: string, own: Matrix | null): ReadonlyMap<string, Cell> | null {
  const [headers, ...rows] = own ?? [];
  const nameColumn = headers?.findIndex((header) => folded(header) === "name") ?? -1;
  const row = rows.find((cells) => nameColumn >= 0 && folded(cells[nameColumn]) === folded(name));
  if (headers === undefined || row === undefined) return null;
  return new Map(headers.map((header, column) => [folded(header), row[column] ?? null]));
}

const UNKNOWN = "unknown";

function fromCatalogue(name: string, what: string): string {
  const answer = callFunction("INGREDIENT", name, what)[0]?.[0];
  return typeof answer === "string" ? answer : UNKNOWN;
}

function factsOf(name: string, own: Matrix | null): { allergens: string; caution: string } {
  const row = ownRow(name, own);
  const cellUnder = (...headers: readonly string[]) =>
    headers.map((header) => row?.get(header)).find((cell) => typeof cell === "string");
  const sameAs = cellUnder("same as", "wie", "dasselbe wie");
  const source = row === null ? name : (sameAs ?? null);
  if (source !== null) {
    return {
      allergens: fromCatalogue(source, "allergens"),
      caution: fromCatalogue(source, "caution"),
    };
  }
  return {
    allergens: cellUnder("allergens", "allergene") ?? UNKNOWN,
    caution: cellUnder("cautions", "hinweise") ?? UNKNOWN,
  };
}

function grouped(pairs: readonly (readonly [text: string, item: string])[]): readonly EaterFact[] {
  const groups = new Map<string, string[]>();
  for (const [text, item] of pairs) groups.set(text, [...(groups.get(text) ?? []), item]);
  return [...groups].map(([text, items]) => ({ text, items }));
}

const NOTHING = ["none by its nature", "none known", UNKNOWN];

/** Allergens and cautions of a recipe's ingredients, as RIME.INGREDIENT and the own ingredients state them. */
export function eaterFacts(recipe: RecognisedRecipe, own: Matrix | null): EaterFacts {
  const facts = usedNames(recipe).map((name) => ({ name, ...factsOf(name, own) }));
  const said = (what: "allergens" | "caution") =>
    grouped(
      facts.flatMap((fact) => (NOTHING.includes(fact[what]) ? [] : [[fact[what], fact.name]])),
    );
  return {
    allergens: said("allergens"),
    cautions: said("caution"),
    unknown: facts.filter(({ allergens }) => allergens === UNKNOWN).map(({ name }) => name),
  };
}
