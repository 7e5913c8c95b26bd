import { createStore, type StoreApi } from 'zustand/vanilla';
import { hashOf, type Route, routeOf } from '#screens';

export interface Place {
  readonly store: StoreApi<{ readonly route: Route }>;
  go(route: Route): void;
}

/** Where the builder is, kept in the page's address. */
export function joinPlace(page: Window, onRoute: (route: Route) => void): Place {
  const store = createStore<{ readonly route: Route }>(() => ({
    route: routeOf(page.location.hash) ?? { screen: 'jobs' },
  }));

  function arrive(route: Route): void {
    store.setState({ route });
    onRoute(route);
  }

  page.addEventListener('hashchange', () => {
    const route = routeOf(page.location.hash);
    if (route !== null && hashOf(route) !== hashOf(store.getState().route)) arrive(route);
  });

  return {
    store,
    go(route) {
      page.location.hash = hashOf(route);
      arrive(route);
    },
  };
}
