import { isPractice } from '../practice/practiceJob';
import { hashOf, type Route } from '../route';
import { useBench, useServices } from '../services';
import styles from './nav.module.css';
import { shellWords as words } from './shellWords';

interface Place {
  readonly label: string;
  readonly route: Route;
}

/** The ways to the other screens. Bench and results are there once a job is open. */
export function NavBar({ at }: { readonly at: Route['screen'] }) {
  const { go } = useServices();
  const jobId = useBench((state) => (isPractice(state.jobId) ? null : state.jobId));
  const places: readonly Place[] = [
    ...(jobId === null
      ? []
      : ([
          { label: words.bench, route: { screen: 'bench', jobId } },
          { label: words.results, route: { screen: 'results', jobId } },
          { label: words.crank, route: { screen: 'crank', jobId } },
        ] as const)),
    { label: words.setUp, route: { screen: 'set-up', jobId } },
    { label: words.before, route: { screen: 'before' } },
    { label: words.jobs, route: { screen: 'jobs' } },
    { label: words.settings, route: { screen: 'settings' } },
    { label: words.about, route: { screen: 'about' } },
  ];
  return (
    <nav className={styles.nav} aria-label={words.nav}>
      {places.map(({ label, route }) => (
        <a
          key={label}
          className={styles.place}
          href={hashOf(route)}
          aria-current={route.screen === at ? 'page' : undefined}
          onClick={(press) => {
            press.preventDefault();
            go(route);
          }}
        >
          {label}
        </a>
      ))}
    </nav>
  );
}
