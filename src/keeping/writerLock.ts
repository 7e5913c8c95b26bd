/** The right to be a job's one writer. */
export interface WriterClaim {
  release(): void;
}

export interface WriterLocks {
  /** False where the browser has no locks (a page over plain http): then every claim is granted. */
  readonly locking: boolean;
  /** Asks to be the job's one writer; null when another window is. `onLost`: another took over. */
  claim(jobId: string, onLost: () => void): Promise<WriterClaim | null>;
  /** Becomes the one writer, whoever was. */
  takeOver(jobId: string, onLost: () => void): Promise<WriterClaim>;
}

/** Holds Web Locks named `job:<id>`. One may be lost to another window at any time. */
export function writerLocks(locks: Pick<LockManager, 'request'> | null): WriterLocks {
  if (locks === null) {
    const granted: WriterClaim = { release: () => undefined };
    return { locking: false, claim: async () => granted, takeOver: async () => granted };
  }
  const manager = locks;
  /** Claims given up whose lock the browser may not have freed yet. */
  const releasing = new Map<string, Promise<void>>();

  function hold(
    jobId: string,
    options: LockOptions,
    onLost: () => void,
  ): Promise<WriterClaim | null> {
    return new Promise((resolve, reject) => {
      let letGo: () => void = () => undefined;
      let state: 'waiting' | 'held' | 'released' = 'waiting';
      const ended = manager
        .request(`job:${jobId}`, options, (lock) => {
          if (lock === null) {
            resolve(null);
            return;
          }
          state = 'held';
          const held = new Promise<void>((free) => {
            letGo = free;
          });
          resolve({ release });
          return held;
        })
        .then(
          () => undefined,
          (error: unknown) => {
            if (state === 'held') onLost();
            else if (state === 'waiting') reject(error);
          },
        );

      function release(): void {
        if (state !== 'held') return;
        state = 'released';
        const freed = ended.then(() => {
          if (releasing.get(jobId) === freed) releasing.delete(jobId);
        });
        releasing.set(jobId, freed);
        letGo();
      }
    });
  }

  return {
    locking: true,
    async claim(jobId, onLost) {
      await releasing.get(jobId);
      return hold(jobId, { ifAvailable: true }, onLost);
    },
    async takeOver(jobId, onLost) {
      const claim = await hold(jobId, { steal: true }, onLost);
      if (claim === null) throw new Error('A stolen lock was not given.');
      return claim;
    },
  };
}
