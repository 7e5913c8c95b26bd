import { describe, expect, test } from 'vitest';
import { nextStop, type SetUp, usualWalk, valvesLeft, type WalkChoice, walkOf } from '#counting';
import { type CamCard, type Engine, type ValveId, valvesOf } from '#valvetrain';
import { given, type Job, opened, outcomes, ready, when } from '../given';
import { eightCylinders, engineOf, exhaust, intake } from '../samples';
import {
  call,
  cautionsHeard,
  crankThere,
  goTo,
  land,
  next,
  pushrodsLoose,
  seat,
  skip,
  zero,
} from '../steps';

const by = (method: WalkChoice['method'], change: Partial<WalkChoice> = {}): WalkChoice => ({
  ...usualWalk,
  method,
  ...change,
});
const withWalk = (walk: WalkChoice, change: Partial<SetUp> = {}): SetUp => ({
  ...eightCylinders,
  walk,
  ...change,
});
const withEngine = (engine: Engine, walk: WalkChoice, change: Partial<SetUp> = {}): SetUp =>
  withWalk(walk, { engine, scope: valvesOf(engine), ...change });
const names = (valves: readonly ValveId[]) =>
  valves.map((id) => `${id.cylinder}${id.valve[0]}`).join(' ');
const stops = (setUp: SetUp) =>
  walkOf(setUp).map(({ angleDeg, valves }) => [angleDeg, names(valves)]);

const six = engineOf(1, 5, 3, 6, 2, 4);
/** Cranks shared by pairs 90° apart: cylinders fire 90 and 150° apart. */
const oddSix: Engine = {
  ...engineOf(1, 6, 5, 4, 3, 2),
  firingAnglesDeg: [0, 90, 240, 330, 480, 570],
};
/** 60 + 180 + 20: each valve is open 260°. */
const card260: CamCard = {
  form: 'events',
  events: {
    intakeOpensBeforeTdcDeg: 20,
    intakeClosesAfterBdcDeg: 60,
    exhaustOpensBeforeBdcDeg: 60,
    exhaustClosesAfterTdcDeg: 20,
  },
  statedAt: 'seat',
};

/** Counts the valve that stands to start, and takes up the next. */
const counted = [zero, call(1), call(2), call(3), call(4), seat, land('nothing'), next] as const;

/** Every valve counted, the crank moved where it has to be: the order they came in, and the turns. */
function walked(setUp: SetUp) {
  let job: Job = given(opened(setUp), [cautionsHeard]);
  const turns: (number | null)[] = [];
  for (let i = 0; i < 60 && valvesLeft(job.state).length > 0; i += 1) {
    if (job.state.open === null) {
      if (job.state.crank.loaded) job = given(job, [pushrodsLoose]);
      turns.push(nextStop(job.state)?.turnDeg ?? null);
      job = given(job, [crankThere]);
    }
    job = given(job, counted);
  }
  return { order: names(job.state.readings.flatMap(({ valve }) => valve ?? [])), turns };
}

