import { solutes } from "../../../src/catalogue/solutes";
import { Choice } from "../../components/Choice";
import { NumberField } from "../../components/NumberField";
import { SPLITS, SUGARS, sugarsOf } from "./draft";
import type { DraftProps } from "./draftProps";
import { EntryField } from "./EntryField";

const POLYOLS = solutes.filter(({ kind, food }) => kind === "polyol" && food);

/** Which sugars the sugars are, and which polyol the polyols: a label does not say. */
export function SugarKinds({ context, draft, onChange }: DraftProps) {
  const texts = context.words.larder.label;
  const { split, each, parts } = draft;
  const names = POLYOLS.map(({ name }) => ({ value: name, label: name }));
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
        <div class="fields even">
          {SUGARS.map((name) => (
            <NumberField
              key={name}
              context={context}
              label={name}
              unit="g"
              from={0}
              to={10_000}
              value={each[name] ?? null}
              onChange={(grams) => onChange({ each: { ...each, [name]: grams } })}
            />
          ))}
        </div>
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
