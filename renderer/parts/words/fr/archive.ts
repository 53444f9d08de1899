import type { archive as english } from '../en/archive.ts';

export const archive: typeof english = {
  title: 'Archive',
  back: 'Archive',
  search: 'Numéro, lieu, noms, remarques, terrain',
  newWell: 'Nouveau forage',
  newLike: 'Nouveau forage comme le dernier',
  newLikeHint:
    'Reprend le programme, les intervenants, le lieu jusqu’à la commune, la méthode et les tubes du forage modifié en dernier',
  columns: {
    number: 'Numéro',
    name: 'Nom',
    village: 'Village',
    district: 'District',
    state: 'État',
    year: 'Année',
    depth: 'Profondeur (m)',
    findings: 'Constats',
    changed: 'Dernière modification',
    match: 'Trouvé dans',
  },
  sortBy: (column) => `Trier par ${column}`,
  matchIn: {
    number: 'contrat ou permis',
    places: 'lieu',
    people: 'personnes',
    remarks: 'remarques',
    log: 'coupe',
  },
  count: (n) => (n < 2 ? `${n} forage` : `${n} forages`),
  countOf: (n, all) => `${n} forages sur ${all}`,
  noneFound: (search) =>
    `Aucun forage ne répond à « ${search} ». Essayez une partie du numéro, du nom, du lieu, des personnes ou des remarques.`,
  noneFit: 'Aucun forage ne répond à tous les filtres. Retirez-en un.',
  empty: 'Cette archive ne contient encore aucun forage. Créez le premier avec « Nouveau forage ».',
  noNumber: 'sans numéro',
  notWritten: 'non renseigné',
  reading: 'Lecture de l’archive …',
  goingThrough: (left) => `Examen des forages : encore ${left}`,
  weights: {
    errors: (n) => `${n} faux`,
    warnings: (n) => `${n} à revoir`,
    nothing: 'rien',
    unknown: 'pas encore examiné',
  },
  filters: {
    label: 'Filtres',
    region: 'Région',
    district: 'District',
    state: 'État',
    findings: 'Constats',
    yearFrom: 'Année de',
    yearTo: 'à',
    method: 'Méthode',
    pump: 'Pompe',
    client: 'Maître d’ouvrage',
    contractor: 'Entreprise',
    yield: 'Débit (m³/h)',
    depthFrom: 'Profondeur (m) de',
    yieldFrom: 'Débit (m³/h) de',
    more: 'Plus de filtres',
    badAmount: (text) => `« ${text} » n’est pas un nombre. Écrivez des chiffres, comme 12,5.`,
    badYear: (text) => `« ${text} » n’est pas une année. Écrivez quatre chiffres, comme 2026.`,
    worst: { wrong: 'quelque chose de faux', look: 'à revoir', none: 'ni l’un ni l’autre' },
    remove: (filter) => `Retirer le filtre ${filter}`,
    clear: 'Tout effacer',
    is: (name, value) => `${name} : ${value}`,
    from: (year) => `à partir de ${year}`,
    to: (year) => `jusqu’à ${year}`,
    searched: (text) => `« ${text} »`,
  },
  deeds: {
    label: 'Le forage choisi',
    none: 'Aucun forage n’est choisi',
    open: 'Ouvrir',
    duplicate: 'Dupliquer comme modèle',
    duplicateHint:
      'Un nouveau forage avec les mêmes programme, intervenants, lieu jusqu’à la commune, méthode et tubes ; aucune mesure (Ctrl+D)',
    bin: 'Mettre à la corbeille',
    binHint: 'Touche Suppr',
    sheets: 'Feuilles de ces forages en un PDF',
    sheetsHint:
      'Les feuilles A4 de tous les forages que montre la liste, dans son ordre ; la recherche et les filtres la réduisent',
    tooMany: (wells, most) =>
      `La liste montre ${wells} forages ; un PDF en prend ${most} au plus. Réduisez la liste par la recherche ou les filtres.`,
    olderSheets: (wells) =>
      wells === 1
        ? 'Un forage a des saisies plus récentes que sa feuille ne montre pas ; ouvrez-le et faites une révision.'
        : `${wells} forages ont des saisies plus récentes que leurs feuilles ne montrent pas ; ouvrez-les et faites une révision.`,
  },
  views: { label: 'Parties des archives', wells: 'Forages', import: 'Importer', copies: 'Copies' },
  bin: {
    title: 'Corbeille',
    show: (n) => `Corbeille (${n})`,
    moved: (number) => `${number} a été mis à la corbeille.`,
    putBack: 'Remettre',
    isBack: (number) => `${number} a été remis dans la liste.`,
    empty: 'Vider la corbeille',
    isEmpty: 'La corbeille est vide.',
    columns: { revisions: 'Révisions', binned: 'Mis ici' },
    toList: 'Retour aux forages',
    askTitle: 'Vider la corbeille ?',
    ask: (wells, revisions) =>
      wells === 1
        ? `Un forage disparaît pour de bon, avec toutes ses révisions (${revisions}).`
        : `${wells} forages disparaissent pour de bon, avec toutes leurs révisions (${revisions}).`,
    askBackups:
      'Les copies de sécurité déjà faites les gardent jusqu’à ce que de plus récentes les remplacent.',
    keep: 'Les garder',
    emptied: (wells) =>
      wells === 1
        ? 'Un forage a disparu pour de bon.'
        : `${wells} forages ont disparu pour de bon.`,
    dismiss: 'Fermer ce message',
  },
  map: {
    title: 'Carte',
    label:
      'Carte des forages retenus. Les flèches déplacent, plus et moins changent l’échelle, 0 montre tout, Page suivante et Page précédente choisissent le forage suivant et le précédent, Entrée l’ouvre. Chaque forage montré ici est aussi dans la liste.',
    splitter: 'Largeur de la liste',
    show: 'Montrer la carte',
    zoomIn: 'Agrandir',
    zoomOut: 'Réduire',
    all: 'Tout montrer',
    north: 'N',
    compass: { north: 'N', south: 'S', east: 'E', west: 'O' },
    metres: (n) => `${n} m`,
    kilometres: (n) => `${n} km`,
    legend: 'Signes',
    noState: 'sans état',
    withoutPosition: (n) =>
      n === 1
        ? 'Un forage est sans position et n’est pas sur la carte.'
        : `${n} forages sont sans position et ne sont pas sur la carte.`,
    leftOut: (n, most) =>
      `La carte montre ${most} forages ; ${n} autres sont retenus. Filtrez pour les voir.`,
    nothing: 'Aucun forage retenu n’a de position.',
    backdrops: 'Fond',
    addBackdrop: 'Ajouter une limite …',
    addHint: 'Un fichier GeoJSON de contours ou de lignes, en WGS 84, jusqu’à 5 Mo',
    added: (name, shapes) =>
      shapes === 1
        ? `${name} est placé sous les forages.`
        : `${name} (${shapes} formes) est placé sous les forages.`,
    pointsLeftOut: (n) =>
      n === 1
        ? 'Un point qu’il contient a été laissé de côté.'
        : `${n} points qu’il contient ont été laissés de côté.`,
    tooLarge: (name) =>
      `${name} : le fichier dépasse 5 Mo. Simplifiez ses contours, ou découpez-le à la zone des forages.`,
    remove: (name) => `Retirer le fond ${name}`,
    removed: (name) => `${name} a été retiré.`,
  },
};
