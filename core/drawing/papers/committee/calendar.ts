import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { drawPictogram } from '../../pictograms/pictogram.ts';
import { group } from '../../shapes.ts';
import { careCalendar, carePeriods, signOf, type CarePlan, type CareTask } from './care.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { blockTitle, linesOf, pitch, said, saidLines } from './text.ts';

const gap: PaperMm = 4;
const headHeight: PaperMm = 7.8;
const signSide: PaperMm = 8.7;
const textAt: PaperMm = 10.6;
const betweenTasks: PaperMm = 0.4;

interface LaidTask {
  readonly task: CareTask;
  readonly lines: readonly string[];
  readonly height: PaperMm;
}

function layTasks(kit: CommitteeKit, tasks: readonly CareTask[], width: PaperMm): LaidTask[] {
  return tasks.map((task) => {
    const lines = linesOf(kit, kit.own.care.tasks[task], width - textAt);
    return { task, lines, height: Math.max(signSide, lines.length * pitch) + betweenTasks };
  });
}

function drawTasks(kit: CommitteeKit, tasks: readonly LaidTask[], x: PaperMm, y: PaperMm): Item[] {
  let top = y;
  return tasks.flatMap(({ task, lines, height }) => {
    const own = top;
    top += height;
    const down = Math.max(0, (signSide - lines.length * pitch) / 2);
    return [
      drawPictogram(signOf(task), { x, y: own, side: signSide }),
      ...saidLines(kit, lines, x + textAt, own + down),
    ];
  });
}

/** What is done every week, month and year, side by side, fitted to the kind of pump. */
export function layCalendar(kit: CommitteeKit, plan: CarePlan, width: PaperMm): Block {
  const { care } = kit.own;
  const each = (width - 2 * gap) / carePeriods.length;
  const calendar = careCalendar(plan);
  const columns = carePeriods.map((period) => layTasks(kit, calendar[period], each));
  const heights = columns.map((tasks) => tasks.reduce((sum, { height }) => sum + height, 0));
  return {
    height: kit.spacing.title + headHeight + Math.max(...heights),
    draw: (x, y) => [
      ...blockTitle(kit, care.title, x, y, width),
      group(
        'care',
        carePeriods.flatMap((period, at) => {
          const left = x + at * (each + gap);
          const top = y + kit.spacing.title;
          return [
            drawPictogram(period, { x: left + 0.4, y: top, side: 7.2 }),
            ...said(kit, care[period], left + textAt, top + 5, { face: 'bold' }),
            ...drawTasks(kit, columns[at]!, left, top + headHeight),
          ];
        }),
      ),
    ],
  };
}
