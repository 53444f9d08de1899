import { describe, expect, it } from 'vitest';
import { well } from '../../../../demo-data/wells.ts';
import {
  paintMarks,
  saidNumbers,
} from '../../../../../core/drawing/papers/layingOut/paintMarks.ts';
import { pipeSteps } from '../../../../../core/drawing/papers/layingOut/pipeSteps.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';

const marksOf = (name: string) => paintMarks(pipeSteps(resolveWell(well(name)).strings));

describe('what is painted on the pipes', () => {
  it('is the top of the screen, ground level and the centralisers, from a pipe’s lower end', () => {
    // Ground on the pipe of 1.12 m: 1.12 m less the 0.40 m that stand out of the ground.
    expect(marksOf('laid-out-45m.json')).toMatchObject([
      { what: 'screenTop', pipes: [5], fromLowerEndM: 3 },
      { what: 'ground', pipes: [18], fromLowerEndM: 0.72, underTopM: 0.4 },
      { what: 'centralisers', pipes: [2], fromLowerEndM: 0.75 },
      { what: 'centralisers', fromLowerEndM: 1.43 },
    ]);
  });

  it('has a top for each run of screens', () => {
    const tops = marksOf('two-screens-58m.json').filter(({ what }) => what === 'screenTop');
    expect(tops.map(({ pipes }) => pipes)).toEqual([[5], [12]]);
  });

  it('leaves ground level out where a string ends below ground', () => {
    const marks = marksOf('collapsed-hole-38m.json');
    expect(marks.filter(({ what }) => what === 'ground')).toEqual([]);
  });
});

describe('numbers of pipes', () => {
  it('are drawn together where they follow each other', () => {
    expect(saidNumbers([2, 3, 4, 7, 9, 10])).toBe('2–4, 7, 9–10');
    expect(saidNumbers([5])).toBe('5');
    expect(saidNumbers([])).toBe('');
  });
});
