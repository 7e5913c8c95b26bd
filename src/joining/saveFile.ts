/** Hands a file to the builder as a download. */
export function saveFile(
  page: Document,
  fileName: string,
  content: string | Uint8Array<ArrayBuffer>,
): void {
  const type = typeOf(fileName);
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = page.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}

function typeOf(fileName: string): string {
  if (fileName.endsWith('.wav')) return 'audio/wav';
  return fileName.endsWith('.csv') ? 'text/csv;charset=utf-8' : 'application/json';
}
