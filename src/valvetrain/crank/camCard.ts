/**
 * When the valves open and shut, crank degrees, as a cam card's events state it. Negative where an
 * event lies on the other side of its dead centre.
 */
export interface ValveEvents {
  /** IO, before the TDC between exhaust and intake stroke. */
  readonly intakeOpensBeforeTdcDeg: number;
  /** IC, after the BDC that follows. */
  readonly intakeClosesAfterBdcDeg: number;
  /** EO, before the BDC that ends the power stroke. */
  readonly exhaustOpensBeforeBdcDeg: number;
  /** EC, after the TDC between exhaust and intake stroke. */
  readonly exhaustClosesAfterTdcDeg: number;
}

/** The same timing in a cam card's other form; durations in crank degrees. */
export interface LobeFigures {
  readonly intakeDurationDeg: number;
  readonly exhaustDurationDeg: number;
  /** Half the crank degrees between the two lobes' peaks, which is the cam's own degrees. */
  readonly lobeSeparationDeg: number;
  /** ICL, after TDC. */
  readonly intakeCentrelineDeg: number;
}

/** At what lift a card states its figures. Only the seat's own tell where the ramps are. */
export type StatedLift = 'seat' | '0.050 in' | 'not known';

export const statedLifts: readonly StatedLift[] = ['seat', '0.050 in', 'not known'];

/** A cam card as it was read, or the want of one. */
export type CamCard =
  | {
      readonly form: 'events';
      readonly events: ValveEvents;
      readonly statedAt: StatedLift;
      /** What the card prints besides: held against the events, never used. */
      readonly alsoPrinted?: Partial<LobeFigures>;
    }
  | { readonly form: 'durations'; readonly lobes: LobeFigures; readonly statedAt: StatedLift }
  | { readonly form: 'not known' };

/** One lobe: how long its valve is open, and its peak's crank degrees from TDC at overlap. */
export interface Lobe {
  readonly durationDeg: number;
  readonly centrelineDeg: number;
}

/**
 * The intake lobe of its two events: D = IO + 180 + IC, centreline D/2 − IO after TDC. Derived: the
 * intake stroke is the 180° between TDC and BDC, and the peak is taken midway.
 */
export function intakeLobe(opensBeforeTdcDeg: number, closesAfterBdcDeg: number): Lobe {
  const durationDeg = opensBeforeTdcDeg + 180 + closesAfterBdcDeg;
  return { durationDeg, centrelineDeg: durationDeg / 2 - opensBeforeTdcDeg };
}

/** The exhaust lobe of its two events: D = EO + 180 + EC, centreline D/2 − EC before TDC. Derived. */
export function exhaustLobe(opensBeforeBdcDeg: number, closesAfterTdcDeg: number): Lobe {
  const durationDeg = opensBeforeBdcDeg + 180 + closesAfterTdcDeg;
  return { durationDeg, centrelineDeg: durationDeg / 2 - closesAfterTdcDeg };
}

/** Durations, separation and centreline of four events. The inverse of `eventsFromLobes`. */
export function lobesFromEvents(events: ValveEvents): LobeFigures {
  const intake = intakeLobe(events.intakeOpensBeforeTdcDeg, events.intakeClosesAfterBdcDeg);
  const exhaust = exhaustLobe(events.exhaustOpensBeforeBdcDeg, events.exhaustClosesAfterTdcDeg);
  return {
    intakeDurationDeg: intake.durationDeg,
    exhaustDurationDeg: exhaust.durationDeg,
    lobeSeparationDeg: (intake.centrelineDeg + exhaust.centrelineDeg) / 2,
    intakeCentrelineDeg: intake.centrelineDeg,
  };
}

/**
 * The four events: IO = Di/2 − ICL, IC = Di/2 + ICL − 180, EO = De/2 + ECL − 180, EC = De/2 − ECL,
 * with ECL = 2·LSA − ICL. Derived.
 */
export function eventsFromLobes(lobes: LobeFigures): ValveEvents {
  const intakeHalf = lobes.intakeDurationDeg / 2;
  const exhaustHalf = lobes.exhaustDurationDeg / 2;
  const exhaustCentreline = exhaustCentrelineDeg(lobes);
  return {
    intakeOpensBeforeTdcDeg: intakeHalf - lobes.intakeCentrelineDeg,
    intakeClosesAfterBdcDeg: intakeHalf + lobes.intakeCentrelineDeg - 180,
    exhaustOpensBeforeBdcDeg: exhaustHalf + exhaustCentreline - 180,
    exhaustClosesAfterTdcDeg: exhaustHalf - exhaustCentreline,
  };
}

/** ECL, crank degrees before TDC: 2·LSA − ICL. */
export function exhaustCentrelineDeg(
  lobes: Pick<LobeFigures, 'lobeSeparationDeg' | 'intakeCentrelineDeg'>,
): number {
  return 2 * lobes.lobeSeparationDeg - lobes.intakeCentrelineDeg;
}

/** Crank degrees during which both valves of a cylinder are open; below 0 they never are. */
export function overlapDeg(
  events: Pick<ValveEvents, 'intakeOpensBeforeTdcDeg' | 'exhaustClosesAfterTdcDeg'>,
): number {
  return events.intakeOpensBeforeTdcDeg + events.exhaustClosesAfterTdcDeg;
}

/** IC of a card that gives IO and the duration: D − 180 − IO, after BDC. */
export function intakeClosingDeg(opensBeforeTdcDeg: number, durationDeg: number): number {
  return durationDeg - 180 - opensBeforeTdcDeg;
}
