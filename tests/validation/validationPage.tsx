import { page } from "../../src/help/page";
import { aimsOf } from "./compared/aims";
import { comparisonOf, QUANTITIES, type Comparison } from "./compared/comparison";
import { idealMisses, ourMisses, withinStated } from "./compared/misses";
import { comparisons } from "./comparisons";
import { AimTable } from "./page/AimTable";
import { Legend } from "./page/Legend";
import { MissTable } from "./page/MissTable";
import { ParityPlot } from "./page/ParityPlot";
import { ResidualPlot } from "./page/ResidualPlot";
import { SetAsideTable } from "./page/SetAsideTable";
import { shownMiss } from "./page/shownNumber";
import { SourceSection, USE_WORDS } from "./page/SourceSection";
import { validationStyle } from "./page/validationStyle";

/** All freezing points of cells that were kept back, as one comparison. */
function allFreezing(all: readonly Comparison[]): Comparison {
  const chosen = all.filter(
    ({ id, use, quantity }) =>
      use === "held out" && quantity === "freezing" && id !== "left-out-fifths",
  );
  return comparisonOf(
    {
      id: "all",
      title: "All freezing points kept back from the fits",
      source: "",
      use: "held out",
      quantity: "freezing",
    },
    chosen.flatMap(({ figures }) => figures),
  );
}

function Opening({ all }: { readonly all: readonly Comparison[] }) {
  const held = allFreezing(all);
  const [ours, ideal] = [ourMisses(held.figures), idealMisses(held.figures)!];
  const { stated, once, twice } = withinStated(held.figures);
  return (
    <>
      <p>
        These are {held.figures.length} printed freezing points that no fit has read, from brines
        and alcohols to milk and fruit. Rimeline misses them by {shownMiss(ours.rms)} K (RMS), the
        ideal law of the classroom by {shownMiss(ideal.rms)} K. Of {stated} with a stated
        uncertainty, {Math.round((100 * once) / stated)} % lie within it and{" "}
        {Math.round((100 * twice) / stated)} % within twice of it.
      </p>
      <div class="pictures">
        <ParityPlot {...held} />
        <ResidualPlot {...held} />
        <Legend />
      </div>
    </>
  );
}

const SummaryTable = ({ all }: { readonly all: readonly Comparison[] }) => (
  <MissTable
    of="Source"
    rows={all.map(({ id, title, source, use, quantity, figures }) => ({
      name: <a href={`#${id}`}>{title}</a>,
      below: `${source}; ${USE_WORDS[use]}`,
      missUnit: QUANTITIES[quantity].missUnit,
      figures,
    }))}
  />
);

/** What the page is and how to read it. */
const Introduction = ({ count }: { readonly count: number }) => (
  <p>
    {count} printed figures beside what the worksheet functions answer, drawn from the tables that
    the project’s own tests read. The ideal law is Kf·i·m with Kf = 1.86 K·kg/mol, for water
    activities Raoult’s law. The stated ± is one standard uncertainty, as UNCERTAINTY answers it;
    where print is itself uncertain by its rounding, scatter or composition, that is added in square
    before one is called within the other. What a fit has read proves little; so the sources kept
    back from the fits come first.
  </p>
);

/** The page that holds what Rimeline computes against print, source by source. */
export function validationPage(): string {
  const everything = comparisons();
  const aside = everything.filter(({ use }) => use === "set aside");
  const all = everything.filter(({ use }) => use !== "set aside");
  return page(
    "Rimeline: computed and printed",
    <main>
      <style dangerouslySetInnerHTML={{ __html: validationStyle }} />
      <nav>
        <a href="index.html">All functions</a>
      </nav>
      <h1>Computed and printed</h1>
      <Opening all={all} />
      <Introduction count={all.reduce((sum, { figures }) => sum + figures.length, 0)} />
      <h2>Aims</h2>
      <p>
        The limits were set before the misses were looked at; how they are split into these lines,
        and which rows of sources that disagree were kept back, was decided knowing them. What is
        missed stands first, with its size and reason; DEVELOPERS.md says more under “Known misses”.
      </p>
      <AimTable aims={aimsOf(all)} />
      <h2>All sources</h2>
      <SummaryTable all={all} />
      {all.map((comparison) => (
        <SourceSection {...comparison} />
      ))}
      <section id="set-aside">
        <h2>Set aside</h2>
        <p>
          Tables in print that no fit reads and no aim is held to, each with its reason and how far
          it lies from what is computed.
        </p>
        <SetAsideTable tables={aside} />
      </section>
    </main>,
  );
}
