import { EditTable } from "../components/EditTable";
import { FormButtons } from "../components/FormButtons";
import type { PaneContext } from "../view";
import type { FixEdit } from "./fixEdits";
import { Unfold } from "../components/Unfold";

interface MendPreviewProps {
  readonly context: PaneContext;
  readonly place: string;
  readonly edits: readonly FixEdit[];
  readonly onWrite: () => void;
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
          <FormButtons
            label={texts.write}
            closeLabel={words.close}
            onDo={() => {
              close();
              onWrite();
            }}
            onClose={close}
          />
        </>
      )}
    </Unfold>
  );
}
