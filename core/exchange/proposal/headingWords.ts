import type { TableKind } from '../tables/fields.ts';

/**
 * Words of headings for the fields of each kind of table, in English, French and Portuguese, in
 * small letters without accents; units are taken off before. Common practice, and the headings of
 * tests/data. Of several fields that a heading fits, the first stands.
 */
export const wellWords: readonly string[] = [
  ...['well', 'well no', 'well number', 'well id', 'wellid', 'bore', 'bore id', 'boreid'],
  ...['bore no', 'borehole', 'borehole no', 'borehole number', 'borehole id', 'bh', 'bh no'],
  ...['bh id', 'hole', 'hole id', 'loca id', 'site no', 'number', 'no', 'id', 'tag'],
  ...['forage', 'numero de forage', 'n forage', 'no forage', 'n de forage', 'numero', 'puits'],
  ...['code forage', 'ouvrage', 'furo', 'numero do furo', 'n do furo', 'poco', 'codigo'],
  ...['drillhole no', 'boring', 'grondwaterlocatie', 'sondage', 'sondagem', 'dhno'],
  ...['water point id', 'waterpoint id', 'source id', 'station id', 'station no', 'row id'],
  ...['water point', 'waterpoint', 'ponto de agua', 'point d eau', 'station'],
  // A name tells wells apart where no number does.
  ...['water point name', 'waterpoint name', 'well name', 'borehole name', 'site name'],
];

const ranges = {
  from: [
    ...['from', 'from depth', 'depth from', 'fromdepth', 'top', 'top depth', 'depth top', 'start'],
    ...['de', 'prof de', 'profondeur de', 'toit', 'debut', 'prof debut', 'profondeur debut'],
    ...['desde', 'prof inicial', 'profundidade de', 'topo', 'inicio', 'geol top', 'van'],
  ],
  to: [
    ...['to', 'to depth', 'depth to', 'todepth', 'base', 'base depth', 'bottom', 'bottom depth'],
    ...['depth base', 'depth bottom', 'end', 'a', 'prof a', 'profondeur a', 'mur', 'fin'],
    ...['prof fin', 'profondeur fin', 'ate', 'prof final', 'profundidade ate', 'fundo', 'fim'],
    ...['geol base', 'tot'],
  ],
};

type Headings = Readonly<Record<string, readonly string[]>>;

