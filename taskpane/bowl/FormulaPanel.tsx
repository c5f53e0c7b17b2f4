import { useState } from "preact/hooks";
import { InsertPanel } from "../insert/InsertPanel";
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
  const [open, setOpen] = useState(false);
  const turn = (next: boolean) => {
    setOpen(next);
    onOpen(next);
  };
  if (formulas.length === 0) return null;
  return (
    <div class="formula-panel">
      <button type="button" class="small" aria-expanded={open} onClick={() => turn(!open)}>
        {words.formulas.open}
      </button>
      {open && (
        <InsertPanel
          context={context}
          title={title}
          offers={formulas.map(({ key, formula }) => ({
            label: words.formulas[key],
            content: formula,
          }))}
          onClose={() => turn(false)}
        />
      )}
    </div>
  );
}
