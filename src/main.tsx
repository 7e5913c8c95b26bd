import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { appCommit, appVersion } from '#platform';
import { type Build, ErrorBoundary, FirstPage } from '#screens';

const build: Build = { version: appVersion, commit: appCommit };

const place = document.getElementById('app');
if (!place) throw new Error('index.html has no element with the id app');

createRoot(place).render(
  <StrictMode>
    <ErrorBoundary build={build}>
      <FirstPage build={build} />
    </ErrorBoundary>
  </StrictMode>,
);
