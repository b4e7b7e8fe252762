/** A file stays in reach this long after it was asked for, in milliseconds. */
const KEPT = 30_000;

/** Hands a text to the reader as a file: it is made here and goes nowhere else. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT);
}
