import { fireEvent, render, screen, waitFor } from "@testing-library/preact";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { BlockValue } from "../../../taskpane/host";
import { aims } from "../../../taskpane/views/aims";
import { bowl } from "../../../taskpane/views/bowl";
import { steer } from "../../../taskpane/views/steer";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const texts = english.aims;
const sorbet = (): BlockValue[][] => [
  ["Ingredient", "g"],
  ["water", 700],
  ["sucrose", 200],
];
const table = (): BlockValue[][] => [
  ["name", "temperature", "ice from", "ice to", "basis", "note"],
  ["stall bar", -16, 0.3, 0.5, "mix", "from the box"],
];

function open(sheets: Record<string, BlockValue[][]> = {}, language = "en") {
  const fake = fakeHost({ Ices: sorbet(), ...sheets }, "A2");
  const { context, said } = paneContext(fake.host, language);
  render(<aims.Content context={context} active />);
  return { ...fake, context, said };
}

const type = (label: string, value: string) =>
  fireEvent.input(screen.getByLabelText(label, { exact: false }), { target: { value } });
const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));

function write(name: string, [temperature, from, to]: readonly string[]) {
  press(texts.add);
  type(texts.name, name);
  type(texts.temperature, temperature!);
  type(texts.from, from!);
  type(texts.to, to!);
  press(texts.save);
}

describe("a target of one's own", () => {
  test("is written, kept on a sheet only when asked, and then means in a cell what it means here", async () => {
    const { sheets, said } = open();
    write("stall sorbet", ["−11,5", "55", "70"]);
    await screen.findByText("stall sorbet");
    expect(Object.keys(sheets)).toEqual(["Ices"]);
    press(texts.keep);
    await screen.findByText(texts.kept("Aims"));
    expect(sheets["Aims"]).toEqual([
      ["name", "temperature", "ice from", "ice to", "basis", "note"],
      ["stall sorbet", -11.5, 0.55, 0.7, "water", ""],
    ]);
    expect(said).toContain(texts.kept("Aims"));
    expect(await screen.findByRole("button", { name: texts.goTo("Aims!A1:F2") })).toBeTruthy();
  });

  test("joins the table there is, below it, in that table's columns", async () => {
    const own: BlockValue[][] = [
      ["name", "ice to", "ice from", "temperature"],
      ["a", 0.5, 0.3, -16],
    ];
    const { sheets } = open({ Mine: own });
    await screen.findByText("a");
    write("b", ["-12", "50", "60"]);
    press(texts.keep);
    await screen.findByText(texts.kept("Mine!A3:D3"));
    expect(sheets["Mine"]?.[2]).toEqual(["b", 0.6, 0.5, -12]);
  });

  test("goes to a new sheet where something stands below the table", async () => {
    const { sheets } = open({ Mine: [...table(), ["", "", "", "", "mine!", ""]] });
    await screen.findByText("stall bar");
    write("b", ["-12", "50", "60"]);
    press(texts.keep);
    await screen.findByText(texts.kept("Aims"));
    expect(sheets["Mine"]?.[2]).toEqual(["", "", "", "", "mine!", ""]);
    expect(sheets["Aims"]).toHaveLength(2);
  });

  test("is changed where it is kept, cell by cell", async () => {
    const { sheets } = open({ Mine: table() });
    await screen.findByText("stall bar");
    press(texts.changeOf("stall bar"));
    type(texts.to, "45");
    press(texts.save);
    await screen.findByText(texts.savedAt("stall bar", "Mine!A1:F2"));
    expect(sheets["Mine"]?.[1]).toEqual(["stall bar", -16, 0.3, 0.45, "mix", "from the box"]);
  });

  test.each([
    ["", ["-12", "50", "60"], texts.faults.name],
    ["scooped at −13", ["-12", "50", "60"], texts.faults.catalogue("scooped at −13")],
    ["Stall Bar", ["-12", "50", "60"], texts.faults.taken("Stall Bar")],
    ["b", ["-12", "", "60"], texts.faults.numbers],
    ["b", ["-12", "70", "60"], texts.faults.order],
  ])("“%s” with %j is refused with a sentence", async (name, numbers, sentence) => {
    const { said } = open({ Mine: table() });
    await screen.findByText("stall bar");
    write(name, numbers);
    expect(screen.getByText(sentence)).toBeTruthy();
    expect(said).toContain(sentence);
  });

  test("Esc closes the form and gives the focus back", () => {
    open();
    press(texts.add);
    const field = screen.getByLabelText(texts.name);
    expect(document.activeElement).toBe(field);
    fireEvent.keyDown(field, { key: "Escape" });
    expect(screen.queryByLabelText(texts.name)).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: texts.add }));
  });

  test("can begin as a copy of the catalogue's, in German with its German name", () => {
    open({}, "de");
    press(german.aims.copyOf("Kugeln bei −13"));
    expect(screen.getByLabelText<HTMLInputElement>("Name").value).toBe("Kugeln bei −13, meins");
  });
});

