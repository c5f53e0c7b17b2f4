/** Where whole and skim milk freeze, °C. @source foxMcSweeney1998, from memory */
export const milkRange = { warmestC: -0.512, coldestC: -0.54 } as const;

/**
 * Milk by the catalogue's composition, and powders made up to the milk that USDA SR 26 prints: 9.16 % dry
 * matter skim, 11.87 % whole, 26 % evaporated 1:1.1. Grams by name.
 */
export const milks: readonly (readonly [name: string, grams: Readonly<Record<string, number>>])[] =
  [
    ["whole milk", { "whole milk": 100 }],
    ["milk 2 % fat", { "milk 2 % fat": 100 }],
    ["skim milk", { "skim milk": 100 }],
    ["skim milk powder in water", { "skim milk powder": 9.46, water: 90.54 }],
    ["whole milk powder in water", { "whole milk powder": 12.5, water: 87.5 }],
    ["evaporated milk in water", { "evaporated milk": 47, water: 53 }],
  ];
