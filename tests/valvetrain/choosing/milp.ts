import loadHighs from 'highs';

/** Something to be given one length: a valve, or a whole group of `size` valves. */
export interface Unit {
  readonly size: number;
  /** For each length, by place: may it be given, how many valves it makes usable, how far off, nm. */
  readonly may: readonly boolean[];
  readonly usable: readonly number[];
  readonly distanceNm: readonly number[];
}

export interface Lengths {
  readonly nm: readonly number[];
  readonly quantities: readonly number[];
}

/** The figures an answer is judged by, in the order in which they count. */
export interface Optimum {
  readonly usable: number;
  readonly served: number;
  readonly lengths: number;
  readonly worstNm: number;
  readonly totalNm: number;
}

const highs = await loadHighs();
const EXACT = { mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false } as const;

/**
 * The best that can be had, by a mixed-integer linear program, one figure after the other: each
 * solve holds the figures before it fixed. y_i_j is 1 when unit i gets length j, z_j when j is used.
 */
export function optimumByMilp(units: readonly Unit[], lengths: Lengths): Optimum {
  const counted = solve(units, lengths, {
    objective: (i, j) => 10_000 * units[i]!.usable[j]! + 100 * units[i]!.size,
    perLength: -1,
    sense: 'Maximize',
  });
  const first = figuresOf(units, lengths, counted);
  const held = { usable: first.usable, served: first.served, lengths: first.lengths };
  const nearest = solve(units, lengths, { worst: true, sense: 'Minimize', held });
  const { worstNm } = figuresOf(units, lengths, nearest);
  const near = units.map((unit) => ({
    ...unit,
    may: unit.may.map((may, j) => may && unit.distanceNm[j]! <= worstNm),
  }));
  const base = Math.min(...lengths.nm);
  const shortest = solve(near, lengths, {
    objective: (i, j) => (units[i]!.size * (lengths.nm[j]! - base)) / 1000,
    sense: 'Minimize',
    held,
  });
  return { ...first, worstNm, totalNm: figuresOf(units, lengths, shortest).totalNm };
}

interface Stage {
  readonly sense: 'Maximize' | 'Minimize';
  readonly objective?: (unit: number, length: number) => number;
  readonly perLength?: number;
  readonly worst?: boolean;
  readonly held?: { readonly usable: number; readonly served: number; readonly lengths: number };
}

/** For each unit the place of its length, or null. */
function solve(units: readonly Unit[], lengths: Lengths, stage: Stage): readonly (number | null)[] {
  const pairs = units.flatMap((unit, i) =>
    lengths.nm.flatMap((_, j) => (unit.may[j] && lengths.quantities[j]! > 0 ? [{ i, j }] : [])),
  );
  if (pairs.length === 0) return units.map(() => null);
  const places = [...new Set(pairs.map(({ j }) => j))];
  const sum = (terms: readonly (readonly [number, string])[]) =>
    terms
      .filter(([factor]) => factor !== 0)
      .map(([factor, name]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`)
      .join('\n ');
  const y = ({ i, j }: { i: number; j: number }) => `y_${i}_${j}`;
  const objective = stage.worst
    ? '+ 1 worst'
    : sum([
        ...pairs.map((pair) => [stage.objective?.(pair.i, pair.j) ?? 0, y(pair)] as const),
        ...places.map((j) => [stage.perLength ?? 0, `z_${j}`] as const),
      ]) || '+ 0 z_0';
  const rows: string[] = [];
  for (const [i] of units.entries()) {
    const own = pairs.filter((pair) => pair.i === i);
    if (own.length === 0) continue;
    rows.push(`${sum(own.map((pair) => [1, y(pair)]))} <= 1`);
    if (stage.worst) {
      const off = own.map((pair) => [units[i]!.distanceNm[pair.j]! / 1000, y(pair)] as const);
      const row = sum(off);
      if (row !== '') rows.push(`${row} - 1 worst <= 0`);
    }
  }
  for (const pair of pairs) rows.push(`${y(pair)} - z_${pair.j} <= 0`);
  for (const j of places) {
    const quantity = lengths.quantities[j]!;
    if (!Number.isFinite(quantity)) continue;
    const takers = pairs.filter((pair) => pair.j === j);
    rows.push(
      `${sum(takers.map((pair) => [units[pair.i]!.size, y(pair)]))} - ${quantity} z_${j} <= 0`,
    );
  }
  if (stage.held !== undefined) {
    const usable = sum(pairs.map((pair) => [units[pair.i]!.usable[pair.j]!, y(pair)] as const));
    if (usable !== '') rows.push(`${usable} >= ${stage.held.usable}`);
    rows.push(
      `${sum(pairs.map((pair) => [units[pair.i]!.size, y(pair)]))} >= ${stage.held.served}`,
    );
    rows.push(`${sum(places.map((j) => [1, `z_${j}`]))} <= ${stage.held.lengths}`);
  }
  const binaries = [...pairs.map(y), ...places.map((j) => `z_${j}`)];
  const problem = [
    stage.sense,
    ` obj: ${objective}`,
    'Subject To',
    ...rows.map((row, place) => ` r${place}: ${row}`),
    'Binary',
    ...binaries.map((name) => ` ${name}`),
    'End',
    '',
  ].join('\n');
  const solution = highs.solve(problem, EXACT);
  if (solution.Status !== 'Optimal') throw new Error(`${solution.Status}:\n${problem}`);
  return units.map((_, i) => {
    const taken = pairs.find((pair) => pair.i === i && isOne(solution.Columns[y(pair)]));
    return taken?.j ?? null;
  });
}

function isOne(column: object | undefined): boolean {
  return column !== undefined && 'Primal' in column && Number(column.Primal) > 0.5;
}

export function figuresOf(
  units: readonly Unit[],
  lengths: Lengths,
  places: readonly (number | null)[],
): Optimum {
  const given = places.flatMap((j, i) => (j === null ? [] : [{ unit: units[i]!, j }]));
  return {
    usable: given.reduce((total, { unit, j }) => total + unit.usable[j]!, 0),
    served: given.reduce((total, { unit }) => total + unit.size, 0),
    lengths: new Set(given.map(({ j }) => j)).size,
    worstNm: Math.max(0, ...given.map(({ unit, j }) => unit.distanceNm[j]!)),
    totalNm: given.reduce((total, { unit, j }) => total + unit.size * lengths.nm[j]!, 0),
  };
}
