import type { LogInterval } from '../../record/log.ts';
import type { WellRecord } from '../../record/schema.ts';
import { inWords } from '../laid/words.ts';
import type { Losing } from '../losses.ts';
import { element, type Markup } from '../xml/writeXml.ts';
import { lithologyConcept } from './lithology.ts';
import { given, quantity, reference, unknownReference, type Words } from './markup.ts';
import { lithologyConcepts, lithologyScheme } from './namespaces.ts';

function textField(name: string, words: string): Markup {
  return element('swe:field', { name }, [
    element('swe:Text', {}, [element('swe:value', {}, words)]),
  ]);
}

function conceptField(concept: string): Markup {
  return element('swe:field', { name: 'lithology' }, [
    element('swe:Category', {}, [
      element('swe:codeSpace', { 'xlink:href': lithologyScheme }),
      element('swe:value', {}, `${lithologyConcepts}${concept}`),
    ]),
  ]);
}

function secondsOf({ qualifiers = [] }: LogInterval): string | undefined {
  const words = qualifiers.map(({ material, degree }) =>
    degree === undefined ? inWords(material) : `${degree} ${inWords(material)}`,
  );
  return words.length === 0 ? undefined : words.join(', ');
}

/** The concept of the vocabulary, our own word, and what else the log says in words. */
function fieldsOf(interval: LogInterval, path: string, words: Words, { lose }: Losing): Markup[] {
  const { material, colour, consistency, remarks, words: written } = interval;
  const seconds = secondsOf(interval);
  if (material === undefined && seconds !== undefined)
    lose(`${path}.qualifiers`, 'Second materials need a principal one.');
  const fields = [
    ...given(material && lithologyConcept[material], conceptField),
    ...given(material, (one) => textField('material', inWords(one))),
    ...given(material && seconds, (one) => textField('secondMaterials', one)),
    ...given(words(`${path}.colour`, colour), (one) => textField('colour', one)),
    ...given(words(`${path}.consistency`, consistency), (one) => textField('consistency', one)),
    ...given(words(`${path}.remarks`, remarks), (one) => textField('remarks', one)),
    ...given(words(`${path}.words`, written), (one) => textField('description', one)),
  ];
  return fields.length > 0 ? fields : [textField('description', '')];
}

function logValue(interval: LogInterval, path: string, words: Words, losing: Losing): Markup {
  return element('gwml2w:element', {}, [
    element('gwml2w:LogValue', {}, [
      quantity('gwml2w:fromDepth', interval.from, 'm'),
      quantity('gwml2w:toDepth', interval.to, 'm'),
      element('gwml2w:value', {}, [
        element('swe:DataRecord', {}, fieldsOf(interval, path, words, losing)),
      ]),
    ]),
  ]);
}

const isInOrder = (log: readonly LogInterval[]) =>
  log.every(({ from, to }, at) => {
    const above = log[at - 1];
    return !above || above.from < from || (above.from === from && above.to <= to);
  });

/** The log of the ground as the standard has it: an observation of the well. */
export function geologyLog(
  id: string,
  { log = [] }: WellRecord,
  words: Words,
  losing: Losing,
): Markup[] {
  const kept = log.flatMap((interval, at) =>
    interval.to > interval.from ? [{ interval, at }] : [],
  );
  if (kept.length < log.length || !isInOrder(log))
    losing.lose(
      'log',
      'Intervals come back in order of depth, those without thickness not at all.',
    );
  if (kept.length === 0) return [];
  const values = kept.map(({ interval, at }) => logValue(interval, `log[${at}]`, words, losing));
  const depths = kept.flatMap(({ interval: { from, to } }) => [from, to]);
  return [
    element('gwml2w:gwWellGeology', {}, [
      element('gwml2w:GW_GeologyLog', { 'gml:id': `${id}.log` }, [
        unknownReference('om:phenomenonTime'),
        unknownReference('om:resultTime'),
        unknownReference('om:procedure'),
        reference(
          'om:observedProperty',
          'lithology',
          'http://www.opengis.net/def/gwml/2.0/observedProperty/earthMaterial',
        ),
        element('om:featureOfInterest', { 'xlink:href': `#${id}` }),
        element('om:result', {}, [
          element('gwml2w:GW_GeologyLogCoverage', { 'gml:id': `${id}.log.values` }, values),
        ]),
        quantity('gwml2w:startDepth', Math.min(...depths), 'm'),
        quantity('gwml2w:endDepth', Math.max(...depths), 'm'),
      ]),
    ]),
  ];
}
