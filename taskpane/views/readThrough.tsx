import type { Finding, Severity } from "../../src/audit/finding";
import { Notice } from "../components/Notice";
import { FindingItem } from "../reading/FindingItem";
import { ReadRecipes } from "../reading/ReadRecipes";
import { useReading } from "../reading/useReading";
import type { View, ViewProps } from "../view";
import "../reading/reading.css";

const SEVERITIES: readonly Severity[] = ["error", "warning", "note"];

/** Reads the whole workbook through and lists what is wrong, worst first, each with its way to the cell. */
function ReadThrough({ context }: ViewProps) {
  const { words, host } = context;
  const { progress, report, fault, run, start } = useReading(context);
  if (host === null) return <Notice tone="note">{words.outsideReading}</Notice>;
  const go = ({ sheet, cell }: Finding) => void run(() => host.goTo(sheet, cell));
  return (
    <div class="reading">
      <p>{words.readThrough.about}</p>
      <div class="buttons">
        <button
          type="button"
          class="primary"
          aria-disabled={progress !== null}
          onClick={() => void start()}
        >
          {report === null ? words.readThrough.start : words.readThrough.again}
        </button>
      </div>
      {progress !== null && <p class="quiet">{progress}</p>}
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {report !== null && progress === null && (
        <>
          <h2>{words.readThrough.result(report.findings.length)}</h2>
          {SEVERITIES.map((severity) => {
            const findings = report.findings.filter((finding) => finding.severity === severity);
            return (
              findings.length > 0 && (
                <section key={severity}>
                  <h3>{words.readThrough.severities[severity](findings.length)}</h3>
                  <ul class="findings">
                    {findings.map((finding, index) => (
                      <FindingItem key={index} context={context} finding={finding} onGo={go} />
                    ))}
                  </ul>
                </section>
              )
            );
          })}
          <ReadRecipes context={context} recipes={report.recipes} />
        </>
      )}
    </div>
  );
}

export const readThrough: View = { key: "readThrough", Content: ReadThrough };
