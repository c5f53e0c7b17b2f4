import { useEffect, useState } from "preact/hooks";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { ColumnChoice, ColumnQuestion } from "./recognised";

interface ColumnFormProps {
  readonly context: PaneContext;
  readonly question: ColumnQuestion;
  readonly onAnswer: (choice: ColumnChoice) => void;
}

const UNITS = ["g", "%", "kg", "oz", "lb", "mL", "L", "cup", "metric cup", "tbsp", "tsp", "piece"];

/** Asks which columns hold the names and the amounts, when the headers do not say. */
export function ColumnForm({ context, question, onAnswer }: ColumnFormProps) {
  const { words, announce } = context;
  const { columns, direction, guess } = question;
  const [names, setNames] = useState(guess.names);
  const other = columns.find(({ index }) => index !== guess.names)?.index ?? guess.names;
  const [amounts, setAmounts] = useState(guess.amounts ?? other);
  const [unit, setUnit] = useState("");
  const offered = columns.map(({ index, label }) => ({ value: index, label }));
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
      <Choice label={texts.names} value={names} options={offered} onChange={setNames} />
      <Choice label={texts.amounts} value={amounts} options={offered} onChange={setAmounts} />
      <Choice
        label={texts.unit}
        value={unit}
        options={[
          { value: "", label: texts.unitAsWritten },
          ...UNITS.map((value) => ({ value, label: value === "%" ? texts.perCent : value })),
        ]}
        onChange={setUnit}
      />
      {names === amounts && <Notice tone="warning">{texts.same}</Notice>}
      <div class="buttons">
        <button type="submit" class="primary" disabled={names === amounts}>
          {texts.read}
        </button>
      </div>
    </form>
  );
}
