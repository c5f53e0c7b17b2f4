import { servingTargets } from "../../src/catalogue/targets";
import { catalogueAim } from "../aims/aim";
import { AimForm } from "../aims/AimForm";
import { AimImport } from "../aims/AimImport";
import { AimItem } from "../aims/AimItem";
import { aimRows } from "../aims/aimTables";
import { useOwnAims } from "../aims/useOwnAims";
import { Notice } from "../components/Notice";
import { Unfold } from "../components/Unfold";
import type { View, ViewProps } from "../view";
import "../aims/aims.css";

/** The serving targets: the user's own, to write, change, keep and hand on, and the catalogue's. */
function Aims({ context, active }: ViewProps) {
  const { words, host } = context;
  const texts = words.aims;
  const aims = useOwnAims(context, active);
  const { own, state, fault, told } = aims;
  const isOffered = (row: { readonly name: string; readonly place: unknown }) =>
    own.some(
      ({ name, place }) => name === row.name && JSON.stringify(place) === JSON.stringify(row.place),
    );
  const notOffered = state.tables.flatMap((table) => {
    const place = `${table.sheet}!${table.address}`;
    return aimRows(table).flatMap((row) => {
      if ("refused" in row) return [texts.refused(place, row.refused)];
      return isOffered(row) ? [] : [texts.shadowed(row.name, place)];
    });
  });
  return (
    <div class="aims">
      <p class="quiet">{texts.about}</p>
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      <h2>{texts.own}</h2>
      {own.length === 0 && <p class="quiet">{texts.none}</p>}
      <ul class="aim-list">
        {own.map((aim) => (
          <AimItem key={aim.name} context={context} aim={aim} aims={aims} />
        ))}
      </ul>
      {notOffered.map((sentence) => (
        <Notice key={sentence} tone="warning">
          {sentence}
        </Notice>
      ))}
      <Unfold label={texts.add} title={texts.add}>
        {(close) => (
          <AimForm
            context={context}
            from={null}
            taken={own.map(({ name }) => name)}
            onSave={(body) => aims.save(body, null)}
            onClose={close}
          />
        )}
      </Unfold>
      {host !== null && state.unkept.length > 0 && (
        <p>
          <span class="quiet">{texts.keepAbout(state.unkept.length)}</span>{" "}
          <button type="button" class="primary" onClick={() => void aims.keep()}>
            {texts.keep}
          </button>
        </p>
      )}
      {told !== null && <p>{told}</p>}
      <AimImport context={context} aims={aims} />
      {own.length > 0 && (
        <button type="button" class="small" onClick={() => void aims.exportAll()}>
          {texts.export}
        </button>
      )}
      <details>
        <summary>{texts.catalogue(servingTargets.length)}</summary>
        <ul class="aim-list">
          {servingTargets.map((target) => (
            <AimItem
              key={target.name}
              context={context}
              aim={catalogueAim(target, words)}
              aims={aims}
            />
          ))}
        </ul>
      </details>
    </div>
  );
}

export const aims: View = { key: "aims", Content: Aims };
