import {
  type LobeFigures,
  type PlannedStop,
  type SeatTiming,
  seatTiming,
  type ValveEvents,
  type ValveKind,
} from '#valvetrain';

/** Seat timing of both valves open as long, with the intake centreline on the separation unless said. */
export function cam(
  durationDeg: number,
  lobeSeparationDeg = 110,
  intakeCentrelineDeg = lobeSeparationDeg,
): SeatTiming {
  return camOf({
    intakeDurationDeg: durationDeg,
    exhaustDurationDeg: durationDeg,
    lobeSeparationDeg,
    intakeCentrelineDeg,
  });
}

export function camOf(lobes: LobeFigures): SeatTiming {
  return seatTiming({ form: 'durations', lobes, statedAt: 'seat' });
}

/** Events in the order a card prints them: IO, IC, EO, EC. */
export function events(io: number, ic: number, eo: number, ec: number): ValveEvents {
  return {
    intakeOpensBeforeTdcDeg: io,
    intakeClosesAfterBdcDeg: ic,
    exhaustOpensBeforeBdcDeg: eo,
    exhaustClosesAfterTdcDeg: ec,
  };
}

/** The cylinders a stop counts of one kind, as lists print them: '1 3 4 8'. */
export function counted(stop: PlannedStop | undefined, kind: ValveKind): string {
  return (stop?.valves ?? [])
    .filter(({ valve }) => valve === kind)
    .map(({ cylinder }) => cylinder)
    .join(' ');
}

export function orderOf(text: string): readonly number[] {
  return text.split('-').map(Number);
}
