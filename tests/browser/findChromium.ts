import { accessSync, constants } from "node:fs";

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The browser for the browser tests: CHROME_PATH, else the usual places, else null. */
export function findChromium(): string | null {
  const wanted = process.env["CHROME_PATH"];
  if (wanted !== undefined && wanted !== "") return canRun(wanted) ? wanted : null;
  return USUAL_PLACES.find(canRun) ?? null;
}
