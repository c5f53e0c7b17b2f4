import { chromium, type Browser, type Page } from "playwright-core";
import { findChromium } from "./findChromium";

/**
 * `describe` where there is a Chromium. Without one the tests are left out and one line says so;
 * REQUIRE_BROWSER=1 makes that a failure.
 */
export function describeInBrowser(title: string, tests: () => void): void {
  if (findChromium() !== null) {
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
  const executablePath = findChromium();
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
