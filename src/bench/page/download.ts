const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands the user a new file; nothing that exists is written over. */
export function downloadXlsx(fileName: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: XLSX }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
