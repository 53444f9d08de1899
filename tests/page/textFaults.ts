/**
 * Runs in the page: texts that do not fit where they stand, as sentences. Pictures of sheets are
 * laid out elsewhere and not looked at. A text that ends in an ellipsis by design is taken as fit
 * where its whole can be read by a title.
 */
export function textFaults(): string[] {
  /** Pixels that rounding may take. */
  const slack = 1.5;
  const faults: string[] = [];

  const nameOf = (element: Element) => {
    const said = element.getAttribute('aria-label') ?? element.textContent ?? '';
    return `${element.tagName.toLowerCase()} “${said.replace(/\s+/g, ' ').trim().slice(0, 50)}”`;
  };
  const styleOf = (element: Element) => getComputedStyle(element);
  const isLooked = (element: Element) =>
    element.closest('svg, .hidden, [aria-hidden="true"], option') === null &&
    element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
  const all = [...document.body.querySelectorAll<HTMLElement>('*')].filter(isLooked);
  const isField = (element: Element) => element.matches('input, textarea, select');

  function ends(element: HTMLElement): boolean {
    const { textOverflow } = styleOf(element);
    return textOverflow === 'ellipsis' && element.title !== '';
  }

  function checkWidth(element: HTMLElement) {
    if (isField(element) || element.clientWidth === 0 || ends(element)) return;
    if (!element.matches('button, label, th, td, h1, h2, h3, h4, p, summary, legend, li, dt, dd'))
      return;
    const { scrollWidth, clientWidth } = element;
    if (scrollWidth > clientWidth + slack)
      faults.push(`${nameOf(element)} is ${scrollWidth - clientWidth} px wider than its box`);
  }

  const pen = document.createElement('canvas').getContext('2d')!;
  function checkShown(element: HTMLElement) {
    const isSelect = element instanceof HTMLSelectElement;
    const shown = isSelect
      ? element.selectedOptions[0]?.text
      : element instanceof HTMLInputElement && element.value === ''
        ? element.placeholder
        : '';
    if (!shown) return;
    const { font, paddingLeft, paddingRight } = styleOf(element);
    pen.font = font;
    const room = element.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight);
    const over = pen.measureText(shown).width - room;
    if (over > slack) faults.push(`${nameOf(element)} cuts “${shown}” by ${Math.round(over)} px`);
  }

  interface Box {
    readonly element: Element;
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  }

  /** What is left of a box within everything that clips it. */
  function seen(element: Element, { left, top, right, bottom }: DOMRect): Box {
    const box = { element, left, top, right, bottom };
    for (let up: Element | null = element; up; up = up.parentElement) {
      if (styleOf(up).overflowX === 'visible' && styleOf(up).overflowY === 'visible') continue;
      const frame = up.getBoundingClientRect();
      box.left = Math.max(box.left, frame.left);
      box.top = Math.max(box.top, frame.top);
      box.right = Math.min(box.right, frame.right);
      box.bottom = Math.min(box.bottom, frame.bottom);
    }
    return box;
  }

  function checkClipped(element: Element, line: DOMRect) {
    for (let up: Element | null = element; up; up = up.parentElement) {
      if (!['hidden', 'clip'].includes(styleOf(up).overflowX)) continue;
      if (ends(up as HTMLElement)) return;
      const frame = up.getBoundingClientRect();
      const over = Math.max(frame.left - line.left, line.right - frame.right);
      if (over > slack) faults.push(`${nameOf(element)} is cut by ${Math.round(over)} px`);
      return;
    }
  }

  const range = document.createRange();
  const boxes: Box[] = [];
  for (const element of all) {
    checkWidth(element);
    checkShown(element);
    if (isField(element) || element.tagName === 'BUTTON')
      boxes.push(seen(element, element.getBoundingClientRect()));
    for (const node of element.childNodes) {
      if (!(node instanceof Text) || !node.data.trim()) continue;
      range.selectNodeContents(node);
      for (const line of range.getClientRects()) {
        checkClipped(element, line);
        boxes.push(seen(element, line));
      }
    }
  }

  /** What floats above the page on purpose hides what lies under it. */
  const floats = (element: Element): boolean => {
    for (let up: Element | null = element; up; up = up.parentElement)
      if (['sticky', 'fixed', 'absolute'].includes(styleOf(up).position)) return true;
    return false;
  };
  const related = (a: Element, b: Element) => a.contains(b) || b.contains(a);
  const drawn = boxes.filter(
    ({ left, top, right, bottom, element }) =>
      right - left > slack && bottom - top > slack && !floats(element),
  );
  drawn.forEach((a, at) => {
    for (const b of drawn.slice(at + 1)) {
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      // Lines of text stand close: their boxes may touch by the room that letters leave.
      if (wide > slack && high > 4 && !related(a.element, b.element))
        faults.push(`${nameOf(a.element)} lies over ${nameOf(b.element)}`);
    }
  });

  const { documentElement: root } = document;
  if (root.scrollWidth > root.clientWidth)
    faults.push(`the page can be moved sideways by ${root.scrollWidth - root.clientWidth} px`);
  const chapter = document.getElementById('chapter');
  if (chapter && chapter.scrollWidth > chapter.clientWidth)
    faults.push(`the chapter is ${chapter.scrollWidth - chapter.clientWidth} px too wide`);
  return [...new Set(faults)];
}
