import { expect, test } from 'vitest';
import { stageOf } from '#counting';
import { isPhrase } from '../words/heard/phraseOrNot';
import { seeded, talkLine } from '../words/heard/shopTalk';
import { openRig, type Rig } from './rig';
import { final, interim, speech } from './scriptedRecogniser';

const LINES = 1000;
const SEED = 91_625;

/** Says a line as a service gives it: word by word, some words longer than a count needs to stand. */
function talks({ recogniser }: Rig, line: string, index: number, random: () => number): void {
  const words = line.split(' ');
  recogniser.plays([1500, speech]);
  for (let said = 1; said <= words.length; said += 1) {
    const ms = random() < 0.15 ? 450 : 180;
    recogniser.plays([ms, interim(index, words.slice(0, said).join(' '))]);
  }
  recogniser.plays([350, final(index, line)]);
}

test(`${LINES} lines of talk, word by word through the ear: the count stands as it stood`, async () => {
  const random = seeded(SEED);
  let rig = await openRig('counting');
  const moved: string[] = [];
  const ghosts = { withdrawn: 0, phrases: 0 };
  for (let i = 0; i < LINES; i += 1) {
    const line = talkLine(random);
    const before = rig.count48();
    talks(rig, line, i, random);
    ghosts.withdrawn += rig.captions.filter(({ kind }) => kind === 'withdrawn').length;
    rig.captions.length = 0;
    const stands = stageOf(rig.bench.state()) === 'counting' && rig.count48() === before;
    if (isPhrase(line)) ghosts.phrases += 1;
    else if (!stands) moved.push(line);
    if (!stands || rig.ear.view().state !== 'open') rig = await openRig('counting');
  }
  console.info(
    `seed ${SEED}: ${LINES} lines word by word, ${ghosts.phrases} of them phrases; ` +
      `${ghosts.withdrawn} counts taken from the beginning of a line and withdrawn at its end, ` +
      `${moved.length} left standing`,
  );
  expect(moved).toEqual([]);
  expect(ghosts.withdrawn).toBeGreaterThan(0);
});
