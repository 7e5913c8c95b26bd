/** What is said beside a field of the set-up, where the trade's own sentences have none. English. */
export const problemWords = {
  engineMissing:
    'Choose the engine’s layout and firing order, type one in, or leave the engine out for now.',
  directionMissing: 'Say which way the crank runs: it must never be turned back.',
  orderMissing: (cylinders: number) =>
    cylinders > 0
      ? `The firing order is missing: 0 of ${cylinders} cylinders are given. Type each once, as 1-3-4-2.`
      : 'The firing order is missing: type each cylinder once, as 1-3-4-2.',
  oneCylinder: (cylinders: number) => `Give one cylinder’s number, 1 to ${cylinders}.`,
  noValves: 'No valve is ticked. Tick at least one to count.',
  threadMissing:
    'Choose the thread, type its pitch or threads per inch, or say it is not known yet.',
  tpi: 'Threads per inch must be a number above 0, as 24.',
  lifterMissing: 'Choose the lifter kind, or say it is not known yet.',
  lifterOfOthers:
    'Other valves have their lifter kind: choose one here too, or leave all of them unknown.',
  cylindersMissing: 'Name the cylinders of this group by number, as 1, 4, 6, 7.',
  noPushrod:
    'Without the test pushrod’s length the preload can be read, but no pushrod length worked out.',
  bothEnds: 'Give ball and oil hole at both ends of the pushrod, or leave all four empty.',
  notANumber: (text: string) => `‘${text.trim()}’ is no figure. Type digits, as 1.6 or 75.`,
};
