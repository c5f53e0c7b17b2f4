import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";
import { serve, type Serving } from "../../src/bench/server/serve";

const PANE = `<script src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"></script>
<script defer src="pane.js"></script>`;

describe("The bench's server", () => {
  let directory: string;
  let serving: Serving;
  beforeAll(async () => {
    directory = mkdtempSync(path.join(os.tmpdir(), "bench-"));
    mkdirSync(path.join(directory, "bench"));
    writeFileSync(path.join(directory, "bench", "index.html"), "<h1>grid</h1>");
    writeFileSync(path.join(directory, "functions.json"), "{}");
    writeFileSync(path.join(directory, "pane.js"), "1");
    writeFileSync(path.join(directory, "pane.html"), PANE);
    serving = await serve(directory, 4300);
  });
  afterAll(async () => {
    await serving.close();
    rmSync(directory, { recursive: true });
  });
  const get = (address: string) => fetch(serving.url + address);

  test("shows the grid at its root, by content types a browser believes", async () => {
    const page = await get("/");
    expect(await page.text()).toBe("<h1>grid</h1>");
    expect(page.headers.get("content-type")).toMatch(/^text\/html/);
    expect((await get("/pane.js")).headers.get("content-type")).toMatch(/javascript/);
    expect((await get("/functions.json")).headers.get("content-type")).toMatch(/json/);
  });

  test("allows every page only what comes from itself", async () => {
    for (const address of ["/", "/pane.html", "/nothing"]) {
      const policy = (await get(address)).headers.get("content-security-policy")!;
      expect(policy).toContain("default-src 'self'");
      expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
      expect(policy).not.toMatch(/script-src[^;]*unsafe/);
    }
  });

  test("gives the pane the bench's host in place of Excel's, and leaves the file as it is", async () => {
    const html = await (await get("/pane.html")).text();
    expect(html).toContain('<script src="/bench/host.js"></script>');
    expect(html).toContain("pane.js");
    expect(html).not.toContain("https:");
    expect(readFileSync(path.join(directory, "pane.html"), "utf8")).toBe(PANE);
  });

  test("marks every answer, so that no browser guesses a type or keeps an old file", async () => {
    for (const address of ["/", "/pane.html", "/pane.js", "/nothing"]) {
      const { headers } = await get(address);
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("cache-control")).toBe("no-cache");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
    }
  });

  test("answers 404 for what there is not, also outside its folder", async () => {
    expect((await get("/nothing.js")).status).toBe(404);
    expect((await get("/..%2f..%2fetc%2fpasswd")).status).toBe(404);
  });

  test("takes the next port when one is taken", async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    const { port } = other.address() as AddressInfo;
    const next = await serve(directory, port);
    expect(Number(new URL(next.url).port)).toBeGreaterThan(port);
    await next.close();
    await new Promise((resolve) => other.close(resolve));
  });

  test("takes no port on which browsers open nothing", async () => {
    const next = await serve(directory, 6665);
    expect(Number(new URL(next.url).port)).toBeGreaterThan(6669);
    await next.close();
  });
});
