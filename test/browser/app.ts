// The app open in a browser, watched: what it asks the network for, what it says on the console, what its policy forbids.

import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

export interface Watched {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Everything that should not have happened, in words; empty when all is well. */
  readonly complaints: () => readonly string[];
  readonly close: () => Promise<void>;
}

export interface OpenOptions extends BrowserContextOptions {
  /** As somebody who has never been here: with the tour. */
  readonly tour?: boolean;
  /** The room of the address, where it is one without the quilt. */
  readonly firstRoom?: 'kit';
}

/** Opens the app at an address and waits for the first picture. */
export async function openApp(browser: Browser, address: string, { tour = false, firstRoom, ...options }: OpenOptions = {}): Promise<Watched> {
  const complaints: string[] = [];
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true, ...options });
  const origin = new URL(address).origin;
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.origin !== origin && !['blob:', 'data:'].includes(url.protocol)) complaints.push(`asked for ${request.url()}`);
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  // A file picker cannot be answered here; without it the app saves among the downloads.
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    document.addEventListener('securitypolicyviolation', (event) => console.error(`policy ${event.violatedDirective} forbids ${event.blockedURI}`));
  });
  if (!tour) await skipTour(context);
  await page.goto(address);
  await (firstRoom === undefined ? firstPicture(page) : page.waitForSelector('.room.kit .slip'));
  return { context, page, complaints: () => complaints, close: () => context.close() };
}

/** Every page opened from now on is that of somebody who has been here before. */
export async function skipTour(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    // An empty page, before the app's, keeps nothing.
    if (location.protocol.startsWith('http')) localStorage.setItem('needlefall.tour', 'seen');
  });
}

/** Waits until stitched lines are drawn, and the faces and menus that come a moment later are there too. */
export async function firstPicture(page: Page): Promise<void> {
  await page.waitForSelector('.settled .layer.needle path', { state: 'attached' });
  await page.waitForSelector('button.plan-name');
  await page.evaluate(async () => {
    await document.fonts.ready;
    // Whatever the faces have moved is measured again within two frames.
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
  });
  await atRest(page);
}

/** Waits until the view rests and the quilt is drawn for it. */
export async function atRest(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const carrier = document.querySelector<HTMLElement>('.carrier');
    return carrier !== null && carrier.style.transform === '';
  });
}

export const ROOMS = ['Top', 'Kit', 'Audition', 'Check', 'Paper'] as const;
export type RoomName = (typeof ROOMS)[number];

/** Walks into a room by its name in the header. */
export async function walkTo(page: Page, room: RoomName): Promise<void> {
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: room }).click();
  await page.waitForSelector(`.rooms a[aria-current="page"]:text-is("${room}")`);
  await page.waitForSelector(room === 'Kit' || room === 'Audition' ? `.room.${room.toLowerCase()} .slip` : '.room:not(.kit, .audition) .slip');
  // There is no table in Kit.
  if (room !== 'Kit') await atRest(page);
}

/** In Audition, lays up to four sheets side by side: by a button under the stack or, on a small screen, behind one word. */
export async function showSideBySide(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'Lay side by side' });
  if (!(await button.isVisible())) await page.getByRole('button', { name: 'Sheets: all about them' }).click();
  await button.filter({ visible: true }).click();
  await page.waitForSelector('.side-by-side');
}

/** The top's extent on the screen, in CSS pixels, measured from what is drawn. */
export async function quiltBox(page: Page): Promise<{ readonly x: number; readonly y: number; readonly width: number; readonly height: number }> {
  return page.evaluate(() => {
    const boxes = [...document.querySelectorAll('.settled .layer.ground path')].map((path) => path.getBoundingClientRect());
    const left = Math.min(...boxes.map((box) => box.left));
    const top = Math.min(...boxes.map((box) => box.top));
    return { x: left, y: top, width: Math.max(...boxes.map((box) => box.right)) - left, height: Math.max(...boxes.map((box) => box.bottom)) - top };
  });
}

/** The table's extent on the screen, in CSS pixels. */
export async function tableBox(page: Page): Promise<{ readonly x: number; readonly y: number; readonly width: number; readonly height: number }> {
  return (await page.locator('.table').boundingBox())!;
}
