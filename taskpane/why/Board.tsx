import type { PaneContext } from "../view";
import type { BoardLine } from "./explainCall";
import { valueText } from "./valueText";

interface BoardProps {
  readonly context: PaneContext;
  readonly lines: readonly BoardLine[];
}

/** The working, one line after the other as on a board; the sources stand once, at its foot. */
export function Board({ context, lines }: BoardProps) {
  const { words, numbers } = context;
  const sources = [...new Set(lines.map(({ source }) => source).filter((each) => each !== ""))];
  const mark = numbers.plain(0.5).charAt(1);
  const localised = (sum: string) => sum.replace(/(\d)\.(?=\d)/g, `$1${mark}`);
  const marks = new Map(sources.map((source, at) => [source, at + 1]));
  return (
    <section class="why-board">
      <h3>{words.why.board}</h3>
      <p class="quiet">{words.why.boardMark}</p>
      <ol>
        {lines.map(({ step, formula, numbers: sum, result, unit, source }, at) => (
          <li key={at}>
            <span class="why-step">{words.said(step)}</span>
            <span class="why-formula">{words.said(formula)}</span>
            <span class="why-sum">
              {sum !== "" && sum !== valueText(result, context) && <code>{localised(sum)} = </code>}
              <strong>
                {words.said(valueText(result, context))} {words.said(unit)}
              </strong>
              {marks.has(source) && <sup>{marks.get(source)}</sup>}
            </span>
          </li>
        ))}
      </ol>
      <h3>{words.why.sources}</h3>
      <ol class="why-sources">
        {sources.map((source) => (
          <li key={source}>{words.said(source)}</li>
        ))}
      </ol>
    </section>
  );
}
