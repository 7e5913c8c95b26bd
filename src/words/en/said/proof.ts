import type { Proof } from '#valvetrain';
import type { SayingContext } from '../../context';
import { cardinal, sayWhole } from '../numbers';
import { isFull, sentence } from './pieces';

/** What to watch for while the crank moves, in as few words as will do. */
export function proofWords(proof: Proof, context: SayingContext): string {
  const full = isFull(context);
  switch (proof.kind) {
    case 'crossing':
      return full
        ? sentence(`watch ${ofCylinder(proof.crossing)} lifters cross`)
        : `Watch ${cardinal(proof.crossing)} cross.`;
    case 'watching': {
      const its = ofCylinder(proof.firing);
      return sentence(
        full
          ? `${its} intake opens, then shuts: its piston's next time up is the place`
          : `${its} intake shuts, then piston up`,
      );
    }
    case 'degree wheel':
      return wheelWords(proof, context);
    case 'exhaust starts to open':
      return sentence(
        `${full ? 'stop as ' : ''}${ofCylinder(proof.cylinder)} exhaust ${full ? 'just ' : ''}starts to open`,
      );
    case 'intake nearly shut':
      return sentence(
        full
          ? `stop when ${ofCylinder(proof.cylinder)} intake is nearly shut`
          : `${ofCylinder(proof.cylinder)} intake nearly shut`,
      );
    case 'timing dots together':
      return full ? 'Stop with the timing dots together.' : 'Dots together.';
    case 'cam dot at twelve':
      return full ? "Stop with the cam's dot at twelve." : 'Cam dot at twelve.';
    default: {
      const never: never = proof;
      return never;
    }
  }
}

function wheelWords(
  { pastDeg, firing, crossing }: Extract<Proof, { kind: 'degree wheel' }>,
  context: SayingContext,
): string {
  const deg = sayWhole(Math.round(Math.abs(pastDeg)), context.numbers);
  const side = pastDeg < 0 ? 'before' : 'past';
  const centre = isFull(context) ? 'firing top dead centre' : 'firing';
  const tdc =
    firing === null
      ? `where ${cardinal(crossing ?? 1)} crosses`
      : `${ofCylinder(firing)} ${centre}`;
  return isFull(context)
    ? sentence(`stop ${deg} degrees ${side} ${tdc}, by a degree wheel`)
    : sentence(`${deg} ${side} ${tdc}`);
}

function ofCylinder(cylinder: number): string {
  return `${cardinal(cylinder)}'s`;
}