describe("a file of targets", () => {
  const one = { name: "stall bar", temperatureC: -17, iceFrom: 0.2, iceTo: 0.4, basis: "mix" };
  const chooseText = (text: string) => {
    const file = new File([text], "mine.json");
    Object.assign(file, { text: () => Promise.resolve(text) }); // jsdom's has none
    fireEvent.change(screen.getByLabelText(texts.import), { target: { files: [file] } });
  };

  test("is taken in", async () => {
    open();
    chooseText(JSON.stringify({ servingTargets: [one] }));
    expect(await screen.findByText("stall bar")).toBeTruthy();
    expect(screen.getByText(texts.imported(1))).toBeTruthy();
  });

  test("asks before one of the same name is replaced; Esc takes nothing", async () => {
    const { sheets } = open({ Mine: table() });
    await screen.findByText("stall bar");
    const file = JSON.stringify({ servingTargets: [one, { ...one, name: "other bar" }] });
    chooseText(file);
    const group = await screen.findByRole("group", { name: texts.clashTitle });
    await waitFor(() => expect(document.activeElement?.textContent).toBe(texts.mine));
    fireEvent.keyDown(group, { key: "Escape" });
    expect(screen.queryByText("other bar")).toBeNull();
    chooseText(file);
    await screen.findByRole("group", { name: texts.clashTitle });
    press(texts.mine);
    await screen.findByText("other bar");
    expect(sheets["Mine"]?.[1]?.[1]).toBe(-16);
    chooseText(file);
    await screen.findByRole("group", { name: texts.clashTitle });
    press(texts.theirs);
    await waitFor(() => expect(sheets["Mine"]?.[1]?.slice(1, 4)).toEqual([-17, 0.2, 0.4]));
  });

  test("with a mistake is refused with its place, and nothing of it is taken", async () => {
    const { said } = open();
    chooseText(JSON.stringify({ servingTargets: [one, { ...one, name: "b", iceTo: 40 }] }));
    const sentence = texts.importFaults.entry("mine.json", 2, "iceTo", "40", texts.must.iceTo);
    expect(await screen.findByText(sentence)).toBeTruthy();
    expect(said).toContain(sentence);
    expect(screen.getByText(texts.none)).toBeTruthy();
  });
});

describe("in the other views", () => {
  const mix = [
    [["water"], ["sucrose"]],
    [[700], [200]],
  ];
  test("the Bowl offers it, and its answer is that of a cell that takes the table", async () => {
    const { context } = open({ Mine: table() });
    await screen.findByText("stall bar");
    render(<bowl.Content context={context} active />);
    const select = await screen.findByLabelText(english.target.label);
    fireEvent.change(select, { target: { value: "stall bar" } });
    const [[answer]] = callFunction("CHECK", ...mix, table()) as [[string]];
    expect(await screen.findByText(answer)).toBeTruthy();
  });

  test("one that the sheet names beside the recipe is chosen from the start, in Bowl and in Steer", async () => {
    const named = [["Sharp ice", "stall bar"], ...sorbet()];
    const { context } = open({ Mine: table(), Named: named });
    const fake = fakeHost({ Named: named, Mine: table() }, "A2");
    for (const { Content } of [bowl, steer]) {
      render(<Content context={{ ...context, host: fake.host }} active />);
    }
    await waitFor(() => {
      const chosen = screen
        .getAllByLabelText<HTMLSelectElement>(english.target.label)
        .map(({ value }) => value);
      expect(chosen).toEqual(["stall bar", "stall bar"]);
    });
  });

  test("what is chosen in one view is chosen in the other", async () => {
    const { context } = open();
    for (const { Content } of [bowl, steer]) render(<Content context={context} active />);
    const selects = async () => screen.findAllByLabelText<HTMLSelectElement>(english.target.label);
    await waitFor(async () => expect(await selects()).toHaveLength(2));
    fireEvent.change((await selects())[0]!, { target: { value: "scooped at −18" } });
    await waitFor(async () => expect((await selects())[1]!.value).toBe("scooped at −18"));
  });
});
