import { createMemo } from "../../src/worksheet/define/memo";
import { callFunction } from "../../src/worksheet/callFunction";
import { badInput } from "../../src/foundation/problem";

test("the same call is answered with the same object, also when an argument holds an error", () => {
  const call = (grams: unknown) => callFunction("FREEZINGPOINT", [["water", "sucrose"]], grams);
  const error = () => ({ type: "Error", basicType: "Error", basicValue: "#REF!" });
  expect(
    call([
      [200, 70],
      [200, error()],
    ]),
  ).toBe(
    call([
      [200, 70],
      [200, error()],
    ]),
  );
  expect(call([[200, 70]])).not.toBe(call([[200, 71]]));
});

test("a changed own ingredient changes the answer", () => {
  const call = (water: number) =>
    callFunction("COMPONENT", "mine", 100, "water", [
      ["name", "water", "inert"],
      ["mine", water, 100 - water],
    ])[0]![0];
  expect([call(50), call(60), call(50)]).toEqual([50, 60, 50]);
});

test("a blank, a zero and a left-out argument are told apart", () => {
  const memo = createMemo();
  memo.keep([[[0]]], [["zero"]]);
  memo.keep([[[null]]], [["blank"]]);
  memo.keep([null], [["left out"]]);
  expect(memo.find([[[0]]])).toEqual([["zero"]]);
  expect(memo.find([[[null]]])).toEqual([["blank"]]);
  expect(memo.find([null])).toEqual([["left out"]]);
  expect(memo.find([[[badInput("x")]]])).toBeUndefined();
});

test("the memory is bounded: the oldest call is forgotten, a huge one is not kept", () => {
  const memo = createMemo();
  for (let call = 0; call < 40; call += 1) memo.keep([[[call]]], [[call]]);
  expect(memo.find([[[0]]])).toBeUndefined();
  expect(memo.find([[[39]]])).toEqual([[39]]);
  const huge = [Array.from({ length: 300_000 }, () => 1)];
  memo.keep([huge], [[1]]);
  expect(memo.find([huge])).toBeUndefined();
});
