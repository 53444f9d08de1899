import { wellInBody } from './body.ts';
import { breaksAtDepth, nothingLeftOut } from './breaks.ts';
import {
  contactsAtDepth,
  fillsAtDepth,
  hatchesCarried,
  pipesAtDepth,
  strataAtDepth,
} from './depths.ts';
import { insideFrame, textsWhole } from './frame.ts';
import type { DrawnSheet } from '../drawn.ts';
import type { Law } from './law.ts';
import { leadersApart, leadersOffWords, leadersOwn } from './leaders.ts';
import { matchLinesAtDepth, pagesCounted, pagesMeet } from './pages.ts';
import { measuresFinite, pensOfSeries, sixKinds } from './pens.ts';
import { figuresAtDepth, pointsAtDepth } from './points.ts';
import { cutsSaid, descriptionsWhole, factsSaid, partsShown, tallyWhole } from './present.ts';
import { rulerTrue, ticksEven } from './ruler.ts';
import { dimensionsReadable, matchLinesClear } from './strokes.ts';
import { lettersLargeEnough, textsApart, textsAsMeasured, titleLinesApart } from './texts.ts';

/** What holds for every sheet of every well, by a sentence that says it. */
export const laws: Readonly<Record<string, Law>> = {
  'nothing leaves the frame': insideFrame,
  'the well and its words stand between head and foot': wellInBody,
  'no text is cut by a clip': textsWhole,
  'no two texts stand on one another': textsApart,
  'lines of the title block have white between them': titleLinesApart,
  'capitals are at least 1.8 mm high': lettersLargeEnough,
  'every text is as wide as its font says, with a glyph for each letter': textsAsMeasured,
  'pens are of the ISO 128 series': pensOfSeries,
  'items are of the six kinds': sixKinds,
  'every measure is a finite number': measuresFinite,
  'every hatch used is carried, and no other': hatchesCarried,
  'leaders on one side do not cross': leadersApart,
  'no leader to a part lies on another': leadersOwn,
  'no leader runs through words': leadersOffWords,
  'no dimension line runs through a figure': dimensionsReadable,
  'the ruler is true to the stated scale': rulerTrue,
  'ticks are even': ticksEven,
  'breaks stand at the depths that they name': breaksAtDepth,
  'nothing of the well is left out by a break': nothingLeftOut,
  'strata reach from top to foot, each depth once': strataAtDepth,
  'contacts stand at their depth': contactsAtDepth,
  'fills reach over the depths of their rings': fillsAtDepth,
  'pipes reach from top to foot': pipesAtDepth,
  'strikes, levels and intake point at their depth, on one page': pointsAtDepth,
  'figures beside the section are the depth that they lead to': figuresAtDepth,
  'pages meet at match lines': pagesMeet,
  'match lines stand at the depth that they name': matchLinesAtDepth,
  'no match line runs through words': matchLinesClear,
  'pages are counted': pagesCounted,
  'every part of the well is shown': partsShown,
  'every description stands in full or is counted as left out': descriptionsWhole,
  'a description that was cut says so': cutsSaid,
  'the particulars stand in full or say that they were cut': factsSaid,
  'a tally has a row for each piece': tallyWhole,
};

/** The laws of where words stand. */
export const labelLaws: Readonly<Record<string, Law>> = {
  'nothing leaves the frame': insideFrame,
  'the well and its words stand between head and foot': wellInBody,
  'no text is cut by a clip': textsWhole,
  'no two texts stand on one another': textsApart,
  'leaders on one side do not cross': leadersApart,
  'no leader to a part lies on another': leadersOwn,
  'no leader runs through words': leadersOffWords,
  'figures beside the section are the depth that they lead to': figuresAtDepth,
};

/** What a sheet does against each law; empty where it keeps them all. */
export function brokenBy(sheet: DrawnSheet, kept = laws): Record<string, string[]> {
  const found = Object.entries(kept).map(([name, law]) => [name, law(sheet)] as const);
  return Object.fromEntries(found.filter(([, complaints]) => complaints.length > 0));
}