export const headingWords: Readonly<Record<TableKind, Headings>> = {
  wells: {
    'identity.name': ['name', 'well name', 'borehole name', 'nom', 'nom du forage', 'nome'],
    'identity.programme': ['programme', 'program', 'project', 'projet', 'programa', 'projeto'],
    'identity.contractor': [
      'contractor',
      'driller company',
      'entreprise',
      'empreiteiro',
      'empresa',
    ],
    'identity.driller': ['driller', 'foreur', 'sondador'],
    'identity.supervisor': ['supervisor', 'engineer', 'superviseur', 'ingenieur', 'engenheiro'],
    'identity.client': ['client', 'owner', 'maitre d ouvrage', 'cliente'],
    'identity.purpose': ['purpose', 'use', 'usage', 'uso', 'finalidade'],
    'site.country': ['country', 'pays', 'pais'],
    'site.region': ['region', 'province', 'regiao', 'provincia'],
    'site.district': ['district', 'county', 'prefecture', 'distrito', 'cercle'],
    'site.commune': [
      'commune',
      'subcounty',
      'sub county',
      'ward',
      'comuna',
      'municipality',
      'municipio',
    ],
    'site.village': ['village', 'community', 'localite', 'aldeia', 'povoacao', 'comunidade'],
    'site.spot': ['spot', 'location', 'lieu', 'lieu dit', 'quartier', 'bairro', 'local'],
    'site.latitude': ['latitude', 'lat', 'gps lat', 'y wgs84', 'lat wgs84'],
    'site.longitude': ['longitude', 'long', 'lon', 'lng', 'gps long', 'x wgs84', 'lon wgs84'],
    'site.elevation': ['elevation', 'altitude', 'alt', 'ground level', 'elevacao', 'cota', 'z'],
    'site.users': [
      'users',
      'population',
      'population served',
      'usagers',
      'utentes',
      'utilizadores',
    ],
    'site.households': [
      ...['households', 'number of households', 'number households', 'menages'],
      ...['nombre de menages', 'agregados familiares', 'numero de agregados'],
    ],
    'bore.method': ['method', 'drilling method', 'methode', 'methode de forage', 'metodo'],
    'bore.startedOn': ['start date', 'started', 'date started', 'date debut', 'data de inicio'],
    'bore.finishedOn': [
      ...['completion date', 'date completed', 'completed', 'drilled', 'date drilled', 'end date'],
      ...[
        'date fin',
        'date de fin',
        'date de realisation',
        'data de conclusao',
        'date of drilling',
      ],
    ],
    'bore.depthReached': [
      ...['depth', 'total depth', 'drilled depth', 'final depth', 'depth drilled', 'hole depth'],
      ...['profondeur', 'profondeur totale', 'profondeur foree', 'prof totale', 'profundidade'],
      ...['profundidade total', 'prof total', 'well depth', 'borehole depth', 'total dpth'],
    ],
    'headworks.casingAboveGround': ['stick up', 'stickup', 'casing above ground', 'hauteur tube'],
    notes: ['notes', 'remarks', 'comments', 'remarques', 'observations', 'observacoes'],
  },
  log: {
    ...ranges,
    material: [
      ...['lithology', 'litho', 'material', 'soil', 'rock', 'rock type', 'formation', 'strata'],
      ...[
        'major lithology',
        'majorlithcode',
        'lithologie',
        'terrain',
        'nature',
        'nature du terrain',
      ],
      ...['litologia', 'material atravessado', 'geology', 'geologie', 'geologia', 'ground'],
    ],
    words: [
      ...['description', 'lithology description', 'lithological description', 'geol desc'],
      ...['descricao', 'descriptions', 'description lithologique', 'descricao litologica'],
      ...['log', 'driller says', 'beschrijving'],
    ],
    colour: ['colour', 'color', 'couleur', 'cor'],
    consistency: ['consistency', 'hardness', 'consistance', 'durete', 'consistencia', 'dureza'],
    sampleLabel: ['sample', 'sample no', 'echantillon', 'amostra'],
    minutesPerMetre: ['min per m', 'minutes per metre', 'drilling rate', 'min par m', 'min por m'],
    remarks: ['remarks', 'comments', 'remarques', 'observations', 'observacoes'],
  },
  sections: {
    ...ranges,
    diameter: [
      ...['hole diameter', 'bit diameter', 'drilled diameter', 'bit size', 'bit', 'hole size'],
      ...['diametre de forage', 'diametre foration', 'diametre outil', 'outil'],
      ...['diametro de furacao', 'diametro do furo', 'broca'],
    ],
  },
  pieces: {
    ...ranges,
    kind: [
      ...['kind', 'type', 'casing type', 'component', 'pipe', 'pipe type', 'item', 'tube'],
      ...['type de tube', 'tubage', 'equipement', 'tipo', 'tubo', 'tipo de tubo', 'filterelement'],
    ],
    material: ['pipe material', 'casing material', 'material', 'materiau', 'material do tubo'],
    outside: [
      ...['od', 'outside diameter', 'outer diameter', 'external diameter', 'diametre exterieur'],
      ...['diametro exterior', 'externaldiameter'],
    ],
    inside: [
      ...['inside diameter', 'inner diameter', 'internal diameter', 'diametre interieur'],
      ...['diametro interior', 'internaldiameter', 'binnendiameter'],
    ],
    diameter: [
      ...['diameter', 'dia', 'diam', 'casing diameter', 'diametre', 'diametro', 'case diam'],
      ...['screen diameter', 'diametre du tubage', 'diametro do tubo'],
    ],
    slotWidth: [
      'slot',
      'slot size',
      'slot width',
      'aperture',
      'ouverture',
      'slot ouverture',
      'ranhura',
    ],
    joint: ['joint', 'joint type', 'junta'],
    remark: ['remarks', 'comments', 'remarques', 'observacoes'],
  },
  fills: {
    ...ranges,
    fill: [
      ...['fill', 'annulus', 'annular fill', 'fill type', 'backfill', 'annular material'],
      ...['remplissage', 'espace annulaire', 'massif', 'preenchimento', 'anular', 'enchimento'],
    ],
    litres: ['litres', 'liters', 'volume', 'litros'],
    sacks: ['sacks', 'bags', 'sacs', 'sacos'],
    remark: ['remarks', 'comments', 'remarques', 'observacoes'],
  },
  levels: {
    at: ['date', 'date measured', 'reading date', 'measured on', 'date de mesure', 'data', 'datum'],
    reading: [
      ...['water level', 'depth to water', 'dtw', 'swl', 'static water level', 'static level'],
      ...['static water depth', 'depth to static water'],
      ...['level', 'rest water level', 'niveau', 'niveau statique', 'ns', 'niveau d eau'],
      ...['nivel', 'nivel estatico', 'ne', 'nivel da agua', 'diepte tov referentiepunt'],
    ],
    state: ['state', 'status', 'etat', 'estado', 'filterstatus'],
    remark: ['remarks', 'comments', 'remarques', 'observacoes'],
  },
  strikes: {
    depth: [
      ...[
        'water strike',
        'strike',
        'strike depth',
        'water struck',
        'struck at',
        'water strike depth',
      ],
      ...['venue d eau', 'arrivee d eau', 'entrada de agua', 'wstg depth'],
    ],
    flow: ['strike flow', 'strike yield', 'debit venue', 'caudal da entrada'],
    remark: ['remarks', 'comments', 'remarques', 'observacoes'],
  },
};

/**
 * Headings of one wide table that name the end of a stretch of pipe, with the kind of the pipe:
 * one row a well, a range in two columns.
 */
export const wideRanges: readonly {
  readonly kind: 'plain' | 'screen' | 'gravelPack' | 'cementGrout';
  readonly from: readonly string[];
  readonly to: readonly string[];
}[] = [
  {
    kind: 'screen',
    from: ['screen from', 'screen top', 'top of screen', 'crepine de', 'haut crepine', 'filtro de'],
    to: [
      'screen to',
      'screen bottom',
      'bottom of screen',
      'crepine a',
      'bas crepine',
      'filtro ate',
    ],
  },
  {
    kind: 'plain',
    from: ['casing from', 'casing top', 'tube plein de', 'tubo liso de'],
    to: ['casing to', 'casing bottom', 'tube plein a', 'tubo liso ate'],
  },
  {
    kind: 'gravelPack',
    from: [
      'gravel from',
      'gravel top',
      'gravel pack from',
      'gravel pack top',
      'gravier de',
      'pre filtro de',
    ],
    to: [
      'gravel to',
      'gravel bottom',
      'gravel pack to',
      'gravel pack bottom',
      'gravier a',
      'pre filtro ate',
    ],
  },
  {
    kind: 'cementGrout',
    from: ['grout from', 'grout top', 'cement from', 'cement top', 'ciment de', 'cimento de'],
    to: ['grout to', 'grout bottom', 'cement to', 'cement bottom', 'ciment a', 'cimento ate'],
  },
];
