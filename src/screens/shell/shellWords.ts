/** Words of the frame around the screens, English. */
export const shellWords = {
  pageTitle: (screen: string) => `${screen} · Turncaller`,
  nav: 'Screens',
  bench: 'Bench',
  results: 'Results',
  crank: 'Crank',
  setUp: 'Set-up',
  before: 'Before buying',
  jobs: 'Jobs',
  settings: 'Settings',
  about: 'About',
  units: 'Units',
  inch: 'Inches and thou',
  mm: 'Millimetres',
  fetching: 'Fetching this screen…',
  opening: 'Opening the job…',
  notOpened: 'No job opened',
  unreadable: 'This job can’t be read on this device. Its log is left as it is.',
  unknown: 'That job is not on this device. Open another, or import its file.',
  notices: 'Notices',
  readyOffline: 'Ready offline: from now on this opens without a network or its server.',
  understood: 'Understood',
  updateHere: 'A new version is here. It is taken when you ask for it; jobs stay as they are.',
  updateWaits:
    'The new version waits: a valve is being counted, here or in another window. Seat it first.',
  store: {
    none: 'Nothing can be kept in this browser: storage is blocked, or this is a private window. What is counted is held until this page is closed; export the job before that.',
    blocked:
      'An older version of this app is open in another window. Close it: the jobs can’t be opened before.',
    'newer app':
      'A newer version of this app has the jobs. Reload this page to get it; nothing more is written here.',
  },
  updateNow: 'Update now',
  toJobs: 'Go to the jobs',
};
