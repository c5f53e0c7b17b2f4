import type { AuditReport, ReportedFinding } from "./auditReport";
import { effectText } from "./effectText";
import { htmlStyle } from "./htmlStyle";
import { extentSentence, methodSentences, resultSentence, takenSentences } from "./reportSentences";

const NO_SCRIPT = "default-src 'none'; style-src 'unsafe-inline'";

function FindingItem({ finding }: { readonly finding: ReportedFinding }) {
  const { severity, sheet, cell, message, effect, fix, rule, key } = finding;
  return (
    <li class={severity}>
      <p class="effect">{effect === null ? "No effect on the answer" : effectText(effect)}</p>
      <p>
        <strong class="severity">{severity}</strong> in{" "}
        <span class="place">
          {sheet}!{cell}
        </span>
      </p>
      <p>{message}</p>
      {fix !== undefined && <p>What to do: {fix}</p>}
      <p class="fine">
        Rule {rule}; key <code>{key}</code>
      </p>
    </li>
  );
}

function Accepted({ report }: { readonly report: AuditReport }) {
  const { accepted, staleAcceptances } = report;
  if (accepted.length + staleAcceptances.length === 0) return null;
  return (
    <section>
      <h2>Accepted</h2>
      <ul>
        {accepted.map(({ finding: { sheet, cell, message, key }, reason }) => (
          <li key={key}>
            {sheet}!{cell}: {message} Accepted because: {reason}
          </li>
        ))}
        {staleAcceptances.map(({ finding, reason, why }) => (
          <li key={finding}>
            <strong>No longer accepted</strong> (<code>{finding}</code>, because: {reason}): {why}
          </li>
        ))}
      </ul>
    </section>
  );
}

export interface ReportPageProps {
  readonly name: string;
  readonly report: AuditReport;
}

/** The report as one page to read and to print: it loads nothing and runs no script. */
export function ReportPage({ name, report }: ReportPageProps) {
  const { findings } = report;
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={NO_SCRIPT} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{`Audit of ${name}`}</title>
        <style dangerouslySetInnerHTML={{ __html: htmlStyle }} />
      </head>
      <body>
        <main>
          <h1>Audit of {name}</h1>
          <p class="result">{resultSentence(report)}</p>
          <ol>
            {findings.map((finding) => (
              <FindingItem key={finding.key} finding={finding} />
            ))}
          </ol>
          <Accepted report={report} />
          <section>
            <h2>What was read</h2>
            <p>{extentSentence(report)}</p>
            <ul>
              {[...takenSentences(report), ...methodSentences(report)].map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </section>
        </main>
      </body>
    </html>
  );
}

/** Characters that HTML does not allow, whatever a sheet holds. */
const allowed = (html: string): string => html.replace(/[^\P{Cc}\n\r\t]/gu, "\ufffd");

/** The text of a file from the page's markup. */
export const pageFile = (markup: string): string => allowed(`<!doctype html>\n${markup}\n`);
