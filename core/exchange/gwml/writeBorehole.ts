import type { AnnulusFill } from '../../record/annulus.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { LaidPiece, LaidString } from '../laid/layPieces.ts';
import { inWords } from '../laid/words.ts';
import type { Losing } from '../losses.ts';
import { element, type Markup } from '../xml/writeXml.ts';
import { drillingConcept } from './lithology.ts';
import { given, instant, quantity, reference, type Words } from './markup.ts';
import { drillingConcepts } from './namespaces.ts';

/** What is written of one well, and how. */
export interface Writes {
  readonly id: string;
  readonly record: WellRecord;
  readonly strings: readonly LaidString[];
  readonly words: Words;
  readonly losing: Losing;
}

const millimetres = (name: string, value: number | undefined) =>
  given(value, (one) => quantity(name, one, 'mm'));

function component(
  { words }: Writes,
  id: string,
  { from, to, component, path }: LaidPiece,
): Markup {
  const { kind, material, outside, inside, wall, slotWidth, remark } = component;
  const prefix = kind === 'screen' ? 'gwml2wc:screen' : 'gwml2wc:casing';
  const form = kind === 'screen' ? 'slotted' : kind === 'plain' ? undefined : inWords(kind);
  const made = given(words(`${path}.material`, material), (one) =>
    reference(`${prefix}Material`, one),
  );
  const shaped = given(form, (one) => reference(`${prefix}Form`, one));
  const name = kind === 'screen' ? 'gwml2wc:ScreenComponent' : 'gwml2wc:CasingComponent';
  const own =
    kind === 'screen'
      ? [...shaped, ...millimetres('gwml2wc:screenHoleWidth', slotWidth), ...made]
      : [...made, ...shaped];
  return element(name, { 'gml:id': id }, [
    ...given(words(`${path}.remark`, remark), (one) => element('gml:description', {}, one)),
    quantity('gwml2wc:from', from, 'm'),
    quantity('gwml2wc:to', to, 'm'),
    ...own,
    ...millimetres(`${prefix}InternalDiameter`, inside),
    ...millimetres(`${prefix}ExternalDiameter`, outside),
    ...millimetres(`${prefix}WallThickness`, wall),
  ]);
}

function construction(name: string, id: string, part: string, components: readonly Markup[]) {
  if (components.length === 0) return [];
  const elements = components.map((one) => element(`gwml2wc:${part}`, {}, [one]));
  return [
    element('gwml2wc:bholeConstruction', {}, [
      element(`gwml2wc:${name}`, { 'gml:id': id }, elements),
    ]),
  ];
}

/** A string is a casing and a screen; the ids of their components say to which string they belong. */
function stringConstructions(writes: Writes, { index, pieces }: LaidString): Markup[] {
  const { id, losing } = writes;
  const own = `${id}.s${index + 1}`;
  for (const { component: one, path } of pieces)
    if (one.kind !== 'screen' && one.slotWidth !== undefined)
      losing.lose(`${path}.slotWidth`, 'A casing has no slots.');
  const made = pieces.map((piece, at) => ({
    isScreen: piece.component.kind === 'screen',
    markup: component(writes, `${own}.${at + 1}`, piece),
  }));
  const of = (screens: boolean) =>
    made.filter(({ isScreen }) => isScreen === screens).map(({ markup }) => markup);
  return [
    ...construction('Casing', `${own}.casing`, 'casingElement', of(false)),
    ...construction('Screen', `${own}.screen`, 'screenElement', of(true)),
  ];
}

const isPack = ({ fill }: AnnulusFill) => fill === 'gravelPack' || fill === 'formationStabiliser';

/** One grain size is all that a pack has. */
function grainOf({ losing }: Writes, fill: AnnulusFill, path: string): number | undefined {
  const { grainMin, grainMax } = fill;
  const grain = grainMax ?? grainMin;
  const why = isPack(fill) ? 'A pack has one grain size.' : 'A seal has no grains.';
  for (const [name, value] of Object.entries({ grainMin, grainMax }))
    if (grain !== undefined && (!isPack(fill) || value !== grain))
      losing.lose(`${path}.${name}`, why);
  return isPack(fill) ? grain : undefined;
}

function fillComponent(writes: Writes, id: string, fill: AnnulusFill, path: string): Markup {
  const { words, losing } = writes;
  const { from, to, sanitary, remark } = fill;
  const kind = inWords(fill.fill);
  if (sanitary === false || (sanitary && isPack(fill)))
    losing.lose(`${path}.sanitary`, 'Only a seal that is the sanitary one is told as such.');
  const grain = grainOf(writes, fill, path);
  const own = isPack(fill)
    ? [...millimetres('gwml2wc:filterGrainSize', grain), reference('gwml2wc:filterMaterial', kind)]
    : [
        reference('gwml2wc:sealingMaterial', kind),
        ...(sanitary ? [reference('gwml2wc:sealingType', 'sanitary seal')] : []),
      ];
  const name = isPack(fill) ? 'gwml2wc:FiltrationComponent' : 'gwml2wc:SealingComponent';
  return element(name, { 'gml:id': id }, [
    ...given(words(`${path}.remark`, remark), (one) => element('gml:description', {}, one)),
    quantity('gwml2wc:from', from, 'm'),
    quantity('gwml2wc:to', to, 'm'),
    ...own,
  ]);
}

