import { Sources } from "../bowl/Sources";
import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import type { AskedMix } from "./askMixOf";
import { figuresOf } from "./figures";

interface AnswerTablesProps {
  readonly context: PaneContext;
  readonly now: AskedMix;
  readonly then: AskedMix;
  readonly asked: Asked;
}

/** Old and new grams with their difference, and the figures of the mix before and after. */
export function AnswerTables({ context, now, then, asked }: AnswerTablesProps) {
  const { words, numbers } = context;
  const texts = words.steer;
  const wholeGrams = asked.question.stepGrams === 1;
  const shown = (grams: number) =>
    wholeGrams ? numbers.plain(Number(grams.toFixed(3))) : numbers.fixed(grams, 1);
  const change = (by: number) => (Math.abs(by) < 1e-6 ? "" : `${by > 0 ? "+" : ""}${shown(by)}`);
  const before = figuresOf(now, asked, context);
  const after = figuresOf(then, asked, context);
  return (
    <>
      <table class="steer-table">
        <caption class="unseen">{texts.answerCaption}</caption>
        <thead>
          <tr>
            <th scope="col">{texts.ingredient}</th>
            <th scope="col">{texts.now}</th>
            <th scope="col">{texts.then}</th>
            <th scope="col">{texts.difference}</th>
          </tr>
        </thead>
        <tbody>
          {now.names.map((name, at) => {
            const [old, next] = [now.grams[at] ?? 0, then.grams[at] ?? 0];
            const by = change(next - old);
            return (
              <tr key={at} class={by === "" ? "quiet" : "steer-changed"}>
                <th scope="row">{name}</th>
                <td>{shown(old)}</td>
                <td>{shown(next)}</td>
                <td>{by}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <table class="steer-table">
        <caption class="unseen">{texts.figuresCaption}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{texts.now}</th>
            <th scope="col">{texts.then}</th>
          </tr>
        </thead>
        <tbody>
          {before.map(({ label, text }, at) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{text}</td>
              <td>{after[at]?.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="figure-why">{words.bandNote}</p>
      <Sources context={context} />
    </>
  );
}
