import { Unfold } from "../components/Unfold";
import { InsertContents } from "../insert/InsertContents";
import type { PaneContext } from "../view";
import type { RecipeFormula } from "./recipeFormulas";

interface FormulaPanelProps {
  readonly context: PaneContext;
  readonly title: string;
  readonly formulas: readonly RecipeFormula[];
  /** Told when the panel opens and closes: meanwhile the recipe has to stay while the selection moves. */
  readonly onOpen: (open: boolean) => void;
}

/** The bowl's numbers as formulas, to be written into a cell of the user's choice. */
export function FormulaPanel({ context, title, formulas, onOpen }: FormulaPanelProps) {
  const { words } = context;
  if (formulas.length === 0) return null;
  const offers = formulas.map(({ key, formula }) => ({
    label: words.formulas[key],
    content: formula,
  }));
  return (
    <Unfold label={words.formulas.open} title={words.insert.title(title)} onOpen={onOpen}>
      {(close) => <InsertContents context={context} offers={offers} onClose={close} />}
    </Unfold>
  );
}
