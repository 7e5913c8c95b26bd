/** A ± as typed without the sign some put in front of it. */
export function bareGive(text: string): string {
  return text.replace(/^\s*(±|\+\/?[-−])\s*/, '');
}
