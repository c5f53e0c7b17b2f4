import { larderEntries } from "../../../taskpane/larder/entries";
import { searchEntries } from "../../../taskpane/larder/searchEntries";

const namesFor = (typed: string) =>
  searchEntries(larderEntries, typed).map(({ entry }) => entry.item.name);

describe("searching the larder", () => {
  test("nothing typed finds everything", () => {
    expect(searchEntries(larderEntries, "  ")).toHaveLength(larderEntries.length);
  });

  test("the name itself comes first", () => {
    expect(namesFor("sucrose")[0]).toBe("sucrose");
  });

  test("German names and English aliases are found, and said", () => {
    const [hit] = searchEntries(larderEntries, "Traubenzucker");
    expect(hit!.entry.item.name).toMatch(/^glucose/);
    expect(hit!.foundAs).toMatch(/Traubenzucker/i);
    expect(namesFor("table sugar")).toContain("sucrose");
  });

  test("accents, case and the sharp s make no difference", () => {
    expect(namesFor("MILCHZUCKER")).toEqual(namesFor("milchzucker"));
    expect(namesFor("süß")).toEqual(namesFor("suss"));
  });

  test("words may stand in any order and be cut short", () => {
    expect(namesFor("monohyd gluc")).toContain("glucose monohydrate");
  });

  test("every entry is found by each of its own names", () => {
    for (const { item } of larderEntries) {
      for (const name of [item.name, ...item.aliases.en, ...item.aliases.de]) {
        expect(namesFor(name)).toContain(item.name);
      }
    }
  });

  test("what is not there is not found", () => {
    expect(namesFor("qqqq")).toEqual([]);
  });
});
