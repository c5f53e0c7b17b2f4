// What a function's file needs to declare itself.
export { choice } from "./define/choice";
export { defineFunction, defineTable } from "./define/defineFunction";
export { item } from "./define/item";
export { number, optionalNumber } from "./define/number";
export { ownIngredients } from "./define/ownIngredients";
export { notNegative, positive } from "./define/positive";
export { recipe } from "./define/recipe";
export { solute } from "./define/solute";
export { optionalTemperature, temperature } from "./define/temperature";
export { text } from "./define/text";
