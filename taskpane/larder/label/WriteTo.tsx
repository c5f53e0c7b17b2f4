import { Choice } from "../../components/Choice";
import { EditTable } from "../../components/EditTable";
import type { PaneContext } from "../../view";
import { TextField } from "../../components/TextField";
import { objectionTo, type useOwnTable } from "./useOwnTable";

interface WriteToProps {
  readonly context: PaneContext;
  readonly name: string;
  readonly table: ReturnType<typeof useOwnTable>;
  /** What of the form is to be mended first; null when nothing is. */
  readonly fault: string | null;
}

const NEW_SHEET = "";

/** Which own-ingredients range takes the row, or a new sheet; the cells that would be written; the writing. */
export function WriteTo({ context, name, table, fault }: WriteToProps) {
  const { words, announce } = context;
  const texts = words.larder.label;
  const { ranges, target, plan } = table;
  if (ranges === null) return <p class="quiet">{table.fault ?? words.reading}</p>;
  const trouble =
    typeof plan === "string"
      ? plan === "named"
        ? texts.troubles.named(name, target ?? "")
        : texts.troubles[plan](target ?? "")
      : null;
  const place = typeof plan === "string" ? null : plan;
  const said = place === null || fault !== null ? null : objectionTo(name, place.matrix);
  const objection = said === null ? null : words.said(said);
  const obstacle = fault ?? trouble ?? objection;
  const write = () => {
    if (obstacle !== null) announce(obstacle);
    else if (place !== null) void table.write(place, name);
  };
  return (
    <section>
      <Choice
        label={texts.target}
        value={target ?? NEW_SHEET}
        options={[
          ...ranges.map((range) => ({ value: range, label: range })),
          {
            value: NEW_SHEET,
            label: texts.newSheet(target === null ? (place?.sheet ?? "") : table.wishedName),
          },
        ]}
        onChange={(next) => table.choose(next === NEW_SHEET ? null : next)}
      />
      {target === null && (
        <TextField
          label={texts.sheetName}
          value={table.wishedName}
          onChange={table.setWishedName}
        />
      )}
      {fault === null && (trouble ?? objection) !== null && (
        <p class="fault">{trouble ?? objection}</p>
      )}
      {obstacle === null && place !== null && (
        <>
          <h3>{texts.preview}</h3>
          <EditTable context={context} edits={place.edits} />
        </>
      )}
      <div class="buttons">
        <button
          type="button"
          class="primary"
          aria-disabled={obstacle !== null || place === null}
          onClick={write}
        >
          {texts.write}
        </button>
      </div>
      {table.fault !== null && <p class="insert-outcome">{table.fault}</p>}
    </section>
  );
}
