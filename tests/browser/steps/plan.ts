import type { Page } from 'playwright-core';

/** A plan of parts as the builder types it, in millimetres. */
export interface TypedPlan {
  /** Ticks by their words, each with the fields it opens. */
  readonly parts: readonly {
    readonly tick: string;
    readonly fields: Readonly<Record<string, string>>;
  }[];
  /** The other fields by name. */
  readonly fields: Readonly<Record<string, string>>;
  /** The lifter kind by its words. */
  readonly lifter: string;
  /** How test pushrods come, by its words. */
  readonly step: string;
}

/** New cam, deck milled, another gasket, shims: with rockers of 1.7. */
export const pumpPlan: TypedPlan = {
  parts: [
    {
      tick: 'The cam: another base circle',
      fields: {
        'part.base circle.was': '36.50',
        'part.base circle.willBe': '35.70',
        'part.base circle.give': '0.04',
      },
    },
    { tick: 'The block’s deck is milled', fields: { 'part.deck milled.amount': '0.25' } },
    {
      tick: 'Another head gasket',
      fields: {
        'part.gasket.was': '1.02',
        'part.gasket.willBe': '1.37',
        'part.gasket.give': '0.05',
      },
    },
    {
      tick: 'Shims or other stands under the rockers',
      fields: { 'part.pivot shim.amount': '0.5' },
    },
  ],
  fields: { ratio: '1.7', present: '205.4', preload: '2.0', preloadGive: '0.2' },
  lifter: 'Long-travel hydraulic roller',
  step: 'every half millimetre',
};

/** Types a plan into an open 'before buying' screen, in millimetres. */
export async function typePlan(page: Page, plan: TypedPlan): Promise<void> {
  await page.getByRole('heading', { name: 'Before buying' }).waitFor();
  await page.getByLabel('Millimetres').check();
  for (const { tick, fields } of plan.parts) {
    await page.getByLabel(tick).check();
    await fill(page, fields);
  }
  await fill(page, plan.fields);
  await page.getByLabel('Lifter kind to be used').selectOption({ label: plan.lifter });
  await page.getByLabel(plan.step).check();
}

async function fill(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [field, text] of Object.entries(fields)) {
    await page.locator(`[data-field="${field}"] input`).fill(text);
  }
}
