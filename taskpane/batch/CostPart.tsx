import { useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { Choice } from "../components/Choice";
import type { PriceBasis } from "../prices/priceHeader";
import { usePriceColumns } from "../prices/usePriceColumns";
import { AmountTable } from "../components/AmountTable";
import type { BatchProps } from "./batchProps";
import { costOf } from "./costOf";

interface CostPartProps extends BatchProps {
  readonly recipe: RecognisedRecipe;
}

const BASES: readonly PriceBasis[] = ["kg", "100 g", "g", "row"];

/** What the batch costs, where a column beside the recipe holds prices. */
export function CostPart({ context, recipe, rows }: CostPartProps) {
  const { words, numbers } = context;
  const texts = words.batch.cost;
  const { columns, fault } = usePriceColumns(context, recipe, true);
  const [chosen, setChosen] = useState(0);
  const [asked, setAsked] = useState<PriceBasis | null>(null);
  const column = columns[chosen] ?? columns[0];
  const basis = asked ?? column?.basis ?? null;
  const priceOf = (name: string) =>
    column?.prices[recipe.lines.findIndex((line) => line.name === name)] ?? null;
  const cost =
    basis === null || column === undefined
      ? null
      : costOf(
          rows.map((row) => ({ ...row, price: priceOf(row.name) })),
          basis,
        );
  return (
    <details>
      <summary>{texts.title}</summary>
      {fault !== null && <p class="fault">{fault}</p>}
      {column === undefined ? (
        <p class="quiet">{texts.none}</p>
      ) : (
        <div class="fields">
          <Choice
            label={texts.column}
            value={chosen}
            options={columns.map(({ header }, at) => ({ value: at, label: header }))}
            onChange={setChosen}
          />
          <Choice
            label={texts.basis}
            value={basis}
            {...(basis === null && { none: "–" })}
            options={BASES.map((key) => ({ value: key, label: texts.bases[key] }))}
            onChange={setAsked}
          />
        </div>
      )}
      {column !== undefined && basis === null && <p class="fault">{texts.ask}</p>}
      {cost !== null && (
        <>
          <p>{texts.total(numbers.fixed(cost.total, 2), numbers.fixed(cost.per100g, 2))}</p>
          {cost.unpriced.length > 0 && (
            <p class="fault">{texts.unpriced(cost.unpriced.join(", "))}</p>
          )}
          <AmountTable
            head={[words.batch.size.item, texts.share]}
            rows={cost.rows.map(({ name, cost: one }) => [
              name,
              one === null ? "–" : numbers.fixed(one, 2),
            ])}
          />
        </>
      )}
    </details>
  );
}
