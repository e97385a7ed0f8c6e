/** Offers a text as a file to keep. */
export function saveText(name: string, text: string, type: string): void {
  saveBlob(name, new Blob([text], { type }));
}

/** Offers a blob as a file to keep. */
export function saveBlob(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // the browser reads the address a moment after the click
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
