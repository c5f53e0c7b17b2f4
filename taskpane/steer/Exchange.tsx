import { useState } from "preact/hooks";
import { localName } from "../bowl/localName";
import { Check } from "../components/Check";
import { Choice } from "../components/Choice";
import type { PaneContext } from "../view";
import type { SteerLine } from "./steerLines";

export interface ExchangeWish {
  readonly away: number;
  readonly by: string;
  readonly keepsSweetness: boolean;
}

/** What often stands in for sugar. Glycerol and glycols are not among them, and never will be. */
export const STAND_INS: readonly string[] = [
  ...["dextrose powder (monohydrate)", "crystalline fructose", "allulose", "trehalose powder"],
  ...["erythritol", "honey, average", "glucose syrup DE 42", "sucrose"],
];

interface ExchangeProps {
  readonly context: PaneContext;
  readonly lines: readonly SteerLine[];
  readonly servingC: number;
  readonly onAsk: (wish: ExchangeWish) => void;
}

/** Which ingredient gives way to which, at equal effect. */
export function Exchange({ context, lines, servingC, onAsk }: ExchangeProps) {
  const { words, numbers } = context;
  const texts = words.steer;
  const there = lines.map((line, at) => ({ ...line, at })).filter(({ grams }) => grams > 0);
  const [away, setAway] = useState(
    there.find(({ name }) => /sugar|zucker|sucrose/i.test(name))?.at ?? there[0]?.at ?? 0,
  );
  const [typedBy, setBy] = useState("");
  const [keepsSweetness, setKeepsSweetness] = useState(false);
  const standIns = STAND_INS.map((name) => localName(name, words.language));
  const offered = [...new Set([...lines.map(({ name }) => name), ...standIns])].filter(
    (name) => name !== lines[away]?.name,
  );
  const by = offered.includes(typedBy)
    ? typedBy
    : (standIns.find((name) => offered.includes(name)) ?? "");
  return (
    <details>
      <summary>{texts.exchangeTitle}</summary>
      <p class="figure-why">{texts.exchangeAbout(numbers.plain(servingC))}</p>
      <Choice
        label={texts.giveWay}
        value={away}
        options={there.map(({ name, at }) => ({ value: at, label: name }))}
        onChange={setAway}
      />
      <Choice
        label={texts.takePlace}
        value={by}
        options={offered.map((value) => ({ value }))}
        onChange={setBy}
      />
      <Check checked={keepsSweetness} onChange={setKeepsSweetness}>
        {texts.keepSweetness}
      </Check>
      <div class="buttons">
        <button type="button" onClick={() => onAsk({ away, by, keepsSweetness })}>
          {texts.exchange}
        </button>
      </div>
    </details>
  );
}
