import type { Card } from "./card";

const propertyOf = (value: number | string): Excel.DoubleCellValue | Excel.StringCellValue =>
  typeof value === "number"
    ? { type: "Double", basicType: "Double", basicValue: value }
    : { type: "String", basicType: "String", basicValue: value };

/** A card as Excel takes it: an entity value, whose cell shows the title and counts as no number. */
export const hostCard = ({ title, rows }: Card): Excel.EntityCellValue => ({
  type: "Entity",
  text: title,
  basicType: "Error",
  basicValue: "#VALUE!",
  properties: Object.fromEntries(rows.map(({ label, value }) => [label, propertyOf(value)])),
});
