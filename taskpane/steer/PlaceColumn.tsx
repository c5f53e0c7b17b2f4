import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { FormButtons } from "../components/FormButtons";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { findFreePlace, type FreePlace } from "./freePlace";
import type { NewAmounts } from "./newAmounts";
import "../insert/insertPanel.css";

interface PlaceColumnProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly written: NewAmounts;
  /** Asks for the recipe to stay while the panel is open. */
  readonly onHold: (hold: boolean) => void;
}

/** Shows which free cells would take the new amounts, and writes them there on a click; never over anything. */
export function PlaceColumn({ context, recipe, written, onHold }: PlaceColumnProps) {
  const { words, host, announce } = context;
  const texts = words.steer;
  const { fault, run } = useHostTask(context);
  const [found, setFound] = useState<FreePlace | null>(null);
  const [isOpen, setOpen] = useState(false);
  const [sentence, setSentence] = useState<string | null>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (found !== null) panel.current?.querySelector("button")?.focus();
  }, [found]);
  const say = (text: string) => {
    setSentence(text);
    announce(text);
  };
  const look = () =>
    run(async () => {
      if (host === null) return;
      setSentence(null);
      onHold(true);
      const place = await findFreePlace(host, recipe, written);
      setFound(place);
      setOpen(place !== null);
      if (place === null) {
        say(texts.noPlace);
        onHold(false);
      }
    });
  const shut = () => {
    setOpen(false);
    setFound(null);
    opener.current?.focus();
  };
  const close = () => {
    shut();
    onHold(false);
  };
  const write = () =>
    run(async () => {
      if (host === null || found === null) return;
      const { place, contents } = found;
      const address = `${place.sheet}!${place.address}`;
      const answer = await host.insert(place, contents);
      // The recipe stays held: read anew, its table has two columns of amounts now.
      shut();
      if (answer === "written") say(texts.written(address));
      else say(words.insert[answer === "filled" ? "filled" : "changed"](address));
    });
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !isOpen) return;
    event.stopPropagation();
    close();
  };
  return (
    <div onKeyDown={onKeyDown}>
      <div class="buttons">
        <button type="button" ref={opener} aria-expanded={isOpen} onClick={() => void look()}>
          {texts.place}
        </button>
      </div>
      {isOpen && found !== null && (
        <div class="insert" role="group" aria-label={texts.placeTitle} ref={panel}>
          <dl class="insert-preview">
            <dt>{texts.placeAt}</dt>
            <dd>
              {found.place.sheet}!{found.place.address}
            </dd>
            <dt>{texts.placeHeader}</dt>
            <dd>{written.header}</dd>
          </dl>
          <FormButtons
            label={texts.write}
            closeLabel={words.close}
            onDo={() => void write()}
            onClose={close}
          />
        </div>
      )}
      {(fault ?? sentence) !== null && <p class="insert-outcome">{fault ?? sentence}</p>}
    </div>
  );
}
