/** Where a list stands that opens from a field, as lengths of a style. */
export interface PopupPlace {
  readonly left: string;
  readonly minWidth: string;
  readonly maxHeight: string;
  readonly top?: string;
  readonly bottom?: string;
}

/** A list is no higher than this, and below its field wherever this much room is there. */
const tallest = 260;
const enough = 140;
const gap = 2;

const px = (length: number) => `${Math.round(length)}px`;

/** Below the field, or above it where there is more room; never higher than the room. Pixels. */
export function popupPlace(
  field: { left: number; top: number; bottom: number; width: number },
  windowHeight: number,
): PopupPlace {
  const below = windowHeight - field.bottom - 2 * gap;
  const above = field.top - 2 * gap;
  const under = below >= enough || below >= above;
  return {
    left: px(field.left),
    minWidth: px(field.width),
    maxHeight: px(Math.min(tallest, under ? below : above)),
    ...(under ? { top: px(field.bottom + gap) } : { bottom: px(windowHeight - field.top + gap) }),
  };
}
