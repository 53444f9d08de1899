// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from 'vitest';
import { button, clear, click, one, openFolder, said, settled, show } from '../../mounted.ts';
import ScreenBar from '../../../../renderer/sheet/hands/ScreenBar.svelte';
import { ScreenTool } from '../../../../renderer/sheet/hands/screenTool.svelte.ts';

const components = [
  { kind: 'sump', length: 2 },
  { kind: 'plain', length: 3, count: 9 },
] as const;
let folder: ReturnType<typeof openFolder>;
let tool: ScreenTool;
const deaf = { hold: () => undefined, letGo: () => undefined };

function open(count = 1) {
  const string = { components: [...components], set: { by: 'bottom' as const, depth: 29 } };
  folder = openFolder({ strings: Array.from({ length: count }, () => ({ ...string })) });
  tool = new ScreenTool(folder, deaf);
  tool.toggle();
}
beforeEach(async () => {
  await clear();
  open();
});

const kinds = (string = 0) =>
  folder.desk.record.strings?.[string]?.components.map(({ kind }) => kind);

describe('a screen that is drawn', () => {
  it('is shown while it is drawn and is one step when it is dropped', () => {
    tool.begin(folder.model.strings[0]!, 20);
    tool.draw(21.3);
    expect(tool.figures).toBe('screen 20.00 m–21.30 m, 1.30 m');
    expect(kinds()).toContain('screen');
    expect(folder.canUndo).toBe(false);
    tool.draw(21.5);
    tool.drop();
    expect(tool.said).toMatch(/^Screen from 20\.00 m to 21\.50 m was put/);
    const at = kinds()!.indexOf('screen');
    const made = folder.desk.record.strings![0]!.components.filter(({ kind }) => kind === 'screen');
    // The screen crosses the joint at 21 m.
    expect(made.map(({ length }) => length)).toEqual([0.5, 1]);
    expect(folder.selected).toBe(`strings[0].components[${at}]`);
    folder.undo();
    expect(folder.canUndo).toBe(false);
    expect(kinds()).toEqual(['sump', 'plain']);
  });

  it('is nothing when it is given back', () => {
    tool.begin(folder.model.strings[0]!, 20);
    tool.draw(23);
    tool.cancel();
    expect([kinds(), folder.canUndo, tool.stroke]).toEqual([['sump', 'plain'], false, undefined]);
  });

  it('says why it is none over a sump, and changes nothing', () => {
    tool.begin(folder.model.strings[0]!, 20);
    tool.draw(28.5);
    expect(tool.figures).toMatch(/another piece \(sump/);
    tool.drop();
    expect(tool.said).toMatch(/only plain pipe becomes screen/);
    expect(folder.canUndo).toBe(false);
  });
});

describe('a screen that is typed', () => {
  async function type(name: string, text: string) {
    const label = [...document.querySelectorAll('label')].find((each) => said(each) === name)!;
    const input = label.querySelector('input')!;
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
  }

  it('is put in by its depths, with a decimal point or comma', async () => {
    show(ScreenBar, { tool });
    await type('From (m)', '8,5');
    await type('To (m)', '9.5');
    await click(button('Put screen in'));
    expect(kinds()).toContain('screen');
    expect(said(one('[role=status]'))).toMatch(/^Screen from 8\.50 m to 9\.50 m was put/);
  });

  it('asks for both depths where one is missing or cannot be read', async () => {
    show(ScreenBar, { tool });
    await type('From (m)', 'x');
    await click(button('Put screen in'));
    expect(said(one('[role=status]'))).toBe('Both depths are needed, as in 12.5.');
    expect(folder.canUndo).toBe(false);
  });

  it('goes to the string that is chosen where there are several', async () => {
    open(2);
    show(ScreenBar, { tool });
    one<HTMLSelectElement>('select').value = '0';
    one('select').dispatchEvent(new Event('change', { bubbles: true }));
    await type('From (m)', '8.5');
    await type('To (m)', '9.5');
    await click(button('Put screen in'));
    expect([kinds(0)!.includes('screen'), kinds(1)!.includes('screen')]).toEqual([true, false]);
  });
});
