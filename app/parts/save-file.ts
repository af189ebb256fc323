/** Gives a file to the browser to keep, under a name without what file systems do not take. */
export function saveFile(blob: Blob, fileName: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName.replace(/[\\/:*?"<>|\s]+/g, ' ').trim();
  link.click();
  // The browser reads it after this turn of the event loop.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
