import { useState } from "preact/hooks";
import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import { isProblem } from "../../src/foundation/problem";
import type { Workbook } from "../../src/workbook/model";
import { FormButtons } from "../components/FormButtons";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";

interface CorrectionFormProps {
  readonly context: PaneContext;
  readonly workbook: Workbook;
  /** How it was read. */
  readonly from: RecipeCorrection;
  readonly onSay: (correction: RecipeCorrection) => void;
  readonly onClose: () => void;
}

const KINDS = ["down", "across", "none"] as const;
const UNITS = ["g", "kg", "mg", "%", "oz", "lb", "mL", "L", "cup", "tbsp", "tsp", "piece"];

const unitsWith = (unit = ""): readonly string[] =>
  unit === "" || UNITS.includes(unit) ? UNITS : [...UNITS, unit];

const isKind = (text: string): text is RecipeCorrection["recipe"] =>
  (KINDS as readonly string[]).includes(text);

const placeText = ({ sheet, range }: RecipeCorrection): string =>
  sheet === "" ? "" : `${sheet}!${range}`;

/** "Ices!A1:C9" or "'My ices'!A1:C9"; without a sheet the whole is a range. */
function placeFrom(text: string): Pick<RecipeCorrection, "sheet" | "range"> {
  const at = text.lastIndexOf("!");
  const sheet = text.slice(0, Math.max(0, at)).trim();
  const quoted = /^'(.*)'$/.exec(sheet)?.[1];
  return { sheet: quoted?.replaceAll("''", "'") ?? sheet, range: text.slice(at + 1).trim() };
}

/** How a recipe lies, to be changed; what is said is checked before the workbook is read by it. */
export function CorrectionForm(props: CorrectionFormProps) {
  const { context, workbook, from, onSay, onClose } = props;
  const { host, words, announce } = context;
  const { fault: hostFault, run } = useHostTask(context);
  const texts = words.readThrough.correct;
  const [said, setSaid] = useState(from);
  const [place, setPlace] = useState(placeText(from));
  const [fault, setFault] = useState<string | null>(null);
  const { recipe } = said;
  const submit = async (event: Event) => {
    event.preventDefault();
    const { saidOf } = await import(
      /* webpackChunkName: "reading" */ "../../src/audit/recipes/corrections/saidOf"
    );
    const { names, amounts, unit } = said;
    const lines = recipe === "none" ? {} : { names, amounts, unit };
    const checked = saidOf(workbook, { recipe, ...placeFrom(place), ...lines });
    if (isProblem(checked)) {
      const sentence = words.said(checked.message);
      setFault(sentence);
      announce(sentence);
    } else onSay(checked);
  };
  const takeSelection = () =>
    run(async () => {
      const selected = (await host?.readSelection())?.selected;
      if (selected !== undefined) setPlace(`${selected.sheet}!${selected.address}`);
    });
  const text = (label: string, value: string, onInput: (value: string) => void) => (
    <label class="field">
      <span>{label}</span>
      <input
        type="text"
        value={value}
        maxLength={200}
        onInput={(event) => onInput(event.currentTarget.value)}
      />
    </label>
  );
  return (
    <form onSubmit={(event) => void submit(event)}>
      {text(texts.place, place, setPlace)}
      <button type="button" class="small" onClick={() => void takeSelection()}>
        {texts.selection}
      </button>
      <label class="field">
        <span>{texts.recipe}</span>
        <select
          value={recipe}
          onChange={({ currentTarget: { value } }) => {
            // Columns mean nothing as rows: what was read is offered again only for its own way.
            if (!isKind(value)) return;
            const own = value === from.recipe ? from : { names: "", amounts: "" };
            setSaid({ ...said, recipe: value, names: own.names, amounts: own.amounts });
          }}
        >
          {KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {texts.kinds[kind]}
            </option>
          ))}
        </select>
      </label>
      {recipe !== "none" && (
        <>
          {text(texts.names[recipe], said.names ?? "", (names) => setSaid({ ...said, names }))}
          {text(texts.amounts[recipe], said.amounts ?? "", (amounts) =>
            setSaid({ ...said, amounts }),
          )}
          <label class="field">
            <span>{texts.unit}</span>
            <select
              value={said.unit ?? ""}
              onChange={(event) => setSaid({ ...said, unit: event.currentTarget.value })}
            >
              <option value="">{texts.asWritten}</option>
              {unitsWith(from.unit).map((unit) => (
                <option key={unit} value={unit}>
                  {unit}
                </option>
              ))}
            </select>
          </label>
          <p class="quiet">{texts.blank}</p>
        </>
      )}
      {(fault ?? hostFault) !== null && <p class="fault">{fault ?? hostFault}</p>}
      <FormButtons label={texts.read} closeLabel={words.close} onClose={onClose} />
    </form>
  );
}
