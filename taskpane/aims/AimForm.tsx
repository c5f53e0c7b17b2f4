import { useState } from "preact/hooks";
import { findTarget } from "../../src/catalogue/findTarget";
import { normalName } from "../../src/catalogue/normalName";
import { Choice } from "../components/Choice";
import { FormButtons } from "../components/FormButtons";
import { NumberField } from "../components/NumberField";
import { TextField } from "../components/TextField";
import type { PaneContext } from "../view";
import type { AimBody } from "./aim";

interface AimFormProps {
  readonly context: PaneContext;
  /** What the form begins with; null for a target from nothing. */
  readonly from: AimBody | null;
  /** The names that are taken by other targets of the user's own. */
  readonly taken: readonly string[];
  readonly onSave: (body: AimBody) => void;
  readonly onClose: () => void;
}

interface Draft extends Pick<AimBody, "name" | "basis" | "note"> {
  readonly temperatureC: number | null;
  readonly fromPercent: number | null;
  readonly toPercent: number | null;
}

const EMPTY: Draft = {
  ...{ name: "", basis: "water", note: "", temperatureC: null, fromPercent: null, toPercent: null },
};

const PERCENT = 100;
/** Per cent as it was typed, without the tail of a binary number. */
const percentOf = (fraction: number) => Number((fraction * PERCENT).toFixed(6));

const draftOf = (body: AimBody): Draft => ({
  ...body,
  fromPercent: percentOf(body.iceFrom),
  toPercent: percentOf(body.iceTo),
});

/** A text that no cell takes for a formula. */
const plain = (text: string) => text.replace(/^[\s=]+/, "").trim();

/** The target that a form describes, or the sentence that says what is missing. */
function bodyOf(draft: Draft, taken: readonly string[], { words }: PaneContext): AimBody | string {
  const { faults } = words.aims;
  const name = plain(draft.name);
  const { temperatureC, fromPercent, toPercent } = draft;
  if (name === "") return faults.name;
  if (findTarget(name) !== undefined) return faults.catalogue(name);
  if (taken.some((one) => normalName(one) === normalName(name))) return faults.taken(name);
  if (temperatureC === null || fromPercent === null || toPercent === null) return faults.numbers;
  if (fromPercent > toPercent) return faults.order;
  const ends = { iceFrom: fromPercent / PERCENT, iceTo: toPercent / PERCENT };
  return { name, temperatureC, ...ends, basis: draft.basis, note: plain(draft.note) };
}

/** A target to write or to change. */
export function AimForm({ context, from, taken, onSave, onClose }: AimFormProps) {
  const { words, announce } = context;
  const texts = words.aims;
  const [draft, setDraft] = useState(from === null ? EMPTY : draftOf(from));
  const [fault, setFault] = useState<string | null>(null);
  const change = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const text = (label: string, key: "name" | "note") => (
    <TextField
      label={label}
      mostSigns={key === "name" ? 80 : 500}
      value={draft[key]}
      onChange={(value) => change({ [key]: value })}
    />
  );
  const number = (
    label: string,
    key: "temperatureC" | "fromPercent" | "toPercent",
    [unit, least, most]: readonly [string, number, number],
  ) => (
    <NumberField
      context={context}
      label={label}
      unit={unit}
      value={draft[key]}
      from={least}
      to={most}
      onChange={(value) => change({ [key]: value })}
    />
  );
  return (
    <form
      class="aim-form"
      onSubmit={(event) => {
        event.preventDefault();
        const body = bodyOf(draft, taken, context);
        setFault(typeof body === "string" ? body : null);
        if (typeof body === "string") announce(body);
        else {
          onClose();
          onSave(body);
        }
      }}
    >
      {text(texts.name, "name")}
      <div class="aim-numbers">
        {number(texts.temperature, "temperatureC", ["°C", -60, 40])}
        {number(texts.from, "fromPercent", ["%", 0, PERCENT])}
        {number(texts.to, "toPercent", ["%", 0, PERCENT])}
        <Choice
          label={texts.basis}
          value={draft.basis}
          options={(["water", "mix"] as const).map((basis) => ({
            value: basis,
            label: texts.bases[basis],
          }))}
          onChange={(basis) => change({ basis })}
        />
      </div>
      {text(texts.note, "note")}
      {fault !== null && <p class="fault">{fault}</p>}
      <FormButtons label={texts.save} closeLabel={words.close} onClose={onClose} />
    </form>
  );
}
