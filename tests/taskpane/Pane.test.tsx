import { fireEvent, render, screen } from "@testing-library/preact";
import { Pane } from "../../taskpane/components/Pane";
import { views } from "../../taskpane/views";
import { english } from "../../taskpane/words/english";
import { numberFormat } from "../../taskpane/words/numberFormat";

const open = () =>
  render(
    <Pane
      host={null}
      outside={english.outside["no script"]}
      words={english}
      numbers={numberFormat("en")}
    />,
  );

describe("the pane outside a spreadsheet", () => {
  test("says so, and the larder works all the same", () => {
    open();
    expect(screen.getByText(/not inside a spreadsheet/)).toBeTruthy();
    expect(screen.getByRole("tab", { selected: true }).textContent).toBe("Larder");
    fireEvent.input(screen.getByRole("searchbox"), { target: { value: "sucrose" } });
    expect(screen.getAllByText("sucrose").length).toBeGreaterThan(0);
  });

  test("the other views say what they need", () => {
    open();
    fireEvent.click(screen.getByRole("tab", { name: "Bowl" }));
    expect(screen.getByText(/The bowl reads a recipe from a sheet/)).toBeTruthy();
    fireEvent.click(screen.getByRole("tab", { name: "Read-through" }));
    expect(screen.getByText(/The read-through needs a workbook/)).toBeTruthy();
  });
});

describe("the tabs", () => {
  test("arrows, Home and End walk them in a circle and take the focus along", () => {
    open();
    const names = views.map(({ key }) => english.views[key].name);
    const press = (key: string) => {
      fireEvent.keyDown(screen.getByRole("tablist"), { key });
      return document.activeElement?.textContent;
    };
    expect(press("Home")).toBe(names[0]);
    expect(press("ArrowLeft")).toBe(names.at(-1));
    expect(press("ArrowRight")).toBe(names[0]);
    expect(press("End")).toBe(names.at(-1));
    expect(screen.getAllByRole("tab").filter(({ tabIndex }) => tabIndex === 0)).toHaveLength(1);
  });

  test("a view that was left keeps what was typed in it", () => {
    open();
    fireEvent.input(screen.getByRole("searchbox"), { target: { value: "honey" } });
    fireEvent.click(screen.getByRole("tab", { name: "Bowl" }));
    fireEvent.click(screen.getByRole("tab", { name: "Larder" }));
    expect(screen.getByRole<HTMLInputElement>("searchbox").value).toBe("honey");
  });
});
