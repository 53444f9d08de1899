import type { Component } from '../../record/strings.ts';

/** Each slot of a row is sawn about a fifth of the way round the pipe. Published tutorial. */
const slotOfCircumference = 1 / 5;

const percentOfOne = 100;

/**
 * Open area of a screen, per cent of its surface: as written, else from its slots, each a fifth
 * of the circumference long, `slotSpacing` counted from slot to slot.
 */
export function openAreaPercentOf({
  openArea,
  slotWidth,
  slotSpacing,
  slotRows,
}: Component): number | undefined {
  if (openArea !== undefined && openArea > 0) return openArea;
  if (!slotWidth || !slotSpacing || !slotRows) return undefined;
  return ((slotRows * slotOfCircumference * slotWidth) / slotSpacing) * percentOfOne;
}
