// What a function's file needs to declare itself.
export { amount } from "./define/amount";
export { choice } from "./define/choice";
export { component, componentNamed } from "./define/component";
export { deferred } from "./define/deferred";
export { defineFunction, defineTable } from "./define/defineFunction";
export { item } from "./define/item";
export { measure } from "./define/measure";
export { number, optionalNumber } from "./define/number";
export { optional } from "./define/optional";
export { ownIngredients } from "./define/ownIngredients";
export { notNegative, positive } from "./define/positive";
export { recipe } from "./define/recipe";
export { solute } from "./define/solute";
export { target, targetName } from "./define/target";
export { optionalTemperature, temperature } from "./define/temperature";
export { text } from "./define/text";
