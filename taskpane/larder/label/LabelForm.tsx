import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { Choice } from "../../components/Choice";
import type { PaneContext } from "../../view";
import { AllergenFields } from "./AllergenFields";
import { emptyDraft, type LabelDraft } from "./draft";
import { EntryField } from "./EntryField";
import { Figures } from "./Figures";
import { planSheet } from "./ownTable";
import { readLabel } from "./readLabel";
import { SumCheck } from "./SumCheck";
import { TextField } from "../../components/TextField";
import { useOwnTable } from "./useOwnTable";
import { WriteTo } from "./WriteTo";

interface LabelFormProps {
  readonly context: PaneContext;
  readonly onBack: () => void;
}

const HOWS = ["label", "same"] as const;

/** An ingredient of one's own from what its label prints, checked and written among the own ingredients. */
export function LabelForm({ context, onBack }: LabelFormProps) {
  const { words, numbers, host } = context;
  const texts = words.larder.label;
  const [draft, setDraft] = useState(() =>
    emptyDraft(texts.sourceDefault(new Date().toISOString().slice(0, 10))),
  );
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { fault, notes, row } = useMemo(
    () => readLabel(draft, { words, numbers }),
    [draft, words, numbers],
  );
  const table = useOwnTable(context, row);
  const onChange = (change: Partial<LabelDraft>) => {
    table.clear();
    setDraft({ ...draft, ...change });
  };
  const name = draft.name.trim();
  const own = fault === null ? planSheet("", row, (header) => header).matrix : null;
  const props = { context, draft, onChange };
  return (
    <div class="label-form">
      <div class="buttons">
        <button type="button" class="small" onClick={onBack}>
          ← {words.back}
        </button>
      </div>
      <h2 tabIndex={-1} ref={heading}>
        {texts.title}
      </h2>
      <TextField
        label={texts.name}
        value={draft.name}
        onChange={(next) => onChange({ name: next })}
      />
      <Choice
        label={texts.how}
        value={draft.isSame ? "same" : "label"}
        options={HOWS.map((value) => ({ value, label: texts.hows[value] }))}
        onChange={(how) => onChange({ isSame: how === "same" })}
      />
      {draft.isSame ? (
        <EntryField
          label={texts.sameAs}
          value={draft.sameAs}
          onChange={(sameAs) => onChange({ sameAs })}
        />
      ) : (
        <>
          <Figures {...props} />
          <AllergenFields {...props} />
          <TextField
            label={texts.cautions}
            value={draft.cautions}
            onChange={(cautions) => onChange({ cautions })}
          />
        </>
      )}
      <TextField
        label={texts.source}
        value={draft.source}
        onChange={(source) => onChange({ source })}
      />
      <SumCheck context={context} name={name} fault={fault} notes={notes} own={own} />
      {host !== null && <WriteTo context={context} name={name} table={table} fault={fault} />}
      {table.told.map((sentence) => (
        <p key={sentence} class="insert-outcome">
          {sentence}
        </p>
      ))}
    </div>
  );
}
