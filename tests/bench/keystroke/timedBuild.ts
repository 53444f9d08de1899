import path from 'node:path';
import type { Plugin } from 'vite';

/** Which function of which file is timed, and under what name its work is reported. */
const timed: readonly (readonly [file: string, name: string, step: string])[] = [
  ['renderer/state/rows.ts', 'enterInRow', 'edit'],
  ['core/model/resolveWell.ts', 'resolveWell', 'resolve'],
  ['core/drawing/papers/asBuilt.ts', 'drawAsBuilt', 'lay out'],
  ['renderer/paint/paintPage.ts', 'paintPage', 'into the page'],
  ['renderer/paint/source.ts', 'markSource', 'marks'],
  ['renderer/sheet/markedBoxes.ts', 'markedBoxes', 'marks'],
];

/** The function under another name, and in its place one that notes when it began and ended. */
function wrapped(code: string, name: string, step: string): string {
  const head = `export function ${name}(`;
  if (!code.includes(head)) throw new Error(`There is no function ${name} to be timed`);
  const timer = `export function ${name}(...of) {
    const start = performance.now();
    try { return ${name}Untimed(...of); }
    finally { (globalThis.spans ??= []).push(['${step}', start, performance.now()]); }
  }`;
  return code.replace(head, `${timer}\nfunction ${name}Untimed(`);
}

/**
 * Times some functions of a built page from outside, so that the program itself carries no marks.
 * Times go into a list: a measure of the browser's own costs more than what it measures.
 */
export function timedBuild(top: string): Plugin {
  return {
    name: 'timed-build',
    transform(code, id) {
      const file = path.relative(top, id);
      const here = timed.filter(([of]) => of === file);
      return here.reduce((text, [, name, step]) => wrapped(text, name, step), code);
    },
  };
}