describe('the walk the builder picks', () => {
  // [S] service manual, maker withheld, valve clearance: stop 1 E 1 3 4 8, I 1 2 5 7; stop 2 the rest.
  test('fewest: an eight-cylinder engine in two positions, one whole turn apart', () => {
    const setUp = withWalk(by('fewest stops'));
    expect(stops(setUp)).toEqual([
      [0, '1e 1i 2i 3e 4e 5i 7i 8e'],
      [360, '2e 3i 4i 5e 6e 6i 7e 8i'],
    ]);
    expect(walked(setUp)).toEqual({
      order: '1e 1i 2i 3e 4e 5i 7i 8e 2e 3i 4i 5e 6e 6i 7e 8i',
      turns: [null, 360],
    });
  });

  test('exhaust opening, intake closing: a position a valve, in order of crank angle', () => {
    const setUp = withEngine(six, by('exhaust opening, intake closing'), { cam: card260 });
    // Its exhaust opens at 180 − 60 after each firing TDC: there its intake is counted. Its intake is
    // shut at 540 + 60: there its exhaust. 120 + 120 j and 600 + 120 j meet, so six positions serve.
    expect(stops(setUp)).toEqual([
      [0, '4i 5e'],
      [120, '1i 3e'],
      [240, '5i 6e'],
      [360, '2e 3i'],
      [480, '4e 6i'],
      [600, '1e 2i'],
    ]);
    expect(walked(setUp).turns).toEqual([null, 120, 120, 120, 120, 120]);
  });

  test('an odd-fire V6: one position a cylinder, at its typed angles', () => {
    const setUp = withEngine(oddSix, by('firing order'));
    expect(walked(setUp)).toEqual({
      order: '1e 1i 6e 6i 5e 5i 4e 4i 3e 3i 2e 2i',
      turns: [null, 90, 150, 90, 150, 90],
    });
    const stop = nextStop(opened(setUp).state);
    expect(stop?.companion).toBeNull();
    expect(stop?.proof).toEqual({ kind: 'watching', firing: 1 });
  });

  test('timing dots: together is the companion of one, a turn on is one', () => {
    const setUp = withWalk(by('timing dots'));
    const first = nextStop(given(opened(setUp), [cautionsHeard]).state);
    expect(first?.position.cylinder).toBe(6);
    expect(first?.proof).toMatchObject({ kind: 'timing dots together', crossing: 1 });
    expect(walkOf(setUp).map(({ cylinder }) => cylinder)).toEqual([6, 5, 7, 2, 1, 8, 4, 3]);
  });

  test('timing dots, and nothing to count where they meet: from there the turn is named', () => {
    const setUp = withWalk(by('timing dots'), { scope: [exhaust(7), intake(7)] });
    const stop = nextStop(given(opened(setUp), [cautionsHeard]).state);
    expect(stop?.position.cylinder).toBe(7);
    expect(stop?.first).toMatchObject({ turnDeg: 180, proof: { kind: 'timing dots together' } });
  });

  test('watching the valves and companion: firing TDCs, each with its own proof', () => {
    const watching = nextStop(opened(withWalk(by('watching the valves'))).state);
    expect(watching?.proof).toEqual({ kind: 'watching', firing: 1 });
    const companion = nextStop(opened(withWalk(by('companion'))).state);
    expect(companion).toMatchObject({ companion: 6, position: { cylinder: 1 } });
  });

  test('a position of many cylinders is left once all its valves are read, skipped ones at the end', () => {
    const setUp = withWalk(by('fewest stops'));
    const skipped = given(ready(setUp), [skip]);
    expect(skipped.state.open?.valve).toEqual(intake(1));
    let job = skipped;
    for (let i = 0; i < 7; i += 1) job = given(job, counted);
    job = given(job, [pushrodsLoose, crankThere]);
    for (let i = 0; i < 8; i += 1) job = given(job, counted);
    job = given(job, [pushrodsLoose]);
    expect(valvesLeft(job.state)).toEqual([exhaust(1)]);
    expect(nextStop(job.state)).toMatchObject({ turnDeg: 360, position: { angleDeg: 0 } });
    expect(outcomes(when(job, crankThere))).toEqual(['positionReached']);
  });

  test('a valve asked for is counted at the position the walk has it at', () => {
    const job = given(ready(withWalk(by('fewest stops'))), [goTo(6, 'exhaust')]);
    expect(nextStop(job.state)).toMatchObject({ turnDeg: 360, position: { angleDeg: 360 } });
    const near = given(ready(withWalk(by('fewest stops'))), [goTo(8, 'exhaust')]);
    expect(near.state.open?.valve).toEqual(exhaust(8));
  });

  test('whatever the way, never a turn back, and two turns take in the engine', () => {
    for (const engine of [six, oddSix, engineOf(1, 2, 3), engineOf(1), eightCylinders.engine]) {
      if (engine === null) continue;
      for (const method of [
        'firing order',
        'fewest stops',
        'timing dots',
        'watching the valves',
      ] as const) {
        const { turns, order } = walked(withEngine(engine, by(method)));
        const known = turns.slice(1).map((turn) => turn ?? -1);
        expect(
          known.every((turn) => turn >= 0),
          `${method}, ${engine.cylinders}`,
        ).toBe(true);
        expect(known.reduce((sum, turn) => sum + turn, 0)).toBeLessThan(720);
        expect(order.split(' ')).toHaveLength(2 * engine.cylinders);
      }
    }
  });
});
