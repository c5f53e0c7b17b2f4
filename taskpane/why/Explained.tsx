import { useEffect, useMemo, useState } from "preact/hooks";
import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import type { BlockValue } from "../host";
import type { PaneContext } from "../view";
import { Answer } from "./Answer";
import { answerText } from "./answerText";
import { answerFor } from "./answerFor";
import { Board } from "./Board";
import { explainCall } from "./explainCall";
import type { OwnCall } from "./formulaCalls";
import { GivenList } from "./GivenList";
import { valueText } from "./valueText";

interface ExplainedProps {
  readonly context: PaneContext;
  readonly definition: WorksheetFunction;
  readonly call: OwnCall;
  readonly args: readonly (Cell | Matrix)[];
  /** What the cell shows, when the call is all of its formula; else null. */
  readonly shown: BlockValue | null;
}

const MOST_OFFERED = 500;

/** True when a cell shows another number than its formula gives now. */
const isStale = (shown: BlockValue | null, now: Cell): boolean =>
  typeof shown === "number" &&
  typeof now === "number" &&
  Math.abs(shown - now) > 1e-9 * Math.max(1, Math.abs(now));

/** One call explained: its answer, what it was given, the working of one recipe, method and sources. */
export function Explained({ context, definition, call, args, shown }: ExplainedProps) {
  const { words, announce } = context;
  const [recipe, setRecipe] = useState(0);
  const explanation = useMemo(
    () => explainCall(definition, args, recipe),
    [definition, args, recipe],
  );
  const { answer, recipes, board, boardTrouble } = explanation;
  const now = answer[0]?.[0] ?? null;
  const one = answerFor(explanation, recipe);
  const text = answerText(explanation, one, definition, context);
  const isRefused = isProblem(one);
  const spoken = isRefused ? text : `${words.why.answers} ${text}`;
  useEffect(() => announce(spoken), [announce, spoken]);
  return (
    <>
      <Answer context={context} explanation={explanation} text={text} isRefused={isRefused} />
      {isStale(shown, now) && (
        <Notice tone="warning">{words.why.stale(valueText(shown, context))}</Notice>
      )}
      <GivenList context={context} definition={definition} call={call} args={args} />
      {definition.method !== undefined && (
        <details>
          <summary>{words.why.method}</summary>
          <p>{definition.method}</p>
        </details>
      )}
      <p>
        <a href={`help/${definition.name.toLowerCase()}.html`} target="_blank" rel="noopener">
          {words.why.help}
        </a>
      </p>
      {recipes > 1 && (
        <Choice
          label={words.why.recipe}
          value={recipe}
          options={Array.from({ length: Math.min(recipes, MOST_OFFERED) }, (_recipe, at) => ({
            value: at,
            label: words.why.recipeNumber(at + 1),
          }))}
          onChange={setRecipe}
        />
      )}
      {boardTrouble !== null && !isProblem(now) && (
        <Notice tone="note">{words.said(boardTrouble)}</Notice>
      )}
      {board.length > 0 && <Board context={context} lines={board} />}
    </>
  );
}
