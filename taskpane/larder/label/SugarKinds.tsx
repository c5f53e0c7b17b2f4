import { solutes } from "../../../src/catalogue/solutes";
import { Choice } from "../../components/Choice";
import { GramFields } from "../../components/GramFields";
import { SPLITS, SUGARS, sugarsOf } from "./draft";
import type { DraftProps } from "./draftProps";
import { EntryField } from "./EntryField";

const POLYOLS = solutes.filter(({ kind, food }) => kind === "polyol" && food);

/** Which sugars the sugars are, and which polyol the polyols: a label does not say. */
export function SugarKinds({ context, draft, onChange }: DraftProps) {
  const texts = context.words.larder.label;
  const { split, each, parts } = draft;
  const names = POLYOLS.map(({ name }) => ({ value: name }));
  return (
    <>
      {(sugarsOf(draft) > 0 || split === "each") && (
        <Choice
          label={texts.split}
          value={split}
          options={SPLITS.map((value) => ({ value, label: texts.splits[value] }))}
          onChange={(next) => onChange({ split: next })}
        />
      )}
      {split === "like" && (
        <EntryField
          label={texts.splitLike}
          value={draft.splitLike}
          onChange={(splitLike) => onChange({ splitLike })}
        />
      )}
      {split === "each" && (
        <GramFields
          context={context}
          amounts={SUGARS.map((name) => ({ name, grams: each[name] ?? null }))}
          mostGrams={10_000}
          onChange={(name, grams) => onChange({ each: { ...each, [name]: grams } })}
        />
      )}
      {(parts.polyols ?? 0) > 0 && (
        <Choice
          label={texts.polyol}
          value={draft.polyol === "" ? null : draft.polyol}
          none={texts.choose}
          options={names}
          onChange={(polyol) => onChange({ polyol })}
        />
      )}
    </>
  );
}
