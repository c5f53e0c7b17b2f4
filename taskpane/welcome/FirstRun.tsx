import { useState } from "preact/hooks";
import { useStore } from "../components/store";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { exampleRecipe } from "./exampleRecipe";
import { rememberWelcomed } from "./welcomed";
import "./welcome.css";

/** For whoever is here for the first time: two lines, one thing to try. Gone once there was a recipe. */
export function FirstRun({ context }: { readonly context: PaneContext }) {
  const { host, words, shared, announce } = context;
  const texts = words.welcome;
  const isWelcomed = useStore(shared.welcomed);
  const { fault, run } = useHostTask(context);
  const [isBusy, setBusy] = useState(false);
  if (isWelcomed || host === null) return null;
  const begin = () =>
    run(async () => {
      setBusy(true);
      try {
        const sheet = await host.addSheet(texts.example.sheet, exampleRecipe(words));
        announce(texts.added(sheet));
        await host.goTo(sheet, "A3");
      } finally {
        setBusy(false);
      }
    });
  return (
    <section class="welcome" aria-label={texts.title}>
      <p>{texts.sheet}</p>
      <p>{texts.cells}</p>
      <div class="buttons">
        <button type="button" class="primary" disabled={isBusy} onClick={() => void begin()}>
          {texts.begin}
        </button>
        <button type="button" onClick={() => rememberWelcomed(shared)}>
          {texts.dismiss}
        </button>
      </div>
      {fault !== null && <p class="fault">{fault}</p>}
    </section>
  );
}
