import { useMemo, useState } from 'react';
import { useStore } from 'zustand';
import {
  crankPlanOf,
  type JobState,
  type PlannedPosition,
  type SetUp,
  setUpOf,
  walkChoiceOf,
} from '#counting';
import type { Engine } from '#valvetrain';
import { useBench, useServices } from '../services';
import { Action } from '../shell/Action';
import { Page } from '../shell/Page';
import { CrankDisc, placeOf } from './CrankDisc';
import { CylinderCard } from './CylinderCard';
import styles from './crank.module.css';
import { cylindersNow, onCycle, samePlace } from './crankNow';
import { crankWords as words } from './crankWords';
import { Scrubber } from './Scrubber';
import { StopList } from './StopList';
import { type ScrubMoves, useScrubKeys } from './useScrubKeys';
import { ValveTable } from './ValveTable';
import { WhyPanel } from './WhyPanel';

/** The crank, every piston and every valve at an angle that can be moved: a picture to learn from. */
export function CrankScreen() {
  const { go } = useServices();
  const job = useBench((state) => state.job);
  const setUp = setUpOf(job);
  const engine = setUp?.engine ?? null;
  return (
    <Page title={words.title} wide>
      {setUp === null || engine === null ? (
        <div className={styles.empty}>
          <p>{words.noEngine}</p>
          <Action main onPress={() => go({ screen: 'set-up', jobId: job.jobId })}>
            {words.toSetUp}
          </Action>
        </div>
      ) : (
        <CrankPicture job={job} setUp={setUp} engine={engine} />
      )}
    </Page>
  );
}

interface Props {
  readonly job: JobState;
  readonly setUp: SetUp;
  readonly engine: Engine;
}

function CrankPicture({ job, setUp, engine }: Props) {
  const { go, keys } = useServices();
  const pedal = useStore(keys, (state) => state.pedal);
  const { positions: stops, timing } = crankPlanOf(setUp);
  const { marginDeg: wantedDeg, method } = walkChoiceOf(setUp);
  const stands = job.crank.at?.angleDeg ?? null;
  const home = stands ?? stops[0]?.position.angleDeg ?? 0;
  const [angleDeg, setAngleDeg] = useState(home);
  const [chosen, setChosen] = useState<number | null>(
    () => stops.find((stop) => isAt(stop, home))?.position.valves[0]?.cylinder ?? null,
  );
  const cylinders = cylindersNow(engine, timing, angleDeg, wantedDeg);
  const shownOf = cylinders.find(({ cylinder }) => cylinder === chosen) ?? cylinders[0];
  const at = stops.findIndex((stop) => isAt(stop, angleDeg));
  const place = placeOf(engine, angleDeg);

  const moves = useMemo<ScrubMoves>(() => {
    const jump = (away: (stopDeg: number) => number) => {
      setAngleDeg((before) => {
        const others = stops
          .flatMap(({ position }) => position.angleDeg ?? [])
          .filter((stopDeg) => !samePlace(stopDeg, before));
        return others.toSorted((a, b) => away(a - before) - away(b - before))[0] ?? before;
      });
    };
    return {
      by: (degrees) =>
        setAngleDeg((before) =>
          onCycle((degrees > 0 ? Math.floor(before) : Math.ceil(before)) + degrees),
        ),
      stopAfter: () => jump(onCycle),
      stopBefore: () => jump((deg) => onCycle(-deg)),
      home: () => setAngleDeg(home),
    };
  }, [stops, home]);
  useScrubKeys(moves, pedal);

  function jumpTo({ position }: PlannedPosition): void {
    if (position.angleDeg !== null) setAngleDeg(position.angleDeg);
    setChosen(position.cylinder ?? position.valves[0]?.cylinder ?? chosen);
  }

  return (
    <>
      <p className={styles.quiet}>{words.lead}</p>
      <div className={styles.columns}>
        <div className={styles.left}>
          <figure className={styles.discFigure}>
            <CrankDisc engine={engine} stops={stops} angleDeg={angleDeg} />
            <figcaption>{words.discBelow(engine)}</figcaption>
          </figure>
          <Scrubber
            angleDeg={angleDeg}
            place={place}
            stands={stands !== null}
            moves={moves}
            onAngle={(deg) => setAngleDeg(onCycle(deg))}
          />
        </div>
        <div className={styles.right}>
          <section aria-labelledby="crank-cylinders">
            <h2 id="crank-cylinders">{words.cylinders}</h2>
            <div className={styles.cards}>
              {cylinders.map((now) => (
                <CylinderCard
                  key={now.cylinder}
                  now={now}
                  chosen={now === shownOf}
                  watched={shownOf?.companion === now.cylinder}
                  onChoose={() => setChosen(now.cylinder)}
                />
              ))}
            </div>
          </section>
          {shownOf && <WhyPanel now={shownOf} timing={timing} wantedDeg={wantedDeg} />}
        </div>
        <div className={styles.end}>
          <StopList stops={stops} method={method} at={at} onJump={jumpTo} />
          <p>{timing.note ?? words.bySeatTiming}</p>
          <Action onPress={() => go({ screen: 'bench', jobId: job.jobId })}>{words.toBench}</Action>
        </div>
        <ValveTable cylinders={cylinders} />
      </div>
    </>
  );
}

function isAt({ position }: PlannedPosition, angleDeg: number): boolean {
  return position.angleDeg !== null && samePlace(position.angleDeg, angleDeg);
}
