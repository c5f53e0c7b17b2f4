import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { SaxesParser, type SaxesTagPlain } from "saxes";
import { ADDIN_ORIGIN } from "../src/worksheet/metadata";
import { NAMESPACE } from "../src/worksheet/namespace";

const root = path.join(__dirname, "..");
const text = readFileSync(path.join(root, "manifest.xml"), "utf8");

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

function elementsOf(xml: string): Element[] {
  const elements: Element[] = [];
  const open: Element[] = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }: SaxesTagPlain) => {
    const element = { name, attributes, text: "" };
    elements.push(element);
    open.push(element);
  });
  parser.on("text", (piece) => {
    const current = open.at(-1);
    if (current) current.text += piece;
  });
  parser.on("closetag", () => {
    open.pop();
  });
  parser.write(xml).close();
  return elements;
}

const elements = elementsOf(text);
const textOf = (name: string) => elements.find((element) => element.name === name)?.text.trim();
const resources = new Map(
  elements
    .filter(({ name }) => /^bt:(Image|Url|String)$/.test(name) && name !== "bt:Override")
    .filter(({ attributes }) => "id" in attributes)
    .map(({ attributes }) => [attributes["id"], attributes["DefaultValue"]]),
);
const references = elements.flatMap(({ attributes }) => attributes["resid"] ?? []);

test("the manifest is well-formed and complete", () => {
  expect(elements[0]?.name).toBe("OfficeApp");
  expect(textOf("Version")).toMatch(/^\d+\.\d+\.\d+\.\d+$/);
  expect(textOf("ProviderName")).toBeTruthy();
  expect(textOf("Permissions")).toBe("ReadWriteDocument");
});

test("the id is a GUID (RFC 9562, version 4)", () => {
  expect(textOf("Id")).toMatch(
    /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
  );
});

test("every resource that is referred to exists, and every one that exists is referred to", () => {
  expect(references.length).toBeGreaterThan(5);
  expect(references.filter((id) => !resources.has(id))).toEqual([]);
  expect([...resources.keys()].filter((id) => !references.includes(id ?? ""))).toEqual([]);
});

test("resource ids and strings keep to the lengths of the manifest schema", () => {
  for (const [id = "", value = ""] of resources) {
    expect(id.length).toBeLessThanOrEqual(32);
    expect(value.length).toBeLessThanOrEqual(id.endsWith("Tip") ? 250 : 2048);
  }
});

test("every file the manifest names is in the build", () => {
  const urls = elements.flatMap(({ attributes }) =>
    Object.values(attributes).filter((value) => value.startsWith(`${ADDIN_ORIGIN}/`)),
  );
  expect(urls.length).toBeGreaterThan(8);
  const missing = urls
    .map((url) => path.join(root, "dist", url.slice(ADDIN_ORIGIN.length)))
    .filter((file) => !existsSync(file));
  expect(missing).toEqual([]);
});

test("every address lies on the add-in's own origin", () => {
  const hosts = [...text.matchAll(/"(https?:\/\/[^/"]+)/g)]
    .map(([, host]) => host)
    .filter((host) => !/schemas\.microsoft\.com|www\.w3\.org/.test(host ?? ""));
  expect(new Set(hosts)).toEqual(new Set([ADDIN_ORIGIN]));
});

test("the namespace is the one the code answers to", () => {
  expect(resources.get("Functions.Namespace")).toBe(NAMESPACE);
});

test("the icons are PNG pictures of the size their names say", () => {
  for (const size of [16, 32, 64, 80]) {
    const bytes = readFileSync(path.join(root, "dist", "assets", `icon-${size}.png`));
    expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([size, size]);
  }
});
