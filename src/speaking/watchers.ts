/** Those who want to know of a change. */
export interface Watchers {
  subscribe(onChange: () => void): () => void;
  notify(): void;
}

export function createWatchers(): Watchers {
  const watching = new Set<() => void>();
  return {
    subscribe(onChange) {
      watching.add(onChange);
      return () => {
        watching.delete(onChange);
      };
    },
    notify() {
      for (const onChange of [...watching]) onChange();
    },
  };
}
