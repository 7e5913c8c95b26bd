/** Hands a text file to the builder as a download. */
export function saveFile(page: Document, fileName: string, text: string): void {
  const type = fileName.endsWith('.csv') ? 'text/csv;charset=utf-8' : 'application/json';
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = page.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}
