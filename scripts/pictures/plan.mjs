/** @typedef {import('playwright-core').Page} Page */

/** Ticks of the pictured plan: a new cam, the deck milled, another gasket, shims under the rockers. */
const ticks = [
  'The cam: another base circle',
  'The block’s deck is milled',
  'Another head gasket',
  'Shims or other stands under the rockers',
];

/** @type {readonly (readonly [field: string, text: string])[]} */
const figures = [
  ['part.base circle.was', '36.50'],
  ['part.base circle.willBe', '35.70'],
  ['part.base circle.give', '0.04'],
  ['part.deck milled.amount', '0.25'],
  ['part.gasket.was', '1.02'],
  ['part.gasket.willBe', '1.37'],
  ['part.gasket.give', '0.05'],
  ['part.pivot shim.amount', '0.5'],
  ['ratio', '1.7'],
  ['present', '205.4'],
  ['preload', '2.0'],
  ['preloadGive', '0.2'],
];

/**
 * Types a plan into the open 'before buying' screen, in millimetres.
 * @param {Page} page
 */
export async function typePlan(page) {
  await page.getByLabel('Millimetres').check();
  for (const tick of ticks) await page.getByLabel(tick).check();
  for (const [field, text] of figures) {
    await page.locator(`[data-field="${field}"] input`).fill(text);
  }
  await page
    .getByLabel('Lifter kind to be used')
    .selectOption({ label: 'Long-travel hydraulic roller' });
  await page.getByLabel('every half millimetre').check();
}
