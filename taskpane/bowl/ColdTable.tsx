import type { Cell } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { PaneContext } from "../view";
import { bandOfMix } from "./bandOfMix";
import type { ColdAnswers, RecipeAnswers } from "./recipeAnswers";

interface ColdTableProps {
  readonly context: PaneContext;
  readonly answers: RecipeAnswers;
}

/** A share with its uncertainty, both in per cent; null where there is none. */
const share = (cell: Cell, band: Cell, { numbers }: PaneContext): string | null =>
  typeof cell === "number" ? numbers.share(cell, typeof band === "number" ? band : null) : null;

/** The sentences of the answers that could not be given, each once. */
const sentences = (cells: readonly Cell[]): readonly string[] => [
  ...new Set(cells.flatMap((cell) => (isProblem(cell) ? [cell.message] : []))),
];

const cellsOf = ({ iceOfWater, iceOfMix, unfrozenSolids }: ColdAnswers): readonly Cell[] => [
  iceOfWater,
  iceOfMix,
  unfrozenSolids,
];

/** What is frozen at serving and at storage temperature, side by side. */
export function ColdTable({ context, answers }: ColdTableProps) {
  const { words, numbers } = context;
  const { serving, storage } = answers;
  const texts = words.cold;
  const row = (label: string, of: (cold: ColdAnswers) => string | null) => (
    <tr>
      <th scope="row">{label}</th>
      {[serving, storage].map((cold, index) => (
        <td key={index}>{of(cold) ?? "–"}</td>
      ))}
    </tr>
  );
  return (
    <>
      <table class="cold">
        <caption class="unseen">{texts.caption}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">
              {texts.serving}
              <span>{numbers.plain(serving.temperatureC)} °C</span>
            </th>
            <th scope="col">
              {texts.storage}
              <span>{numbers.plain(storage.temperatureC)} °C</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {row(texts.iceOfWater, (cold) => share(cold.iceOfWater, cold.iceBand, context))}
          {row(texts.iceOfMix, (cold) =>
            share(cold.iceOfMix, bandOfMix(cold, cold.iceBand), context),
          )}
          {row(texts.unfrozenSolids, (cold) =>
            share(cold.unfrozenSolids, cold.unfrozenSolidsBand, context),
          )}
        </tbody>
      </table>
      {sentences([...cellsOf(serving), ...cellsOf(storage)]).map((sentence) => (
        <p key={sentence} class="fault">
          {words.said(sentence)}
        </p>
      ))}
    </>
  );
}
