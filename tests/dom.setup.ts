import '@testing-library/jest-dom/vitest';
import { cleanup, configure } from '@testing-library/react';
import { afterEach } from 'vitest';

// A screen's own code is fetched when it is first shown: on a busy machine longer than the usual second.
configure({ asyncUtilTimeout: 4000 });

afterEach(cleanup);
