import { solutes } from "../../../catalogue/solutes";
import { nameInList } from "./nameInList";
import type { ItemCheck } from "./knownItems";

const BRACKETED = /^(.*?)\s*[([]\s*([^()[\]]+)\s*[)\]]\s*$/;

const asFormula = (text: string): string =>
  text
    .normalize("NFKC")
    .replace(/[\s*·⋅.]+/g, "·")
    .replace(/^·|·$/g, "");

let formulas: ReadonlyMap<string, string> | undefined;

/** Formulas that stand for one solute only: glucose and fructose share theirs. */
function namesByFormula(): ReadonlyMap<string, string> {
  if (formulas !== undefined) return formulas;
  const seen = new Map<string, string[]>();
  for (const { name, formula } of solutes) {
    const key = asFormula(formula);
    seen.set(key, [...(seen.get(key) ?? []), name]);
  }
  formulas = new Map(
    [...seen].flatMap(([formula, names]) =>
      names.length === 1 ? [[formula, names[0] ?? ""]] : [],
    ),
  );
  return formulas;
}

/** The item that a text of a class sheet names: "sucrose", "NaCl", "sodium chloride (NaCl)"; null when it names none. */
export function chemicalName(text: string, check: ItemCheck): string | null {
  const bracketed = BRACKETED.exec(text);
  for (const part of [text, bracketed?.[1], bracketed?.[2]]) {
    if (part === undefined || part === "") continue;
    const { item } = nameInList(part, check);
    if (check(item).kind !== "unknown") return item;
    const name = namesByFormula().get(asFormula(part));
    if (name !== undefined) return name;
  }
  return null;
}
