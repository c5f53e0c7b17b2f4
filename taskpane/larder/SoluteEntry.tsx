import { bibliography } from "../../src/foundation/bibliography";
import type { Solute } from "../../src/catalogue/solute";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { effectLines } from "./effectLines";
import { FigureList } from "./FigureList";
import { soluteLines, unknownFigures } from "./soluteLines";

interface SoluteEntryProps {
  readonly context: PaneContext;
  readonly solute: Solute;
}

/** A solute's constants, and how well its freezing curve is known. */
export function SoluteEntry({ context, solute }: SoluteEntryProps) {
  const { words, numbers } = context;
  const { curveRecord: record, hydrateOf } = solute;
  const unknown = unknownFigures(solute, words);
  return (
    <>
      <p class="quiet">
        {[words.soluteKinds[solute.kind], solute.formula, solute.cas && `CAS ${solute.cas}`]
          .filter(Boolean)
          .join(" · ")}
      </p>
      {!solute.food && <Notice tone="trouble">{words.notFood}</Notice>}
      {hydrateOf && (
        <p>{words.hydrate(hydrateOf.solute, numbers.percent(hydrateOf.waterMassFraction, 1))}</p>
      )}
      <FigureList
        context={context}
        title={words.larder.effect.title}
        subject={solute.name}
        lines={effectLines(solute.name, words)}
      />
      <FigureList
        context={context}
        title={words.constants}
        subject={solute.name}
        lines={soluteLines(solute, words)}
      />
      {unknown.length > 0 && <p class="quiet">{words.larder.unknown(unknown.join("; "))}</p>}
      <section>
        <h3>{words.curve.title}</h3>
        <p>
          {record.points > 0
            ? words.curve.fitted(
                record.points,
                numbers.plain(record.rmsK),
                numbers.plain(record.largestK),
              )
            : words.curve.estimated}{" "}
          {words.curve.checked(
            numbers.plain(record.checkedToC),
            numbers.percent(record.relativeUncertainty, 1),
          )}
        </p>
        <p class="figure-why">
          {[
            ...record.source.map((key) => bibliography[key]),
            words.obtained[record.obtained],
            words.basis(record.basis),
          ].join(" · ")}
        </p>
      </section>
      {solute.note && <p>{solute.note}</p>}
    </>
  );
}
