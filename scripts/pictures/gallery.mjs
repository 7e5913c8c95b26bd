import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes a page that shows every picture: a row a screen or state, its sizes and shops side by side.
 * @param {string} folder
 * @param {readonly { name: string, size: string, shop: string, file: string }[]} pictures
 */
export function writeGallery(folder, pictures) {
  const names = [...new Set(pictures.map(({ name }) => name))];
  const rows = names.map((name) => {
    const figures = pictures
      .filter((picture) => picture.name === name)
      .map(
        ({ size, shop, file }) =>
          `<figure><a href="${file}"><img src="${file}" alt="${name}, ${size}, ${shop} shop" loading="lazy"></a><figcaption>${size}, ${shop}</figcaption></figure>`,
      );
    return `<h2 id="${name}">${name}</h2><div>${figures.join('')}</div>`;
  });
  const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Turncaller: every screen</title>
<style>
body { margin: 2rem; background: #808080; font: 16px system-ui; }
nav, div { display: flex; flex-wrap: wrap; gap: 1rem; align-items: start; }
figure { margin: 0; } img { display: block; height: 22rem; width: auto; max-width: 44rem; object-fit: cover; object-position: top; }
a { color: #000; }
</style></head><body><h1>Every screen and state: ${names.length}, ${pictures.length} pictures</h1>
<nav>${names.map((name) => `<a href="#${name}">${name}</a>`).join(' ')}</nav>
${rows.join('\n')}
</body></html>
`;
  writeFileSync(join(folder, 'index.html'), page);
}
