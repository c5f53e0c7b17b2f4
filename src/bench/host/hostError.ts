/** The codes of Excel's own errors that the bench's host gives. */
export type HostErrorCode =
  | "GeneralException"
  | "InvalidArgument"
  | "InvalidObjectPath"
  | "ItemAlreadyExists"
  | "ItemNotFound"
  | "InvalidReference"
  | "PropertyNotLoaded";

/** As OfficeExtension.Error: told apart by `code`, never by class, since it crosses frames. */
export class HostError extends Error {
  readonly debugInfo: { readonly code: HostErrorCode; readonly message: string };

  constructor(
    readonly code: HostErrorCode,
    message: string,
  ) {
    super(message);
    this.name = "RichApi.Error";
    this.debugInfo = { code, message };
  }
}
