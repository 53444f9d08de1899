import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const frenchService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {
  'dates.order': {
    title: 'Dates dans le désordre',
    sentence: '{later} ({laterOn}) précède {earlier} ({earlierOn}).',
    why: 'Un site est convenu, puis le forage exécuté et terminé ; seul un trou terminé se développe, s’essaie et se réceptionne : l’une des deux dates est fausse.',
    todo: 'Comparer les deux dates avec le carnet de chantier et corriger celle qui est fausse.',
  },
  'samples.sparse': {
    title: 'Mètres sans échantillon',
    sentence:
      '{bareM} m du trou sont sans échantillon, les premiers de {fromM} m à {toM} m ; il en faut un tous les {eachM} m.',
    why: 'Une couche que personne n’a étalée peut échapper, et crépine et bouchons se placent d’après les échantillons.',
    todo: 'Écrire les échantillons prélevés ; là où rien n’est remonté, le dire dans la coupe, et n’y placer ni crépine ni bouchon au jugé.',
  },
  'pad.thin': {
    title: 'Dalle en béton trop mince',
    sentence: 'La dalle en béton a {built} m d’épaisseur ; il en faut au moins {least} m.',
    why: 'Une dalle mince se fissure, et l’eau répandue descend le long du tubage.',
    todo: 'Mesurer l’épaisseur au bord ; si elle est bien telle, chercher les fissures et faire refaire ou épaissir la dalle.',
  },
  'pad.small': {
    title: 'Dalle en béton petite',
    sentence:
      'Le petit côté de la dalle en béton mesure {built} m ; au moins {least} m est conseillé.',
    why: 'L’eau répandue par les usagers tombe à côté d’une petite dalle et détrempe le sol autour du tubage.',
    todo: 'Mesurer les deux côtés ; si c’est bien cela, élargir la dalle ou paver autour avec une pente qui éloigne l’eau du forage.',
  },
  'drain.short': {
    title: 'Rigole courte',
    sentence: 'La rigole a {built} m de long ; au moins {least} m est courant.',
    why: 'Une rigole courte laisse une mare près du forage, où boivent les bêtes et naissent les moustiques.',
    todo: 'Mener l’eau plus loin, vers un puits perdu ou un jardin, plus bas que la dalle.',
  },
  'drain.flat': {
    title: 'Rigole trop plate',
    sentence: 'La rigole a une pente de {built} % ; il en faut au moins {least} %.',
    why: 'L’eau stagne dans une rigole plate, qui s’envase et déborde sur la dalle.',
    todo: 'Vérifier la pente au niveau ou en versant de l’eau ; faire reprendre la rigole là où l’eau stagne.',
  },
  'near.latrine': {
    title: 'Latrine proche du forage',
    sentence:
      'Une latrine se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Les germes d’une fosse voyagent avec l’eau du sous-sol vers un forage pompé.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. La faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.septicTank': {
    title: 'Fosse septique proche du forage',
    sentence:
      'Une fosse septique se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Les fosses fuient par leurs joints, et la fuite atteint la nappe sans être filtrée.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. La faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.soakaway': {
    title: 'Puits perdu proche du forage',
    sentence:
      'Un puits perdu se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Il est fait pour infiltrer des eaux usées, que le forage peut attirer.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Le faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.livestock': {
    title: 'Bétail proche du forage',
    sentence: 'Du bétail est gardé à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Fumier et urine apportent germes et nitrates à la nappe peu profonde, et les bêtes souillent la dalle.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Le faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.graveyard': {
    title: 'Cimetière proche du forage',
    sentence:
      'Un cimetière se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Ce qui se décompose dans les tombes descend avec la pluie pendant bien des années.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Choisir un autre site, en amont ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.wasteDump': {
    title: 'Décharge proche du forage',
    sentence:
      'Une décharge se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'La pluie lave des déchets sels, métaux et germes, et nul ne sait tout ce qui y a été jeté.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. La faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.fuel': {
    title: 'Carburant ou produits proches du forage',
    sentence:
      'Un dépôt de carburant ou de produits se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Un peu de carburant ou de pesticide gâte beaucoup d’eau, et le sol ne le retient pas.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Le faire déplacer ou fermer, ou choisir un autre site ; une distance respectée ne prouve rien sur l’eau.',
  },
  'near.openWater': {
    title: 'Eau libre proche du forage',
    sentence:
      'Un plan ou cours d’eau se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Un cours d’eau ou une mare peut inonder le forage, et un forage voisin attire l’eau de surface.',
    todo: 'Mesurer de nouveau aux hautes eaux. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Élever dalle et tubage au-dessus des plus hautes crues, ou choisir un autre site.',
  },
  'near.building': {
    title: 'Bâtiment proche du forage',
    sentence:
      'Un bâtiment se trouve à {distance} m du forage, {slope} ; il faut au moins {limit} m.',
    why: 'Les eaux du toit et les eaux usées vont vers le forage, et aucune foreuse n’y accède plus.',
    todo: 'Mesurer de nouveau. Consulter les règles locales : la plus stricte qui s’applique l’emporte. Éloigner du forage les eaux du toit et les eaux usées, et garder un accès pour une foreuse.',
  },
  'pit.nearWater': {
    title: 'Fond de fosse proche de l’eau',
    sentence:
      'Le fond d’une fosse, à {baseM} m, est à moins de {limitM} m au-dessus du plus haut niveau statique lu, {restM} m, si son sol est à la hauteur de celui du forage.',
    why: 'Les germes meurent dans le terrain sec au-dessus de l’eau ; si la fosse y touche ou presque, ils partent avec l’eau.',
    todo: 'Mesurer de combien le sol de la fosse est plus haut ou plus bas ; faire relever, surélever ou déplacer la fosse, selon la règle locale la plus stricte qui s’applique.',
  },
  'intake.shallow': {
    title: 'Aspiration proche ou au-dessus du niveau d’eau',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, est à moins de {underM} m sous le plus bas niveau d’eau connu, {levelM} m.',
    why: 'Une pompe qui aspire de l’air donne moins, s’use et peut griller.',
    todo: 'Descendre la pompe si la crépine et le fond le permettent, ou pomper à plus faible débit ; si le niveau a été lu à un débit plus fort que celui de la pompe, le calculer pour ce débit.',
  },
  'intake.inScreen': {
    title: 'Aspiration au droit d’une crépine',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, pend dans la crépine, de {screenTopM} m à {screenBottomM} m.',
    why: 'L’eau se précipite par les fentes voisines, entraîne du sable et use l’une et l’autre.',
    todo: 'Placer la pompe dans un tube plein, au-dessus de la crépine si le niveau d’eau le permet ; sinon garder un débit faible et surveiller le sable.',
  },
  'intake.low': {
    title: 'Aspiration proche du fond',
    sentence:
      'L’aspiration de la pompe, à {intakeM} m, est à moins de {aboveM} m au-dessus du fond du forage, {footM} m.',
    why: 'Sable et limon se déposent au fond ; la pompe les aspirerait ou s’y trouverait prise.',
    todo: 'Remonter la pompe si le niveau d’eau le permet ; sonder le fond, et le faire curer s’il s’est comblé.',
  },
  'development.short': {
    title: 'Développement court',
    sentence: 'Le forage a été développé {hours} h en tout ; il faut au moins {leastH} h.',
    why: 'Les fines et la boue restées dans le massif et la paroi retiennent l’eau, et sortent plus tard avec le sable.',
    todo: 'Poursuivre le développement, doucement d’abord, jusqu’à une eau qui reste claire et un niveau stable ; sonder le massif et le compléter s’il s’est tassé.',
  },
  'development.turbid': {
    title: 'Eau trouble en fin de développement',
    sentence:
      'Le développement s’est achevé à {value} NTU de turbidité ; au plus {most} NTU est voulu.',
    why: 'L’eau trouble use la pompe, protège les germes du chlore et rebute les usagers.',
    todo: 'Poursuivre le développement jusqu’à une eau qui reste claire ; sinon, chercher de la boue restée dans le massif ou une crépine au droit d’une argile.',
  },
  'development.sandy': {
    title: 'Sable en fin de développement',
    sentence:
      'Le développement s’est achevé avec {value} mg/l de sable ; au plus {most} mg/l est voulu.',
    why: 'Le sable use pompe et crépine, comble le tube à sédiments et laisse des vides dans le terrain.',
    todo: 'Poursuivre le développement, doucement ; si le sable ne diminue pas, vérifier fentes et massif d’après le terrain, et si le massif a formé un pont.',
  },
  'contact.short': {
    title: 'Chlore pompé trop tôt',
    sentence: 'Le chlore est resté {hours} h dans le forage ; il faut au moins {leastH} h.',
    why: 'Le chlore a besoin de temps pour atteindre le massif et tuer ce qui vit sur les tubes et la paroi.',
    todo: 'Désinfecter de nouveau et laisser agir le chlore, forage fermé aux usagers ; le rejeter loin des champs et des cours d’eau.',
  },
  'bacteria.undeveloped': {
    title: 'Bactéries cherchées avant la fin du développement',
    sentence:
      'Le dernier échantillon d’eau pour les bactéries a été prélevé le {takenOn} ; le développement a duré jusqu’au {endedOn}.',
    why: 'Le développement remonte ce que la foration a laissé dans le terrain, et change ce que contient l’eau.',
    todo: 'Prélever de nouveau, le développement étant fini ; ce que permet le résultat, c’est à l’autorité sanitaire de le dire.',
  },
  'bacteria.undisinfected': {
    title: 'Bactéries non cherchées depuis la désinfection',
    sentence:
      'Le dernier échantillon d’eau pour les bactéries a été prélevé le {takenOn}, avant la désinfection du forage.',
    why: 'Seul un échantillon prélevé après la désinfection montre si elle a atteint ce que la foration et la pompe ont apporté.',
    todo: 'Prélever de nouveau une fois le chlore pompé et disparu ; ce que permet le résultat, c’est à l’autorité sanitaire de le dire.',
  },
  'bacteria.soon': {
    title: 'Bactéries cherchées trop tôt',
    sentence:
      'L’eau a été prélevée pour les bactéries le {takenOn} ; le chlore a été pompé le {pumpedOffOn}, et il faut au moins {waitDays} j entre les deux.',
    why: 'Le chlore resté dans le massif et les tubes cache les bactéries, qui reviennent après quelques jours.',
    todo: 'Prélever de nouveau quand le chlore aura disparu depuis ce temps ; ce que permet le résultat, c’est à l’autorité sanitaire de le dire.',
  },
  'bacteria.chlorine': {
    title: 'Chlore dans un échantillon pour bactéries',
    sentence:
      'Le chlore libre était à {chlorineMgL} mg/l lors du prélèvement pour les bactéries ; il doit avoir disparu, au plus {mostMgL} mg/l.',
    why: 'Le chlore continue à tuer dans le flacon, et le laboratoire trouve moins que ce que contient le forage.',
    todo: 'Pomper jusqu’à disparition du chlore et prélever de nouveau ; ce que permet le résultat, c’est à l’autorité sanitaire de le dire.',
  },
  'handover.incomplete': {
    title: 'Manque pour la réception : {item}',
    sentence: 'Il manque au dossier {item}.',
    why: 'Qui réparera, autorisera ou suivra le forage dans dix ans n’aura que ce dossier.',
    todo: 'L’écrire maintenant, tant qu’on le sait ; si personne ne le sait plus, le dire dans les remarques.',
  },
  'report.late': {
    title: 'Rapport signé tard',
    sentence:
      'Le superviseur a signé le {signedOn}, {days} j après les derniers travaux du {endedOn} ; les rapports sont dus sous {dueDays} j.',
    why: 'Les registres reçoivent les rapports dans un délai, trous secs compris, et la mémoire s’efface.',
    todo: 'Déposer le rapport auprès de l’administration de l’eau ; c’est son délai à elle qui compte.',
  },
};
