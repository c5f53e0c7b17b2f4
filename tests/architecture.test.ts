import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";

const root = path.join(__dirname, "..");

/** Which rooms a room may import from, besides itself and foundation. DEVELOPERS.md draws the same doors. */
const DOORS: Readonly<Record<string, readonly string[]>> = {
  foundation: [],
  engine: [],
  catalogue: ["engine"], // types only, checked below
  recipe: ["engine", "catalogue"],
  worksheet: ["engine", "catalogue", "recipe"],
  adjust: ["recipe"],
  workbook: ["worksheet", "catalogue"],
  help: ["worksheet", "catalogue"],
  audit: ["worksheet", "catalogue", "workbook"],
  bench: ["worksheet", "catalogue", "workbook", "audit"],
  cli: ["worksheet", "catalogue", "workbook", "audit", "bench"],
  taskpane: ["worksheet", "catalogue", "workbook", "audit", "adjust"],
};

/** Lists that must name every file of a folder: [list, folder, what a file of it is]. */
const LISTS = [
  ["src/worksheet/functions.ts", "src/worksheet/functions", "function"],
  ["src/catalogue/solutes.ts", "src/catalogue/solutes", "solute"],
  ["src/catalogue/ingredients.ts", "src/catalogue/ingredients", "ingredient group"],
  ["src/audit/rules.ts", "src/audit/rules", "rule"],
  ["taskpane/views.ts", "taskpane/views", "view"],
] as const;

function sourcesUnder(folder: string): string[] {
  return readdirSync(path.join(root, folder)).flatMap((entry) => {
    const inside = `${folder}/${entry}`;
    if (statSync(path.join(root, inside)).isDirectory()) return sourcesUnder(inside);
    return /\.tsx?$/.test(entry) ? [inside] : [];
  });
}

const files = [...sourcesUnder("src"), ...sourcesUnder("taskpane")];

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

const IMPORT =
  /(?:(?:import|export)\s+(type\s)?[^"';]*?\bfrom\s*|\bimport\s*\(\s*|^import\s+)["'](\.[^"']+)["']/gm;

function importsOf(file: string): Import[] {
  const text = readFileSync(path.join(root, file), "utf8");
  return [...text.matchAll(IMPORT)].flatMap(([, typeOnly, specifier = ""]) => {
    const base = path.posix.join(path.posix.dirname(file), specifier);
    const to = [base, `${base}.ts`, `${base}.tsx`].find((candidate) => files.includes(candidate));
    return to === undefined ? [] : [{ from: file, to, typeOnly: typeOnly !== undefined }];
  });
}

const imports = files.flatMap(importsOf);
const roomOf = (file: string) => file.split("/")[file.startsWith("src/") ? 1 : 0] ?? "";

/** The fit is a command run by hand: it works on the engine and stands outside the catalogue's door. */
const isFit = (file: string) => file.startsWith("src/catalogue/fit/");

test("the reader of import lines sees the imports there are", () => {
  expect(files.length).toBeGreaterThan(50);
  expect(imports.length).toBeGreaterThan(files.length);
});

test("no room imports through a door that is not in the table", () => {
  const wrong = imports.filter(({ from, to }) => {
    const [here, there] = [roomOf(from), roomOf(to)];
    return here !== there && there !== "foundation" && !DOORS[here]?.includes(there);
  });
  expect(wrong).toEqual([]);
});

test("the catalogue takes only types from the engine", () => {
  const wrong = imports.filter(
    ({ from, to, typeOnly }) =>
      roomOf(from) === "catalogue" && roomOf(to) === "engine" && !typeOnly && !isFit(from),
  );
  expect(wrong).toEqual([]);
});

test("nothing but the fit itself imports the fit", () => {
  expect(imports.filter(({ from, to }) => isFit(to) && !isFit(from))).toEqual([]);
});

test("no import runs in a circle", () => {
  const next = new Map(files.map((file) => [file, [] as string[]]));
  for (const { from, to, typeOnly } of imports) if (!typeOnly) next.get(from)?.push(to);
  const done = new Set<string>();
  const circleFrom = (file: string, trail: readonly string[]): readonly string[] | null => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return null;
    for (const target of next.get(file) ?? []) {
      const circle = circleFrom(target, [...trail, file]);
      if (circle !== null) return circle;
    }
    done.add(file);
    return null;
  };
  expect(
    files.map((file) => circleFrom(file, [])).find((circle) => circle !== null),
  ).toBeUndefined();
});

test.each(LISTS)("%s lists every file of %s", (list, folder) => {
  expect(existsSync(path.join(root, list))).toBe(true);
  const listed = new Set(importsOf(list).map(({ to }) => to));
  const inFolder = readdirSync(path.join(root, folder))
    .filter((entry) => /\.tsx?$/.test(entry))
    .map((entry) => `${folder}/${entry}`);
  expect(inFolder.filter((file) => !listed.has(file))).toEqual([]);
});

test("only the pane's excelHost calls Excel.run", () => {
  const callers = files.filter(
    (file) =>
      !file.startsWith("src/bench/") &&
      /\bExcel\.run\b/.test(readFileSync(path.join(root, file), "utf8")),
  );
  expect(callers).toEqual(["taskpane/excelHost.ts"]);
});

test("bundles take Office from the page and never import it", () => {
  const importing = files.filter((file) =>
    /["']@microsoft\/office-js/.test(readFileSync(path.join(root, file), "utf8")),
  );
  expect(importing).toEqual([]);
});
