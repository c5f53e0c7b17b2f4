import { bibliography } from "../foundation/bibliography";
import type { Cell, Matrix } from "../foundation/cell";
import { isProblem } from "../foundation/problem";
import { NAMESPACE } from "../worksheet/namespace";
import type { WorksheetFunction } from "../worksheet/worksheetFunction";
import { callFormula } from "./callFormula";
import { Mistakes, problemText } from "./Mistakes";
import { page } from "./page";

/** A function's page under help/. */
export const pageNameOf = (name: string): string => `${name.toLowerCase()}.html`;

/** =RIME.NAME(first, [optional]) */
export function signatureOf({ name, parameters }: WorksheetFunction): string {
  const shown = parameters.map((parameter) =>
    parameter.optional ? `[${parameter.name}]` : parameter.name,
  );
  return `=${NAMESPACE}.${name}(${shown.join(", ")})`;
}

/** The first rows of a long spill are enough to see what it looks like. */
const ROWS_SHOWN = 8;

function shown(cell: Cell): string {
  if (isProblem(cell)) return problemText(cell);
  if (typeof cell === "number") return String(Number(cell.toPrecision(6)));
  return cell === null ? "" : String(cell);
}

/** The unit of the answer as a sentence. */
function unitText(unit: string): string {
  const asGiven = /^as the (.*)$/.exec(unit);
  if (asGiven) return `In the unit of the ${asGiven[1] ?? ""}.`;
  switch (unit) {
    case "1":
      return "A number without a unit.";
    case "fraction":
      return "A fraction, from 0 to 1.";
    case "table":
      return "A table that spills, its header row first.";
    case "text":
      return "A text.";
    default:
      return `In ${unit}.`;
  }
}

function Answer({ answer }: { readonly answer: Matrix }) {
  return (
    <div class="wide">
      <table>
        {answer.slice(0, ROWS_SHOWN).map((row) => (
          <tr>
            {row.map((cell) => (
              <td>{shown(cell)}</td>
            ))}
          </tr>
        ))}
      </table>
      {answer.length > ROWS_SHOWN && <p class="quiet">{answer.length} rows in all.</p>}
    </div>
  );
}

function Arguments({ definition }: { readonly definition: WorksheetFunction }) {
  return (
    <table class="list">
      {definition.parameters.map(({ name, description, optional, default: value }) => (
        <tr>
          <th scope="row">{name}</th>
          <td>
            {description}.
            {optional && (
              <span class="quiet">
                {" "}
                Optional{value === undefined ? "" : `; ${value} when left out`}.
              </span>
            )}
          </td>
        </tr>
      ))}
    </table>
  );
}

/** The help page of a function: all of it comes from the function's own object. */
export function functionPage(definition: WorksheetFunction): string {
  const { name, summary, unit, example, method, sources, seeAlso = [] } = definition;
  return page(
    `${NAMESPACE}.${name}`,
    <main>
      <nav>
        <a href="index.html">All functions</a>
      </nav>
      <h1>
        {NAMESPACE}.{name}
      </h1>
      <p>{summary}</p>
      <pre>{signatureOf(definition)}</pre>
      <h2>Arguments</h2>
      <Arguments definition={definition} />
      <h2>Answer</h2>
      <p>
        {unitText(unit)} What can be put right in the cell is answered with #VALUE!, what is
        declined with #N/A, each with one sentence that names the argument, the value and the limit.
      </p>
      <h2>How it is computed</h2>
      <p>{method ?? "Nothing is computed: the rows are read from the catalogue."}</p>
      <h2>Example</h2>
      <pre>{example.formula}</pre>
      <Answer answer={callFormula(example.formula)} />
      <Mistakes definition={definition} />
      <h2>Sources</h2>
      <ul>
        {sources.map((key) => (
          <li>{bibliography[key]}</li>
        ))}
      </ul>
      {sources.includes("stokesRobinson1966") && (
        <p>
          How far its numbers lie from print:{" "}
          <a href="validation.html">computed and printed, source by source</a>.
        </p>
      )}
      {seeAlso.length > 0 && (
        <p>
          See also:{" "}
          {seeAlso.map((other) => (
            <>
              <a href={pageNameOf(other)}>{other}</a>{" "}
            </>
          ))}
        </p>
      )}
    </main>,
  );
}
