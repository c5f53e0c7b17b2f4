import { solutes } from "../solutes";
import type { KnownMatch } from "./itemMatch";

const asFormula = (text: string): string =>
  text
    .normalize("NFKC")
    .replace(/\s*[x×]\s*(?=\d*\s*H2O)/g, "·")
    .replace(/[\s*·⋅•∙.]+/g, "·")
    .replace(/^·|·$/g, "")
    .replace(/·(\d*)·(?=H2O)/, "·$1");

let known: ReadonlyMap<string, KnownMatch> | undefined;

/** Formulas that stand for one solute only: glucose and fructose share theirs. */
function formulas(): ReadonlyMap<string, KnownMatch> {
  if (known !== undefined) return known;
  const all = solutes.map((solute) => [asFormula(solute.formula), solute] as const);
  const isShared = (formula: string) => all.filter(([other]) => other === formula).length > 1;
  known = new Map(
    all
      .filter(([formula]) => !isShared(formula))
      .map(([formula, solute]) => [formula, { kind: "solute", solute }]),
  );
  return known;
}

/** The solute that a chemical formula names, "NaCl", "CaCl2 · 2 H2O"; undefined when it names none or several. */
export const itemByFormula = (text: string): KnownMatch | undefined =>
  /^[A-Z(]/.test(text.trim()) ? formulas().get(asFormula(text)) : undefined;
