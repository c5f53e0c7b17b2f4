import { worksheetFunctions } from "../worksheet/functions";
import { NAMESPACE } from "../worksheet/namespace";
import { functionPage, pageNameOf } from "./functionPage";
import { page } from "./page";

export interface HelpFile {
  /** Name within the help folder. */
  readonly name: string;
  readonly html: string;
}

function indexPage(): string {
  return page(
    "Rimeline: functions",
    <main>
      <h1>Functions of Rimeline</h1>
      <p>
        Temperatures in °C, masses in g, molality in mol per kg of water, shares from 0 to 1. Every
        argument takes a cell, a range or an array.
      </p>
      <table class="list">
        {worksheetFunctions.map(({ name, summary }) => (
          <tr>
            <th scope="row">
              <a href={pageNameOf(name)}>
                {NAMESPACE}.{name}
              </a>
            </th>
            <td>{summary}</td>
          </tr>
        ))}
      </table>
      <p>
        How far the numbers are to be trusted:{" "}
        <a href="validation.html">computed and printed, source by source</a>.
      </p>
      <p class="quiet">
        Freezing kills neither microbes nor viruses, and a computed water activity is no shelf-life
        release. Local codes and licensed practice come first.
      </p>
    </main>,
  );
}

/** Every page of the help: the index and one page a function. */
export function helpSite(): readonly HelpFile[] {
  const pages = worksheetFunctions.map((definition) => ({
    name: pageNameOf(definition.name),
    html: functionPage(definition),
  }));
  return [{ name: "index.html", html: indexPage() }, ...pages];
}
