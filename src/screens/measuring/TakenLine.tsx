import type { Taken } from './useTaken';

/** What the last command of a form came to. */
export function TakenLine({ taken }: { readonly taken: Taken | null }) {
  if (taken === null) return null;
  return <p role={taken.refused ? 'alert' : 'status'}>{taken.text}</p>;
}
