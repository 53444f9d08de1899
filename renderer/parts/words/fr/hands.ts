import type { hands as english } from '../en/hands.ts';

/** Prendre le dessin en main. */
export const hands: typeof english = {
  edges: 'Limites sur le dessin',
  keys: 'Haut et Bas déplacent la limite de 0,01 m, avec Maj de 0,1 m, avec Ctrl de 0,5 m, Page préc. et Page suiv. de 1 m. Avec Alt, une partie se déplace seule. Gauche et Droite vont à la limite suivante, Entrée à sa ligne, Échap reprend le déplacement.',
  whileHeld: 'Pas de 0,01 m ; Maj 0,1 m, Ctrl 0,5 m. Alt ou A : une partie seule. Échap : retour.',
  at: (name, depth) => `${name} à ${depth}`,
  boundary: (above, below) => `Limite entre ${above} et ${below}`,
  top: (part) => `Haut : ${part}`,
  foot: (part) => `Pied : ${part}`,
  layer: 'couche',
  section: (diameter) => `trou Ø ${diameter}`,
  holeFoot: 'Fond du trou',
  level: 'Niveau d’eau',
  levels: {
    static: 'Niveau d’eau au repos',
    pumping: 'Niveau d’eau en pompage',
    recovering: 'Niveau d’eau en remontée',
  },
  strike: (number) => `Venue d’eau ${number}`,
  rise: (number) => `Remontée de la venue d’eau ${number}`,
  intake: 'Crépine d’aspiration de la pompe',
  cylinder: 'Haut du cylindre de la pompe',
  stringTop: (label) => `Haut de la colonne ${label}`,
  stringFoot: (label) => `Pied de la colonne ${label}`,
  joint: (label) => `Raccord de la colonne ${label}`,
  long: (part, length) => `${part} ${length}`,
  read: (reading) => `lecture ${reading}`,
  footAt: (depth) => `pied ${depth}`,
  stickUp: (height) => `hors sol ${height}`,
  computed:
    'Un raccord découle de la liste des tubes et ne se déplace pas seul. Changez les longueurs dans la liste, ou déplacez toute la colonne par son haut ou son pied.',
  screen: {
    tool: 'Crépine',
    toolSays:
      'Ajouter une crépine à une colonne : la tracer sur du tube plein ou taper ses profondeurs',
    how: 'Tracez sur le tube plein, du haut au pied de la crépine, ou tapez les deux profondeurs.',
    whileDrawn:
      'Pas de 0,01 m ; Maj 0,1 m, Ctrl 0,5 m. Près d’un raccord, la limite s’y place. Échap : retour.',
    string: 'Colonne',
    stringName: (label) => `Colonne ${label}`,
    from: 'De (m)',
    to: 'À (m)',
    put: 'Poser la crépine',
    close: 'Fermer',
    made: (from, to, length) => `crépine ${from}–${to}, ${length}`,
    done: (from, to) =>
      `Une crépine de ${from} à ${to} a été mise dans la liste des tubes. Ses raccords ne sont pas encore connus.`,
    tooShort: (least) => `Une crépine mesure au moins ${least}.`,
    inTheWay: (piece, from, to) =>
      `Entre ${from} et ${to} se trouve une autre pièce (${piece}) : seul le tube plein devient crépine.`,
    isScreen: 'Tout y est déjà en crépine.',
    beside: 'Aucune colonne de tubes ne s’y trouve.',
    unread: 'Il faut les deux profondeurs, comme 12,5.',
  },
  marks: {
    list: 'Constats sur cette page',
    show: 'Constats sur le dessin',
    letters: { error: '!', warning: '?', note: 'i' },
    name: (severity, title, depths) => `${severity} à ${depths} : ${title}`,
    range: (from, to) => `${from} à ${to}`,
    why: 'Pourquoi c’est important',
    todo: 'Que faire',
    source: 'Source',
    go: 'Aller au champ',
    close: 'Fermer',
  },
};
