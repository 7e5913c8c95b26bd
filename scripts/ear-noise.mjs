// Noise for measuring the ear, made from a seed: pink, a shop, and clicks and ratchets alone.

/** Numbers from 0 to 1, the same for the same seed (mulberry32). @param {number} seed */
export function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** @typedef {(length: number, rate: number, chance: () => number) => Float32Array} Noise */

/** @type {Noise} pink, by P. Kellet's filter */
export function pink(length, _rate, chance) {
  let [b0, b1, b2] = [0, 0, 0];
  return Float32Array.from({ length }, () => {
    const white = chance() * 2 - 1;
    b0 = 0.99765 * b0 + white * 0.099046;
    b1 = 0.963 * b1 + white * 0.2965164;
    b2 = 0.57 * b2 + white * 1.0526913;
    return (b0 + b1 + b2 + white * 0.1848) * 0.1;
  });
}

/**
 * Adds a struck thing that rings out at a few pitches.
 * @param {Float32Array} to @param {number} at @param {number} rate @param {() => number} chance
 * @param {{ size: number, ringS: number }} how
 */
function strike(to, at, rate, chance, { size, ringS }) {
  const pitches = Array.from({ length: 4 }, () => 400 + chance() * 5000);
  const count = Math.min(to.length - at, Math.round(ringS * 5 * rate));
  for (let i = 0; i < count; i += 1) {
    const t = i / rate;
    const tone = pitches.reduce((sum, hz) => sum + Math.sin(2 * Math.PI * hz * t), 0) / 4;
    const hiss = (chance() * 2 - 1) * Math.exp(-t / 0.004);
    to[at + i] = (to[at + i] ?? 0) + size * (tone * Math.exp(-t / ringS) + hiss);
  }
}

/** @type {Noise} ratchets, sockets on nuts, tools laid down; quiet between */
export function clicks(length, rate, chance) {
  const made = pink(length, rate, chance).map((sample) => sample * 0.01);
  for (let at = 0; at < length; ) {
    if (chance() < 0.6) {
      const count = 4 + Math.floor(chance() * 14);
      const apart = 0.025 + chance() * 0.08;
      for (let i = 0; i < count; i += 1) {
        const when = at + Math.round(i * apart * rate * (0.9 + chance() * 0.2));
        if (when < length) strike(made, when, rate, chance, { size: 0.15, ringS: 0.004 });
      }
      at += Math.round(count * apart * rate);
    } else {
      strike(made, at, rate, chance, { size: 0.1 + chance() * 0.3, ringS: 0.01 + chance() * 0.08 });
    }
    at += Math.round((0.2 + chance() * 1.2) * rate);
  }
  return made;
}

/** @type {Noise} a shop: a steady bed, mains hum, a compressor's beat, air let off, things struck */
export function shop(length, rate, chance) {
  const made = pink(length, rate, chance);
  for (let i = 0; i < length; i += 1) {
    const t = i / rate;
    const hum = Math.sin(2 * Math.PI * 100 * t) + 0.5 * Math.sin(2 * Math.PI * 300 * t);
    const beat = 0.6 + 0.4 * Math.sin(2 * Math.PI * 11 * t);
    made[i] = (made[i] ?? 0) * beat + hum * 0.03;
  }
  for (let at = 0; at < length; at += Math.round((0.8 + chance() * 3.2) * rate)) {
    const kind = chance();
    if (kind < 0.25) {
      const count = Math.min(length - at, Math.round((0.1 + chance() * 0.7) * rate));
      for (let i = 0; i < count; i += 1)
        made[at + i] = (made[at + i] ?? 0) + (chance() - 0.5) * 0.3;
    } else {
      strike(made, at, rate, chance, {
        size: 0.1 + chance() * 0.2,
        ringS: 0.005 + chance() * 0.06,
      });
    }
  }
  return made;
}
