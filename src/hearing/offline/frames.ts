/** Cuts a stream into frames of one length; what is left over waits for more. */
export function framesOf(length: number): (samples: Float32Array) => readonly Float32Array[] {
  let kept = new Float32Array(0);
  return (samples) => {
    const all = new Float32Array(kept.length + samples.length);
    all.set(kept);
    all.set(samples, kept.length);
    const whole = Math.floor(all.length / length);
    kept = all.slice(whole * length);
    return Array.from({ length: whole }, (_, i) => all.slice(i * length, (i + 1) * length));
  };
}
