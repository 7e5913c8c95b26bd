/** To a tenth: no degree wheel shows more. */
function deg(value: number): string {
  return `${Math.round(value * 10) / 10}°`;
}

/** Words of a reading taken where its valve was not well on base circle, English. */
export const offBaseWords = {
  off: (degrees: number) => `counted ${deg(degrees)} off base circle: count it again`,
  near: (marginDeg: number, wantedDeg: number) =>
    `counted only ${deg(marginDeg)} off its ramp, ${deg(wantedDeg)} wanted: count it again`,
};
