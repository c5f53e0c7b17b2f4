import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import type { View, ViewProps } from "../view";
import { Explained } from "../why/Explained";
import { ownFunction } from "../why/ownFunction";
import { useExplanation } from "../why/useExplanation";
import "../why/why.css";

/** Explains the formula of the selected cell: its answer, its working, what the ideal law would say. */
function Why({ context, active }: ViewProps) {
  const { words, host } = context;
  const { cell, call, chosen, choose, found, fault } = useExplanation(context, active);
  if (host === null) return <Notice tone="note">{words.why.outside}</Notice>;
  const definition = call === null ? null : ownFunction(call.name);
  return (
    <div class="why">
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {cell === null && fault === null && <p class="quiet">{words.reading}</p>}
      {cell !== null && cell.calls.length === 0 && (
        <Notice tone="note">{words.why.none(`${cell.sheet}!${cell.cell}`)}</Notice>
      )}
      {cell !== null && call !== null && (
        <>
          <h2>
            {cell.sheet}!{cell.cell}
          </h2>
          <p>
            <code>{cell.formula}</code>
          </p>
          {cell.calls.length > 1 && (
            <Choice
              label={words.why.which}
              value={chosen}
              options={cell.calls.map(({ text }, at) => ({ value: at, label: text }))}
              onChange={choose}
            />
          )}
          {definition === null && <Notice tone="trouble">{words.why.unknown(call.name)}</Notice>}
          {found === null && fault === null && <p class="quiet">{words.reading}</p>}
          {found !== null && "unread" in found && (
            <Notice tone="note">{words.why.unread(found.unread)}</Notice>
          )}
          {found !== null && "args" in found && definition !== null && (
            <Explained
              key={`${cell.cell} ${call.text}`}
              context={context}
              definition={definition}
              call={call}
              args={found.args}
              shown={cell.formula === `=${call.text}` ? cell.shown : null}
            />
          )}
        </>
      )}
    </div>
  );
}

export const why: View = { key: "why", Content: Why };
