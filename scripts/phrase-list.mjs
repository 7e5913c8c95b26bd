/**
 * The list of everything that is heard, as Markdown, made from the phrases themselves.
 * @param {readonly import('../src/words/en/heard/phrase').PhraseGroup[]} groups
 * @returns {string}
 */
export function phraseList(groups) {
  return `${HEAD}${groups.map(section).join('\n')}`;
}

const HEAD = `# What is heard

Made by \`npm run docs:phrases\` from \`src/words/en/heard\`; not written by hand.

Where one phrase starts another, the longer wins. A count and the seat may be said in one breath
('five, rocker seated'); no other two are joined. Something near a phrase is missed, never guessed.
'Bottomed' is never taken for the seat.

`;

/** @param {import('../src/words/en/heard/phrase').PhraseGroup} group */
function section({ name, when, fixed, numbers }) {
  const rows = [
    ...fixed.map(({ said, written = [], commands }) =>
      row(said, commands, written.filter((text) => text !== said).join(', ')),
    ),
    ...numbers.map(({ shape, examples, commands }) => row(shape, commands, examples.join(', '))),
  ];
  return `## ${name}\n\n${sentence(when)}.\n\n| said | command | also written, or for example |\n|---|---|---|\n${rows.join('')}`;
}

/**
 * @param {string} said
 * @param {readonly string[]} commands
 * @param {string} more
 */
function row(said, commands, more) {
  return `| ${said} | ${commands.join(', ') || 'the app’s own talk or ear'} | ${more} |\n`;
}

/** @param {string} text */
function sentence(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
