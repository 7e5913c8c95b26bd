import { useId } from 'react';
import { planWords as words } from './planWords';
import { TrainParts } from './TrainParts';
import styles from './train.module.css';
import { type TrainPlace, trainPlaces } from './trainPlaces';

/** One term as the drawing shows it. */
export interface TrainMark {
  readonly place: TrainPlace;
  /** Its number in the table beside. */
  readonly number: number;
  /** Its amount with its sign, bare. */
  readonly amount: string;
  /** Which way the part itself goes. */
  readonly moves: 'up' | 'down' | 'stays';
}

interface Props {
  readonly marks: readonly TrainMark[];
  /** What the pushrod comes to, bare. */
  readonly sum: string;
  /** The unit of every figure on it. */
  readonly unit: string;
}

const places = Object.entries(trainPlaces).flatMap(([name, at]) =>
  isPlace(name) ? [{ place: name, ...at }] : [],
);

function isPlace(name: string): name is TrainPlace {
  return name in trainPlaces;
}

/** The valve train from the side, each term where it acts, numbered as in the table. */
export function ValveTrainDrawing({ marks, sum, unit }: Props) {
  const metal = useId();
  const acting = new Set(marks.map(({ place }) => place));
  const spoken = marks.map(({ place, amount }) => `${words.place[place]} ${amount}`);
  return (
    <svg
      role="img"
      aria-label={words.drawing(spoken, sum, unit)}
      viewBox="-28 0 488 492"
      className={styles.train}
    >
      <defs>
        <pattern id={metal} width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 8L8 0" className={styles.hatch} />
        </pattern>
      </defs>
      <TrainParts acting={acting} metal={metal} />
      {places.map(({ place, label: [x, y], leader, arrow }) => {
        const mark = marks.find((one) => one.place === place);
        return (
          <g key={place} data-place={mark ? place : undefined}>
            {(place !== 'plunger' || mark) && (
              <text x={x} y={y} className={styles.name}>
                {words.place[place]}
              </text>
            )}
            {mark && (
              <>
                <path d={leader} className={styles.leader} />
                <circle cx={x + 10} cy={y + 16} r={11} className={styles.badge} />
                <text x={x + 10} y={y + 21} textAnchor="middle" className={styles.number}>
                  {mark.number}
                </text>
                <text x={x + 26} y={y + 23} className={styles.amount}>
                  {mark.amount}
                </text>
                {mark.moves !== 'stays' && (
                  <path d={arrowPath(arrow, mark.moves)} className={styles.arrow} />
                )}
              </>
            )}
          </g>
        );
      })}
      <text x={-26} y={190} className={styles.name}>
        {words.pushrod}
      </text>
      <text x={-26} y={214} className={styles.sum}>
        {sum}
      </text>
      <path d="M64 206L120 206" className={styles.leader} />
      <text x={454} y={484} textAnchor="end" className={styles.name}>
        {words.figuresIn(unit)}
      </text>
    </svg>
  );
}

const ARROW_LENGTH = 20;

function arrowPath([x, y]: readonly [number, number], moves: 'up' | 'down'): string {
  const way = moves === 'up' ? -1 : 1;
  const tail = y - (way * ARROW_LENGTH) / 2;
  const tip = y + (way * ARROW_LENGTH) / 2;
  return `M${x} ${tail}V${tip}M${x - 5} ${tip - way * 7}L${x} ${tip}L${x + 5} ${tip - way * 7}`;
}
