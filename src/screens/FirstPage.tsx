import type { Build } from './build';

/** The page shown while there is nothing else to show. */
export function FirstPage({ build }: { readonly build: Build }) {
  return (
    <main>
      <h1>Turncaller</h1>
      <p>
        Version {build.version}, commit {build.commit}
      </p>
    </main>
  );
}
