// Everything the app can look like at rest: each room with what can be open in it. Looked over by axe-core and pictured at once.

import type { Page } from 'playwright-core';
import { atRest, quiltBox, showSideBySide, walkTo } from './app.ts';
import { giveFile, givePlan } from './files.ts';
import { fixturePlan, fourSheets, plainPlan } from './fixture-plan.ts';
import { planMenu, saved } from './plans.ts';

export interface State {
  readonly name: string;
  /** From the state before it. */
  readonly go: (page: Page) => Promise<unknown>;
  /** Not on a screen too narrow to move templates on. */
  readonly wide?: true;
}

const escape = (page: Page) => page.keyboard.press('Escape');
const thing = (page: Page, name: string) => page.getByRole('option', { name: new RegExp(`^${name}`) });

/** In an order in which each can be gone to from the one before; the first from the app as it opens, with the example. */
export const STATES: readonly State[] = [
  { name: 'top', go: atRest },
  {
    name: 'top-area',
    go: async (page) => {
      const quilt = await quiltBox(page);
      await page.getByRole('switch', { name: 'Templates' }).check({ force: true });
      await page.mouse.dblclick(quilt.x + quilt.width * 0.5, quilt.y + quilt.height * 0.5);
      await atRest(page);
    },
  },
  { name: 'paper', go: (page) => walkTo(page, 'Paper') },
  {
    name: 'check-nothing',
    go: async (page) => {
      await walkTo(page, 'Check');
      await givePlan(page, plainPlan());
      await page.getByText(/^Nothing to mend/).first().waitFor();
    },
  },
  {
    name: 'check',
    go: async (page) => {
      await givePlan(page, fixturePlan());
      await page.locator('.finding-press').first().waitFor();
      await atRest(page);
    },
  },
  {
    name: 'check-picked',
    go: async (page) => {
      await page.locator('.finding-press').first().click();
      await atRest(page);
    },
  },
  { name: 'check-left', go: (page) => page.getByRole('button', { name: /^Leave it so/ }).first().click() },
  {
    name: 'plan-menu',
    go: async (page) => {
      await escape(page);
      await saved(page);
      await page.getByRole('button', { name: /^Plan:/ }).click();
      await page.getByRole('menu').waitFor();
    },
  },
  {
    name: 'plans',
    go: async (page) => {
      await escape(page);
      await planMenu(page, 'Your plans…');
      await page.getByRole('button', { name: /^(Low water|Lay Low water)/ }).first().waitFor();
    },
  },
  {
    name: 'versions',
    go: async (page) => {
      await escape(page);
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await planMenu(page, 'Versions…');
      await page.getByRole('dialog').getByRole('heading').first().waitFor();
    },
  },
  {
    name: 'name-plan',
    go: async (page) => {
      await escape(page);
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await planMenu(page, 'Name this plan…');
      await page.getByRole('heading', { name: 'Name this plan' }).waitFor();
    },
  },
  {
    name: 'settings',
    go: async (page) => {
      await escape(page);
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await page.getByRole('button', { name: 'Settings' }).click();
      await page.getByRole('menu').waitFor();
    },
  },
  {
    name: 'not-opened',
    go: async (page) => {
      await escape(page);
      await giveFile(page, 'odd.json', '{}');
      await page.getByRole('alertdialog').waitFor();
    },
  },
  {
    name: 'kit',
    go: async (page) => {
      await escape(page);
      await page.getByRole('alertdialog').waitFor({ state: 'detached' });
      await walkTo(page, 'Kit');
      await thing(page, 'Two-inch humps').click();
    },
  },
  { name: 'kit-foot', go: (page) => thing(page, 'Open foot').click() },
  ...(['Thread', 'Batting', 'Stitch'] as const).map((what): State => ({ name: `kit-${what.toLowerCase()}`, go: (page) => page.getByRole('button', { name: new RegExp(`^${what}`) }).click() })),
  {
    name: 'kit-foot-test',
    go: async (page) => {
      await thing(page, 'Open foot').click();
      await page.getByRole('button', { name: 'Measure it by sewing' }).click();
      await page.getByRole('heading', { name: /^Measure Open foot/ }).waitFor();
    },
  },
  {
    name: 'kit-new',
    go: async (page) => {
      await page.getByRole('button', { name: 'Leave it' }).click();
      await page.getByRole('button', { name: 'Add a template' }).click();
      await page.getByRole('region', { name: 'A new template', exact: true }).waitFor();
    },
  },
  {
    name: 'kit-etchings',
    go: async (page) => {
      await page.getByRole('button', { name: 'Back to the kit' }).click();
      await thing(page, 'Leaf 8').click();
      await page.getByRole('button', { name: 'Etch or change' }).click();
      await page.getByRole('button', { name: /^cross at the centre/ }).click();
    },
  },
  {
    name: 'audition',
    go: async (page) => {
      await walkTo(page, 'Audition');
      await givePlan(page, fourSheets());
      await page.getByRole('row', { name: /^Petal,/ }).waitFor();
      await atRest(page);
    },
  },
  {
    name: 'audition-picked',
    go: async (page) => {
      await page.getByRole('row', { name: /^Petal,/ }).click();
      await page.getByRole('heading', { name: 'Petal', exact: true }).waitFor();
    },
  },
  {
    name: 'audition-marks',
    go: async (page) => {
      await page.getByRole('button', { name: 'Show the marks' }).click();
      await page.locator('.marked-picture').scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'audition-echo',
    go: async (page) => {
      await page.getByRole('button', { name: /^More: pass/ }).first().click();
      await page.getByRole('menuitem', { name: 'Echo it' }).click();
      await page.locator('.offers[aria-busy="false"] .offer').first().waitFor();
    },
  },
  {
    name: 'audition-word',
    go: async (page) => {
      await page.getByRole('button', { name: 'Leave it as it was' }).click();
      await page.getByRole('button', { name: /^Where it is put:/ }).first().click();
      await page.getByRole('menu').waitFor();
    },
  },
  {
    name: 'audition-form',
    go: async (page) => {
      await escape(page);
      await page.getByRole('button', { name: /^How far from it:/ }).first().click();
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'audition-measure',
    wide: true,
    go: async (page) => {
      await escape(page);
      await page.getByRole('button', { name: 'Measure', exact: true }).click();
      await page.getByLabel('From', { exact: true }).selectOption({ label: 'centre' });
      await page.getByLabel('To', { exact: true }).selectOption({ label: 'right edge' });
      await page.locator('.tape-tag').waitFor();
    },
  },
  {
    name: 'audition-beside-4',
    go: async (page) => {
      const away = page.getByRole('button', { name: 'Put the tape away' });
      await ((await away.isVisible()) ? away.click() : escape(page));
      await showSideBySide(page);
    },
  },
  {
    name: 'audition-beside-2',
    go: async (page) => {
      for (let more = 0; more < 2; more++) await page.getByRole('button', { name: /^Lift off: sheet/ }).last().click();
    },
  },
  {
    name: 'audition-empty',
    go: async (page) => {
      await page.getByRole('button', { name: 'Lay one alone' }).filter({ visible: true }).first().click();
      await givePlan(page, { ...plainPlan(), name: 'Nothing yet', sheets: {} });
      await page.getByRole('heading', { name: 'No sheet yet' }).waitFor();
      await atRest(page);
    },
  },
  { name: 'audition-pencil', go: (page) => page.getByRole('button', { name: 'Draw a line', exact: true }).click() },
];

export const SIZES = [
  { size: '1440', viewport: { width: 1440, height: 900 }, hasTouch: false },
  { size: 'tablet', viewport: { width: 1180, height: 820 }, hasTouch: true },
  { size: 'phone', viewport: { width: 400, height: 860 }, hasTouch: true },
] as const;

export const THEMES = ['light', 'dark'] as const;

/** The states that a screen of this width can show. */
export function statesAt(width: number): readonly State[] {
  return STATES.filter(({ wide }) => !wide || width > 760);
}
