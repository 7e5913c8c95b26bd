import { describe, expect, test } from 'vitest';
import {
  type EndpointEvent,
  endpoint,
  endpointStart,
  LONGEST_FRAMES,
} from '../../../src/hearing/offline/endpointer';

const ROOM_DB = -60;

type Held = readonly [frames: number, db: number];

/** What comes of levels, each held for so many frames, in a silent room. */
const eventsOf = (...held: readonly Held[]) => eventsIn(-100, held);

function eventsIn(roomDb: number, held: readonly Held[]): EndpointEvent[] {
  let state = endpointStart;
  const events: EndpointEvent[] = [];
  for (const [frames, db] of held) {
    for (let i = 0; i < frames; i += 1) {
      const next = endpoint(state, db, roomDb);
      state = next.state;
      if (next.event) events.push(next.event);
    }
  }
  return events;
}

describe('the endpointer', () => {
  test('a word is cut out with a little before and after it', () => {
    const events = eventsOf([200, ROOM_DB], [40, -30], [60, ROOM_DB]);
    expect(events.map(({ type }) => type)).toEqual(['began', 'pausing', 'ended']);
    const ended = events.at(-1);
    if (ended?.type !== 'ended') throw new Error('not ended');
    expect(ended.stretch.from).toBeGreaterThanOrEqual(180);
    expect(ended.stretch.from).toBeLessThan(200);
    expect(ended.stretch.to).toBeGreaterThan(240);
    expect(ended.stretch.to).toBeLessThan(256);
  });

  test('a pause within a phrase does not end it', () => {
    const events = eventsOf([200, ROOM_DB], [30, -30], [15, ROOM_DB], [30, -30], [60, ROOM_DB]);
    expect(events.filter(({ type }) => type === 'ended')).toHaveLength(1);
  });

  test('what is shorter than a word, and a steady room, are nothing', () => {
    expect(eventsOf([200, ROOM_DB], [5, -10], [60, ROOM_DB])).toEqual([]);
    expect(eventsOf([3000, -25])).toEqual([]);
  });

  test('what goes on for longer than any phrase is told once, and never as ended', () => {
    const events = eventsOf([200, ROOM_DB], [LONGEST_FRAMES * 4, -25], [200, ROOM_DB]);
    expect(events.map(({ type }) => type)).toEqual(['began', 'too long']);
  });

  test('after a room that became louder for good, words are found again', () => {
    const events = eventsOf([200, ROOM_DB], [1200, -40], [40, -15], [60, -40]);
    expect(events.at(-1)).toMatchObject({ type: 'ended' });
    expect(events.filter(({ type }) => type === 'ended')).toHaveLength(1);
  });

  test('what the denoiser lets through after a word does not keep it open', () => {
    const held: readonly Held[] = [
      [200, -70],
      [40, -20],
      [60, -46],
      [40, -70],
    ];
    const lengths = [-100, -42].map((roomDb) => {
      const ended = eventsIn(roomDb, held).find(({ type }) => type === 'ended');
      if (ended?.type !== 'ended') throw new Error('not ended');
      return ended.stretch.to - ended.stretch.from;
    });
    expect(lengths[0]).toBeGreaterThan(100);
    expect(lengths[1]).toBeLessThan(70);
  });

  test('digital silence is no louder room than any', () => {
    expect(eventsOf([300, -100], [200, -72], [300, -100])).toEqual([]);
  });

  test('what it keeps does not grow with the noise it hears', () => {
    let state = endpointStart;
    for (let i = 0; i < 30_000; i += 1) state = endpoint(state, -40 - (i % 17), -100).state;
    expect(state.recent.length).toBeLessThanOrEqual(150);
    expect(state.few.length).toBeLessThanOrEqual(5);
  });
});
