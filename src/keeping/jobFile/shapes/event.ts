import * as z from 'zod/mini';
import { EVENT_VERSION, MOST_NOTED } from '#counting';
import {
  count48,
  cylinder,
  listOf,
  numberFrom,
  pushrodLength,
  seq,
  text,
  valveId,
  wallClock,
} from './basics';
import { setUpShape } from './setUp';

const envelope = {
  jobId: text(100).check(z.minLength(1)),
  seq,
  v: z.custom<number>((value) => value === EVENT_VERSION),
  at: wallClock,
  by: z.enum(['voice', 'key', 'pedal', 'touch', 'app']),
  utterance: z.exactOptional(text(200)),
};

/** An event of one type: the envelope and what that type adds. */
const event = <T extends string, S extends z.core.$ZodShape>(type: T, added: S) =>
  z.strictObject({ ...envelope, type: z.literal(type), ...added });

const crankPosition = z.strictObject({
  angleDeg: z.nullable(numberFrom(0, 720)),
  cylinder: z.nullable(cylinder),
  valves: listOf(valveId, 24),
});

const countedBy = z.enum(['number', 'press', 'turns', 'position', 'clock']);

const question = z.discriminatedUnion('about', [
  z.strictObject({
    about: z.literal('count'),
    why: z.enum(['goes back', 'jumps', 'position', 'clock', 'began before the seat', 'grew']),
    counted48: count48,
    options: listOf(count48, 10),
    by: countedBy,
  }),
  z.strictObject({ about: z.literal('zero'), counted48: count48 }),
  z.strictObject({ about: z.literal('seat'), counted48: count48, loose: z.boolean() }),
]);

const landing = z.strictObject({
  told: z.enum(['nothing', 'a bit past', 'half', 'just shy', 'clock', 'tapped', 'in the count']),
  past48: count48,
});

/** The whole shape of every event of the newest version. */
export const eventShape = z.discriminatedUnion('type', [
  event('jobOpened', {
    setUp: setUpShape,
    app: z.strictObject({ version: text(100), commit: text(100) }),
  }),
  event('setupChanged', { setUp: setUpShape, appliesTo: z.enum(['all', 'from here']) }),
  event('roundStarted', { number: seq, purpose: z.enum(['measure', 'final check']) }),
  event('pushrodFitted', {
    length: z.nullable(pushrodLength),
    valves: z.exactOptional(listOf(valveId, 24)),
  }),
  event('cautionsHeard', {}),
  event('handsClear', { position: crankPosition }),
  event('positionReached', { position: crankPosition, valve: valveId }),
  event('overshot', { position: crankPosition, valve: valveId }),
  event('valveChosen', {
    valve: z.nullable(valveId),
    direction: z.enum(['on', 'off']),
    heading: z.nullable(crankPosition),
  }),
  event('valveNamed', { reading: seq, valve: valveId }),
  event('zeroTouched', {}),
  event('counted', { to48: count48, how: countedBy }),
  event('doubted', {}),
  event('askedBack', { question }),
  event('seated', { loose: z.boolean() }),
  event('landed', { answer: landing }),
  event('restarted', { atZero: z.boolean() }),
  event('repeatStarted', { valve: z.nullable(valveId) }),
  event('readingMoved', { reading: z.union([seq, z.literal('open')]), to: valveId }),
  event('dialRead', { valve: valveId, travelMm: numberFrom(0, 25) }),
  event('valveLeft', {
    valve: z.nullable(valveId),
    skipped: z.boolean(),
    next: z.nullable(valveId),
  }),
  event('torqued', { reading: seq }),
  event('bledDown', {}),
  event('held', {}),
  event('resumed', {}),
  event('takenBack', { undoes: seq }),
  event('noted', {
    notes: z.strictObject({
      builder: text(MOST_NOTED.name),
      customer: text(MOST_NOTED.name),
      remark: text(MOST_NOTED.remark),
      tags: listOf(text(MOST_NOTED.tag), MOST_NOTED.tags),
    }),
  }),
  event('jobDiscarded', {}),
  event('jobRestored', {}),
]);
