import { fireEvent, render, screen } from "@testing-library/preact";
import { servingTargets } from "../../../src/catalogue/targets";
import type { BlockValue } from "../../../taskpane/host";
import { steer } from "../../../taskpane/views/steer";
import { english } from "../../../taskpane/words/english";
import { fakeHost } from "../fakeHost";
import { paneContext } from "../paneContext";

const { Content: Steer } = steer;
export const texts = english.steer;

export const NAMES = ["water", "sucrose", "lemon juice", "salt"];
export const sorbet = (): BlockValue[][] => [
  ["Sharp lemon ice", ""],
  ["Ingredient", "Amount (g)"],
  ["water", 650],
  ["sucrose", 150],
  ["lemon juice", 150],
  ["salt", 2],
  ["Total", 952],
];

export function open(
  sheets: Record<string, BlockValue[][]> = { Ices: sorbet() },
  select = "A3",
  language = "en",
) {
  const fake = fakeHost(sheets, select);
  const { context, said } = paneContext(fake.host, language);
  render(<Steer context={context} active />);
  return { ...fake, said };
}

export const ready = () => screen.findByText(texts.find);
export const wishFor = (target: string) =>
  fireEvent.change(screen.getByLabelText(english.target.label), { target: { value: target } });
export const addWish = (key: string) =>
  fireEvent.change(screen.getByLabelText(texts.addWish), { target: { value: key } });
export const type = (label: string, value: string) =>
  fireEvent.input(screen.getByLabelText(label), { target: { value } });
export const press = (text: string) => fireEvent.click(screen.getByText(text));
export const rows = () => [
  ...document.querySelectorAll(".steer-table")[0]!.querySelectorAll("tbody tr"),
];
export const newGrams = () =>
  rows().map((row) => Number(row.querySelectorAll("td")[1]!.textContent.replace(",", ".")));
export const notice = () => document.querySelector(".steer-answer .notice-text")?.textContent ?? "";

export const SCOOPED = servingTargets.find(({ name }) => name === "scooped at −13")!;
