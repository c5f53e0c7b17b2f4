import { existsSync } from "node:fs";
import { chromium, type Browser, type Page } from "playwright-core";

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/opt/google/chrome/chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Where Chromium is: CHROME_PATH, else the usual places, else null. */
export function chromiumPath(): string | null {
  const asked = process.env["CHROME_PATH"];
  if (asked) return existsSync(asked) ? asked : null;
  return USUAL_PLACES.find((place) => existsSync(place)) ?? null;
}

/**
 * `describe` where there is a Chromium. Without one the tests are left out and one line says so;
 * REQUIRE_BROWSER=1 makes that a failure.
 */
export function describeInBrowser(title: string, tests: () => void): void {
  if (chromiumPath() !== null) {
    describe(title, tests);
    return;
  }
  if (process.env["REQUIRE_BROWSER"] === "1") {
    test(title, () => {
      throw new Error("REQUIRE_BROWSER is 1, but no Chromium was found; CHROME_PATH can name it.");
    });
    return;
  }
  process.stderr.write(`Left out, no Chromium found (CHROME_PATH can name it): ${title}\n`);
  test.skip(title, () => undefined);
}

/** Starts Chromium without its own calls home, so that every request seen is the page's. */
export function launchChromium(): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === null) throw new Error("There is no Chromium to start.");
  return chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--no-first-run",
    ],
  });
}

/** Collects the address of every request to another place than `origin`; data: and blob: stay in the page. */
export function foreignRequests(page: Page, origin: string): readonly string[] {
  const seen: string[] = [];
  page.on("request", (request) => {
    const address = request.url();
    if (!address.startsWith(`${origin}/`) && !/^(data|blob):/.test(address)) seen.push(address);
  });
  return seen;
}
