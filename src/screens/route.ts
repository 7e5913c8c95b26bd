/** Where in the app the builder is; kept in the address so that a reload comes back to it. */
export type Route =
  | { readonly screen: 'bench'; readonly jobId: string }
  | { readonly screen: 'results'; readonly jobId: string }
  | { readonly screen: 'sheet'; readonly jobId: string }
  | { readonly screen: 'crank'; readonly jobId: string }
  /** With a job: its set-up is changed; without: a new job is set up. */
  | { readonly screen: 'set-up'; readonly jobId: string | null }
  /** What a planned change of parts asks of the pushrods; without a job. */
  | { readonly screen: 'before' }
  /** A practice run on simulated bolts; each arrival begins another. */
  | { readonly screen: 'practice' }
  | { readonly screen: 'jobs' }
  | { readonly screen: 'settings' }
  /** The room and the builder's voice, tried for the ear. */
  | { readonly screen: 'sound-check' }
  | { readonly screen: 'about' };

/** The address of a route, from its hash on. */
export function hashOf(route: Route): string {
  switch (route.screen) {
    case 'bench':
    case 'results':
    case 'sheet':
    case 'crank':
      return `#/${route.screen}/${encodeURIComponent(route.jobId)}`;
    case 'set-up':
      return route.jobId === null ? '#/set-up' : `#/set-up/${encodeURIComponent(route.jobId)}`;
    case 'before':
    case 'practice':
    case 'jobs':
    case 'settings':
    case 'sound-check':
    case 'about':
      return `#/${route.screen}`;
    default: {
      const never: never = route;
      return never;
    }
  }
}

/** The route an address names; null when it names none. */
export function routeOf(hash: string): Route | null {
  const [screen, id] = hash.replace(/^#\/?/, '').split('/');
  const jobId = id === undefined || id === '' ? null : decoded(id);
  switch (screen) {
    case 'bench':
    case 'results':
    case 'sheet':
    case 'crank':
      return jobId === null ? null : { screen, jobId };
    case 'set-up':
      return { screen, jobId };
    case 'before':
    case 'practice':
    case 'jobs':
    case 'settings':
    case 'sound-check':
    case 'about':
      return { screen };
    default:
      return null;
  }
}

function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
