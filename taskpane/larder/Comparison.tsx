import { useEffect, useMemo, useRef } from "preact/hooks";
import type { PaneContext } from "../view";
import { allergenSentence } from "./allergenSentence";
import { compareLines, linesOf } from "./compareLines";
import type { LarderEntry } from "./entries";
import type { FigureLine } from "./figureLine";
import { figureText } from "./figureText";
import { whyText } from "./whyText";

interface ComparisonProps {
  readonly context: PaneContext;
  readonly one: LarderEntry;
  readonly other: LarderEntry;
  readonly onOpen: (entry: LarderEntry) => void;
  readonly onBack: () => void;
}

interface FigureCellProps {
  readonly context: PaneContext;
  readonly line: FigureLine | null;
}

/** A figure with its band, or a dash. */
function FigureCell({ context, line }: FigureCellProps) {
  if (line === null) return <td>–</td>;
  const { value, band } = figureText(line, context.numbers);
  return (
    <td>
      <strong>{value}</strong>
      {"\u00a0"}
      <span class="figure-unit">{band}</span>
    </td>
  );
}

/** Where the figures of one of the two come from, folded away. */
function Origins({ context, name, lines }: OriginsProps) {
  const { words } = context;
  return (
    <details>
      <summary>{words.larder.compare.sources(name)}</summary>
      <ul>
        {lines.map((line) => (
          <li key={line.label}>
            {line.label}
            <p class="figure-why">{whyText(line, words)}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface OriginsProps {
  readonly context: PaneContext;
  readonly name: string;
  readonly lines: readonly FigureLine[];
}

/** Two entries side by side, figure by figure. */
export function Comparison({ context, one, other, onOpen, onBack }: ComparisonProps) {
  const { words, announce } = context;
  const texts = words.larder.compare;
  const heading = useRef<HTMLHeadingElement>(null);
  const [names, lines] = useMemo(
    () => [
      [one.item.name, other.item.name] as const,
      [linesOf(one, words), linesOf(other, words)] as const,
    ],
    [one, other, words],
  );
  useEffect(() => {
    heading.current?.focus();
    announce(texts.done(...names));
  }, [names, texts, announce]);
  const allergens = [one, other].map((entry) => allergenSentence(entry, context));
  return (
    <>
      <div class="buttons">
        <button type="button" class="small" onClick={onBack}>
          ← {words.back}
        </button>
        {[one, other].map((entry) => (
          <button type="button" class="small" key={entry.item.name} onClick={() => onOpen(entry)}>
            {texts.all(entry.item.name)}
          </button>
        ))}
      </div>
      <h2 tabIndex={-1} ref={heading}>
        {texts.title(...names)}
      </h2>
      <table class="comparison">
        <thead>
          <tr>
            <th scope="col">{texts.figure}</th>
            {names.map((name) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {compareLines(...lines).map((line) => (
            <tr key={line.label}>
              <th scope="row">
                {line.label} <span class="figure-unit">{line.unit}</span>
              </th>
              <FigureCell context={context} line={line.one} />
              <FigureCell context={context} line={line.other} />
            </tr>
          ))}
          <tr>
            <th scope="row">{texts.allergens}</th>
            {allergens.map((sentence, at) => (
              <td key={at}>{sentence}</td>
            ))}
          </tr>
        </tbody>
      </table>
      <p class="quiet">{texts.missing}</p>
      {names.map((name, at) => (
        <Origins key={name} context={context} name={name} lines={lines[at] ?? []} />
      ))}
    </>
  );
}
