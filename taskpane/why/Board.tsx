import type { PaneContext } from "../view";
import type { BoardLine } from "./explainCall";
import { valueText } from "./valueText";

interface BoardProps {
  readonly context: PaneContext;
  readonly lines: readonly BoardLine[];
}

/** The working, one line after the other as on a board; the sources stand once, at its foot. */
export function Board({ context, lines }: BoardProps) {
  const { words } = context;
  const sources = [...new Set(lines.map(({ source }) => source).filter((each) => each !== ""))];
  const marks = new Map(sources.map((source, at) => [source, at + 1]));
  return (
    <section class="why-board">
      <h3>{words.why.board}</h3>
      <p class="quiet">{words.why.boardMark}</p>
      <ol>
        {lines.map(({ step, formula, numbers: sum, result, unit, source }, at) => (
          <li key={at}>
            <span class="why-step">{step}</span>
            <span class="why-formula">{formula}</span>
            <span class="why-sum">
              {sum !== "" && sum !== valueText(result, context) && <code>{sum} = </code>}
              <strong>
                {valueText(result, context)} {unit}
              </strong>
              {marks.has(source) && <sup>{marks.get(source)}</sup>}
            </span>
          </li>
        ))}
      </ol>
      <h3>{words.why.sources}</h3>
      <ol class="why-sources">
        {sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ol>
    </section>
  );
}
