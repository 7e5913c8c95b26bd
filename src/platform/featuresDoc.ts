import { browserFeatures } from './features';

/** docs/browser-support.md, made from the list the app itself goes by. */
export function browserFeaturesDoc(): string {
  const rows = browserFeatures.map(
    ({ name, how, lost, said }) => `| ${name} | \`${how}\` | ${lost} | ${said} |`,
  );
  return [
    '# What the app asks of a browser',
    '',
    'Made by `npm run docs:browsers` from src/platform/features.ts; a test holds it current. The same list, with what this very browser has, stands on the About screen.',
    '',
    '| service | how it is detected | what is lost without it | what is said |',
    '|---|---|---|---|',
    ...rows,
    '',
  ].join('\n');
}
