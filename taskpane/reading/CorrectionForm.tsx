import { useState } from "preact/hooks";
import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import { isProblem } from "../../src/foundation/problem";
import type { Workbook } from "../../src/workbook/model";
import { Choice } from "../components/Choice";
import { FormButtons } from "../components/FormButtons";
import { TextField } from "../components/TextField";
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

const unitsWith = (unit = "") =>
  (unit === "" || UNITS.includes(unit) ? UNITS : [...UNITS, unit]).map((value) => ({ value }));

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
  const text = (label: string, value: string, onChange: (value: string) => void) => (
    <TextField label={label} value={value} mostSigns={200} onChange={onChange} />
  );
  return (
    <form onSubmit={(event) => void submit(event)}>
      {text(texts.place, place, setPlace)}
      <button type="button" class="small" onClick={() => void takeSelection()}>
        {texts.selection}
      </button>
      <Choice
        label={texts.recipe}
        value={recipe}
        options={KINDS.map((value) => ({ value, label: texts.kinds[value] }))}
        onChange={(value) => {
          // Columns mean nothing as rows: what was read is offered again only for its own way.
          const own = value === from.recipe ? from : { names: "", amounts: "" };
          setSaid({ ...said, recipe: value, names: own.names, amounts: own.amounts });
        }}
      />
      {recipe !== "none" && (
        <>
          {text(texts.names[recipe], said.names ?? "", (names) => setSaid({ ...said, names }))}
          {text(texts.amounts[recipe], said.amounts ?? "", (amounts) =>
            setSaid({ ...said, amounts }),
          )}
          <Choice
            label={texts.unit}
            value={said.unit ?? ""}
            options={[{ value: "", label: texts.asWritten }, ...unitsWith(from.unit)]}
            onChange={(unit) => setSaid({ ...said, unit })}
          />
          <p class="quiet">{texts.blank}</p>
        </>
      )}
      {(fault ?? hostFault) !== null && <p class="fault">{fault ?? hostFault}</p>}
      <FormButtons label={texts.read} closeLabel={words.close} onClose={onClose} />
    </form>
  );
}
