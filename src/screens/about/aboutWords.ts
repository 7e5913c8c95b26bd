/** Words of the about screen, English. */
export const aboutWords = {
  title: 'About',
  what: 'Turncaller calls the turns: it counts aloud while the preload of hydraulic lifters is set by counting socket turns from zero lash, works out each valve’s preload, and says which pushrod length fits.',
  privacy: 'Jobs stay on this device. Nothing counted is sent anywhere.',
  version: 'Version',
  commit: 'Commit',
  features: 'What this browser has',
  feature: 'Feature',
  here: 'Here',
  without: 'What is lost without it',
  yes: 'yes',
  no: 'no',
  cautions: 'Cautions',
  licence: 'Licence',
  licenceIs: 'MIT: free to use, change and pass on, without warranty.',
  notices: 'Notices of the software this is built with',
  noticesFile: 'notices.txt',
};
