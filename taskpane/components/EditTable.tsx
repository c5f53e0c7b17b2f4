import type { BlockValue, SheetEdit } from "../host";
import type { PaneContext } from "../view";

interface EditTableProps {
  readonly context: PaneContext;
  readonly edits: readonly SheetEdit[];
}

/** What is written stands as it will stand in the cell: texts in quotation marks, to tell "12" from 12. */
function Content({ content, blank }: { readonly content: BlockValue; readonly blank: string }) {
  if (content === "") return <em>{blank}</em>;
  const isPlainText = typeof content === "string" && !content.startsWith("=");
  return <code>{isPlainText ? `“${content}”` : String(content)}</code>;
}

/** Cells that would be written: what stands in each now, and what would stand there then. */
export function EditTable({ context, edits }: EditTableProps) {
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
