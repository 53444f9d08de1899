/**
 * What the service does not do, by the code of its refusal. Its own English sentence names files,
 * revisions and limits besides; what has no text here is said in that sentence.
 */
export const refusals = {
  otherXml:
    'Le fichier est du XML d’une sorte qui ne se lit pas. Demandez du GroundWaterML 2 ou des tableaux.',
  otherJson:
    'Le fichier est du JSON d’une sorte qui ne se lit pas. Écrivez-le en listes de lignes simples ou en tableaux (CSV, XLSX), et dites ce que leurs colonnes veulent dire.',
  exportNotWritten:
    'Le dossier n’a pas pu être écrit. Faites de la place sur le disque, ou voyez qui peut y écrire.',
  tooManyExported:
    'Les forages sont trop nombreux pour sortir d’un coup. Choisissez-en moins par les filtres, ou écrivez-les par la ligne de commande.',
  gwmlNoWells:
    'Le document GroundWaterML ne contient ni puits ni forage ; rien d’autre n’en est lu.',
  xmlBroken: 'Le fichier n’est pas du XML entier. Demandez-le de nouveau.',
  xmlDoctype:
    'Le fichier apporte son propre type de document (DOCTYPE), qui fait plus que nommer de courts textes et n’est pas lu. Demandez le fichier sans lui.',
  ags3: 'Le fichier est en AGS 3, et seul AGS 4 se lit. Demandez-le en AGS 4, ou enregistrez ses groupes en tableaux (CSV, XLSX) et dites ce que leurs colonnes veulent dire.',
  agsNoHoles: 'Le fichier AGS ne contient aucun forage. Demandez un fichier avec le groupe LOCA.',
  geoJsonBroken: 'Le fichier n’est pas du JSON entier. Écrivez-le de nouveau.',
  geoJsonGrid:
    'Le fichier nomme son propre système de coordonnées. Convertissez-le en degrés WGS 84, puis relisez-le.',
  noSuchIssue: 'L’archive ne contient pas ce document. Choisissez-en un qu’elle liste.',
  staleRevision: 'Le forage a une révision plus récente. Émettez le document de celle-là.',
  notTheSamePaper:
    'Ce qui a été signé n’est pas le document que l’archive garde. Rouvrez le document et signez celui-là.',
  notKept:
    'Le certificat n’a pas pu être gardé. Faites de la place sur le disque, ou voyez qui peut y écrire, puis réessayez.',
  noSuchIdentity:
    'Ce certificat n’est pas sur cet ordinateur. Créez-en un, ou reprenez votre propre fichier.',
  unrevised:
    'Quelque chose a été saisi qui n’est encore dans aucune révision. Faites d’abord une révision, puis émettez le document.',
  unexplained:
    'Des constats parmi les plus graves ne sont ni corrigés ni expliqués. Corrigez la fiche, ou écrivez à côté du constat pourquoi il doit rester ; puis émettez le document.',
  backupFailed:
    'La copie de sécurité n’a pas pu être relue et n’a pas été gardée. Vérifiez que le disque est sain et qu’il y reste de la place.',
  noSuchBackup:
    'Cette copie de sécurité n’est pas dans son dossier. Choisissez-en une de la liste.',
  newerBackup:
    'Cette copie vient d’une version plus récente du programme. Installez-la pour la reprendre ; l’archive a été laissée telle quelle.',
  brokenBackup:
    'Cette copie n’est pas intacte : une révision n’y est plus telle qu’elle a été enregistrée. L’archive a été laissée telle quelle.',
  fileExists: 'Un fichier porte déjà ce nom. Choisissez-en un qui n’existe pas encore.',
  bringing:
    'Des forages sont en train d’entrer dans l’archive. Rien n’a été enregistré ; réessayez quand ce sera fini, ou arrêtez-le.',
  stopped: 'C’est arrêté : rien n’est entré dans l’archive, et tout est comme avant.',
  typedSince:
    'Dans un des forages, quelque chose a été saisi qui n’est dans aucune révision. Ouvrez-le et enregistrez-le d’abord. Rien n’a été changé.',
  wellInBin:
    'Un des forages est dans la corbeille. Reprenez-le, ou videz d’abord la corbeille. Rien n’a été changé.',
  nothingFound:
    'Aucun forage n’a pu être retrouvé dans ce fichier. Cherchez une copie de sécurité, ou une autre copie du fichier.',
  sameArchive: 'C’est l’archive qui est ouverte. Choisissez-en une autre.',
  newerArchive:
    'Cette archive vient d’une version plus récente du programme. Installez-la pour la reprendre ici ; rien n’a été changé.',
  noSuchStep: 'Ce forage n’attend plus de choix. Regardez de nouveau l’archive.',
  badArguments:
    'Le programme n’a pas compris ce que la page lui a envoyé. Rien n’a été fait. Rechargez la page, puis réessayez.',
  badBox:
    'La case du sceau ne convient pas : elle doit se trouver sur une page du fichier et ne pas dépasser 120 mm sur 60 mm.',
  badCopy: 'La copie à imprimer n’est pas une image JPEG. Ajoutez le fichier encore une fois.',
  brokenBefore:
    'Rien n’a été scellé : les sceaux que porte déjà le fichier ne sont plus intacts. Repartez du fichier tel qu’il a été émis.',
  busy: 'Un autre programme écrit dans l’archive. Réessayez quand il aura fini ; rien n’a été enregistré.',
  cannotOpen:
    'L’archive ne peut pas être ouverte. Vérifiez que son dossier existe et que vous pouvez y écrire.',
  changedFile:
    'Ce fichier n’est plus celui qui a été gardé : il a été modifié hors du programme. Reprenez-le d’une copie de sécurité.',
  damaged:
    'L’archive est endommagée. Elle a été laissée telle quelle. Mettez-en une copie de côté, puis ouvrez le fichier le plus récent du dossier des copies de sécurité, juste à côté.',
  defect:
    'Le programme a échoué, par sa propre faute. Ce qui était montré comme étant sur le disque est gardé. Réessayez ; si cela se répète, fermez Borefolio et ouvrez-le de nouveau.',
  diskFull:
    'Le disque est plein : rien n’a été enregistré. Faites de la place, puis enregistrez de nouveau.',
  diskTrouble:
    'Le disque a signalé une erreur : rien n’a été enregistré. Vérifiez qu’il est toujours branché.',
  earlyCertificate: 'Le certificat n’est pas encore valable. Vérifiez la date de cet ordinateur.',
  expiredCertificate:
    'Le certificat n’est plus valable. Créez une nouvelle identité, ou demandez un nouveau certificat.',
  foreignKey:
    'L’identité contient un genre de clé avec lequel aucun sceau ne peut être fait ici. Conviennent : RSA de 2048 bits ou plus, ou ECDSA sur une courbe du NIST.',
  missingCertificate:
    'Le fichier ne contient aucun certificat qui aille avec sa clé : un sceau ne pourrait pas dire de qui il est. Choisissez le fichier qui contient les deux.',
  missingKey:
    'Le fichier contient un certificat sans sa clé : rien ne peut être signé avec lui. Choisissez le fichier qui contient les deux.',
  noArchive: 'Aucune archive n’est ouverte. Ouvrez-en une depuis le menu Fichier.',
  noFile: 'Cette archive n’existe pas. Vérifiez le nom et le dossier.',
  noFolder: 'Ce dossier n’existe pas. Créez-le d’abord.',
  noName: 'Un sceau nomme son signataire : donnez un nom.',
  noPrinting:
    'Cette fenêtre n’imprime pas elle-même. Ouvrez le PDF dans le navigateur et imprimez-le en taille réelle.',
  noSuchFile:
    'L’archive ne contient pas ce fichier. Ajoutez-le de nouveau, ou cherchez-le dans l’archive d’où vient la fiche.',
  noSuchPage: 'Le document n’a pas cette page. Choisissez-en une qu’il contient.',
  noSuchPrinter: 'Cet ordinateur n’a pas cette imprimante. Choisissez-en une autre.',
  noSuchRevision:
    'Le forage n’a pas cette révision. Choisissez-en une que son historique contient.',
  noSuchWell: 'L’archive ne contient pas ce forage. Cherchez-le dans la liste des forages.',
  notAnArchive:
    'Ce fichier est la base de données d’un autre programme. Choisissez un fichier fait par Borefolio.',
  notAnIdentity:
    'Le fichier ne contient aucune identité lisible. Choisissez le fichier fait pour le signataire, ou un fichier PKCS#12 (.p12, .pfx).',
  notAPdf: 'Seul un PDF s’imprime. Refaites le document.',
  notDegrees:
    'Le fichier contient des positions qui ne sont pas en degrés de longitude et de latitude. Exportez-le de nouveau en WGS 84 (EPSG:4326).',
  notGeoJson: 'Le fichier n’est pas du GeoJSON bien formé. Exportez-le de nouveau en GeoJSON.',
  nothingToDraw:
    'Le fichier ne contient ni contour ni ligne. Choisissez un fichier GeoJSON de limites, de routes ou de cours d’eau.',
  nothingToPrint: 'Aucun forage n’est choisi. Choisissez-en au moins un, puis imprimez.',
  notJson: 'Le fichier n’est pas du JSON, ou n’est pas entier. Choisissez un fichier entier.',
  notSealable:
    'Ce fichier n’est pas disposé de façon qu’un sceau puisse y être ajouté. Scellez un PDF écrit par Borefolio, tel qu’il a été écrit.',
  notThePage:
    'Seule la page de Borefolio peut demander cela. Servez-vous de la fenêtre que Borefolio a ouverte.',
  noViewer:
    'Aucun programme de cet ordinateur n’a ouvert le PDF. Installez-en un, ou exportez le PDF.',
  oldAndProtected:
    'Cette archive vient d’une version plus ancienne et doit être mise à jour, mais elle est protégée en écriture. Copiez-la là où vous pouvez écrire, puis ouvrez la copie.',
  oldCipher:
    'Le fichier est verrouillé d’une façon dépassée, qui n’est pas lue ici. Faites-le récrire avec AES-256 par le programme qui l’a fait.',
  otherWell:
    'La fiche est celle d’un autre forage que celui qui est ouvert. Ouvrez cet autre forage, ou remettez l’identifiant.',
  printerRefused:
    'L’imprimante n’a pas pris le PDF. Vérifiez qu’elle est allumée et branchée, puis réessayez.',
  readOnly:
    'Cette archive peut être lue et imprimée, mais pas modifiée : elle est protégée en écriture, ou vient d’une version plus récente de Borefolio. Copiez-la là où vous pouvez écrire, ou installez la nouvelle version.',
  recordTooNew:
    'Cette fiche a été faite par une version plus récente de Borefolio. Installez la nouvelle version pour l’ouvrir.',
  shortPassphrase:
    'La phrase de passe est trop courte : il faut au moins 8 lettres. Quelques mots à la suite se retiennent bien.',
  staleEdit:
    'Une saisie plus récente, faite dans une autre fenêtre, existe déjà. Rien n’a été enregistré. Reprenez d’abord cette saisie.',
  tooLarge:
    'C’est trop grand. Réduisez l’image, simplifiez les contours ou découpez le fichier, puis réessayez.',
  tooManyBackdrops: 'La carte a déjà tous les fonds qu’elle peut avoir. Retirez-en un d’abord.',
  tooManyPages: 'Un fichier à imprimer contient 250 pages au plus. Choisissez moins de forages.',
  unknownCall:
    'Le programme ne connaît pas cette demande de la page. Rechargez la page, puis réessayez.',
  unknownKind:
    'Ce fichier n’est ni une image JPEG, PNG ou WebP, ni un PDF. Enregistrez-le sous une de ces formes, puis ajoutez-le de nouveau.',
  unreachable:
    'Le programme ne répond pas. Laissez cette page ouverte et lancez Borefolio de nouveau.',
  unreadable: 'La fiche ne peut pas être lue. Reprenez une révision antérieure.',
  wellExists:
    'L’archive contient déjà un forage avec cet identifiant. Ouvrez-le, ou ôtez l’identifiant de la fiche pour en faire un autre forage.',
  practiceUnknown:
    'Cette règle de l’art, ou celle dont elle part, n’est pas là. Choisissez-en une autre, ou ajoutez celle qui manque.',
  practiceRound:
    'Cette règle de l’art part d’elle-même par un détour. Changez celle dont elle part.',
  practiceIncomplete:
    'Il manque à cette règle de l’art une valeur ou sa source. Faites-la partir d’une autre qui l’a, ou ajoutez-la.',
  templateUnread:
    'Ce fichier n’est pas encore un modèle de papier, ou un logo ne s’ouvre pas. Corrigez-le et recommencez.',
  noSuchTemplate: 'L’archive n’a plus ce modèle de papier. Choisissez-en un de la liste.',
  tooManyTemplates:
    'L’archive a déjà tous les modèles de papier qu’elle peut avoir. Retirez-en un d’abord.',
  practiceUnread:
    'Ce fichier n’est pas encore une règle de l’art entière. Reprenez un fichier que ce programme a écrit, ou corrigez-le d’après docs/practices.md.',
  practiceShipped:
    'Cette règle de l’art vient avec le programme et reste telle quelle. Donnez un autre identifiant à la vôtre et faites-la partir de celle-là.',
  practiceInUse: 'Une autre règle de l’art part de celle-ci. Faites-la d’abord partir d’une autre.',
  guidelinesUnknown:
    'Ce jeu de valeurs guides, ou celui dont il part, n’est pas là. Choisissez-en un autre, ou ajoutez celui qui manque.',
  guidelinesRound:
    'Ce jeu de valeurs guides part de lui-même par un détour. Changez celui dont il part.',
  guidelinesIncomplete:
    'Il manque à ce jeu de valeurs guides un nom, une unité ou une source. Faites-le partir d’un autre qui l’a, ou ajoutez-les.',
  guidelinesUnread:
    'Ce fichier n’est pas encore un jeu de valeurs guides entier. Corrigez-le d’après docs/water-quality.md, ou reprenez-en un autre.',
  guidelinesShipped:
    'Ce jeu de valeurs guides vient avec le programme et reste tel quel. Donnez un autre identifiant au vôtre et faites-le partir de celui-là.',
  guidelinesInUse:
    'Un autre jeu de valeurs guides part de celui-ci. Faites-le d’abord partir d’un autre.',
  wrongPassphrase:
    'La phrase de passe n’ouvre pas cette identité. Vérifiez les majuscules et la langue du clavier, puis réessayez.',
  notWorkbook:
    'Ce fichier n’est pas un classeur entier. Ouvrez-le dans un tableur et enregistrez-le de nouveau en XLSX.',
  workbookTooLarge:
    'Déplié, ce classeur prendrait trop de place et n’a pas été ouvert. Enregistrez la feuille voulue dans un fichier à elle.',
  binderStopped:
    'Le classeur a été arrêté. Ce qui est fait est gardé : relancé, il reprend où il en était.',
  binderRuns: 'Un autre classeur est en cours. Attendez qu’il soit fini, ou arrêtez-le.',
  noWellsToBind:
    'Aucun forage ne répond à ce choix. Choisissez-en d’autres, puis reliez de nouveau.',
  noSuchBinder:
    'L’archive ne garde pas de classeur de ce nom. Choisissez-en un de la liste, ou gardez-en un nouveau.',
  noBinding:
    'Cette fenêtre ne peut pas faire de classeur. Ouvrez l’archive avec le programme ou sa ligne de commande.',
  noImport: 'Aucun fichier n’est ouvert pour être importé. Choisissez-les de nouveau.',
  badMapping:
    'Cette correspondance de colonnes n’est pas entière. Choisissez une colonne pour chaque champ nécessaire.',
};