/** Packs come first, then seals, and what is neither is told as a seal of its own material. */
function fillConstructions(writes: Writes): Markup[] {
  const { id, record, losing } = writes;
  const all = (record.annulus ?? []).map((fill, at) => ({ fill, at }));
  const kept = all.filter(({ fill: { from, to } }) => to > from);
  const packs = kept.filter(({ fill }) => isPack(fill));
  const seals = kept.filter(({ fill }) => !isPack(fill));
  const back = [...packs, ...seals].sort(
    ({ fill: a }, { fill: b }) => a.from - b.from || a.to - b.to,
  );
  if (kept.length < all.length || back.some(({ at }, place) => at !== all[place]?.at))
    losing.lose(
      'annulus',
      'Fills come back in order of depth, those without thickness not at all.',
    );
  const made = (list: typeof kept) =>
    list.map(({ fill, at }) =>
      fillComponent(writes, `${id}.fill${at + 1}`, fill, `annulus[${at}]`),
    );
  return [
    ...construction('Filtration', `${id}.packs`, 'filterElement', made(packs)),
    ...construction('Sealing', `${id}.seals`, 'sealingElement', made(seals)),
  ];
}

function party(name: string, role: string, organisation?: string, person?: string): Markup[] {
  if (organisation === undefined && person === undefined) return [];
  const text = (field: string, value: string | undefined) =>
    given(value, (one) => element(field, {}, [element('gco:CharacterString', {}, one)]));
  const code = element('gmd:CI_RoleCode', {
    codeList: 'http://www.isotc211.org/2005/resources/codeList.xml#CI_RoleCode',
    codeListValue: role,
  });
  const responsible = element('gmd:CI_ResponsibleParty', {}, [
    ...text('gmd:individualName', person),
    ...text('gmd:organisationName', organisation),
    element('gmd:role', {}, [code]),
  ]);
  return [element(name, {}, [responsible])];
}

/** A pump is known by its kind and model in one title. */
function pumpMarkup({ id, record, words, losing }: Writes): Markup[] {
  const { kind, installedOn } = record.pump ?? {};
  const model = words('pump.model', record.pump?.model);
  const parts = [kind && inWords(kind), model].filter((one) => one !== undefined);
  if (parts.length === 0) {
    if (installedOn !== undefined)
      losing.lose('pump.installedOn', 'A pump needs its kind or model to be told.');
    return [];
  }
  if (kind === undefined) losing.lose('pump', 'Without a kind its model may come back as one.');
  return [
    element('gwml2wc:installedEquipment', {}, [
      element('gwml2wc:Equipment', { 'gml:id': `${id}.pump` }, [
        reference('gwml2wc:equipmentType', parts.join(': ')),
        ...given(installedOn, (day) =>
          element('gwml2wc:installationDate', {}, [instant(`${id}.pump.day`, day)]),
        ),
      ]),
    ]),
  ];
}

/** One diameter is all that a hole has. */
function nominalDiameter({ record: { bore }, losing }: Writes): Markup[] {
  const sections = bore?.sections ?? [];
  const last = sections.at(-1);
  if (!last) return [];
  const whole = sections.length === 1 && last.from === 0 && last.to === bore?.depthReached;
  if (!whole) losing.lose('bore.sections', 'A hole has one diameter; that of the last goes out.');
  return [quantity('gwml2wc:bholeNominalDiameter', last.diameter, 'mm')];
}

/** The hole with all that was built into it; the collar is the one part that must be there. */
export function boreholeMarkup(writes: Writes, shape: Markup, collar: readonly Markup[]): Markup {
  const { id, record, strings, words } = writes;
  const { identity, bore } = record;
  const method = bore?.method;
  const concept = method && drillingConcept[method];
  return element('gwml2wc:Borehole', { 'gml:id': `${id}.hole` }, [
    element('sam:sampledFeature', { 'xlink:href': `#${id}` }),
    shape,
    ...given(bore?.finishedOn, (day) => element('gwml2wc:bholeDateOfDrilling', {}, day)),
    ...party(
      'gwml2wc:bholeDriller',
      'resourceProvider',
      words('identity.contractor', identity?.contractor),
      words('identity.driller', identity?.driller),
    ),
    ...given(method, (one) =>
      reference(
        'gwml2wc:bholeDrillingMethod',
        inWords(one),
        concept && `${drillingConcepts}${concept}`,
      ),
    ),
    reference('gwml2wc:bholeInclinationType', 'vertical'),
    ...nominalDiameter(writes),
    ...party('gwml2wc:bholeOperator', 'owner', words('identity.client', identity?.client)),
    reference('gwml2wc:bholeStartPoint', 'natural ground surface'),
    ...strings.flatMap((string) => stringConstructions(writes, string)),
    ...fillConstructions(writes),
    element('gwml2wc:bholeHeadworks', {}, [
      element('gwml2wc:BoreCollar', { 'gml:id': `${id}.collar` }, collar),
    ]),
    ...pumpMarkup(writes),
  ]);
}
