import { useState } from "preact/hooks";
import { TemperatureField } from "../bowl/TemperatureField";
import { saveFile } from "../components/saveFile";
import { useHostTask } from "../components/useHostTask";
import type { BatchProps } from "./batchProps";
import { cardPage } from "./cardPage";
import { cardRows } from "./cardRows";
import { recipeCard } from "./recipeCard";

interface CardPartProps extends BatchProps {
  readonly onServing: (servingC: number) => void;
}

/** The recipe on a card: as a page to print, or on a sheet. */
export function CardPart({ context, mix, servingC, onServing }: CardPartProps) {
  const { words, host, announce } = context;
  const texts = words.batch.card;
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  const card = () => recipeCard(mix, servingC, new Date().toISOString().slice(0, 10), context);
  const save = () => {
    const file = `${mix.title.replace(/[^\p{L}\p{N} -]/gu, " ").trim()}.html`;
    saveFile(file, new Blob([cardPage(card(), words)], { type: "text/html" }));
    tell(texts.saved(file));
  };
  const put = () =>
    run(async () => {
      if (host === null) return;
      tell(texts.written(await host.addSheet(texts.sheetName(mix.title), cardRows(card(), words))));
    });
  return (
    <details>
      <summary>{texts.title}</summary>
      <p class="quiet">{texts.about}</p>
      <TemperatureField
        context={context}
        label={words.servedAt}
        valueC={servingC}
        onChange={onServing}
      />
      <div class="buttons">
        <button type="button" class="small" onClick={save}>
          {texts.save}
        </button>
        <button type="button" class="small" onClick={() => void put()}>
          {texts.sheet}
        </button>
      </div>
      {(fault ?? told) !== null && <p>{fault ?? told}</p>}
    </details>
  );
}
