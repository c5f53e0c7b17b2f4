import { useEffect, useState } from "preact/hooks";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { ColumnChoice, ColumnOffer, ColumnQuestion } from "./recognised";

interface ColumnFormProps {
  readonly context: PaneContext;
  readonly question: ColumnQuestion;
  readonly onAnswer: (choice: ColumnChoice) => void;
}

const UNITS = ["g", "%", "kg", "oz", "lb", "mL", "L", "cup", "metric cup", "tbsp", "tsp", "piece"];

interface ColumnSelectProps {
  readonly label: string;
  readonly columns: readonly ColumnOffer[];
  readonly value: number;
  readonly onChange: (index: number) => void;
}

function ColumnSelect({ label, columns, value, onChange }: ColumnSelectProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <select value={value} onChange={(event) => onChange(Number(event.currentTarget.value))}>
        {columns.map((column) => (
          <option key={column.index} value={column.index}>
            {column.label}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Asks which columns hold the names and the amounts, when the headers do not say. */
export function ColumnForm({ context, question, onAnswer }: ColumnFormProps) {
  const { words, announce } = context;
  const { columns, direction, guess } = question;
  const [names, setNames] = useState(guess.names);
  const other = columns.find(({ index }) => index !== guess.names)?.index ?? guess.names;
  const [amounts, setAmounts] = useState(guess.amounts ?? other);
  const [unit, setUnit] = useState("");
  const texts = words.columnForm;
  const asked = texts.why[question.why](`${question.sheet}!${question.address}`);
  useEffect(() => announce(asked), [announce, asked]);
  return (
    <form
      class="column-form"
      onSubmit={(event) => {
        event.preventDefault();
        onAnswer({ direction, names, amounts, unit: unit === "" ? null : unit });
      }}
    >
      <Notice tone="note">{asked}</Notice>
      <ColumnSelect label={texts.names} columns={columns} value={names} onChange={setNames} />
      <ColumnSelect label={texts.amounts} columns={columns} value={amounts} onChange={setAmounts} />
      <label class="field">
        <span>{texts.unit}</span>
        <select value={unit} onChange={(event) => setUnit(event.currentTarget.value)}>
          <option value="">{texts.unitAsWritten}</option>
          {UNITS.map((name) => (
            <option key={name} value={name}>
              {name === "%" ? texts.perCent : name}
            </option>
          ))}
        </select>
      </label>
      {names === amounts && <Notice tone="warning">{texts.same}</Notice>}
      <div class="buttons">
        <button type="submit" class="primary" disabled={names === amounts}>
          {texts.read}
        </button>
      </div>
    </form>
  );
}
