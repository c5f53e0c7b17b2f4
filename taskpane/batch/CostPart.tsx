import { useEffect, useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { parseRangeName } from "../../src/workbook/address";
import { useHostTask } from "../components/useHostTask";
import type { CellBlock } from "../host";
import { AmountTable } from "./AmountTable";
import type { BatchProps } from "./batchProps";
import { costOf, priceColumns, type PriceBasis } from "./prices";

interface CostPartProps extends BatchProps {
  readonly recipe: RecognisedRecipe;
}

const BASES: readonly PriceBasis[] = ["kg", "100 g", "g", "row"];

/** What the batch costs, where a column of the recipe's block holds prices. */
export function CostPart({ context, recipe, rows }: CostPartProps) {
  const { words, numbers, host } = context;
  const texts = words.batch.cost;
  const { fault, run } = useHostTask(context);
  const [block, setBlock] = useState<CellBlock | null>(null);
  const [chosen, setChosen] = useState(0);
  const [asked, setAsked] = useState<PriceBasis | null>(null);
  useEffect(() => {
    void run(async () => {
      if (host !== null) setBlock((await host.readSelection()).around);
    });
  }, [host, run, recipe]);
  const columns = block === null ? [] : priceColumns(block, recipe);
  const column = columns[chosen] ?? columns[0];
  const basis = asked ?? column?.basis ?? null;
  const names = parseRangeName(recipe.nameRange);
  const priceOf = (name: string) => {
    if (block === null || names === null || column === undefined) return "";
    const line = recipe.lines.findIndex((each) => each.name === name);
    const row = names.top + line - block.top;
    return block.values[row]?.[column.column - block.left] ?? "";
  };
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
          <label class="field">
            <span>{texts.column}</span>
            <select
              value={chosen}
              onChange={(event) => setChosen(Number(event.currentTarget.value))}
            >
              {columns.map(({ header }, at) => (
                <option key={at} value={at}>
                  {header}
                </option>
              ))}
            </select>
          </label>
          <label class="field">
            <span>{texts.basis}</span>
            <select
              value={basis ?? ""}
              onChange={(event) => setAsked(event.currentTarget.value as PriceBasis)}
            >
              {basis === null && <option value="">–</option>}
              {BASES.map((key) => (
                <option key={key} value={key}>
                  {texts.bases[key]}
                </option>
              ))}
            </select>
          </label>
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
