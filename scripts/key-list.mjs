/**
 * docs/keys.md: every key and what it does before anything is learned.
 * @param {readonly { meaning: string, label: string }[]} strip the key strip, in the order of the work
 * @param {Readonly<Record<string, string>>} meanings what each meaning is called
 * @returns {string}
 */
export function keyList(strip, meanings) {
  const rows = strip.map(({ meaning, label }) => `| ${label} | ${meanings[meaning]} |`);
  return `# The keys

Made by \`npm run docs:keys\` from the keys themselves: what each does before anything is learned. Every
one can be learned anew under Settings, a pedal's and a gamepad's too, and printed as a strip from there.

| keys | what they do |
|---|---|
${rows.join('\n')}
`;
}
