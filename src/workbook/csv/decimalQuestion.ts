/** What has to be asked of a file whose numbers can be read with either decimal mark. */
export interface DecimalQuestion {
  readonly kind: "decimal question";
  /** One sentence: what is in doubt, and what it would mean either way. */
  readonly message: string;
}

export const decimalQuestion = (message: string): DecimalQuestion => ({
  kind: "decimal question",
  message,
});

export const isDecimalQuestion = (value: object): value is DecimalQuestion =>
  "kind" in value && value.kind === "decimal question";
