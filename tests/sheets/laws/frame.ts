import { extentOf } from '../extent.ts';
import { common, isText, placedOn, type Extent, type Placed } from '../placed.ts';
import { mm, type Law } from './law.ts';

const slack = 0.005;

function named(one: Placed): string {
  const text = isText(one) ? ` “${one.item.text}”` : '';
  return `${one.groups.join('/')} ${one.item.kind}${text} (${one.source ?? 'no source'})`;
}

function within(inner: Extent, outer: Extent): boolean {
  const low = inner[0] >= outer[0] - slack && inner[1] >= outer[1] - slack;
  return low && inner[2] <= outer[2] + slack && inner[3] <= outer[3] + slack;
}

const place = (extent: Extent) => extent.map(mm).join(' ');

/** Nothing that shows leaves the frame of its page. */
export const insideFrame: Law = ({ paper, drawing }) => {
  const { x, y, width, height } = paper.frame;
  const frame: Extent = [x, y, x + width, y + height];
  return drawing.pages.flatMap((page, at) =>
    placedOn(page).flatMap((one) => {
      const seen = common(extentOf(one.item), one.clip);
      const shows = seen[0] <= seen[2] && seen[1] <= seen[3];
      if (!shows || within(seen, frame)) return [];
      return [`page ${at + 1}: ${named(one)} reaches ${place(seen)}`];
    }),
  );
};

/** A text is shown whole: no clip cuts it. */
export const textsWhole: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    placedOn(page)
      .filter((one) => isText(one) && one.clip && !within(extentOf(one.item), one.clip))
      .map((one) => `page ${at + 1}: ${named(one)} is cut at ${place(one.clip!)}`),
  );
