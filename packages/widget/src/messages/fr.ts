import type { Catalog } from './catalog.js';
import { spokenFractions } from './fractions.js';

/** Every word on every element, in French. */
export const fr: Catalog = {
  texts: {
    common: {
      // Units and numbers
      inches: 'Pouces',
      centimeters: 'Centimètres',
      by: '{width} sur {height}',
      inInches: '{length} po',
      comma: ', ',

      // The block
      sizes: 'Mesures',
      finished: 'Taille finie',
      center: 'Centre',
      rounds: 'Tours',
      blocks: 'Blocs',
      kind: 'Sorte de bandes',
      plain: 'Tous les côtés égaux',
      curved: 'Larges et étroites (courbe)',
      log: 'Bande',
      wide: 'Bande large',
      narrow: 'Bande étroite',
      'strips-log': 'Coupe des bandes',
      'strips-wide': 'Coupe des bandes larges',
      'strips-narrow': 'Coupe des bandes étroites',
      'trim-oversize': 'Surplus',
      seam: 'Marge de couture',
      extra: 'Surplus par bande',
      more: 'Couture, recoupe, unité de mesure',
      layout: 'Disposition',
      spiral: 'Spirale',
      courthouse: 'Marches du palais',
      quarter: 'Quart',
      direction: 'Sens de couture',
      clockwise: 'Horaire',
      counterclockwise: 'Antihoraire',
      first: 'En premier à chaque tour',
      'first-wide': 'La paire large',
      'first-narrow': 'La paire étroite',
      'trim-after': 'Recouper',
      'trim-usual': 'Selon la coupe des bandes',
      'trim-round': 'Après chaque tour',
      'trim-log': 'Après chaque bande',
      'trim-never': 'Jamais',
      units: 'Unité de mesure',
      hand: 'Main qui coupe',
      'hand-right': 'Droite',
      'hand-left': 'Gauche',
      cornerstones: 'Carrés d’angle',
      solved: 'calculé',
      usual: 'exact',
      fractions: 'Insérer une fraction',
      less: 'Un pas de moins',
      greater: 'Un pas de plus',

      // What can be done with the answer
      actions: 'Avec ce résultat',
      copyText: 'Copier en texte',
      saveTables: 'Enregistrer les tableaux (CSV)',
      saveDrawing: 'Enregistrer le dessin (SVG)',
      printThis: 'Imprimer',
      copyLink: 'Copier le lien',
      copied: 'Copié.',
      copyByHand: 'La page n’a pas accès au presse-papiers : copier à la main.',

      // The answer
      headline: '{finished} fini, recouper à {unfinished}',
      stale: 'Ces chiffres ne correspondent pas encore aux mesures ci-dessus.',
      nothing: 'Il n’y a rien à montrer tant que les mesures ci-dessus ne sont pas lisibles.',
      summary: '{finished} fini, recouper à {unfinished}. Centre {center}. Tours : {rounds}.',
      show: 'Ce qui est dessiné',
      wholeBlock: 'Bloc entier',
      roundOf: 'Tour {round} sur {rounds}',
      cuts: 'coupes {cuts}',
      back: 'Retour',
      next: 'Suivant',
      turnedHalf:
        'Tourner le bloc d’un demi-tour. Poser les bords recoupés sur la ligne de la taille avec marges de couture.',
      turnedQuarter:
        'Tourner le bloc pour que le côté à recouper se trouve du côté de la main qui coupe.',
      facing:
        'Le bloc est posé comme il a été cousu. Poser les lignes de la règle sur les coutures.',

      trimChart: 'Tableau de recoupe',
      round: 'Tour',
      trimTo: 'recouper à {size}',
      sewnSize: 'avant recoupe {size}',
      side: 'Côté',
      allSides: 'tous les côtés',
      centerSeamToEdge: 'De la couture du centre au bord',
      lastSeamToEdge: 'De la dernière couture au bord',
      trimAway: 'À ôter',
      exactChart: 'Mesures après chaque tour',

      cutList: 'Liste de coupe',
      part: 'Pièce',
      fabric: 'Tissu',
      cut: 'Coupe',
      forOne: 'Pour 1 bloc',
      forBlocks: 'Pour {blocks} blocs',
      pieceCenter: 'Centre',
      pieceLogs: 'Bande {orders}',
      pieceCornerstone: 'Carré d’angle',
      stripList: 'Bandes à couper',
      stripWidth: 'Largeur',
      stripLength: 'Longueur pour 1 bloc',
      stripLengths: 'Longueur pour {blocks} blocs',

      warnings: 'Avant de couper',
      caution:
        'Un cutter rotatif est une lame nue : le refermer après chaque coupe, couper en s’éloignant de soi, garder les doigts loin du bord de la règle. Suivre la notice du fabricant.',
    },

    logCabin: {
      workshop: 'Autour de ce bloc',
      panelNeedsPlan: 'Saisir d’abord ci-dessus des mesures qui donnent un bloc.',
      use: 'Prendre {number}',
      any: 'libre',
      none: 'aucune',

      // Find a size
      panelFinder: 'Trouver des mesures qui tombent juste',
      findFinished: 'Taille finie ou de… à',
      findBoth: 'Les deux sortes',
      findGrid: 'Tout sur une grille de',
      findWishRatio: 'Rapport large : étroite',
      findWishCenter: 'Centre souhaité',
      findLimits: 'Limites',
      findCenter: 'Centre ou de… à',
      findLog: 'Bande ou de… à',
      findWide: 'Large ou de… à',
      findNarrow: 'Étroite ou de… à',
      findStrips: 'Bandes disponibles',
      findLeastTrim: 'Recouper au moins',
      fits: 'Blocs qui tombent juste',
      fitOrder: 'Les meilleurs d’abord, selon ces critères dans l’ordre :',
      fitBlock: 'Bloc',
      closestFits: 'Les plus proches qui tombent juste',
      reachable: 'Tailles possibles',
      fitWays: 'Variantes',
      fitLogs: 'Bande',
      fitWideNarrow: 'Large, étroite',
      fitStrips: 'Coupe des bandes',
      fitTrims: 'À ôter',
      fitFabric: 'Tissu, pouces carrés',
      fitFabricMetric: 'Tissu, cm²',
      showAllFits: 'En montrer jusqu’à 100',
      noFit: 'Rien ne tombe juste dans ces limites.',
      noSize: 'Aucune taille n’est possible dans ces limites.',

      // The same block in another size
      panelResize: 'Le même bloc dans une autre taille',
      resizeTo: 'Taille finie souhaitée',
      resized: 'Le bloc à cette taille, le plus proche d’abord',
      sideBySide: 'Tailles qui vont à côté de ce bloc dans un quilt',
      rowOf: 'Dans une rangée',
      rowMeets: '{own} de celui-ci, {others} de celui-là : {span}',

      // How many blocks
      panelStrips: 'Combien de blocs donnent mes bandes',
      stripsOf: '{fabric}, coupe {width} : nombre',
      stripLengthUsable: 'Longueur utile d’une bande',
      blocksMade: 'Blocs possibles : {blocks}.',
      blocksMadeAtLeast: 'Blocs possibles : au moins {blocks}.',
      blocksOf: 'Blocs obtenus',
      useBlocks: 'Calculer la liste de coupe pour {blocks}',

      // An arc
      panelArc: 'Courber la ligne de couleur en arc',
      arcAbout:
        'Les bandes de tissu restent les mêmes à tous les tours ; ce qu’on recoupe varie. Les angles où le large rencontre l’étroit sont alors aussi près d’un cercle que la grille le permet.',
      arcFinished: 'Taille finie',
      arcWidths: 'Largeurs tour par tour',
      arcOff: 'Écart à l’arc',
      arcCenter: 'Centre',
      arcRadius: 'Le centre fini mesure {center}. L’arc a un rayon de {radius}.',
      arcStraight: 'Le centre fini mesure {center}. Le plus proche est une ligne droite.',
      arcGreatest: 'L’angle le plus éloigné en est à {arc} ; dans le bloc ci-dessus, à {own}.',
      arcGreatestAlone: 'L’angle le plus éloigné en est à {arc}.',
      useArc: 'Prendre ces largeurs',

      // Side by side
      panelCompare: 'Comparer avec un autre bloc',
      otherBlock: 'L’autre bloc',
      keepBlock: 'Garder le bloc ci-dessus pour comparer',
      swapBlocks: 'Échanger',
      comparison: 'Côte à côte',
      figure: 'Donnée',
      thisBlock: 'Ce bloc',
      compareUnfinished: 'Recouper à',
      shareOf: 'Part visible de {fabric}',
      squareInches: '{area} po²',
      squareCentimeters: '{area} cm²',
      compareFabric: 'Tissu à la coupe',
      compareStrips: 'Bandes de {fabric}',
      stripsCut: '{length} de long sur {width}',
      comparePieces: 'Pièces à couper',
      compareTrims: 'Recoupes',
      compareBend: 'Brisure au centre',
      compareRadius: 'Rayon du cercle le plus proche',
      compareOff: 'Écart de l’angle le plus éloigné',
      degrees: '{number}°',
      spokenDegrees: '{number} degrés',
      percent: '{number} %',
      spokenPercent: '{number} pour cent',
      roughInches: '{number} po',
      spokenRoughInches: '{number} pouces',
      roughCentimeters: '{number} cm',
      spokenRoughCentimeters: '{number} centimètres',
      roughMillimeters: '{number} mm',
      spokenRoughMillimeters: '{number} millimètres',

      // Settings
      panelSettings: 'Aperçu en top de quilt',
      setting: 'Disposition des blocs',
      across: 'Blocs en largeur',
      down: 'Blocs en hauteur',
      quiltTop: '{blocks} blocs font un top fini de {finished}.',
      turnsWarning: 'Un imprimé à sens tourne avec son bloc.',

      // At the table
      panelTable: 'À la table, pas à pas',
      sewing: 'Bandes',
      'cut-first': 'Coupées à longueur d’abord',
      'to-strip': 'Cousues sur la bande de tissu',
      'strip-set': 'Première couture sur ensemble de bandes',
      mat: 'Tapis de coupe',
      'mat-fixed': 'Reste en place',
      'mat-turning': 'Tourne',
      rulerOnHand: 'Règle carrée disponible',
      matOnHand: 'Tapis disponible',
      layers: 'Épaisseurs à la fois',
      tools: 'Ce qu’il faut',
      toolsNeeded: 'Une règle carrée d’au moins {ruler} et un tapis d’au moins {mat}.',
      toolsNone: 'Rien n’est recoupé, donc aucune règle carrée n’est nécessaire.',
      layerCuts: 'Coupes (épaisseurs : {layers}, blocs : {blocks})',
      pieces: 'Pièces',
      cutsMade: 'Coupes',
      tableBegin: 'Pour commencer',
      tableRound: 'Tour {round}',

      // Seam
      panelSeam: 'Ma couture et les blocs inégaux',
      seamAbout:
        'Coudre trois bandes côte à côte comme d’habitude, repasser et mesurer la largeur des trois ensemble.',
      seamStrip: 'Largeur de coupe par bande',
      seamStrips: 'Nombre de bandes',
      seamMeasured: 'Largeur mesurée',
      seamExpected: 'Avec la couture de ce bloc, ce serait {expected}.',
      drift: 'Ce que cette couture fait à ce bloc',
      driftHow: 'Comment on recoupe',
      driftUntrimmed: 'Jamais',
      driftLast: 'Depuis la dernière couture',
      driftCenter: 'Depuis la couture du centre',
      driftShort: 'Trop petit de',
      driftLarge: 'Trop grand de',
      driftOversize:
        'Recoupé depuis la couture du centre, le bloc garde sa taille tant que chaque bande de tissu est coupée {oversize} plus large que la mesure exacte.',
      driftCovered: 'C’est le cas dans ce bloc.',
      rescueMeasured: 'Mesure des blocs, de bord brut à bord brut',
      rescueFinished: 'Taille finie voulue',
      rescue: 'Deux solutions',
      rescueWay: 'Solution',
      rescueTrim: 'Recouper tous au plus petit',
      rescueCope: 'Border chacun de bandes, recouper',
      rescueTrimTo: 'Recouper à',
      rescueQuilt: 'Top',
      copingStrips: 'Bandes de compensation',
      copingCut: 'Les couper toutes à {cut}, puis recouper.',
      copingMeasured: 'Bloc mesuré',
      copingFinished: 'Bande finie',

      // Sheets
      panelSheets: 'Imprimer le tableau et des feuilles en taille réelle',
      sheetKind: 'Feuilles',
      'sheets-trim': 'Gabarits de recoupe',
      'sheets-foundation': 'Fondation papier',
      sheetRound: 'Tours',
      everyRound: 'Chaque tour',
      paper: 'Papier',
      letter: 'Lettre US',
      a4: 'A4',
      sheetCount:
        'Pages : {pages}. Imprimer à 100 %, sans mise à l’échelle, et mesurer le carré sur chaque page.',
      sheetUse:
        'Elles servent à vérifier et à tracer, ou se collent sous une règle en acrylique. Ne jamais couper le long du papier.',
      foundationUse: 'Elle est inversée : coudre sur le côté imprimé, dans l’ordre des numéros.',
      firstSheet: 'La première page, en petit',
      printChart: 'Imprimer le tableau',
      printSheets: 'Imprimer les feuilles',
      saveSheets: 'Enregistrer les feuilles dans un fichier',
      printed: 'Feuilles à imprimer',
    },

    fabric: {
      pieces: 'Pièces à couper',
      piece: 'Pièce {number}',
      count: 'Nombre',
      'strip-width': 'Largeur de bande',
      'piece-length': 'Longueur',
      'piece-fabric': 'Tissu',
      'piece-may': 'Autorisé',
      'may-': 'comme indiqué',
      'may-turned': 'tourner',
      'may-joined': 'raccorder',
      'add-piece': 'Ajouter une pièce',
      'remove-piece': 'Retirer la pièce {number}',
      remove: 'Retirer',
      width: 'Laize utile',
      precut: 'Acheté en',
      'precut-': 'Tissu au mètre',
      'precut-fat-quarter': 'Fat quarters',
      'precut-fat-eighth': 'Fat eighths',
      'precut-strip-2-1/2': 'Bandes de 2 1/2 pouces',
      'precut-square-5': 'Carrés de 5 pouces',
      'precut-square-10': 'Carrés de 10 pouces',
      'pack-of': 'Vendu par paquets de',
      increment: 'Le magasin coupe par',
      'increment-eighths': 'Huitièmes de yard',
      'increment-thirds': 'Huitièmes et tiers de yard',
      'increment-tenths': 'Dixièmes de mètre',
      method: 'Coupe',
      'method-': 'Ce qui fait acheter le moins',
      'method-plain': 'Simple : une largeur par bande',
      'method-thrifty': 'Économe : bouts recoupés, pièces tournées',
      join: 'Raccord des bandes',
      'join-diagonal': 'En biais',
      'join-straight': 'Droit',
      straightening: 'Pour mettre d’équerre',
      spare: 'En réserve',
      'spare-usual': 'une bande',
      shrinkage: 'Rétrécit au lavage de',
      layers: 'Épaisseurs à la fois',
      'more-fabric': 'Lavage, équerre, épaisseurs, unité',
      'on-hand': 'Tissu disponible',
      'on-hand-piece': 'Tissu {number}',
      'on-hand-width': 'Largeur utile',
      'on-hand-length': 'Longueur utile',
      'on-hand-corner': 'Coin manquant',
      'add-on-hand': 'Ajouter un tissu disponible',
      'remove-on-hand': 'Retirer le tissu {number}',

      buy: 'Acheter {yards}',
      buyFabric: 'Acheter {yards} de {fabric}',
      meters: 'ou {meters}',
      need: 'Bandes {bare}, réserve {spare}, mise d’équerre {straightening}, lavage {shrinkage} : {need} en tout.',
      proven: 'Aucun plan à une largeur par bande n’en prend moins.',
      provenThrifty: 'Aucun plan, simple ou économe, n’en prend moins.',
      purchaseProven: 'Aucun plan à une largeur par bande n’en fait acheter moins.',
      purchaseProvenThrifty: 'Aucun plan, simple ou économe, n’en fait acheter moins.',
      unproven: 'Il en faut au moins {lowerBound} ; on ne sait pas si moins suffirait.',
      purchaseUnproven: 'On ne sait pas si un plan économe en ferait acheter moins.',
      thriftySaves: 'La coupe économe fait gagner {saved} : {cuts} coupes au lieu de {plainCuts}.',
      thriftySame:
        'La coupe économe fait acheter autant. Ses bandes prennent {saved} de moins : {cuts} coupes au lieu de {plainCuts}.',
      thriftyNothing: 'La coupe économe ne fait rien gagner ici.',
      leftOver: 'Reste : {leftOver}.',
      share: 'Les pièces occupent {percent} % des bandes.',
      steps: 'Comment couper',
      row: 'Rangée {row} sur {rows}',
      moreRows: 'Les rangées suivantes se coupent comme le disent les étapes.',
      block: 'Couper dans la longueur',
      beside: 'À côté des pièces, il reste : {rests}.',
      joins: 'Où tombent les raccords',
      joinsIn: 'Pièce {number}, exemplaire {copy} : à {places} de son début.',
      moreJoins: 'Les autres raccords suivent de même.',
      handAll: 'Tout peut se couper dans le tissu disponible',
      handAllFabric: 'Tout ce qui est en {fabric} peut se couper dans le tissu disponible',
      handSome: 'Dans le tissu disponible : {cut} pièces sur {pieces}. Il manque encore :',
      missing: '{count} fois la pièce {number}, {size}',
      sets: 'Jeux complets de la liste dans le tissu disponible : {sets}.',
      setsUnproven: 'Jeux complets de la liste dans le tissu disponible : {sets}, au plus {bound}.',
      precutsNeeded: '{kind} : {count}',
      precutsNeededFabric: '{kind}, {fabric} : {count}',
      packs: 'Paquets de {packOf} : {packs}, reste {spare}',
      usableSize: 'Partie utile de chacun : {size}.',
      precutsProven: 'Moins ne suffirait pas.',
      unfit: 'On ne peut pas y couper :',
      alike: '{count} à couper de même',
      working: 'Calcul du métrage minimal…',
    },

    quilt: {
      choices: 'Le quilt',
      size: 'Taille',
      ownSize: 'Taille libre, {across} × {down} blocs',
      across: 'Blocs en largeur',
      down: 'Blocs en hauteur',
      moreQuilt: 'Laize, coupe, unité de mesure',
      'fabric-width': 'Laize utile',
      method: 'Coupe',
      'method-plain': 'Le moins de coupes',
      'method-thrifty': 'Le moins de tissu',
      colors: 'Toucher le carré de couleur d’un tissu pour en essayer une autre dans le dessin.',
      colorOf: 'Couleur de {fabric}',
      pageColors: 'Couleurs d’origine',
      fetching: 'Chargement du modèle…',
      working: 'Calcul de la coupe…',
      recipeFault: 'Ce modèle ne peut pas être montré.',
      tooManyCells: 'Il y a ici trop de blocs pour un dessin.',
      quiltHeadline: '{finished} fini',
      patternSize: '{name}, {size}',
      inRows: '{across} × {down} blocs en rangées',
      onPoint: '{across} × {down} blocs sur la pointe',
      quiltSummary: '{size} : {finished} fini. {buys}',
      buyOne: '{fabric} : {yards}',
      toBuy: 'À acheter',
      buyAmount: 'Quantité',
      usableWidth: 'laize {width}',
      orAmount: 'ou {amount}',
      price: 'Prix',
      perYard: '{money} le yard',
      perMeter: '{money} le mètre',
      allFabrics: 'Tous les tissus',
      forBacking: 'doublure',
      batting: 'Molleton',
      atLeast: 'au moins {size}',
      package: '1 paquet de {size}',
      ofRoll: '{amount} au rouleau, laize {width}',
      howToCut: 'La coupe',
      cutFabric: '{fabric} : {yards}',
      piece: 'Pièce',
      howMany: 'Nombre',
      pieceOf: '{block}, {piece}',
      cutOnce: 'coupé une fois en diagonale',
      cutTwice: 'coupé deux fois en diagonale',
      steps: 'Couper le tissu {fabric}',
      backingSteps: 'Couper la doublure dans {fabric}',
      cutWhole: 'Couper {strips} bandes de {width} dans la largeur du tissu.',
      cutWholeOne: 'Couper 1 bande de {width} dans la largeur du tissu.',
      row: 'Rangée {row} sur {rows}',
      moreRows: 'Les rangées suivantes se coupent comme le disent les étapes.',
      piecesNumbered:
        'Les numéros sont ceux des pièces du tableau ; dans les cercles, ceux des étapes.',
      partSash: 'bande intercalaire',
      partCornerstone: 'cabochon',
      partSideTriangle: 'triangle de côté',
      partCornerTriangle: 'triangle d’angle',
      partBorder: 'bordure {border}',
      partBorderCorner: 'bordure {border}, angle',
      partBinding: 'biais de finition',
      blocksTitle: 'Blocs',
      makeBlocks: 'En faire {count} : {finished} fini, {unfinished} avec marges de couture.',
      forBorders: 'Dont {count} pour les bordures.',
      topTitle: 'Le top',
      topSize: 'Les blocs assemblés mesurent {finished} finis.',
      rowsBlocks: 'Rangée par rangée depuis le haut, chacune depuis la gauche',
      rowsTurns:
        'Quarts de tour dans le sens horaire, rangée par rangée depuis le haut, chacune depuis la gauche',
      rowNumber: 'Rangée',
      rowBlocks: 'Blocs',
      rowTurns: 'Rotations',
      turned: '{block}, tourné de {turns}/4',
      times: '{count} × {block}',
      between: 'Entre les blocs et autour',
      finishedSize: 'Taille finie',
      bordersTitle: 'Bordures',
      bordersCaption: 'À couper d’après le top mesuré ; voici les mesures du plan',
      borderStrips: '{border}, {strips}',
      strips: 'Bandes',
      sides: 'côtés',
      topAndBottom: 'haut et bas',
      corners: 'carrés d’angle',
      unitsEach: '{count} blocs chacune',
      thenFinishes: 'le quilt fini mesure alors {finished}',
      finishingTitle: 'Finitions',
      backingOne: 'Doublure : au moins {target}, un lé de {panel} de long.',
      backingVertical:
        'Doublure : au moins {target} ; {panels} lés de {panel} de long, coutures verticales.',
      backingHorizontal:
        'Doublure : au moins {target} ; {panels} lés de {panel} de long, coutures horizontales.',
      battingFact: 'Molleton : au moins {target}.',
      bindingStraight:
        'Biais de finition : {strips} bandes de {strip}, raccordées en biais, donnent {length} ; il en faut {needed}.',
      bindingBias:
        'Biais de finition : {strips} bandes de {strip} coupées en biais dans {fabric} de tissu donnent {length} ; il en faut {needed}.',
      bindingContinuous:
        'Biais de finition : un biais continu de {strip}, {length} de long, dans des carrés de {square} (nombre : {squares}) ; il en faut {needed}.',
      kits: 'Kits pour un cours',
      people: 'Personnes',
      each: 'Chacune fait',
      eachCount: 'Nombre',
      eachQuilts: 'quilts entiers',
      eachBlocks: 'blocs : {block}',
      spares: 'Kits de réserve',
      onBolt: 'Métrage d’un rouleau',
      kitPrice: 'Prix d’un kit',
      kitMargin: 'Ou marge en %',
      kitsNone: 'Indiquer le nombre de personnes pour voir ce que contient et coûte chaque kit.',
      kitsWorking: 'Calcul des kits…',
      kitsHeadline: 'Kits : {kits}',
      kitMakes: 'Chacun donne {made}.',
      kitsTable: 'Pour la table de coupe, chaque longueur d’un seul tenant',
      kitLength: 'Par kit',
      kitsSeparate: 'Tous les kits',
      kitsPooled: 'Dans une seule longueur',
      kitsSaves: '{amount} de moins',
      bolts: 'Rouleaux',
      kitsPerBolt: '{kits} par rouleau',
      boltRemnant: 'reste {amount}',
      costTable: 'Ce que coûte un kit',
      costPart: 'Élément',
      cost: 'Coût',
      oneKit: 'Un kit',
      allKits: 'Tous les kits ({kits})',
      soldFor: 'Prix d’un kit',
      leftOfKit: 'Il en reste : {percent} %',
      leftOfAll: 'Reste pour {people} vendus, réserve payée',
      pooledNote:
        'Coupés tous dans une seule longueur, les kits prendraient moins de tissu, mais celui d’un kit ne serait plus d’un seul tenant.',
    },

    unit: {
      unit: 'Unité',
      method: 'Méthode',
      count: 'Nombre',
      unitSizes: 'Unité et mesures',
      'more-unit': 'Couture, surplus, unité de mesure',
      'finished-width': 'Largeur finie',
      'finished-height': 'Hauteur finie',

      headlineTrim: '{finished} fini, recouper à {trimTo}',
      headlineCut: '{finished} {meaning}, couper à {cut}',
      headlineStrip: '{finished} {meaning}, bandes coupées à {cut}',
      headlineSet: '{finished} {meaning}, ensemble de bandes coupé tous les {cut}',
      asSewn: 'L’unité',
      cutOf: 'Coupe {number} sur {cuts}',
      trimHow:
        'Poser les lignes de la règle sur les repères. Couper les deux bords, tourner l’unité d’un demi-tour, couper les deux autres.',
      shapeHow: 'On coud sur la ligne pointillée.',
      cutHow: '{label} : {count} par jeu de coupes, tissu {fabric}.',
      saveTemplate: 'Enregistrer ce gabarit en taille réelle (SVG)',
      templateSheet:
        'La feuille mesure {size}, avec des carrés de 1 pouce et de 5 cm à mesurer avant usage.',

      cutSize: 'Coupe',
      exactly: 'exactement {size}',
      forSet: 'Un jeu (donne {made})',
      forUnits: 'Pour {count}',
      diagonalOnce: 'une fois d’angle à angle',
      diagonalTwice: 'deux fois d’angle à angle',
      fromTop: 'du milieu du haut aux deux angles du bas',
      roundTemplate: 'autour du gabarit',
      atAngle: 'en biais dans une bande',

      unitSteps: 'Comment la réaliser',
      trimMarks: 'Repères de recoupe',
      mark: 'Repère',
      fromLeft: 'Depuis la gauche',
      fromTopEdge: 'Depuis le haut',
      span: '{from} à {to}',

      facts: 'Rendement, biais et droit-fil',
      yields:
        'Un jeu de coupes donne {made}. Pour {count}, il en faut {sets}, avec {leftOver} de reste.',
      perStrip: 'Une bande de {width} sur {usable} donne {perStrip}.',
      perSet: 'Un ensemble de bandes de {width} sur {usable} donne {perStrip} tronçons.',
      firstCut: 'La première coupe en biais ôte {first} à son extrémité.',
      biasEdges:
        'Bords en biais dans une unité : {outside} à l’extérieur, {seams} dans les coutures.',
      sewnFirst: 'Ceux des coutures sont cousus avant d’être coupés.',
      grainStraight: 'Droit-fil le long des bords : {fabrics}.',
      grainDiagonal: 'Droit-fil en biais par rapport aux bords : {fabrics}.',
      bonus: 'Les coins coupés donnent {count} triangles demi-carrés, finis jusqu’à {finished}.',

      compare: 'Méthodes côte à côte, pour {count}',
      figure: 'Donnée',
      cuts: 'Coupes d’un jeu',
      countOf: '{count} de {size}',
      makes: 'Un jeu donne',
      sets: 'Jeux',
      leftOver: 'Reste',
      fabricArea: 'Tissu, pouces carrés',
      fabricAreaMetric: 'Tissu, cm²',
      wasteArea: 'Dont coutures et chutes',
      biasHandled: 'Bords en biais manipulés',
      biasOutside: 'Bords en biais extérieurs',
      seams: 'Coutures',
      trims: 'Recoupes',
      chosen: 'choisie',
      refused: '{method} : {reason}',
    },
  },

  words: {
    finished: 'fini',
    'trim to': 'recouper à',
    center: 'centre',
    'center seam': 'couture du centre',
    'last seam': 'dernière couture',
    'trimmed edge': 'bord recoupé',
    hold: 'tenir',
    'selvage to selvage': 'de lisière à lisière',
    top: 'haut',
    right: 'droit',
    bottom: 'bas',
    left: 'gauche',
    wide: 'large',
    narrow: 'étroite',
    log: 'bande',
    cornerstone: 'carré d’angle',
    'inside curve': 'courbe intérieure',
    'outside curve': 'courbe extérieure',
    '1 inch': '1 pouce',
    '5 cm': '5 cm',
    'Print at 100 %.': 'Imprimer à 100 %.',
    'Measure both squares first.': 'Mesurer d’abord les deux carrés.',
    'Never cut against paper.': 'Ne jamais couper le long du papier.',

    // Settings of a quilt top
    'straight-furrows': 'Sillons droits',
    'barn-raising': 'Charpente de grange',
    'streak-of-lightning': 'Éclair',
    'sunshine-and-shadow': 'Ombre et lumière',
    circles: 'Cercles',

    // Units
    'unit half-square-triangles': 'Triangles demi-carrés',
    'unit quarter-square-triangles': 'Triangles quarts de carré',
    'unit split-quarter-squares': 'Quarts de carré et demi-carré',
    'unit flying-geese': 'Vol d’oies',
    'unit square-in-square': 'Carré dans le carré',
    'unit snowball': 'Boule de neige',
    'unit half-rectangle-triangles': 'Triangles demi-rectangles',
    'unit setting-triangles': 'Triangles de côté et d’angle',
    'unit diamond': 'Losange',
    'unit eight-pointed-star': 'Étoile à huit branches',
    'unit parallelogram': 'Parallélogramme',
    'unit trapezoid': 'Trapèze',
    'unit equilateral-triangle': 'Triangle équilatéral',
    'unit sixty-degree-half-triangles': 'Demi-triangles à 60 degrés',
    'unit hexagon': 'Hexagone',
    'unit four-patch': 'Quatre carrés',
    'unit nine-patch': 'Neuf carrés',
    'unit rail-fence': 'Barrière',
    'unit strip-set': 'Ensemble de bandes',
    'unit drunkards-path': 'Chemin de l’ivrogne',

    // Methods
    'two-at-a-time': 'Deux à la fois',
    'four-at-a-time': 'Quatre à la fois',
    'eight-at-a-time': 'Huit à la fois',
    'cut-triangles': 'Couper des triangles',
    'single-triangles': 'Triangles un à un',
    'stitch-and-flip': 'Coudre et rabattre',
    'from-strips': 'Dans des bandes',
    'half-hexagons': 'Demi-hexagones',
    'strip-set': 'Ensemble de bandes',
    'cut-squares': 'Couper des carrés',
    templates: 'Gabarits',

    // Inputs and choices
    'input side': 'Côté fini',
    'input long edge': 'Grand côté fini',
    'input height': 'Hauteur finie',
    'input block': 'Bloc fini',
    'input subcut': 'Largeur finie d’un tronçon',
    'input usable': 'Laize utile',
    'input corner': 'Coin fini',
    'input center': 'Centre fini',
    'input strips': 'Largeurs finies des bandes',
    'input radius': 'Rayon fini',
    'input angle': 'Angle en degrés',
    'input direction': 'Sens',
    'input rails': 'Bandes par unité',
    'input oversize': 'Surplus',
    'input rounds': 'Tours',
    'input corners': 'Coins',
    'input triangle': 'Triangle',
    'input slants': 'Pentes',
    'direction falling': 'descendante',
    'direction rising': 'montante',
    'direction both': 'les deux',
    'direction right': 'vers la droite',
    'direction left': 'vers la gauche',
    'triangle side': 'de côté',
    'triangle corner': 'd’angle',
    'slants both': 'les deux',
    'slants right': 'droite',
    'slants left': 'gauche',
    'named side': 'de côté fini',
    'named size': 'fini',
    'named long edge': 'de grand côté fini',
    'named height': 'de hauteur finie',
    'named block': 'de bloc fini',
    'named subcut': 'de tronçon fini',
    'mark diagonal': 'Couture à 45 degrés',
    'mark seam': 'Couture',
    'mark center': 'Ligne du milieu',
    'mark point': 'Pointe',
    'mark crossing': 'Rencontre des coutures',
    'sixty-degree': '60 degrés',
    'long edge': 'grand côté',
    subcut: 'tronçon',

    // What limits and errors speak of
    ratio: 'large : étroite',
    'true or false': 'true ou false',
    'two sides': 'deux côtés',
    'pieces of fabric': 'morceaux de tissu',

    // Parts and fabrics
    dark: 'foncé',
    light: 'clair',
    square: 'carré',
    rectangle: 'rectangle',
    'large triangle': 'grand triangle',
    goose: 'oie',
    sky: 'ciel',
    corner: 'coin',
    'second corner': 'second coin',
    base: 'carré de base',
    side: 'côté',
    strip: 'bande',
    rail: 'latte',
    setting: 'triangle',
    diamond: 'losange',
    background: 'fond',
    parallelogram: 'parallélogramme',
    trapezoid: 'trapèze',
    triangle: 'triangle',
    hexagon: 'hexagone',
    'first strip set': 'premier ensemble de bandes',
    'second strip set': 'second ensemble de bandes',
  },

  sentences: {
    logCabin: {
      'narrow-log':
        'Des bandes finies de {finished} sont plus étroites que deux marges de couture : chaque couture prendra les marges de la précédente.',
      'narrow-center':
        'Un centre fini de {finished} est plus étroit que deux marges de couture : ses coutures se chevaucheront.',
      'log-off-grid':
        'Une bande de tissu pour des bandes finies de {finished} fait exactement {exact}. Coupée à {cut}, elle ajoute {adds} à un bloc qui n’est pas recoupé.',
      'strip-off-grid':
        'Une bande de tissu de {exact} tombe entre deux lignes de la grille : elle se coupe à {cut}, et la recoupe ôte la différence.',
      'center-off-grid':
        'Le centre fait exactement {exact} à la coupe. Coupé à {cut}, il ajoute {adds} au bloc, sauf s’il est d’abord recoupé.',
      'finished-off-grid':
        'Le bloc fini fait {finished}, soit {by} au-delà d’une ligne de la grille de {grid}.',
      'trim-off-grid':
        'Au tour {rounds}, une ligne de recoupe tombe entre deux lignes de la grille de {grid}, {by} au-delà de l’une.',
    },
    drawing: {
      'block-title': 'Le bloc cousu : {finished} fini, recouper à {unfinished}',
      'block-description':
        'Un centre fini de {center} avec {logs} bandes en {rounds} tours, numérotées dans l’ordre de couture. La liste de coupe donne chaque mesure.',
      'trim-title': 'Tour {round}, pose {placement} sur {placements} : recouper à {trimTo}',
      'trim-description':
        'Le bloc sous une règle carrée, son bord sur la ligne de recoupe du côté {sides}. Le tableau de recoupe donne chaque distance.',
      'turns-title': 'Un top de {across} × {down} blocs, {finished} fini : {setting}',
      'turns-description':
        'Des blocs finis de {finished}, chacun tourné par quarts de tour, dans la disposition « {setting} ».',
      'round-template-title': 'Tour {round} : recouper à {trimTo}',
      'round-template-description':
        'La ligne extérieure est le bord recoupé, le carré épais la couture du centre, les lignes fines les dernières coutures.',
      'foundation-title': 'Fondation papier d’un bloc fini de {finished}, inversée',
      'foundation-description':
        'Coudre sur le côté imprimé, sur les lignes, dans l’ordre des numéros, depuis le centre. La ligne pointillée est le bord fini ; couper sur la ligne extérieure, une marge de couture au-delà.',
      'cutting-title': 'Tissu de {from} à {to} sur {length}',
      'cutting-description':
        '{strips} bandes dans la largeur du tissu, chacune avec le numéro de son étape ; les chiffres sur les pièces sont leurs numéros dans la liste.',
      'packing-title': 'Tissu de {width} sur {length}',
      'packing-description':
        'Pièces à y couper : {pieces}, chacune avec son numéro dans la liste ; ce qui est hachuré est de reste.',
      'packing-corner-description':
        'Pièces à y couper : {pieces}, chacune avec son numéro dans la liste ; ce qui est hachuré est de reste. Il manque un coin de {corner}.',
      'quilt-title': 'Un quilt de {across} × {down} blocs, {finished} fini',
      'quilt-on-point-title': 'Un quilt de {across} × {down} blocs sur la pointe, {finished} fini',
      'quilt-description':
        '{blocks} blocs finis de {block}. Bordures : {borders}. Chaque tissu a sa teinte et ses hachures.',
      'unit-title': 'L’unité cousue : {finished} fini, recouper à {trimTo}',
      'shape-title': 'La forme avec sa marge de couture : {finished} fini',
      'unit-description':
        'L’unité avec ses marges de couture et ses {patches} pièces, et le bord fini une marge de couture à l’intérieur.',
      'cut-title': 'À couper : {count} de {size}',
      'cut-description':
        'Une pièce avec sa mesure. On coupe sur les lignes pleines, on coud sur les fines. Les étapes disent dans quel ordre.',
      'template-title': 'Le gabarit « {piece} » : {size} avec sa marge de couture',
      'template-description':
        'La ligne pleine est le bord brut, on coud sur la pointillée ; le milieu de la courbe est marqué.',
    },
    table: {
      'cut-center': 'Couper le centre à {size}, tissu {fabric}.',
      'sew-strip-set':
        'Coudre dans la longueur une bande de {centerWidth} (tissu {centerFabric}) à une bande de {width} (tissu {fabric}), et coucher la marge de couture vers celle-ci au fer.',
      'subcut-strip-set':
        'Recouper l’ensemble de bandes tous les {length} : chaque tronçon est un centre avec la bande {order} du côté {side}.',
      'sew-log': 'Coudre la bande {order}, {width} sur {length}, tissu {fabric}, du côté {side}.',
      'sew-to-strip':
        'Coudre le côté {side} du bloc à une bande de tissu de {width} (tissu {fabric}), et la couper {extra} au-delà du bloc : bande {order}.',
      'sew-cornerstone':
        'Coudre d’abord un carré d’angle de {size}, tissu {fabric}, au bout {side} de la bande {order}.',
      press:
        'Coucher chaque marge de couture au fer à l’opposé du centre avant de coudre la bande suivante.',
      'lay-block': 'Poser le bloc devant soi, le côté {side} en haut.',
      'turn-block-half': 'Tourner le bloc d’un demi-tour.',
      'turn-block-quarter':
        'Tourner le bloc d’un quart de tour pour que le côté {side} soit en haut.',
      'turn-mat-half': 'Tourner le tapis d’un demi-tour ; le bloc reste en place.',
      'turn-mat-quarter':
        'Tourner le tapis d’un quart de tour pour que le côté {side} du bloc soit en haut ; le bloc reste en place.',
      'trim-side':
        'Recouper le côté {side} le long du bord {at} de la règle : la ligne {centerSeam} sur la couture du centre, la ligne {lastSeam} sur la dernière couture.',
      'trim-to-edge':
        'Recouper le côté {side} le long du bord {at} de la règle : la ligne {size} sur le bord déjà recoupé, la ligne {centerSeam} sur la couture du centre, la ligne {lastSeam} sur la dernière couture.',
      'check-diagonal':
        'La ligne à 45 degrés de la règle passe par l’angle du centre, à {distance} des deux bords.',
      'check-size': 'Le tour {round} mesure {size}.',
      'ruler-too-short':
        'À partir du tour {round}, une coupe fait {needed} de long : une règle de {ruler} ne la couvre pas.',
      'mat-too-small':
        'À partir du tour {round}, le bloc non recoupé et la course de la lame demandent {needed} : un tapis de {mat} est trop petit.',
    },
    seam: {
      'seam-true': 'La marge de couture fait {seam}, comme il faut.',
      'seam-deep':
        'La marge de couture fait {seam}, soit {by} de plus que {wanted} : il reste moins de chaque bande.',
      'seam-scant':
        'La marge de couture fait {seam}, soit {by} de moins que {wanted} : il reste plus de chaque bande.',
      'oversize-short':
        'Les bandes de tissu ({kind}) coupées à {cut} sont recoupées de {oversize}, et cette couture demande {needed} : les couper à {better}.',
      'coping-narrow':
        'Des bandes de compensation finies de {finished} font moins de {least}. Avec des blocs finis de {better}, elles font {least}.',
    },
    fit: {
      ratio: 'D’abord ceux dont large : étroit est le plus proche du rapport souhaité.',
      center: 'D’abord ceux dont le centre est le plus proche de celui souhaité.',
      'thin-parts':
        'Puis ceux qui ont le moins de sortes de pièces plus étroites que deux marges de couture.',
      'center-like-round': 'Puis ceux dont le centre est le plus proche de ce qu’ajoute un tour.',
      fabric: 'Puis ceux qui prennent le moins de tissu.',
      size: 'Puis le bloc le plus petit, et le centre le plus petit.',
      'fits-left-out':
        'Il y a {total} blocs de ce genre. Les {shown} meilleurs sont donnés, {leftOut} sont omis.',
      'sizes-left-out':
        'Il y a trop de blocs pour les examiner tous. Ceux de taille finie {least} à {most} l’ont été ; resserrer les limites pour les autres.',
      'relax-least':
        'Cela tombe juste si « {part} » peut descendre à {value}, au lieu de {limit} au moins.',
      'relax-most':
        'Cela tombe juste si « {part} » peut monter à {value}, au lieu de {limit} au plus.',
      'relax-strip':
        'Cela tombe juste avec des bandes de tissu ({part}) coupées à {value} au lieu de {limit}.',
      'relax-least-trim': 'Cela tombe juste si la recoupe ôte au moins {value} au lieu de {limit}.',
      'relax-rounds': 'Cela tombe juste si le nombre de tours est {value} au lieu de {limit}.',
      'relax-grid': 'Cela tombe juste sur une grille de {value} au lieu de {limit}.',
    },
    sheet: {
      'measure-first':
        'Imprimer à 100 %. Avant usage, mesurer ce carré : son petit coin fait 1 pouce, le tout 5 cm. Sinon, la feuille est fausse.',
      'never-cut-against':
        'Ne jamais couper le long du papier : il sert à vérifier et à tracer, ou se colle sous une règle en acrylique.',
      join: 'Poser les croix de deux feuilles l’une sur l’autre : lettre sur lettre.',
      page: 'Page {page} sur {pages} : rangée {row}, colonne {column}',
    },
    unit: {
      cut: 'Tissu {fabric} : couper {count} de {size}.',
      'cut-strips': 'Tissu {fabric} : couper des bandes de {width}, {count} en tout.',
      trim: 'Repasser et recouper à {trimTo}.',
      'narrow-unit':
        'Une pièce finie de {finished} est plus étroite que deux marges de couture : les marges se superposeront.',
      'trim-off-grid':
        'L’unité se recoupe à {trimTo}, soit {by} au-delà d’une ligne de la grille de {grid}.',
      'bias-outside':
        'Les bords extérieurs sont dans le biais et s’étirent : les manipuler peu et repasser sans tirer.',
      'mirror-pairs':
        'Des épaisseurs envers contre envers donnent des images inversées. Déplier le tissu, toutes les épaisseurs endroit vers le haut.',
      'left-over': 'Les coupes en donnent {leftOver} de plus que les {count} demandées.',
      'mark-diagonal': 'Sur l’envers du carré le plus clair de chaque paire, tracer une diagonale.',
      'mark-diagonals':
        'Sur l’envers du carré le plus clair de chaque paire, tracer les deux diagonales.',
      'sew-both-sides': 'Endroit contre endroit, coudre à {seam} de la ligne, des deux côtés.',
      'sew-both-lines':
        'Endroit contre endroit, coudre à {seam} des deux lignes, de part et d’autre.',
      'sew-round': 'Endroit contre endroit, coudre tout autour à {seam} du bord.',
      'cut-on-line': 'Couper sur la ligne, ouvrir et repasser.',
      'cut-diagonals': 'Couper sur les deux diagonales, ouvrir et repasser.',
      'cut-quarters':
        'Couper au milieu dans les deux sens, puis sur les deux diagonales ; ouvrir et repasser.',
      'cut-once': 'Couper chaque carré une fois d’angle à angle.',
      'cut-twice': 'Couper chaque carré deux fois d’angle à angle.',
      'sew-triangles': 'Coudre les triangles par leur grand côté, à {seam} du bord.',
      'sew-short-edges':
        'Coudre les triangles par paires sur un petit côté, puis les paires par le grand côté.',
      'cross-pairs':
        'Poser les unités demi-carrés par paires, endroit contre endroit, tissus différents face à face, coutures emboîtées.',
      'lay-plain-square':
        'Poser chaque unité demi-carré sur un carré entier, endroit contre endroit.',
      'mark-across': 'Tracer la diagonale qui croise la couture.',
      'sew-to-half': 'Coudre chaque paire de petits triangles à un grand par le grand côté.',
      'trim-diagonal': 'Recouper à {trimTo}, la ligne à 45 degrés de la règle sur la couture.',
      'trim-crossing':
        'Recouper à {trimTo} : les coutures se croisent au milieu, à {middle} de chaque bord, et suivent les lignes à 45 degrés.',
      'geese-first':
        'Poser deux petits carrés sur des angles opposés du grand et tracer la diagonale à travers les deux.',
      'geese-second':
        'Sur chaque moitié, poser un petit carré sur l’angle libre et tracer sa diagonale ; coudre, couper et repasser de même.',
      'geese-triangles': 'Coudre un triangle de ciel à chaque petit côté de l’oie.',
      'trim-point':
        'Recouper à {trimTo} : la pointe est à {seam} sous le bord et à {middle} de chaque côté.',
      'round-triangles':
        'Coudre un triangle d’angle à deux côtés opposés, repasser, puis aux deux autres ; recouper et passer au tour suivant.',
      'trim-rounds': 'Recouper chaque tour à {seam} au-delà des pointes, le dernier à {trimTo}.',
      'setting-trim':
        'Coudre la rangée, puis recouper à {seam} au-delà des angles des blocs. Au plus juste, un carré de {least} suffirait.',
      'mirror-half': 'La moitié des unités est l’image inversée de l’autre.',
      'seam-not-in-corner':
        'La couture ne va pas dans les angles de l’unité avec marges de couture : elle passe par les points à {seam} à l’intérieur.',
      'cut-one-way': 'Couper chaque rectangle une fois d’angle à angle, tous dans le même sens.',
      'cut-both-ways':
        'Couper la moitié des rectangles d’angle à angle dans un sens et l’autre moitié dans l’autre.',
      'cut-isosceles': 'Couper chaque oie du milieu du haut aux deux angles du bas.',
      'trim-seam':
        'Recouper à {trimTo}, pour que la couture passe par les points à {seam} à l’intérieur de ses deux angles.',
      'set-in-seams':
        'Les pièces se rejoignent par des coutures en Y : arrêter de coudre à {seam} du bord.',
      'mark-small-squares': 'Sur l’envers des petits carrés, tracer une diagonale.',
      'flip-corner':
        'Poser un petit carré sur un coin, endroit contre endroit, coudre sur la ligne, couper à {seam} au-delà, rabattre le coin et repasser.',
      'flip-other': 'Faire de même à l’autre coin.',
      'flip-each': 'Faire de même à chacun des {corners} coins.',
      'no-point':
        'Une oie de {width} sur {height} est plus de deux fois plus large que haute : ses coins ne se rejoignent pas en pointe, mais finissent à {apart} l’un de l’autre.',
      bonus:
        'Cousus ensemble avant d’être coupés, les coins donnent des triangles demi-carrés finis jusqu’à {finished}.',
      'first-angle': 'Couper le bout de la bande à {angle} degrés.',
      'next-angle':
        'Pour chaque coupe suivante, poser la ligne {line} de la règle sur le bord coupé : {perStrip} par bande.',
      'alternate-angles':
        'Couper à {angle} degrés tantôt d’un côté, tantôt de l’autre, {edge} sur le grand côté : {perStrip} par bande.',
      'hexagon-points':
        'Couper les deux pointes aiguës de chaque losange : d’équerre avec la grande diagonale, à {half} du milieu des deux côtés.',
      'sew-halves':
        'Coudre les moitiés en rangées, puis les rangées entre elles : il n’y a pas de couture en Y.',
      'half-triangles': 'Couper chaque rectangle une fois d’angle à angle.',
      'strip-off-grid':
        'Une bande fait exactement {exact}. Coupée à {cut}, ce qu’on en tire est plus grand de {adds}.',
      'piece-off-grid':
        'Une pièce fait exactement {exact} de long. Coupée à {cut}, elle est plus longue de {adds}.',
      'sew-strip-set':
        'Coudre les bandes par leurs grands côtés, à {seam} du bord, et repasser : {set} de large.',
      subcut:
        'Mettre le bout d’équerre et recouper en travers des coutures tous les {subcut} : {perSet} par ensemble de bandes.',
      'sew-two': 'Coudre deux tronçons ensemble, l’un tourné d’un demi-tour, coutures emboîtées.',
      'sew-three': 'Coudre les tronçons par trois, le différent au milieu, coutures emboîtées.',
      'sew-squares': 'Coudre les carrés en rangées et les rangées entre elles, coutures emboîtées.',
      'angle-approximate':
        'Le sinus de {angle} degrés ne s’écrit pas exactement : les longueurs sont arrondies vers l’extérieur.',
      'cut-round-template': 'Couper les courbes autour des gabarits.',
      'mark-middles': 'Plier les deux courbes en deux et marquer leurs milieux.',
      'sew-curve':
        'Faire coïncider milieux et bouts et coudre à {seam} du bord, la courbe intérieure dessus.',
      'curve-measure': 'La courbe cousue mesure {most}, si la couture est juste.',
      'pi-approximate':
        'La mesure de la courbe contient pi ; elle est donc donnée par deux limites.',
    },
    pattern: {
      'directional-turned':
        'L’imprimé de {fabric} a un haut et un bas, et des blocs où il se trouve sont tournés : il tourne avec eux.',
      'directional-sides':
        'L’imprimé de {fabric} a un haut et un bas, et dans le bloc {block} il suit tous les côtés où il se trouve : des bandes coupées dans un seul sens sont debout sur les uns et couchées sur les autres.',
      'directional-borders':
        'L’imprimé de {fabric} a un haut et un bas : dans la bordure {border}, des bandes coupées dans un seul sens sont debout sur deux côtés et couchées sur les deux autres.',
      'fabric-unused': 'Rien n’est coupé dans {fabric} pour cette taille.',
    },
    layout: {
      'finished-off-grid':
        'Le top fini mesure {finished}, entre deux lignes de la grille de {grid}. Le mesurer avant de couper bordures, biais de finition et doublure.',
      'prints-turn':
        'Des blocs sont tournés, et un imprimé à sens tourne avec eux : sur le côté {sideways}, tête en bas {upsideDown}.',
      'narrow-sash':
        'Des bandes intercalaires finies de {finished} sont plus étroites que deux marges de couture : chaque couture prendra les marges de la précédente.',
      'prints-lean':
        'Les blocs sur la pointe tiennent sur un angle, et un imprimé à sens y penche. Dans les triangles de côté et d’angle coupés dans des carrés, il va dans deux sens.',
    },
    borders: {
      'measured-differs':
        'Le top mesure {measured} et devait mesurer {planned}. Les bordures sont coupées à la taille mesurée, et l’ampleur du top y est résorbée.',
      'wide-border':
        'Une bordure finie de {width} de chaque côté est en tout plus large que le quilt qu’elle entoure, {quilt}.',
      'narrow-border':
        'Une bordure finie de {width} est plus étroite que deux marges de couture : ses coutures se chevaucheront.',
    },
    binding: {
      'several-squares':
        'Un seul carré serait plus large que le tissu, {fabricWidth} : on coupe {squares} carrés de {square} et on raccorde leurs biais.',
      'customary-short':
        'La règle habituelle, côté fois côté divisé par la largeur, ne demande qu’un carré de {customary}. Des bandes et des coutures entières en donnent {length}, et il en faut {needed}.',
    },
    backing: {
      'near-miss':
        'Avec {less} de débord en moins de chaque côté, {overhang} au lieu de {asked}, il suffit de {length} du tissu de {width} de large au lieu de {full} : {yards} de moins à acheter.',
    },
    kits: {
      'sold-below-cost': 'Un kit coûte plus cher qu’il n’est vendu.',
      'no-price': '{fabric} n’a pas de prix : on ne sait donc pas ce que coûte un kit.',
    },
    cutting: {
      'square-up': 'Mettre le bout du tissu d’équerre.',
      'cut-strip': 'Couper 1 bande de {width} dans la largeur du tissu ; y recouper {subcuts}.',
      'cut-strips':
        'Couper {strips} bandes de {width} dans la largeur du tissu ; dans chacune, recouper {subcuts}.',
      'stack-strips':
        'Couper {strips} bandes de {width} dans la largeur du tissu ; en empiler jusqu’à {layers}, et dans chacune recouper {subcuts}.',
      'subcut-one': '1 pièce de {length}',
      'subcut-several': '{count} pièces de {length}',
      'subcut-turned': '{subcut} (dans l’autre sens)',
      'subcut-end': '1 bout de {length}, coupé en {rows}',
      'subcut-ends': '{count} bouts de {length}, chacun coupé en {rows}',
      'subcut-row': '1 rangée de {width} avec {subcuts}',
      'subcut-rows': '{count} rangées de {width}, chacune avec {subcuts}',
      'not-proven':
        'Ce plan prend {length} de tissu. Il en faut au moins {lowerBound} ; ce calcul n’a pas établi si moins suffirait.',
    },
    pack: {
      'take-one': 'Prendre un rectangle de tissu de {width} sur {height}.',
      'take-several':
        'Prendre {count} rectangles de tissu de {width} sur {height}, et couper chacun de même.',
      'cut-rows':
        'Couper le rectangle de {width} sur {height} en travers, depuis le haut : {parts}.',
      'cut-columns':
        'Couper le rectangle de {width} sur {height} de haut en bas, depuis la gauche : {parts}.',
      'cut-pieces':
        'Couper le rectangle de {width} sur {height} en {count} pièces de {across} sur {down}.',
    },
    join: {
      'cut-block':
        'Mettre le bout du tissu d’équerre, et couper un morceau de {length} de long pour les pièces coupées dans la longueur.',
      'join-straight':
        'Raccorder {strips} bandes de {width} de large bout à bout, par des coutures droites de {seam} : une longueur de {total}.',
      'join-diagonal':
        'Raccorder {strips} bandes de {width} de large par des coutures en biais, les bouts posés l’un sur l’autre à angle droit, et recouper à {seam} des coutures : une longueur de {total}.',
      'cut-length-one': 'Dans cette longueur, couper 1 pièce de {length}.',
      'cut-length-several': 'Dans cette longueur, couper {count} pièces de {length}.',
      'join-at-cut':
        'Raccords qui tombent là où deux pièces sont séparées : {count}. Couper les pièces dans un autre ordre, ou couper d’abord un peu, si la couture ne doit pas être là.',
      'lies-along':
        'La pièce {piece} est plus longue que le tissu n’est large : elle est coupée dans la longueur, et un imprimé à sens y est posé autrement.',
      'length-not-proven':
        'Ce plan prend {length} de tissu. Il en faut au moins {lowerBound} ; il n’est pas exclu que moins suffise.',
    },
    precut: {
      'find-edge':
        'Les bords des prédécoupés sont souvent crantés : mesurer si {width} sur {height} va jusqu’aux pointes ou jusqu’aux creux, et s’y aligner. Ne pas les recouper d’abord.',
      'does-not-fit':
        'Aucune pièce {piece} ne peut être coupée dans un prédécoupé dont la partie utile fait {width} sur {height}. Laissées de côté : {count}.',
      'fewer-not-ruled-out':
        'Ces pièces se coupent dans {needed} prédécoupés. Il en faut au moins {fewest} ; il n’est pas exclu que moins de {needed} suffisent.',
    },
    onHand: {
      'cut-apart':
        'Il manque un coin au tissu {piece} : le couper en un rectangle de {first} et un de {second}.',
      'not-cut': 'Dans le tissu disponible, il manque {count} fois la pièce {piece}.',
      'more-not-ruled-out':
        'Il n’est pas exclu que l’on puisse couper plus de ces pièces dans le tissu disponible.',
      'blocks-not-proven':
        'Il y a du tissu pour {blocks} blocs, et pour {bound} au plus ; il n’est pas exclu que l’on puisse en couper plus de {blocks}.',
    },
  },

  errors: {
    'length-syntax':
      '« {text} » n’est pas une longueur. Les longueurs s’écrivent 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd ou 26,5 cm.',
    'length-syntax empty':
      'Il n’y a pas de longueur ici. Les longueurs s’écrivent 10 1/2, 10,5, 10½ ou 26,5 cm.',
    'length-syntax unfinished':
      '« {text} » s’arrête avant que la longueur soit complète. Les longueurs s’écrivent 10 1/2, 10,5 ou 26,5 cm.',
    'length-syntax syntax':
      '« {text} » n’est pas une longueur : elle n’est pas lisible à partir du caractère {at}. Les longueurs s’écrivent 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd ou 26,5 cm.',
    'length-syntax too-long': 'Ce texte dépasse 1000 caractères. Une longueur est plus courte.',
    'length-syntax not-finite': '« {text} » n’est pas un nombre qui se mesure.',
    'length-syntax zero-denominator':
      '« {text} » divise par zéro. Les fractions s’écrivent 1/2, 3/8, 10 1/2.',
    'length-syntax exponent': '« {text} » est trop grand ou trop petit pour une longueur.',
    'length-syntax thousands':
      '« {text} » peut se lire de deux façons : écrire 1000 pour mille, ou 1,0 pour un.',
    'length-syntax spaced-slash':
      '« {text} » peut se lire de deux façons : écrire une fraction sans espaces.',
    'length-syntax spaced-hyphen':
      '« {text} » peut se lire de deux façons : écrire 10 1/2 pour dix et demi.',
    'length-syntax unit-order':
      '« {text} » doit nommer la plus grande unité d’abord, et chacune une seule fois.',
    'length-syntax wrong-kind': 'Une longueur est un texte, un nombre ou une fraction.',
    'length-divisor': 'Un diviseur est un nombre autre que 0 et sans racine, et non {divisor}.',
    'length-root':
      'La racine carrée se prend d’un nombre d’au moins 0 et sans racine, et non de {radicand}.',
    'length-step':
      'Une grille est une longueur supérieure à 0 et sans racine, comme 1/8, et non {step}.',
    'not-positive': 'Cette longueur doit être supérieure à 0, et non {value}.',
    'This length must be at least 0, not {value}.':
      'Cette longueur doit être d’au moins 0, et non {value}.',
    'not-a-count': 'Il faut ici un nombre entier de {least} à {most}.',
    'The ruler is laid {most} times in this round; there is no placement {value}.':
      'La règle se pose {most} fois à ce tour ; il n’y a pas de pose {value}.',
    'unknown-choice': '« {value} » n’est pas connu ici. Choix possibles : {choices}.',
    'The block has no logs from strips “{value}”. Its strips are: {choices}.':
      'Le bloc n’a pas de bandes « {value} ». Ses bandes sont : {choices}.',
    'unknown-field': 'Il n’y a pas de champ « {name} » ici. Les champs sont : {known}.',
    'missing-field': 'Il manque ici « {name} ».',
    'A length is needed here.': 'Il faut une longueur ici.',
    'conflicting-fields': '« {one} » et « {other} » s’excluent. Omettre l’un des deux.',
    'A block that is never trimmed has no oversize. Trim it after each round or log, or leave “{other}” out.':
      'Un bloc qui n’est jamais recoupé n’a pas de surplus. Le recouper après chaque tour ou bande, ou omettre « {other} ».',
    'The strips’ widths already say how much is trimmed away. Leave “{one}” or “{other}” out.':
      'Les largeurs des bandes disent déjà ce qu’on ôte. Omettre « {one} » ou « {other} ».',
    'wrong-kind': 'Cette donnée n’est pas de la bonne sorte. Il faut : {expected}.',
    'A fabric needs a name here.': 'Un tissu doit avoir un nom ici.',
    'Give at least one length that the shop cuts in, such as {expected}.':
      'Donner au moins une longueur que le magasin coupe, comme {expected}.',
    'list-length': 'Cette liste a {entries} éléments, il en faut {needed}.',
    'This list has {entries} entries where {needed} are needed: one for each round, or one for all.':
      'Cette liste a {entries} éléments, il en faut {needed} : un par tour, ou un pour tous.',
    'sides-not-adjacent':
      'Les côtés larges sont voisins, comme droit et bas ; {one} et {other} ne le sont pas.',
    'strip-too-narrow':
      'Une bande finie de {log} demande une bande de tissu d’au moins {needed}, et non {strip}.',
    'center-not-positive':
      'Les bandes font {logs} en tout, ce qui laisse {center} pour le centre d’un bloc fini de {finished}. Prendre des bandes plus étroites, moins de tours ou un bloc plus grand.',
    'sizes-disagree':
      'Le centre et les bandes font {sum}, mais la taille finie donnée est {finished}. Changer l’une des mesures, ou omettre le centre, qui sera calculé.',
    'strip-not-exact':
      'Un bloc qui n’est jamais recoupé demande des bandes de tissu coupées exactement à {exact}, et non à {strip}. Le recouper après chaque tour, ou couper à la mesure exacte.',
    'limits-cross':
      'Le moins est {least} et le plus {most} : il n’y a rien entre les deux. Les échanger, ou en omettre un.',
    'Wide logs may be {most} at most and narrow ones {least} at least: no wide log would be wider than a narrow one.':
      'Les bandes larges font {most} au plus et les étroites {least} au moins : aucune large ne dépasserait une étroite.',
    'widths-vary':
      'Les bandes « {kind} » ne sont pas les mêmes à chaque tour. Donner une seule largeur.',
    'no-arc':
      'Dans ces limites, aucune largeur ne donne un bloc courbe de cette taille : le total va de {least} à {most}, sur une grille de {grid}. Changer la taille, le centre, les tours ou les limites.',
    'not-curved':
      'Un bloc dont les bandes sont d’une seule sorte n’a pas de courbe. Lui donner des bandes larges sur deux côtés et étroites sur les autres.',
    'odd-count': 'Le nombre doit être pair, {fewer} ou {more}, et non {value}.',
    'too-many-pages':
      'Cela ferait {pages} feuilles, et {most} est le maximum. Prendre un bloc plus petit, une marge plus étroite ou un tour à la fois.',
    'piece-too-long':
      'Une pièce de {length} de long ne tient pas dans un tissu de {width} de large. La faire d’au plus {width}, la tourner ou la composer de plus courtes.',
    'A piece {length} wide and longer than that does not fit on fabric {width} wide, neither across nor along. Make it at most {width} wide, or piece it from narrower ones.':
      'Une pièce de {length} de large, et plus longue encore, ne tient pas dans un tissu de {width} de large, ni en travers ni en long. La faire d’au plus {width} de large, ou la composer de plus étroites.',
    'A piece of fabric of {value} is more than can be planned. Give a size up to {most}, its usable part.':
      'Un morceau de tissu de {value} dépasse ce qui peut être planifié. Donner une mesure d’au plus {most}, la partie utile.',
    'A missing corner is smaller than the fabric: less than {most}, not {value}.':
      'Un coin manquant est plus petit que le tissu : moins de {most}, et non {value}.',
    'no-pieces': 'Il n’y a rien à couper. Donner au moins une pièce avec un nombre.',
    'too-many-pieces': 'Cela fait {total} pièces. Un plan en prend {most} : en faire plusieurs.',
    'too-many-sizes':
      'Ces pièces ont {different} mesures différentes. Un plan en prend {most} : en faire plusieurs.',
    'several-fabrics':
      'Un plan vaut pour un tissu, et ces pièces sont de « {one} » et de « {other} ». Faire un plan par tissu.',
    'not-a-fraction':
      'Une mesure de coupe tombe sur les lignes d’une règle, et {value} non. L’arrondir au-dessus sur une grille, comme le huitième de pouce.',
    'no-common-grid':
      'Ces longueurs n’ont pas de grille commune pour faire un plan. Prendre des longueurs sur une même grille, comme le huitième de pouce.',
    'not-a-shrinkage':
      'Le rétrécissement est une part de la longueur, de 0 à moins de 1 (0,05 pour 5 %), ou un pourcentage, et non {value}.',
    'seam-too-wide':
      'Une pièce finie de {finished} demande une marge de couture plus petite que {seam}.',
    'not-square': 'Il faut ici une seule longueur, et non {width} sur {height}.',
    'Only a square block can be turned by a quarter; this one finishes {width} by {height}.':
      'Seul un bloc carré se tourne d’un quart de tour ; celui-ci fait {width} sur {height} une fois fini.',
    'length-with-root': 'Il faut ici une longueur sans racine, comme 3 1/2, et non {value}.',
    'out-of-range': 'Il faut ici une longueur de {least} à {most}, et non {value}.',
    'A length of at most {most} is needed here.': 'Il faut ici une longueur d’au plus {most}.',
    'The long edge must be more than {least} for this height and angle, not {value}.':
      'Pour cette hauteur et cet angle, le grand côté doit dépasser {least} ; {value} ne suffit pas.',
    'Strips that were cut {most} in all cannot measure {value} when they are sewn. Measure across all of them, pressed flat.':
      'Des bandes coupées à {most} en tout ne peuvent pas mesurer {value} une fois cousues. Mesurer la largeur de toutes ensemble, bien repassées.',
    'angle-out-of-range': 'Il faut ici un angle de {least} à {most} degrés, et non {value}.',
    'goose-ratio':
      'Cette méthode ne donne pas d’oies de {width} sur {height}. Les faire de {wider} sur {height} ou de {width} sur {lower}, ou couper des triangles.',
    'even-sum':
      'Sur la pointe, cette disposition demande que les blocs en largeur et en hauteur fassent ensemble un nombre impair ; {across} et {down} ne le font pas. En mettre un de plus ou de moins.',
    'repeat-does-not-fit':
      'Un raccord de motif de {unit} ne tombe pas juste dans {side}. {fewer} de {fewerUnit} ou {more} de {moreUnit} conviennent, ou des bandes d’ajustement de {spacer}.',
    'block-size-differs':
      'Ce bloc fini fait {block}, mais la disposition est faite de blocs finis de {layout}.',
    'strip-too-wide':
      'Des bandes de {strip} ne peuvent être coupées ou raccordées en biais dans un tissu de {width} de large. Prendre des bandes plus étroites ou un tissu plus large.',
    'not-money':
      '« {value} » n’est pas une somme. Écrire une somme d’au moins 0, avec un point décimal et sans symbole, comme {example}.',
    'unknown-currency':
      'Une monnaie se nomme par son code de trois majuscules, comme EUR, et non « {value} ».',
    'several-currencies':
      'Des sommes en {one} et en {other} ne s’additionnent pas. Les donner toutes dans une monnaie.',
    'too-much-money': 'Cela dépasse {most} {currency}. On compte jusqu’à cette somme.',
    'not-a-margin':
      'La marge commerciale est la part du prix qui reste, de 0 à moins de 1 (0,4 pour 40 %), et non {value}.',
    'This text has more than {most} characters. A recipe of up to that is read.':
      'Ce texte a plus de {most} caractères. Un modèle est lu jusqu’à cette longueur.',
    'There is no pattern here yet: the page gives one in a script of type application/json inside this element, or names its address in “src”.':
      'Il n’y a pas encore de modèle ici : la page le donne dans un script de type application/json dans cet élément, ou nomme son adresse dans « src ».',
    'A number of quilts is needed here, or blocks such as {expected}.':
      'Il faut ici un nombre de quilts, ou des blocs, par exemple {expected}.',
    'not-json': 'Ceci n’est pas du JSON : {reason}.',
    'not-loaded': 'Aucun modèle n’a pu être chargé depuis {address} : réponse {status}.',
    'No recipe could be fetched from {address}: nothing answered.':
      'Aucun modèle n’a pu être chargé depuis {address} : pas de réponse.',
    'text-too-long': 'Ce texte a {characters} caractères. On en lit jusqu’à {most}.',
    'not-a-text': 'Il faut ici un texte de {most} caractères au plus.',
    'not-an-id':
      'Il faut ici un nom comme ciel-de-nuit, et non « {value} » : une lettre, puis des lettres, chiffres, traits d’union ou tirets bas.',
    'not-a-share': 'Il faut ici une part de 0 à moins de 1 (0,05 pour 5 %), et non {value}.',
    'not-a-list': 'Il faut ici une liste de {least} à {most} éléments.',
    'listed-twice': '« {value} » figure ici une seconde fois. Chaque élément demande un nom à lui.',
    'block-not-rectangular':
      'Les blocs et leurs pièces sont des rectangles, pas {unit}. Prendre une unité rectangulaire une fois finie.',
    'blocks-differ':
      'Les blocs d’un top ont tous la même taille finie. Celui-ci fait {size}, les autres {needed}.',
    'pieces-do-not-fill':
      'Les pièces finies de ce bloc font {pieces} pouces carrés en tout, et le bloc {block}. Les deux doivent être égaux.',
    'piece-outside':
      'Cette pièce dépasse le bord du bloc fini de {block}. La déplacer ou la réduire.',
    'pieces-overlap':
      'La pièce à {x} de la gauche et {y} du haut en recouvre une autre. En déplacer une ou la réduire.',
    'cut-too-small':
      'Coupée à {cut}, cette pièce est trop petite : avec ses coutures, il faut au moins {needed}.',
    'bolt-too-short': 'Un rouleau de {bolt} est trop court : il en faut {needed} pour un kit.',
    'strip-too-short':
      'Une bande de {usable} est trop courte pour une seule pièce. Il faut au moins {needed} de long.',
  },

  spoken: {
    fraction: spokenFractions('fr', {
      inches: {
        whole: { one: '{whole} pouce', other: '{whole} pouces' },
        half: 'un demi-pouce',
        wholeAndHalf: { one: '{whole} pouce et demi', other: '{whole} pouces et demi' },
        part: '{part} de pouce',
        wholeAndPart: { one: '{whole} pouce et {part}', other: '{whole} pouces et {part}' },
      },
      yards: {
        whole: { one: '{whole} yard', other: '{whole} yards' },
        half: 'un demi-yard',
        wholeAndHalf: { one: '{whole} yard et demi', other: '{whole} yards et demi' },
        part: '{part} de yard',
        wholeAndPart: { one: '{whole} yard et {part}', other: '{whole} yards et {part}' },
      },
      parts: {
        '3': { one: 'un tiers', other: '{above} tiers' },
        '4': { one: 'un quart', other: '{above} quarts' },
        '5': { one: 'un cinquième', other: '{above} cinquièmes' },
        '6': { one: 'un sixième', other: '{above} sixièmes' },
        '8': { one: 'un huitième', other: '{above} huitièmes' },
        '9': { one: 'un neuvième', other: '{above} neuvièmes' },
        '10': { one: 'un dixième', other: '{above} dixièmes' },
        '12': { one: 'un douzième', other: '{above} douzièmes' },
        '16': { one: 'un seizième', other: '{above} seizièmes' },
        '32': { one: 'un trente-deuxième', other: '{above} trente-deuxièmes' },
        '64': { one: 'un soixante-quatrième', other: '{above} soixante-quatrièmes' },
      },
      over: '{above} sur {below}',
    }),
    minus: 'moins {length}',
    about: 'environ {length}',
  },
};
