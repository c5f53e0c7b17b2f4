import { fireEvent, render, screen } from "@testing-library/preact";
import { useState } from "preact/hooks";
import { NumberField } from "../../../taskpane/components/NumberField";
import { paneContext } from "../paneContext";

function Field({ language = "en" }: { readonly language?: string }) {
  const { context } = paneContext(null, language);
  const [value, setValue] = useState<number | null>(null);
  return (
    <>
      <NumberField
        context={context}
        label="Amount"
        unit="g"
        from={0}
        to={100}
        value={value}
        onChange={setValue}
      />
      <output>{String(value)}</output>
      <button onClick={() => setValue(7.5)}>set</button>
    </>
  );
}

const field = () => screen.getByLabelText<HTMLInputElement>(/^Amount/);
const type = (text: string) => fireEvent.input(field(), { target: { value: text } });
const value = () => screen.getByRole("status").textContent;

describe("a number field", () => {
  test("keeps every key, however fast they come", () => {
    render(<Field />);
    for (const text of ["3", "35", "35,", "35,5"]) {
      type(text);
      expect(field().value).toBe(text);
    }
    expect(value()).toBe("35.5");
  });

  test("says what it cannot take, and keeps the last value and what was typed", () => {
    render(<Field />);
    type("35");
    type("350");
    expect(screen.getByText(/from 0 to 100 g, not “350”/)).toBeTruthy();
    expect([field().value, value()]).toEqual(["350", "35"]);
  });

  test("an emptied field is no value, not 0", () => {
    render(<Field />);
    type("35");
    type("");
    expect(value()).toBe("null");
  });

  test("shows a value that comes from elsewhere, as the language writes it", () => {
    render(<Field language="de" />);
    type("35");
    fireEvent.click(screen.getByText("set"));
    expect(field().value).toBe("7,5");
  });
});
