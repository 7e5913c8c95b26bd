/** The browser's caches as far as they are used, in memory. */
export function fakeCaches() {
  const all = new Map<string, Map<string, Response>>();
  const urlOf = (request: RequestInfo | URL): string =>
    request instanceof Request ? request.url : String(request);
  const caches = {
    async open(name: string) {
      const kept = all.get(name) ?? new Map<string, Response>();
      all.set(name, kept);
      return {
        match: async (request: RequestInfo | URL) => kept.get(urlOf(request))?.clone(),
        put: async (request: RequestInfo | URL, response: Response) => {
          kept.set(urlOf(request), response);
        },
      } as Cache;
    },
    keys: async () => [...all.keys()],
    delete: async (name: string) => all.delete(name),
  };
  return caches;
}
