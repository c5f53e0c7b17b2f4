import type { BlockValue } from "../host";
import type { PaneContext } from "../view";
import type { FixEdit } from "./fixEdits";
import { Unfold } from "../components/Unfold";

interface MendPreviewProps {
  readonly context: PaneContext;
  readonly place: string;
  readonly edits: readonly FixEdit[];
  readonly onWrite: () => void;
}

/** What is written stands as it will stand in the cell: texts in quotation marks, to tell "12" from 12. */
function Content({ content, blank }: { readonly content: BlockValue; readonly blank: string }) {
  if (content === "") return <em>{blank}</em>;
  const isPlainText = typeof content === "string" && !content.startsWith("=");
  return <code>{isPlainText ? `“${content}”` : String(content)}</code>;
}

function EditTable({ context, edits }: { context: PaneContext; edits: readonly FixEdit[] }) {
  const texts = context.words.readThrough.mend;
  return (
    <table class="edits">
      <thead>
        <tr>
          <th scope="col">{texts.cell}</th>
          <th scope="col">{texts.now}</th>
          <th scope="col">{texts.then}</th>
        </tr>
      </thead>
      <tbody>
        {edits.map(({ sheet, cell, from, to, format }) => (
          <tr key={`${sheet}!${cell}`}>
            <th scope="row">
              {sheet}!{cell}
            </th>
            <td>
              <Content content={from} blank={texts.blank} />
            </td>
            <td>
              <Content content={to} blank={texts.blank} />
              {format !== undefined && <span class="quiet"> {texts.format}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The fix of a finding, cell by cell, with the button that writes it. */
export function MendPreview({ context, place, edits, onWrite }: MendPreviewProps) {
  const { words } = context;
  const texts = words.readThrough.mend;
  return (
    <Unfold label={texts.open} fullLabel={texts.openFor(place)} title={texts.title(place)}>
      {(close) => (
        <>
          <p class="quiet">{texts.about}</p>
          <EditTable context={context} edits={edits} />
          <div class="buttons">
            <button
              type="button"
              class="primary"
              onClick={() => {
                close();
                onWrite();
              }}
            >
              {texts.write}
            </button>
            <button type="button" onClick={close}>
              {words.close}
            </button>
          </div>
        </>
      )}
    </Unfold>
  );
}
