import { useState } from "preact/hooks";
import type { PaneContext } from "../view";
import { FormButtons } from "../components/FormButtons";
import { TextField } from "../components/TextField";
import { Unfold } from "../components/Unfold";

interface AcceptProps {
  readonly context: PaneContext;
  readonly place: string;
  readonly onAccept: (reason: string) => void;
}

function ReasonForm({
  context,
  onAccept,
  onClose,
}: Omit<AcceptProps, "place"> & { onClose: () => void }) {
  const { words, announce } = context;
  const texts = words.readThrough.accept;
  const [reason, setReason] = useState("");
  const [isMissing, setMissing] = useState(false);
  const submit = (event: Event) => {
    event.preventDefault();
    if (reason.trim() === "") {
      setMissing(true);
      announce(texts.empty);
      return;
    }
    onAccept(reason.trim());
  };
  return (
    <form onSubmit={submit}>
      <TextField
        label={texts.reason}
        value={reason}
        mostSigns={300}
        fault={isMissing ? texts.empty : null}
        onChange={setReason}
      />
      <FormButtons label={texts.accept} closeLabel={words.close} onClose={onClose} />
    </form>
  );
}

/** Letting a finding stay, with the reason that later reports show. */
export function Accept({ context, place, onAccept }: AcceptProps) {
  const texts = context.words.readThrough.accept;
  return (
    <Unfold label={texts.open} fullLabel={texts.openFor(place)} title={texts.title(place)}>
      {(close) => <ReasonForm context={context} onAccept={onAccept} onClose={close} />}
    </Unfold>
  );
}
