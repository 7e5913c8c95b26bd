/** Words of the frame around the screens, English. */
export const shellWords = {
  nav: 'Screens',
  bench: 'Bench',
  results: 'Results',
  setUp: 'Set-up',
  jobs: 'Jobs',
  settings: 'Settings',
  about: 'About',
  fetching: 'Fetching this screen…',
  opening: 'Opening the job…',
  unreadable: 'This job can’t be read on this device. Its log is left as it is.',
  unknown: 'That job is not on this device. Open another, or import its file.',
  notices: 'Notices',
  readyOffline: 'Ready offline: from now on this opens without a network or its server.',
  understood: 'Understood',
  updateHere: 'A new version is here. It is taken when you ask for it; jobs stay as they are.',
  updateWaits:
    'The new version waits: a valve is being counted, here or in another window. Seat it first.',
  updateNow: 'Update now',
  toJobs: 'Go to the jobs',
};
