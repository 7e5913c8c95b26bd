interface Held {
  readonly free: () => void;
  readonly lose: (why: Error) => void;
}

/** Web Locks as far as they are used: ifAvailable and steal, first come first served. */
export function fakeLockManager(): Pick<LockManager, 'request'> & { held(): readonly string[] } {
  const holders = new Map<string, Held>();

  async function request(
    name: string,
    options: LockOptions,
    granted: (lock: Lock | null) => unknown,
  ): Promise<unknown> {
    if (options.ifAvailable && holders.has(name)) return granted(null);
    if (options.steal) {
      const aborted = new Error('The lock was stolen.');
      aborted.name = 'AbortError';
      holders.get(name)?.lose(aborted);
    }
    return new Promise((resolve, reject) => {
      const held: Held = { free: () => holders.delete(name), lose: reject };
      holders.set(name, held);
      const work = Promise.resolve(granted({ name, mode: 'exclusive' }));
      work.then(
        (value) => {
          if (holders.get(name) === held) held.free();
          resolve(value);
        },
        (error: unknown) => reject(error),
      );
    });
  }

  return {
    request: request as LockManager['request'],
    held: () => [...holders.keys()],
  };
}
