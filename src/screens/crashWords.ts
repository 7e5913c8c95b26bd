/** Words of what stands where a screen could not be drawn, English. */
export const crashWords = {
  title: 'This screen stopped working',
  kept: 'What was counted is kept on this device. Reload to go on where you were.',
  reason: (reason: string) => `Reason: ${reason === '' ? 'none given' : reason}`,
  reload: 'Reload',
  build: (version: string, commit: string) => `Version ${version}, commit ${commit}`,
};
