import type { RecordPath } from '../../base/recordPath.ts';
import type { Losing } from '../losses.ts';
import { element, xmlText, type Markup } from '../xml/writeXml.ts';
import { unknown } from './namespaces.ts';
import { nobodyKnows } from './values.ts';

/** A value with its unit; numbers are written with all their figures. */
export function quantity(name: string, value: number, unit: string): Markup {
  return element(name, {}, [
    element('swe:Quantity', {}, [
      element('swe:uom', { code: unit }),
      element('swe:value', {}, String(value)),
    ]),
  ]);
}

/** A reference that is known by its title, and by a link where there is one. */
export function reference(name: string, title: string, href?: string): Markup {
  return element(name, { 'xlink:href': href, 'xlink:title': title });
}

export function unknownReference(name: string): Markup {
  return reference(name, 'unknown', unknown);
}

/** Elements for those values that are there. */
export function given<T>(value: T | undefined, make: (value: T) => Markup): Markup[] {
  return value === undefined ? [] : [make(value)];
}

/** An ISO 8601 moment as XML Schema has it, with its seconds. */
export function momentText(moment: string): string {
  return moment.replace(/T(\d\d:\d\d)(?=Z|[+-])/, 'T$1:00');
}

export function instant(id: string, moment: string): Markup {
  return element('gml:TimeInstant', { 'gml:id': id }, [
    element('gml:timePosition', {}, momentText(moment)),
  ]);
}

export type Words = (path: RecordPath, text: string | undefined) => string | undefined;

/** Text on one line, as titles and names are; what comes back changed is told. */
export function wordsOf({ lose }: Losing): Words {
  return (path, text) => {
    if (text === undefined) return undefined;
    const words = xmlText(text).replace(/\s+/g, ' ').trim();
    if (words !== text || words === '')
      lose(path, 'It goes out on one line, without blanks at its ends.');
    if (nobodyKnows.test(words)) lose(path, 'It comes back as not known.');
    return words === '' ? undefined : words;
  };
}
