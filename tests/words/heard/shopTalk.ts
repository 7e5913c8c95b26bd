import { readFileSync } from 'node:fs';
import wordListPath from 'word-list';

/** A small seeded generator (mulberry32): the same seed gives the same lines. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Ordinary talk about engines: {n} is a number, {part}, {tool} and {who} are filled in. */
const TALK: readonly string[] = [
  'pass me the {tool}',
  'pass me that {n} mil {tool} would you',
  'where did I put the {tool}',
  'that {part} is for the other bank',
  'give it {n} minutes and then check the {part}',
  'it was {n} thou last time we had the {part} off',
  'the {part} wants torquing to {n}',
  'set the {part} down over there',
  'I am going to turn the {part} over',
  'we had {n} of those {part}s in the drawer',
  'one of the {part}s is scored',
  'two of them came out fine',
  'too tight for my liking',
  'to be honest the {part} looks worn',
  'for what it is worth the {part} is fine',
  'that one is for {who}',
  'it bottomed out on the {part}',
  'the rocker bottomed',
  'the rocker is not seated yet',
  'is the rocker seated or not',
  'has it seated properly do you think',
  'the valve seated badly last time',
  'zero clearance there',
  'no lash at all on that {part}',
  'stop messing about with the {tool}',
  'hold on to the {part} a second',
  'hold this {tool} for me',
  'carry on with the {part} {who}',
  'half of these are junk',
  'half an inch {tool} please',
  'the {n} inch {tool}',
  'quarter inch drive {tool}',
  'three quarters of them are gone',
  'half past {n} we stop for tea',
  "it is nearly {n} o'clock {who}",
  "I will be back at {n} o'clock",
  'next week we do the {part}s',
  'the next valve job is {who}s',
  'skip lunch then',
  'where am I supposed to put the {part}',
  'what is left of the {part}',
  'take it back to the shop',
  'take it back and get the {n} thou one',
  'scratch that bit of rust off the {part}',
  'start this valve grinder over by the wall',
  'wrong cylinder head gasket {who}',
  'wrong valve spring in that box',
  'count it again tomorrow when you have had your tea',
  'count the {part}s would you',
  'count me in for {n}',
  'hands clear of the fan {who}',
  "crank's there on the bench by the door",
  'the crank is out of the other one',
  'how sure are you about the {part}',
  'read the summary on page {n}',
  'say again what he wanted for the {part}',
  'loosening the {part} now',
  'the intake is off and the exhaust is next',
  'exhaust manifold has {n} studs',
  'torqued down to {n} foot pounds',
  'bled down all over the floor',
  'go to cylinder head number {n}',
  'test rod is in the drawer with the {tool}',
  'one more cup of tea and then we will look',
  'another half hour should do it',
  'nothing to worry about',
  'a hair past the mark on the {part}',
  'just shy of a full turn I would say',
  'a full turn of the crank is what it says',
  'two turns of tape on that thread',
  'four and a half pounds for a {part} would you believe',
  'that is five or six too many',
  'between three and four I reckon',
  'six eight three the number on the {part}',
  'number {n} then number {n}',
  'ring {who} on {n} {n} {n}',
  'it is down to the {part} really',
  "it's down by the {part}",
  'ear protection please {who}',
  'shut the door it is cold',
  'start listening to me {who}',
  'lost zero gravity that spanner',
  'I won {n} pounds on the horses',
  'we ate at {n}',
  'tree fell on the van',
  'what a day',
  'right then',
  'that is a nice bit of work',
  'mind your fingers',
];
const PARTS =
  'rocker,valve,lifter,pushrod,stud,gasket,spring,cap,bearing,seal,pulley,manifold,head,plug,bolt,shim,washer,pump,sump'.split(
    ',',
  );
const TOOLS =
  'ratchet,spanner,socket,torque wrench,feeler gauge,rag,hammer,breaker bar,extension,light,magnet,scraper'.split(
    ',',
  );
const PEOPLE = 'the lad,the boss,the driver,your brother,the apprentice,the other fellow'.split(
  ',',
);
const NUMBERS =
  'one,two,three,four,five,six,seven,eight,nine,ten,eleven,twelve,fifteen,twenty,thirty five,4,5,12,45,100'.split(
    ',',
  );

/** Short words that are, or sound like, pieces of phrases: salads are made of these as well. */
const PIECES =
  'one,two,to,too,three,tree,four,for,five,six,seven,eight,ate,nine,ten,won,half,quarter,quarters,turn,turns,and,a,of,past,zero,lash,rocker,valve,seated,loose,it,down,up,back,take,that,more,another,hands,clear,crank,there,next,cylinder,position,count,again,skip,this,go,test,rod,say,where,am,I,how,sure,left,read,the,summary,hold,carry,on,stop,ear,shut,start,listening,nothing,hair,just,shy,bit,lost,over,wrong,intake,exhaust,oclock,4,5,1/2,12'.split(
    ',',
  );

const words = readFileSync(wordListPath, 'utf8').split('\n').filter(Boolean);

/** How many words the salads are drawn from. */
export const wordCount: number = words.length;

/** A line of ordinary talk, or of words thrown together. */
export function talkLine(random: () => number): string {
  const pick = (from: readonly string[]) => from[Math.floor(random() * from.length)] ?? '';
  const kind = random();
  if (kind < 0.4) {
    return pick(TALK)
      .replace(/\{n\}/g, () => pick(NUMBERS))
      .replace(/\{part\}/g, () => pick(PARTS))
      .replace(/\{tool\}/g, () => pick(TOOLS))
      .replace(/\{who\}/g, () => pick(PEOPLE));
  }
  const length = 1 + Math.floor(random() * 7);
  const share = kind < 0.7 ? 0 : 0.8;
  return Array.from({ length }, () => (random() < share ? pick(PIECES) : pick(words))).join(' ');
}
