import { adjustRecipe } from "../../../src/adjust/adjustRecipe";
import type { AdjustQuestion } from "../../../src/adjust/adjustment";
import { steer } from "../../../taskpane/steer/steered";

jest.mock("../../../src/adjust/adjustRecipe");
const { adjustRecipe: real } = jest.requireActual<{ adjustRecipe: typeof adjustRecipe }>(
  "../../../src/adjust/adjustRecipe",
);
const mocked = jest.mocked(adjustRecipe);

const free = { fromGrams: 0, toGrams: null };
const question: AdjustQuestion = {
  items: ["water", "sucrose"],
  grams: [800, 200],
  own: null,
  mayChange: [free, free],
  wishes: [{ kind: "freezing point", from: -3, to: -3 }],
};

test("an answer that the worksheet functions confirm is let through", () => {
  mocked.mockImplementation(real);
  expect(steer(question).kind).toBe("recipes");
});

test("an answer that is off by a hundredth of a gram in a hundred is not shown", () => {
  mocked.mockImplementation((asked) => {
    const answer = real(asked);
    if (!("recipes" in answer)) throw new Error("was expected to be possible");
    const spoilt = answer.recipes.map((recipe) => ({
      ...recipe,
      grams: recipe.grams.map((grams, at) => (at === 1 ? grams * 1.0001 : grams)),
    }));
    return { ...answer, recipes: spoilt };
  });
  expect(steer(question)).toEqual({ kind: "disagreeing" });
});
