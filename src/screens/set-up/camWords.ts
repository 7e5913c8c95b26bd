import type { CamCard, LobeFigures, StatedLift, ValveEvents } from '#valvetrain';

/** To a tenth: no cam card says more. */
function figure(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Words of the cam's step, English. */
export const camWords = {
  step: 'The cam',
  now: {
    'not known': 'not known, taken for a long one',
    events: 'by its four events',
    durations: 'by its durations',
  } satisfies Record<CamCard['form'], string>,
  why: 'A valve may be counted only with its lifter on the cam’s base circle. The cam card says where that is; either of its forms will do.',

  form: 'Cam timing',
  forms: {
    'not known': 'I don’t know the cam',
    events: 'The four events, in crank degrees',
    durations: 'Durations, lobe separation, and centreline or advance',
  } satisfies Record<CamCard['form'], string>,

  statedAt: 'At what lift the card states them',
  stated: {
    seat: 'At the seat',
    '0.050 in': 'At 0.050 in',
    'not known': 'The card does not say',
  } satisfies Record<StatedLift, string>,

  events: {
    intakeOpensBeforeTdcDeg: 'Intake opens before TDC',
    intakeClosesAfterBdcDeg: 'Intake closes after BDC',
    exhaustOpensBeforeBdcDeg: 'Exhaust opens before BDC',
    exhaustClosesAfterTdcDeg: 'Exhaust closes after TDC',
  } satisfies Record<keyof ValveEvents, string>,
  eventsHint: 'Below nought where an event lies on the other side of its dead centre.',

  lobes: {
    intakeDurationDeg: 'Intake duration',
    exhaustDurationDeg: 'Exhaust duration',
    lobeSeparationDeg: 'Lobe separation',
    intakeCentrelineDeg: 'Intake centreline, after TDC',
  } satisfies Record<keyof LobeFigures, string>,
  placedBy: 'The card places the cam by',
  placings: { centreline: 'Its intake centreline', advance: 'How far it is advanced' },
  advance: 'Advanced by',
  advanceHint: 'Nought where it is set straight up, below nought where it is retarded.',
  advanceMissing: 'Give how many degrees the cam is advanced: 0 where it is set straight up.',
  alsoPrinted: 'The card prints these too',
  alsoHint: 'Held against the events: a misread figure shows.',

  unit: '°',
  inOtherForm: {
    events: (lobes: LobeFigures) =>
      `In the other form: ${figure(lobes.intakeDurationDeg)}° and ${figure(lobes.exhaustDurationDeg)}° intake and exhaust, separation ${figure(lobes.lobeSeparationDeg)}°, intake centreline ${figure(lobes.intakeCentrelineDeg)}°.`,
    durations: (events: ValveEvents) =>
      `In the other form: intake ${figure(events.intakeOpensBeforeTdcDeg)}-${figure(events.intakeClosesAfterBdcDeg)}, exhaust ${figure(events.exhaustOpensBeforeBdcDeg)}-${figure(events.exhaustClosesAfterTdcDeg)}.`,
  },
};
