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
  toJobs: 'Go to the jobs',
};
