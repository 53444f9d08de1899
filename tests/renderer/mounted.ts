import { flushSync, mount, tick, unmount, type Component } from 'svelte';
import { vi } from 'vitest';
import type { PageHost } from '../../core/contract/host.ts';
import type { PracticeFile } from '../../core/practice/practice.ts';
import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { Folder } from '../../renderer/state/folder.svelte.ts';

/** Components in a test's window: to be imported before them, since Node is given the server's. */
vi.mock('svelte', () => vi.importActual('../../node_modules/svelte/src/index-client.js'));

// The test's window lays nothing out, so that nothing can be scrolled to.
Element.prototype.scrollIntoView = () => undefined;

let shown: ReturnType<typeof mount>[] = [];

/** Puts a component alone into the window. */
export function show(component: unknown, props: object) {
  const target = document.body;
  shown.push(mount(component as Component<object>, { target, props }));
  flushSync();
}

export async function clear() {
  await Promise.all(shown.map((one) => unmount(one)));
  shown = [];
  document.body.replaceChildren();
}

/** Until effects ran, and what they ask for in the next turn was done. */
export async function settled() {
  for (let turn = 0; turn < 4; turn += 1) await tick();
  flushSync();
}

export function one<T extends Element = HTMLInputElement>(selector: string): T {
  const found = document.querySelector<T>(selector);
  if (!found) throw new Error(`Nothing is shown that fits ${selector}`);
  return found;
}

export const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
export const texts = (selector: string) => all(selector).map((each) => said(each));
export const said = (element: Element) => element.textContent.replace(/\s+/g, ' ').trim();
export const field = (path: string) => one(`[data-field="${path}"]`);
export const focused = () => document.activeElement?.getAttribute('data-field');

/** The button with this name. */
export function button(name: string): HTMLButtonElement {
  const found = all('button').find((each) => said(each) === name);
  if (!found) throw new Error(`No button ${name}`);
  return found as HTMLButtonElement;
}

export async function click(element: HTMLElement) {
  element.click();
  await settled();
}

/** Types over what stands in a field; the hand stays in it. */
export async function type(path: string, text: string) {
  field(path).focus();
  field(path).value = text;
  field(path).dispatchEvent(new Event('input', { bubbles: true }));
  await settled();
}

export async function leave() {
  (document.activeElement as HTMLElement).blur();
  await settled();
}

/** Presses a key where the focus is; gives whether the browser is left to do its own with it. */
export async function press(key: string, held: KeyboardEventInit = {}): Promise<boolean> {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...held });
  const left = document.activeElement?.dispatchEvent(event) ?? false;
  await settled();
  return left;
}

/** Pastes where the focus is; gives whether the browser is left to do it. */
export async function paste(text: string): Promise<boolean> {
  const event = new Event('paste', { bubbles: true, cancelable: true });
  Object.assign(event, { clipboardData: { getData: () => text } });
  const left = document.activeElement?.dispatchEvent(event) ?? false;
  await settled();
  return left;
}

/** Copies or cuts where the focus is; gives what goes to the clipboard, nothing where it is left. */
export async function copy(deed: 'copy' | 'cut' = 'copy'): Promise<string> {
  let text = '';
  const event = new Event(deed, { bubbles: true, cancelable: true });
  const setData = (_: string, copied: string) => (text = copied);
  Object.assign(event, { clipboardData: { setData } });
  document.activeElement?.dispatchEvent(event);
  await settled();
  return text;
}

const deaf = {
  send: () => new Promise(() => undefined),
  onEvent: () => () => undefined,
} as unknown as PageHost;

/** A well that lies open; nothing of it is ever saved. */
export function openFolder(
  parts: Partial<WellRecord>,
  readOnly = false,
  own?: () => readonly PracticeFile[],
  guidelines?: () => readonly GuidelineFile[],
): Folder {
  const record: WellRecord = { schemaVersion: 1, ...parts };
  const changedAt = '2025-03-09T07:05:00Z';
  const working = { base: { record, typed: {} }, moves: [], edit: 0, unrevised: false, changedAt };
  const stored = { id: 'w', revision: 1, changedAt, record, document: record, troubles: [] };
  return new Folder(deaf, { ...stored, working }, readOnly, own, guidelines);
}
