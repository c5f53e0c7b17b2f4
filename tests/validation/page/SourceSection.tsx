import { QUANTITIES, type ComparedFigure, type Comparison } from "../compared/comparison";
import { byGroup, idealMisses, ourMisses, withinStated } from "../compared/misses";
import { FigureTable } from "./FigureTable";
import { Legend } from "./Legend";
import { MissTable } from "./MissTable";
import { ParityPlot } from "./ParityPlot";
import { ResidualPlot } from "./ResidualPlot";
import { shownMiss } from "./shownNumber";

/** With fewer figures a picture shows nothing that their table does not. */
export const FEWEST_FOR_A_PICTURE = 3;

export const USE_WORDS: Readonly<Record<Comparison["use"], string>> = {
  "held out": "kept back from the fits",
  fit: "read by the fits",
  "set aside": "set aside",
};

/** The figure that is missed most. */
const worst = (figures: readonly ComparedFigure[]): ComparedFigure | undefined =>
  [...figures].sort(
    (a, b) => Math.abs(b.computed - b.printed) - Math.abs(a.computed - a.printed),
  )[0];

/** RMS, largest miss and stated bands in words. */
function Verdict({ quantity, figures, declined }: Comparison) {
  const { missUnit } = QUANTITIES[quantity];
  const [ours, ideal] = [ourMisses(figures), idealMisses(figures)];
  const { stated, once, twice } = withinStated(figures);
  return (
    <p>
      {figures.length === 1 ? "One figure" : `${figures.length} figures`}. Rimeline: RMS{" "}
      <b>
        {shownMiss(ours.rms)} {missUnit}
      </b>
      , largest miss {shownMiss(ours.largest)} {missUnit} ({worst(figures)?.label}).
      {ideal !== null &&
        ` Ideal law: RMS ${shownMiss(ideal.rms)} ${missUnit}, largest ${shownMiss(ideal.largest)} ${missUnit}.`}
      {stated > 0 &&
        ` Of ${stated} with a stated uncertainty, ${once} lie within it and ${twice} within twice of it${figures.some(({ printedBand }) => printedBand > 0) ? ", the print’s own counted" : ""}.`}
      {declined.length > 0 && ` ${declined.length} more are declined in words, not answered.`}
    </p>
  );
}

function Groups({ quantity, figures }: Comparison) {
  const groups = [...byGroup(figures)];
  if (groups.length < 2 || groups.length === figures.length) return null;
  return (
    <details class="groups">
      <summary>By substance ({groups.length})</summary>
      <MissTable
        of="Substance"
        rows={groups.map(([name, of]) => ({
          name,
          missUnit: QUANTITIES[quantity].missUnit,
          figures: of,
        }))}
      />
    </details>
  );
}

/** One source: its verdict, two pictures and the figures behind them. */
export function SourceSection(comparison: Comparison) {
  const { id, title, source, use, note, figures } = comparison;
  return (
    <section id={id}>
      <h2>{title}</h2>
      <p class="quiet">
        {source}. <span class="use">{USE_WORDS[use]}</span>
      </p>
      {note !== null && <p class="quiet">{note}</p>}
      <Verdict {...comparison} />
      {figures.length >= FEWEST_FOR_A_PICTURE && (
        <div class="pictures">
          <ParityPlot {...comparison} />
          <ResidualPlot {...comparison} />
          <Legend />
        </div>
      )}
      <Groups {...comparison} />
      <FigureTable {...comparison} />
    </section>
  );
}
