import { TextEncoder } from "node:util";
import { auditWorkbook } from "../../../src/audit/auditWorkbook";
import { htmlReport } from "../../../src/audit/report/htmlReport";
import { reportFile } from "../../../taskpane/reading/reportFile";
import { bookOf } from "../../audit/bookOf";

Object.assign(globalThis, { TextEncoder }); // jsdom has none; the report's keys are hashed bytes

// Expected: the page that the command line writes, by preact-render-to-string, as a parser of HTML reads it.
test("the report saved from the pane is the page that the command line writes", () => {
  const attack = `<img src=x onerror="alert(1)">&'"\u0007`;
  const report = auditWorkbook(
    bookOf({
      Ices: [
        ["Ingredient", "Amount (g)"],
        ["Water", 500],
        ["Sucrose", "150,5"],
        ["Pistachios", 20],
        [`Moon ${attack}`, 5],
      ],
    }),
  );
  const read = (page: string) => new DOMParser().parseFromString(page, "text/html");
  const [inPane, onLine] = [reportFile, htmlReport].map((write) => read(write(attack, report)));
  expect(report.findings.length).toBeGreaterThan(0);
  expect(inPane!.documentElement.outerHTML.trim()).toBe(onLine!.documentElement.outerHTML.trim());
  expect(inPane!.doctype?.name).toBe("html");
  expect(inPane!.querySelector("img, script, link")).toBeNull();
});
