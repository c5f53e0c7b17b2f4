import { jest } from "@jest/globals";
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isopiestic } from "../../src/catalogue/fit/figures/isopiestic";
import { osmotic25 } from "../../src/catalogue/fit/figures/osmotic25";
import { keepFile } from "../../src/catalogue/fit/keepFile";
import { fitSolute } from "../../src/catalogue/fit/fitSolute";
import { freezingTables } from "../../src/catalogue/fit/points";
import { plans } from "../../src/catalogue/fit/plan";
import { soluteNamed } from "../published/solutionOf";

const command = (file: string) => ["--import", "tsx", `src/catalogue/fit/${file}`, "--check"];

describe("the fit command", () => {
  test("would write the files under solutes/curves byte for byte as they are, and lists every table with its use", () => {
    const printed = execFileSync(process.execPath, command("run.ts"), { encoding: "utf8" });
    for (const { solute } of plans) expect(printed).toContain(`\n${solute}: `.trimStart());
    for (const { source, use, reason, massPercent } of freezingTables) {
      const why = reason === undefined ? "" : `: ${reason}`;
      expect(printed).toContain(`${use}: ${source}, ${massPercent.length} freezing points${why}`);
    }
    expect(printed).toMatch(/left-out fifths are met within .* the colder half from the warmer/);
  });

  test("would write the densities byte for byte as they are", () => {
    execFileSync(process.execPath, command("runVolumes.ts"));
  });

  test("says which file differs, and fails", () => {
    const folder = mkdtempSync(join(tmpdir(), "fit-"));
    const path = join(folder, "curve.ts");
    writeFileSync(path, "changed by hand");
    const said = jest.spyOn(console, "error").mockImplementation(() => undefined);
    const { argv, exitCode } = process;
    process.argv = [...argv, "--check"];
    keepFile(path, "fitted");
    expect(process.exitCode).toBe(1);
    Object.assign(process, { argv, exitCode });
    expect(said).toHaveBeenCalledWith(`${path} is not what the fit writes.`);
    said.mockRestore();
    expect(readFileSync(path, "utf8")).toBe("changed by hand");
    rmSync(folder, { recursive: true });
  });
});

/** The same tables, but a figure that is not for the fit cannot be read without an error. */
const sealed = <T extends { readonly use: string; readonly solute: string }>(
  tables: readonly T[],
): T[] =>
  tables.map((table) =>
    table.use === "fit"
      ? table
      : new Proxy(table, {
          get: (of, key) => {
            if (Array.isArray(Reflect.get(of, key)))
              throw new Error(`${of.solute}: ${String(key)}`);
            return Reflect.get(of, key) as unknown;
          },
        }),
  );

describe("what is held out", () => {
  const figures = {
    freezing: sealed(freezingTables),
    osmotic: sealed(osmotic25),
    isopiestic: sealed(isopiestic),
  };

  test("cannot be read here", () => {
    const held = figures.freezing.find(({ use }) => use === "held out")!;
    expect(() => held.massPercent).toThrow(held.solute);
  });

  test.each(plans.map((plan) => [plan.solute, plan] as const))(
    "is not read when %s is fitted",
    (name, plan) => {
      const { curve, curveRecord, molarMass } = soluteNamed(name);
      expect(fitSolute(plan, molarMass.value, figures)).toEqual({ curve, curveRecord });
    },
  );

  test("has no row in common with the fit", () => {
    const row = (table: (typeof freezingTables)[number], i: number) =>
      `${table.solute} ${table.source} ${table.massPercent[i]}`;
    const rows = (use: string) =>
      freezingTables
        .filter((table) => (table.use === "fit") === (use === "fit"))
        .flatMap((table) => table.massPercent.map((_, i) => row(table, i)));
    const used = new Set(rows("fit"));
    expect(rows("others").filter((one) => used.has(one))).toEqual([]);
  });
});
