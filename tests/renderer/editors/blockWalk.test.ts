// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { handTo, nextStop } from '../../../renderer/editors/blockWalk.ts';

const panel = document.createElement('div');
document.body.append(panel);
afterEach(() => panel.replaceChildren());

function lay() {
  panel.innerHTML = `
    <div data-block id="form"><input data-field="a"><input data-field="b"></div>
    <section data-block id="table">
      <table><tbody><tr class="waiting">
        <td><input data-field="from" value="0"></td><td><input data-field="to" value=""></td>
      </tr></tbody></table>
      <div data-block id="deed"><button data-stop>make</button></div>
    </section>
    <div data-block id="empty"><button>add another</button></div>
    <section data-block id="filled">
      <table><tbody>
        <tr><td><input data-field="x" value=""></td></tr>
        <tr class="waiting"><td><input data-field="y" value=""></td></tr>
      </tbody></table>
    </section>`;
}
const find = (selector: string) => panel.querySelector<HTMLElement>(selector)!;
const nameOf = (one?: HTMLElement) => one?.dataset['field'] ?? one?.textContent;

describe('the way from block to block', () => {
  it('begins at the first field of the first block, and backwards at the last block', () => {
    lay();
    expect(nameOf(nextStop(panel, undefined, 1))).toBe('a');
    expect(nameOf(nextStop(panel, undefined, -1))).toBe('x');
  });

  it('stops in an empty table behind what its waiting row starts with', () => {
    lay();
    expect(nameOf(nextStop(panel, find('[data-field=b]'), 1))).toBe('to');
  });

  it('stops at a button that is marked for it, even inside of another block', () => {
    lay();
    expect(nameOf(nextStop(panel, find('[data-field=to]'), 1))).toBe('make');
    expect(nameOf(nextStop(panel, find('[data-stop]'), -1))).toBe('to');
  });

  it('passes over a block without a stop, to the first row of a table that has some', () => {
    lay();
    expect(nameOf(nextStop(panel, find('[data-stop]'), 1))).toBe('x');
  });

  it('ends with the last block', () => {
    lay();
    expect(nextStop(panel, find('[data-field=y]'), 1)).toBeUndefined();
    expect(nextStop(panel, find('[data-field=a]'), -1)).toBeUndefined();
  });

  it('selects the text that it comes to, to be typed over', () => {
    lay();
    const from = find('[data-field=from]') as HTMLInputElement;
    handTo(from);
    expect(document.activeElement).toBe(from);
    expect([from.selectionStart, from.selectionEnd]).toEqual([0, 1]);
  });
});
