import { spawnSync } from "node:child_process";
import path from "node:path";
import { ADDIN_ORIGIN } from "../worksheet/metadata";

// npm run excel: builds, then opens desktop Excel with the add-in loaded, where there is an Excel.

const ROOT = path.join(__dirname, "..", "..");
const EXCEL_PLATFORMS: readonly NodeJS.Platform[] = ["win32", "darwin"];

/** Through a shell (Windows) an argument with blanks needs its quotes. */
const quoted = (text: string) => (process.platform === "win32" ? `"${text}"` : text);

function run(command: string, ...args: string[]): number {
  const shell = process.platform === "win32";
  return spawnSync(command, args, { cwd: ROOT, stdio: "inherit", shell }).status ?? 1;
}

function openExcel(): number {
  if (!EXCEL_PLATFORMS.includes(process.platform)) {
    console.error(
      "Desktop Excel runs on Windows and Mac only, so it cannot be opened here. " +
        "Use `npm start`: it serves the same functions and pane in a spreadsheet in the browser.",
    );
    return 1;
  }
  const built = run("npm", "run", "build");
  if (built !== 0) return built;
  return run(
    "npx",
    ...["--no-install", "office-addin-debugging", "start", "manifest.xml", "desktop"],
    ...["--dev-server", quoted("npx --no-install tsx src/cli/serveAddin.ts")],
    ...["--dev-server-port", new URL(ADDIN_ORIGIN).port],
  );
}

process.exitCode = openExcel();
