import { useState } from "preact/hooks";
import { Check } from "../components/Check";
import { TextField } from "../components/TextField";
import type { PaneContext } from "../view";
import { NumberField } from "./NumberField";
import type { SteerLine } from "./steerLines";
import type { LineChoice } from "./steerQuestion";

interface MayChangeProps {
  readonly context: PaneContext;
  readonly lines: readonly SteerLine[];
  readonly choices: readonly LineChoice[];
  readonly asksPrices: boolean;
  readonly pricesFound: boolean;
  readonly onChoose: (at: number, next: LineChoice) => void;
  /** Answers what is wrong with the name, or null when it was added. */
  readonly onAdd: (name: string) => string | null;
}

/** The ingredients, each with a tick for "may change"; limits and prices folded away. */
export function MayChange(props: MayChangeProps) {
  const { context, lines, choices, asksPrices, pricesFound, onChoose, onAdd } = props;
  const { words, numbers } = context;
  const texts = words.steer;
  return (
    <fieldset>
      <legend>{texts.mayChangeTitle}</legend>
      <ul class="steer-lines">
        {lines.map(({ name, grams }, at) => {
          const choice = choices[at];
          return choice === undefined ? null : (
            <li key={at}>
              <Check checked={choice.free} onChange={(free) => onChoose(at, { ...choice, free })}>
                <span>{name}</span> <span class="quiet">{texts.grams(numbers.plain(grams))}</span>
              </Check>
            </li>
          );
        })}
      </ul>
      <AddItem context={context} onAdd={onAdd} />
      <details open={asksPrices && !pricesFound ? true : undefined}>
        <summary>{asksPrices ? texts.limitsAndPrices : texts.limits}</summary>
        <p class="figure-why">{texts.limitsAbout}</p>
        {asksPrices && (
          <p class="figure-why">
            {pricesFound ? "" : `${texts.noPrices} `}
            {texts.pricesAbout}
          </p>
        )}
        {lines.map(({ name }, at) => (
          <Limits
            key={at}
            context={context}
            name={name}
            choice={choices[at]}
            asksPrices={asksPrices}
            onChange={(next) => onChoose(at, next)}
          />
        ))}
      </details>
    </fieldset>
  );
}

interface LimitsProps {
  readonly context: PaneContext;
  readonly name: string;
  readonly choice: LineChoice | undefined;
  readonly asksPrices: boolean;
  readonly onChange: (next: LineChoice) => void;
}

function Limits({ context, name, choice, asksPrices, onChange }: LimitsProps) {
  const texts = context.words.steer;
  if (choice === undefined || !(choice.free || asksPrices)) return null;
  const field = (part: "from" | "to" | "price", shown: string) => (
    <NumberField
      label={texts.ofItem(shown, name)}
      shown={shown}
      value={choice[part]}
      onInput={(typed) => onChange({ ...choice, [part]: typed })}
    />
  );
  return (
    <div class="steer-wish" role="group" aria-label={name}>
      <span class="steer-wish-name">{name}</span>
      <div class="steer-numbers">
        {choice.free && field("from", texts.from)}
        {choice.free && field("to", texts.to)}
        {asksPrices && field("price", texts.price)}
      </div>
    </div>
  );
}

/** Lets another ingredient in: only what is written here is ever added. */
function AddItem({ context, onAdd }: Pick<MayChangeProps, "context" | "onAdd">) {
  const texts = context.words.steer;
  const [typed, setTyped] = useState("");
  const [said, setSaid] = useState<string | null>(null);
  const add = () => {
    const wrong = typed.trim() === "" ? null : onAdd(typed.trim());
    setSaid(wrong);
    if (wrong === null) setTyped("");
    else context.announce(wrong);
  };
  return (
    <form
      class="steer-add-item"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <TextField label={texts.addItem} value={typed} isWrong={said !== null} onChange={setTyped} />
      <button type="submit">{texts.addItemButton}</button>
      {said !== null && <p class="fault">{said}</p>}
    </form>
  );
}
