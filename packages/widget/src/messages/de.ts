import type { Catalog } from './catalog.js';
import { spokenFractions } from './fractions.js';

/** Every word on every element, in German. */
export const de: Catalog = {
  texts: {
    common: {
      // Units and numbers
      inches: 'Zoll',
      centimeters: 'Zentimeter',
      by: '{width} mal {height}',
      inInches: '{length} Zoll',
      comma: ', ',

      // The block
      sizes: 'Maße',
      finished: 'Fertigmaß',
      center: 'Mitte',
      rounds: 'Runden',
      blocks: 'Blöcke',
      kind: 'Streifenart',
      plain: 'Alle Seiten gleich',
      curved: 'Breit und schmal (gebogen)',
      log: 'Streifen',
      wide: 'Breiter Streifen',
      narrow: 'Schmaler Streifen',
      'strips-log': 'Streifen, Zuschnitt',
      'strips-wide': 'Breiter Streifen, Zuschnitt',
      'strips-narrow': 'Schmaler Streifen, Zuschnitt',
      'trim-oversize': 'Übermaß',
      seam: 'Nahtzugabe',
      extra: 'Zugabe je Streifen',
      more: 'Nähen, Zurückschneiden, Maßeinheit',
      layout: 'Aufbau',
      spiral: 'Spirale',
      courthouse: 'Courthouse Steps',
      quarter: 'Viertel',
      direction: 'Genäht',
      clockwise: 'Im Uhrzeigersinn',
      counterclockwise: 'Gegen den Uhrzeigersinn',
      first: 'Zuerst in jeder Runde',
      'first-wide': 'Breites Paar',
      'first-narrow': 'Schmales Paar',
      'trim-after': 'Zurückschneiden',
      'trim-usual': 'Je nach Zuschnitt der Streifen',
      'trim-round': 'Nach jeder Runde',
      'trim-log': 'Nach jedem Streifen',
      'trim-never': 'Nie',
      units: 'Maßeinheit',
      hand: 'Schneidehand',
      'hand-right': 'Rechts',
      'hand-left': 'Links',
      cornerstones: 'Eckquadrate',
      solved: 'wird berechnet',
      usual: 'genau',
      fractions: 'Einen Bruch einsetzen',
      less: 'Einen Schritt weniger',
      greater: 'Einen Schritt mehr',

      // What can be done with the answer
      actions: 'Mit diesem Ergebnis',
      copyText: 'Als Text kopieren',
      saveTables: 'Tabellen speichern (CSV)',
      saveDrawing: 'Zeichnung speichern (SVG)',
      printThis: 'Drucken',
      copyLink: 'Link kopieren',
      copied: 'Kopiert.',
      copyByHand: 'Die Seite hat keinen Zugriff auf die Zwischenablage: bitte von Hand kopieren.',

      // The answer
      headline: '{finished} fertig, auf {unfinished} zurückschneiden',
      stale: 'Diese Zahlen passen noch nicht zu den Maßen oben.',
      nothing: 'Solange die Maße oben nicht lesbar sind, gibt es nichts zu zeigen.',
      summary:
        '{finished} fertig, auf {unfinished} zurückschneiden. Mitte {center}. Runden: {rounds}.',
      show: 'Was gezeichnet ist',
      wholeBlock: 'Ganzer Block',
      roundOf: 'Runde {round} von {rounds}',
      cuts: 'Schnitte {cuts}',
      back: 'Zurück',
      next: 'Weiter',
      turnedHalf:
        'Den Block um 180 Grad drehen. Die geschnittenen Kanten an die Linie für das Maß mit Nahtzugabe legen.',
      turnedQuarter:
        'Den Block so drehen, dass die zu schneidende Seite auf der Seite der Schneidehand liegt.',
      facing: 'Der Block liegt, wie er genäht wurde. Die Linien des Lineals auf die Nähte legen.',

      trimChart: 'Tabelle zum Zurückschneiden',
      round: 'Runde',
      trimTo: 'auf {size} zurückschneiden',
      sewnSize: 'vorher {size}',
      side: 'Seite',
      allSides: 'alle Seiten',
      centerSeamToEdge: 'Von der Mittelnaht zur Kante',
      lastSeamToEdge: 'Von der letzten Naht zur Kante',
      trimAway: 'Fällt weg',
      exactChart: 'Maße nach jeder Runde',

      cutList: 'Zuschnittliste',
      part: 'Teil',
      fabric: 'Stoff',
      cut: 'Zuschnitt',
      forOne: 'Für 1 Block',
      forBlocks: 'Für {blocks} Blöcke',
      pieceCenter: 'Mitte',
      pieceLogs: 'Streifen {orders}',
      pieceCornerstone: 'Eckquadrat',
      stripList: 'Stoffstreifen',
      stripWidth: 'Breite',
      stripLength: 'Länge für 1 Block',
      stripLengths: 'Länge für {blocks} Blöcke',

      warnings: 'Vor dem Zuschneiden',
      caution:
        'Ein Rollschneider ist eine blanke Klinge: nach jedem Schnitt schließen, vom Körper weg schneiden, die Finger von der Linealkante fernhalten. Die Anleitung des Herstellers beachten.',
    },

    logCabin: {
      workshop: 'Mehr zu diesem Block',
      panelNeedsPlan: 'Zuerst oben Maße eingeben, die einen Block ergeben.',
      use: '{number} übernehmen',
      any: 'beliebig',
      none: 'keine',

      // Find a size
      panelFinder: 'Maße finden, die aufgehen',
      findFinished: 'Fertigmaß oder von … bis',
      findBoth: 'Beide Arten',
      findGrid: 'Alles auf einem Raster von',
      findWishRatio: 'Breit : schmal, gewünscht',
      findWishCenter: 'Mitte, gewünscht',
      findLimits: 'Grenzen',
      findCenter: 'Mitte oder von … bis',
      findLog: 'Streifen oder von … bis',
      findWide: 'Breit oder von … bis',
      findNarrow: 'Schmal oder von … bis',
      findStrips: 'Vorhandene Stoffstreifen',
      findLeastTrim: 'Mindestens zurückschneiden',
      fits: 'Blöcke, die genau aufgehen',
      fitOrder: 'Die besten zuerst, der Reihe nach:',
      fitBlock: 'Block',
      closestFits: 'Die nächstliegenden, die aufgehen',
      reachable: 'Erreichbare Maße',
      fitWays: 'Varianten',
      fitLogs: 'Streifen',
      fitWideNarrow: 'Breit, schmal',
      fitStrips: 'Stoffstreifen',
      fitTrims: 'Fällt weg',
      fitFabric: 'Stoff, Zoll²',
      fitFabricMetric: 'Stoff, cm²',
      showAllFits: 'Bis zu 100 zeigen',
      noFit: 'Innerhalb dieser Grenzen geht nichts genau auf.',
      noSize: 'Innerhalb dieser Grenzen ist kein Maß erreichbar.',

      // The same block in another size
      panelResize: 'Derselbe Block in einer anderen Größe',
      resizeTo: 'Gewünschtes Fertigmaß',
      resized: 'Der Block in dieser Größe, der ähnlichste zuerst',
      sideBySide: 'Maße, die im Quilt neben diesem Block stehen können',
      rowOf: 'In einer Reihe',
      rowMeets: '{own} von diesem, {others} von jenem: {span}',

      // How many blocks
      panelStrips: 'Wie viele Blöcke meine Streifen ergeben',
      stripsOf: '{fabric}, Zuschnitt {width}: Anzahl',
      stripLengthUsable: 'Nutzbare Länge eines Streifens',
      blocksMade: 'Mögliche Blöcke: {blocks}.',
      blocksMadeAtLeast: 'Mögliche Blöcke: mindestens {blocks}.',
      blocksOf: 'Mögliche Blöcke',
      useBlocks: 'Zuschnittliste für {blocks} berechnen',

      // An arc
      panelArc: 'Die Farblinie zum Bogen biegen',
      arcAbout:
        'Die Stoffstreifen bleiben in allen Runden gleich; verschieden ist, wie viel zurückgeschnitten wird. Die Ecken, an denen breit auf schmal trifft, liegen dann so nahe an einem Kreis, wie das Raster es zulässt.',
      arcFinished: 'Fertigmaß',
      arcWidths: 'Breiten Runde für Runde',
      arcOff: 'Abstand vom Bogen',
      arcCenter: 'Mitte',
      arcRadius: 'Die Mitte ist fertig {center}. Der Bogen hat einen Radius von {radius}.',
      arcStraight: 'Die Mitte ist fertig {center}. Am nächsten kommt eine gerade Linie.',
      arcGreatest: 'Die entfernteste Ecke liegt {arc} daneben; im Block oben sind es {own}.',
      arcGreatestAlone: 'Die entfernteste Ecke liegt {arc} daneben.',
      useArc: 'Diese Breiten übernehmen',

      // Side by side
      panelCompare: 'Mit einem anderen Block vergleichen',
      otherBlock: 'Der andere Block',
      keepBlock: 'Den Block oben als anderen behalten',
      swapBlocks: 'Plätze tauschen',
      comparison: 'Nebeneinander',
      figure: 'Angabe',
      thisBlock: 'Dieser Block',
      compareUnfinished: 'Zurückschneiden auf',
      shareOf: 'Sichtbarer Anteil, {fabric}',
      squareInches: '{area} Quadratzoll',
      squareCentimeters: '{area} cm²',
      compareFabric: 'Stoff im Zuschnitt',
      compareStrips: 'Stoffstreifen, {fabric}',
      stripsCut: '{length} lang, {width} breit',
      comparePieces: 'Zuzuschneidende Teile',
      compareTrims: 'Schnitte zum Zurückschneiden',
      compareBend: 'Knick an der Mitte',
      compareRadius: 'Radius des nächsten Kreises',
      compareOff: 'Größter Abstand einer Ecke',
      degrees: '{number}°',
      spokenDegrees: '{number} Grad',
      percent: '{number} %',
      spokenPercent: '{number} Prozent',
      roughInches: '{number} Zoll',
      spokenRoughInches: '{number} Zoll',
      roughCentimeters: '{number} cm',
      spokenRoughCentimeters: '{number} Zentimeter',
      roughMillimeters: '{number} mm',
      spokenRoughMillimeters: '{number} Millimeter',

      // Settings
      panelSettings: 'Als Top ansehen',
      setting: 'Anordnung der Blöcke',
      across: 'Blöcke in der Breite',
      down: 'Blöcke in der Höhe',
      quiltTop: '{blocks} Blöcke ergeben ein Top mit Fertigmaß {finished}.',
      turnsWarning: 'Ein gerichtetes Muster dreht sich mit seinem Block.',

      // At the table
      panelTable: 'Am Tisch, Schritt für Schritt',
      sewing: 'Streifen',
      'cut-first': 'Zuerst auf Länge schneiden',
      'to-strip': 'An den Stoffstreifen nähen',
      'strip-set': 'Erste Naht als Streifenset',
      mat: 'Schneidematte',
      'mat-fixed': 'Bleibt liegen',
      'mat-turning': 'Wird gedreht',
      rulerOnHand: 'Vorhandenes quadratisches Lineal',
      matOnHand: 'Vorhandene Matte',
      layers: 'Lagen auf einmal',
      tools: 'Was gebraucht wird',
      toolsNeeded:
        'Ein quadratisches Lineal von mindestens {ruler} und eine Matte von mindestens {mat}.',
      toolsNone: 'Nichts wird zurückgeschnitten, also braucht es kein quadratisches Lineal.',
      layerCuts: 'Schnitte (Lagen: {layers}, Blöcke: {blocks})',
      pieces: 'Teile',
      cutsMade: 'Schnitte',
      tableBegin: 'Zu Beginn',
      tableRound: 'Runde {round}',

      // Seam
      panelSeam: 'Meine Naht und ungleich geratene Blöcke',
      seamAbout:
        'Drei Streifen nebeneinander nähen wie immer, bügeln und quer über alle drei messen.',
      seamStrip: 'Zuschnittbreite je Streifen',
      seamStrips: 'Anzahl der Streifen',
      seamMeasured: 'Gemessene Breite',
      seamExpected: 'Mit der Naht dieses Blocks wären es {expected}.',
      drift: 'Was diese Naht aus diesem Block macht',
      driftHow: 'Wie zurückgeschnitten wird',
      driftUntrimmed: 'Nie',
      driftLast: 'Von der letzten Naht aus',
      driftCenter: 'Von der Mittelnaht aus',
      driftShort: 'Zu klein um',
      driftLarge: 'Zu groß um',
      driftOversize:
        'Von der Mittelnaht aus zurückgeschnitten, bleibt der Block im Maß, solange jeder Stoffstreifen {oversize} breiter zugeschnitten ist als genau nötig.',
      driftCovered: 'Bei diesem Block ist das so.',
      rescueMeasured: 'Gemessen von Schnittkante zu Schnittkante',
      rescueFinished: 'Gewünschtes Fertigmaß',
      rescue: 'Zwei Auswege',
      rescueWay: 'Weg',
      rescueTrim: 'Alle auf den kleinsten zurückschneiden',
      rescueCope: 'Ringsum Streifen annähen, zurückschneiden',
      rescueTrimTo: 'Zurückschneiden auf',
      rescueQuilt: 'Top',
      copingStrips: 'Ausgleichsstreifen',
      copingCut: 'Alle {cut} breit zuschneiden, dann zurückschneiden.',
      copingMeasured: 'Block, gemessen',
      copingFinished: 'Streifen, Fertigmaß',

      // Sheets
      panelSheets: 'Tabelle und Blätter in Originalgröße drucken',
      sheetKind: 'Blätter',
      'sheets-trim': 'Zum Zurückschneiden',
      'sheets-foundation': 'Nähvorlage',
      sheetRound: 'Runden',
      everyRound: 'Jede Runde',
      paper: 'Papier',
      letter: 'Letter',
      a4: 'A4',
      sheetCount:
        'Seiten: {pages}. Mit 100 % drucken, ohne Größenanpassung, und auf jeder Seite das Quadrat nachmessen.',
      sheetUse:
        'Sie dienen zum Prüfen und Nachzeichnen oder werden unter ein Acryllineal geklebt. Nie am Papier entlang schneiden.',
      foundationUse:
        'Sie ist gespiegelt: auf der bedruckten Seite nähen, in der Reihenfolge der Zahlen.',
      firstSheet: 'Die erste Seite, verkleinert',
      printChart: 'Tabelle drucken',
      printSheets: 'Blätter drucken',
      saveSheets: 'Blätter als Datei speichern',
      printed: 'Blätter zum Drucken',
    },

    fabric: {
      pieces: 'Zuzuschneidende Teile',
      piece: 'Teil {number}',
      count: 'Anzahl',
      'strip-width': 'Breite',
      'piece-length': 'Länge',
      'piece-fabric': 'Stoff',
      'piece-may': 'Erlaubt',
      'may-': 'wie angegeben',
      'may-turned': 'Drehen',
      'may-joined': 'Stückeln',
      'add-piece': 'Teil hinzufügen',
      'remove-piece': 'Teil {number} entfernen',
      remove: 'Entfernen',
      width: 'Nutzbare Stoffbreite',
      precut: 'Gekauft als',
      'precut-': 'Meterware',
      'precut-fat-quarter': 'Fat Quarters',
      'precut-fat-eighth': 'Fat Eighths',
      'precut-strip-2-1/2': '2 1/2-Zoll-Streifen',
      'precut-square-5': '5-Zoll-Quadrate',
      'precut-square-10': '10-Zoll-Quadrate',
      'pack-of': 'Verkauft in Packungen zu',
      increment: 'Der Laden schneidet in',
      'increment-eighths': 'Achtel-Yards',
      'increment-thirds': 'Achtel- und Drittel-Yards',
      'increment-tenths': 'Zehntelmetern',
      method: 'Zuschnitt',
      'method-': 'Womit weniger zu kaufen ist',
      'method-plain': 'Einfach: eine Breite je Streifen',
      'method-thrifty': 'Sparsam: Enden geteilt, Teile gedreht',
      join: 'Streifen aneinandernähen',
      'join-diagonal': 'Schräg',
      'join-straight': 'Gerade',
      straightening: 'Zum Begradigen',
      spare: 'Als Reserve',
      'spare-usual': 'ein Streifen',
      shrinkage: 'Läuft beim Waschen ein um',
      layers: 'Lagen auf einmal',
      'more-fabric': 'Waschen, Begradigen, Lagen, Maße',
      'on-hand': 'Vorhandener Stoff',
      'on-hand-piece': 'Stoff {number}',
      'on-hand-width': 'Nutzbare Breite',
      'on-hand-length': 'Nutzbare Länge',
      'on-hand-corner': 'Fehlende Ecke',
      'add-on-hand': 'Vorhandenen Stoff hinzufügen',
      'remove-on-hand': 'Stoff {number} entfernen',

      buy: '{yards} kaufen',
      buyFabric: '{yards} von {fabric} kaufen',
      meters: 'oder {meters}',
      need: 'Streifen {bare}, Reserve {spare}, Begradigen {straightening}, Waschen {shrinkage}: zusammen {need}.',
      proven: 'Kein Plan mit einer Breite je Streifen braucht weniger.',
      provenThrifty: 'Kein Plan, einfach oder sparsam, braucht weniger.',
      purchaseProven: 'Bei keinem Plan mit einer Breite je Streifen ist weniger zu kaufen.',
      purchaseProvenThrifty: 'Bei keinem Plan, einfach oder sparsam, ist weniger zu kaufen.',
      unproven: 'Mindestens {lowerBound} sind nötig; ob weniger reichen würde, ist nicht geklärt.',
      purchaseUnproven: 'Ob bei einem sparsamen Plan weniger zu kaufen wäre, ist nicht geklärt.',
      thriftySaves: 'Der sparsame Zuschnitt spart {saved}: {cuts} Schnitte statt {plainCuts}.',
      thriftySame:
        'Beim sparsamen Zuschnitt ist gleich viel zu kaufen. Die Streifen brauchen {saved} weniger: {cuts} Schnitte statt {plainCuts}.',
      thriftyNothing: 'Der sparsame Zuschnitt spart hier nichts.',
      leftOver: 'Übrig: {leftOver}.',
      share: 'Die Teile machen {percent} % der Streifen aus.',
      steps: 'So wird zugeschnitten',
      row: 'Reihe {row} von {rows}',
      moreRows: 'Die weiteren Reihen werden nach den Schritten geschnitten.',
      block: 'Der Länge nach zuschneiden',
      beside: 'Neben den Teilen bleibt: {rests}.',
      joins: 'Wo die Ansatznähte liegen',
      joinsIn: 'Teil {number}, Stück {copy}: {places} von seinem Anfang.',
      moreJoins: 'Die anderen Ansatznähte folgen ebenso.',
      handAll: 'Alles lässt sich aus dem vorhandenen Stoff schneiden',
      handAllFabric: 'Alles aus {fabric} lässt sich aus dem vorhandenen Stoff schneiden',
      handSome: 'Aus dem vorhandenen Stoff: {cut} von {pieces} Teilen. Es fehlen noch:',
      missing: '{count}-mal Teil {number}, {size}',
      sets: 'Vollständige Sätze der Liste aus dem vorhandenen Stoff: {sets}.',
      setsUnproven:
        'Vollständige Sätze der Liste aus dem vorhandenen Stoff: {sets}, höchstens {bound}.',
      precutsNeeded: '{kind}: {count}',
      precutsNeededFabric: '{kind}, {fabric}: {count}',
      packs: 'Packungen zu {packOf}: {packs}, übrig {spare}',
      usableSize: 'Von jedem sind {size} nutzbar.',
      precutsProven: 'Weniger würden nicht reichen.',
      unfit: 'Daraus lassen sich nicht schneiden:',
      alike: '{count} gleich zugeschnitten',
      working: 'Der geringste Stoffbedarf wird berechnet …',
    },

    quilt: {
      choices: 'Der Quilt',
      size: 'Größe',
      ownSize: 'Eigene Größe, {across} mal {down} Blöcke',
      across: 'Blöcke in der Breite',
      down: 'Blöcke in der Höhe',
      moreQuilt: 'Stoffbreite, Zuschnitt, Maßeinheit',
      'fabric-width': 'Nutzbare Stoffbreite',
      method: 'Zuschnitt',
      'method-plain': 'Wenige Schnitte',
      'method-thrifty': 'Wenig Stoff',
      colors:
        'Das Farbfeld eines Stoffs antippen, um in der Zeichnung eine andere Farbe zu probieren.',
      colorOf: 'Farbe von {fabric}',
      pageColors: 'Ursprüngliche Farben',
      fetching: 'Die Anleitung wird geladen …',
      working: 'Der Zuschnitt wird berechnet …',
      recipeFault: 'Diese Anleitung lässt sich nicht zeigen.',
      tooManyCells: 'Für eine Zeichnung sind das zu viele Blöcke.',
      quiltHeadline: '{finished} fertig',
      patternSize: '{name}, {size}',
      inRows: '{across} mal {down} Blöcke in Reihen',
      onPoint: '{across} mal {down} Blöcke, auf die Spitze gestellt',
      quiltSummary: '{size}: {finished} fertig. {buys}',
      buyOne: '{fabric}: {yards}',
      toBuy: 'Einkauf',
      buyAmount: 'Menge',
      usableWidth: '{width} breit',
      orAmount: 'oder {amount}',
      price: 'Preis',
      perYard: '{money} je Yard',
      perMeter: '{money} je Meter',
      allFabrics: 'Alle Stoffe',
      forBacking: 'Rückseite',
      batting: 'Vlies',
      atLeast: 'mindestens {size}',
      package: '1 Packung {size}',
      ofRoll: '{amount} von der Rolle, {width} breit',
      howToCut: 'Zuschneiden',
      cutFabric: '{fabric}: {yards}',
      piece: 'Teil',
      howMany: 'Anzahl',
      pieceOf: '{block}, {piece}',
      cutOnce: 'einmal diagonal geschnitten',
      cutTwice: 'zweimal diagonal geschnitten',
      steps: '{fabric} zuschneiden',
      backingSteps: 'Rückseite aus {fabric} zuschneiden',
      cutWhole: '{strips} Streifen von {width} über die Stoffbreite schneiden.',
      cutWholeOne: '1 Streifen von {width} über die Stoffbreite schneiden.',
      row: 'Reihe {row} von {rows}',
      moreRows: 'Die weiteren Reihen werden nach den Schritten geschnitten.',
      piecesNumbered:
        'Die Zahlen sind die Nummern der Teile in der Tabelle, die Zahlen im Kreis die der Schritte.',
      partSash: 'Zwischenstreifen',
      partCornerstone: 'Eckquadrat',
      partSideTriangle: 'Seitendreieck',
      partCornerTriangle: 'Eckdreieck',
      partBorder: 'Rand {border}',
      partBorderCorner: 'Rand {border}, Ecke',
      partBinding: 'Einfassung',
      blocksTitle: 'Blöcke',
      makeBlocks: '{count} nähen: {finished} fertig, {unfinished} mit Nahtzugabe.',
      forBorders: 'Davon für Ränder: {count}.',
      topTitle: 'Das Top',
      topSize: 'Die zusammengesetzten Blöcke messen fertig {finished}.',
      rowsBlocks: 'Reihe für Reihe von oben, jede von links',
      rowsTurns: 'Vierteldrehungen im Uhrzeigersinn, Reihe für Reihe von oben, jede von links',
      rowNumber: 'Reihe',
      rowBlocks: 'Blöcke',
      rowTurns: 'Drehungen',
      turned: '{block}, {turns}/4 gedreht',
      times: '{count} × {block}',
      between: 'Zwischen den Blöcken und um sie herum',
      finishedSize: 'Fertigmaß',
      bordersTitle: 'Ränder',
      bordersCaption: 'Nach dem gemessenen Top zuschneiden; dies sind die Maße nach Plan',
      borderStrips: '{border}, {strips}',
      strips: 'Streifen',
      sides: 'Seiten',
      topAndBottom: 'oben und unten',
      corners: 'Eckquadrate',
      unitsEach: 'je {count} Blöcke',
      thenFinishes: 'danach misst der Quilt {finished}',
      finishingTitle: 'Fertigstellen',
      backingOne: 'Rückseite: mindestens {target}, eine Bahn, {panel} lang.',
      backingVertical:
        'Rückseite: mindestens {target}; {panels} Bahnen, {panel} lang, senkrechte Nähte.',
      backingHorizontal:
        'Rückseite: mindestens {target}; {panels} Bahnen, {panel} lang, waagerechte Nähte.',
      battingFact: 'Vlies: mindestens {target}.',
      bindingStraight:
        'Einfassung: {strips} Streifen, {strip} breit, schräg aneinandergenäht, ergeben {length}; gebraucht werden {needed}.',
      bindingBias:
        'Einfassung: {strips} Schrägstreifen, {strip} breit, aus {fabric} Stoff ergeben {length}; gebraucht werden {needed}.',
      bindingContinuous:
        'Einfassung: Endlos-Schrägstreifen, {strip} breit, {length} lang, aus Quadraten von {square} (Anzahl: {squares}); gebraucht werden {needed}.',
      kits: 'Materialpackungen für einen Kurs',
      people: 'Personen',
      each: 'Jede Person näht',
      eachCount: 'Anzahl',
      eachQuilts: 'ganze Quilts',
      eachBlocks: 'Blöcke: {block}',
      spares: 'Reservepackungen',
      onBolt: 'Länge eines Ballens',
      kitPrice: 'Preis je Packung',
      kitMargin: 'Oder Spanne in %',
      kitsNone:
        'Die Zahl der Personen angeben; dann steht hier, was jede Packung enthält und kostet.',
      kitsWorking: 'Die Packungen werden berechnet …',
      kitsHeadline: 'Packungen: {kits}',
      kitMakes: 'Jede ergibt {made}.',
      kitsTable: 'Für den Zuschneidetisch, jede Länge in einem Stück',
      kitLength: 'Je Packung',
      kitsSeparate: 'Alle Packungen',
      kitsPooled: 'Aus einer Länge',
      kitsSaves: '{amount} weniger',
      bolts: 'Ballen',
      kitsPerBolt: '{kits} je Ballen',
      boltRemnant: '{amount} Rest',
      costTable: 'Was eine Packung kostet',
      costPart: 'Teil',
      cost: 'Kosten',
      oneKit: 'Eine Packung',
      allKits: 'Alle Packungen ({kits})',
      soldFor: 'Preis je Packung',
      leftOfKit: 'Davon bleiben: {percent} %',
      leftOfAll: 'Rest bei {people} verkauften, Reserve bezahlt',
      pooledNote:
        'Aus einer Länge geschnitten, brauchen alle Packungen zusammen die kleinere Menge; der Stoff einer Packung liegt dann aber nicht in einem Stück.',
    },

    unit: {
      unit: 'Einheit',
      method: 'Methode',
      count: 'Anzahl',
      unitSizes: 'Einheit und Maße',
      'more-unit': 'Naht, Übermaß, Maßeinheit',
      'finished-width': 'Fertige Breite',
      'finished-height': 'Fertige Höhe',

      headlineTrim: '{finished} fertig, auf {trimTo} zurückschneiden',
      headlineCut: '{finished} {meaning}, Zuschnitt {cut}',
      headlineStrip: '{finished} {meaning}, Streifen {cut} breit zuschneiden',
      headlineSet: '{finished} {meaning}, vom Streifenset je {cut} abschneiden',
      asSewn: 'Die Einheit',
      cutOf: 'Zuschnitt {number} von {cuts}',
      trimHow:
        'Die Linien des Lineals auf die Marken legen. Die zwei Kanten schneiden, die Einheit um 180 Grad drehen, die anderen zwei schneiden.',
      shapeHow: 'Auf der gestrichelten Linie wird genäht.',
      cutHow: '{label}: {count} in einem Satz, Stoff {fabric}.',
      saveTemplate: 'Diese Schablone in Originalgröße speichern (SVG)',
      templateSheet:
        'Das Blatt ist {size} groß und hat Quadrate von 1 Zoll und 5 cm zum Nachmessen vor dem Gebrauch.',

      cutSize: 'Zuschnitt',
      exactly: 'genau {size}',
      forSet: 'Ein Satz (ergibt {made})',
      forUnits: 'Für {count}',
      diagonalOnce: 'einmal von Ecke zu Ecke',
      diagonalTwice: 'zweimal von Ecke zu Ecke',
      fromTop: 'von der Mitte oben zu beiden unteren Ecken',
      roundTemplate: 'um die Schablone herum',
      atAngle: 'schräg aus einem Streifen',

      unitSteps: 'So wird sie genäht',
      trimMarks: 'Marken zum Zurückschneiden',
      mark: 'Marke',
      fromLeft: 'Von links',
      fromTopEdge: 'Von oben',
      span: '{from} bis {to}',

      facts: 'Ausbeute, Schrägkanten, Fadenlauf',
      yields: 'Ein Satz ergibt {made}. Für {count}: Sätze {sets}, übrig {leftOver}.',
      perStrip: 'Ein Streifen von {width} mal {usable} ergibt {perStrip}.',
      perSet: 'Ein Streifenset von {width} mal {usable} ergibt {perStrip} Abschnitte.',
      firstCut: 'Der erste schräge Schnitt nimmt am Ende {first} weg.',
      biasEdges: 'Schrägkanten an einer Einheit: {outside} außen, {seams} in den Nähten.',
      sewnFirst: 'Die in den Nähten werden genäht, bevor sie geschnitten werden.',
      grainStraight: 'Fadenlauf entlang der Kanten: {fabrics}.',
      grainDiagonal: 'Fadenlauf schräg zu den Kanten: {fabrics}.',
      bonus:
        'Aus den abgeschnittenen Ecken werden {count} Halbquadrat-Dreiecke, fertig bis zu {finished}.',

      compare: 'Methoden im Vergleich, für {count}',
      figure: 'Angabe',
      cuts: 'Zuschnitt eines Satzes',
      countOf: '{count} à {size}',
      makes: 'Ein Satz ergibt',
      sets: 'Sätze',
      leftOver: 'Übrig',
      fabricArea: 'Stoff, Quadratzoll',
      fabricAreaMetric: 'Stoff, Quadratzentimeter',
      wasteArea: 'Davon Nähte und Abfall',
      biasHandled: 'Schrägkanten beim Nähen',
      biasOutside: 'Schrägkanten außen',
      seams: 'Nähte',
      trims: 'Schnitte zum Zurückschneiden',
      chosen: 'gewählt',
      refused: '{method}: {reason}',
    },
  },

  words: {
    finished: 'fertig',
    'trim to': 'zurückschneiden auf',
    center: 'Mitte',
    'center seam': 'Mittelnaht',
    'last seam': 'letzte Naht',
    'trimmed edge': 'geschnittene Kante',
    hold: 'halten',
    'selvage to selvage': 'von Webkante zu Webkante',
    top: 'oben',
    right: 'rechts',
    bottom: 'unten',
    left: 'links',
    wide: 'breit',
    narrow: 'schmal',
    log: 'Streifen',
    cornerstone: 'Eckquadrat',
    'inside curve': 'Innenbogen',
    'outside curve': 'Außenbogen',
    '1 inch': '1 Zoll',
    '5 cm': '5 cm',
    'Print at 100 %.': 'Mit 100 % drucken.',
    'Measure both squares first.': 'Zuerst beide Quadrate nachmessen.',
    'Never cut against paper.': 'Nie am Papier entlang schneiden.',

    // Settings of a quilt top
    'straight-furrows': 'Gerade Furchen',
    'barn-raising': 'Scheunenbau',
    'streak-of-lightning': 'Blitz',
    'sunshine-and-shadow': 'Licht und Schatten',
    circles: 'Kreise',

    // Units
    'unit half-square-triangles': 'Halbquadrat-Dreiecke',
    'unit quarter-square-triangles': 'Viertelquadrat-Dreiecke',
    'unit split-quarter-squares': 'Geteilte Viertelquadrat-Dreiecke',
    'unit flying-geese': 'Fliegende Gänse',
    'unit square-in-square': 'Quadrat im Quadrat',
    'unit snowball': 'Schneeball',
    'unit half-rectangle-triangles': 'Halbrechteck-Dreiecke',
    'unit setting-triangles': 'Seiten- und Eckdreiecke',
    'unit diamond': 'Raute',
    'unit eight-pointed-star': 'Achtzackiger Stern',
    'unit parallelogram': 'Parallelogramm',
    'unit trapezoid': 'Trapez',
    'unit equilateral-triangle': 'Gleichseitiges Dreieck',
    'unit sixty-degree-half-triangles': 'Halbe 60-Grad-Dreiecke',
    'unit hexagon': 'Sechseck',
    'unit four-patch': 'Viererblock',
    'unit nine-patch': 'Neunerblock',
    'unit rail-fence': 'Lattenzaun',
    'unit strip-set': 'Streifenset',
    'unit drunkards-path': 'Weg des Trunkenbolds',

    // Methods
    'two-at-a-time': 'Zwei auf einmal',
    'four-at-a-time': 'Vier auf einmal',
    'eight-at-a-time': 'Acht auf einmal',
    'cut-triangles': 'Dreiecke zuschneiden',
    'single-triangles': 'Einzelne Dreiecke',
    'stitch-and-flip': 'Nähen und umklappen',
    'from-strips': 'Aus Streifen',
    'half-hexagons': 'Halbe Sechsecke',
    'strip-set': 'Streifenset',
    'cut-squares': 'Quadrate zuschneiden',
    templates: 'Schablonen',

    // Inputs and choices
    'input side': 'Fertige Seite',
    'input long edge': 'Fertige lange Kante',
    'input height': 'Fertige Höhe',
    'input block': 'Fertiger Block',
    'input subcut': 'Fertige Breite eines Abschnitts',
    'input usable': 'Nutzbare Stoffbreite',
    'input corner': 'Fertige Ecke',
    'input center': 'Fertige Mitte',
    'input strips': 'Fertige Breiten der Streifen',
    'input radius': 'Fertiger Radius',
    'input angle': 'Winkel in Grad',
    'input direction': 'Richtung',
    'input rails': 'Streifen in einer Einheit',
    'input oversize': 'Übermaß',
    'input rounds': 'Runden',
    'input corners': 'Ecken',
    'input triangle': 'Dreieck',
    'input slants': 'Schrägen',
    'direction falling': 'fallend',
    'direction rising': 'steigend',
    'direction both': 'beide',
    'direction right': 'nach rechts',
    'direction left': 'nach links',
    'triangle side': 'Seitendreieck',
    'triangle corner': 'Eckdreieck',
    'slants both': 'beide',
    'slants right': 'rechts',
    'slants left': 'links',
    'named side': 'fertig je Seite',
    'named size': 'fertig',
    'named long edge': 'fertig an der langen Kante',
    'named height': 'fertig in der Höhe',
    'named block': 'fertig je Block',
    'named subcut': 'fertig je Abschnitt',
    'mark diagonal': '45-Grad-Naht',
    'mark seam': 'Naht',
    'mark center': 'Mittellinie',
    'mark point': 'Spitze',
    'mark crossing': 'Nahtkreuzung',
    'sixty-degree': '60 Grad',
    'long edge': 'lange Kante',
    subcut: 'Abschnitt',

    // What limits and errors speak of
    ratio: 'breit : schmal',
    'true or false': 'true oder false',
    'two sides': 'zwei Seiten',
    'pieces of fabric': 'Stoffstücke',

    // Parts and fabrics
    dark: 'dunkel',
    light: 'hell',
    square: 'Quadrat',
    rectangle: 'Rechteck',
    'large triangle': 'großes Dreieck',
    goose: 'Gans',
    sky: 'Himmel',
    corner: 'Ecke',
    'second corner': 'zweite Ecke',
    base: 'Grundquadrat',
    side: 'Seite',
    strip: 'Streifen',
    rail: 'Latte',
    setting: 'Dreieck',
    diamond: 'Raute',
    background: 'Hintergrund',
    parallelogram: 'Parallelogramm',
    trapezoid: 'Trapez',
    triangle: 'Dreieck',
    hexagon: 'Sechseck',
    'first strip set': 'erstes Streifenset',
    'second strip set': 'zweites Streifenset',
  },

  sentences: {
    logCabin: {
      'narrow-log':
        'Streifen mit Fertigmaß {finished} sind schmaler als zwei Nahtzugaben: Jede Naht fasst die Zugaben der vorigen mit.',
      'narrow-center':
        'Eine Mitte mit Fertigmaß {finished} ist schmaler als zwei Nahtzugaben: Ihre Nähte geraten übereinander.',
      'log-off-grid':
        'Ein Stoffstreifen für Streifen mit Fertigmaß {finished} ist genau {exact} breit. Mit {cut} zugeschnitten, macht er einen Block, der nicht zurückgeschnitten wird, um {adds} größer.',
      'strip-off-grid':
        'Ein Stoffstreifen von {exact} Breite liegt zwischen zwei Linien des Rasters: Er wird mit {cut} zugeschnitten, und das Zurückschneiden nimmt den Unterschied weg.',
      'center-off-grid':
        'Die Mitte misst im Zuschnitt genau {exact}. Mit {cut} zugeschnitten, macht sie den Block um {adds} größer, wenn sie nicht zuerst zurückgeschnitten wird.',
      'finished-off-grid':
        'Das Fertigmaß des Blocks ist {finished} und liegt um {by} über einer Linie des Rasters von {grid}.',
      'trim-off-grid':
        'In Runde {rounds} liegt eine Schnittlinie zwischen zwei Linien des Rasters von {grid}, um {by} über der einen.',
    },
    drawing: {
      'block-title': 'Der genähte Block: {finished} fertig, auf {unfinished} zurückschneiden',
      'block-description':
        'Eine Mitte mit Fertigmaß {center} und {logs} Streifen in {rounds} Runden, in Nähreihenfolge nummeriert. Die Zuschnittliste nennt jedes Maß.',
      'trim-title':
        'Runde {round}, Lage {placement} von {placements}: auf {trimTo} zurückschneiden',
      'trim-description':
        'Der Block unter einem quadratischen Lineal, dessen Kante auf der Schnittlinie der Seite „{sides}“ liegt. Die Tabelle zum Zurückschneiden nennt jeden Abstand.',
      'turns-title': 'Ein Top aus {across} mal {down} Blöcken, {finished} fertig: {setting}',
      'turns-description':
        'Blöcke mit Fertigmaß {finished}, in Vierteldrehungen gelegt, in der Anordnung „{setting}“.',
      'round-template-title': 'Runde {round}: auf {trimTo} zurückschneiden',
      'round-template-description':
        'Die äußere Linie ist die geschnittene Kante, das kräftige Quadrat die Mittelnaht, die dünnen Linien sind die letzten Nähte.',
      'foundation-title': 'Nähvorlage für einen Block mit Fertigmaß {finished}, gespiegelt',
      'foundation-description':
        'Auf der bedruckten Seite nähen, auf den Linien, in der Reihenfolge der Zahlen, von der Mitte aus. Die gestrichelte Linie ist die fertige Kante; geschnitten wird auf der äußeren Linie, eine Nahtzugabe weiter außen.',
      'cutting-title': 'Stoff von {from} bis {to} von {length}',
      'cutting-description':
        '{strips} Streifen über die Stoffbreite, jeder mit der Nummer seines Schritts; die Zahlen auf den Teilen sind ihre Nummern in der Liste.',
      'packing-title': 'Stoff, {width} mal {length}',
      'packing-description':
        'Teile daraus: {pieces}, jedes mit seiner Nummer in der Liste; was schraffiert ist, bleibt übrig.',
      'packing-corner-description':
        'Teile daraus: {pieces}, jedes mit seiner Nummer in der Liste; was schraffiert ist, bleibt übrig. Eine Ecke von {corner} fehlt.',
      'quilt-title': 'Ein Quilt aus {across} mal {down} Blöcken, {finished} fertig',
      'quilt-on-point-title':
        'Ein Quilt aus {across} mal {down} auf die Spitze gestellten Blöcken, {finished} fertig',
      'quilt-description':
        '{blocks} Blöcke mit Fertigmaß {block}. Ränder: {borders}. Jeder Stoff hat seinen eigenen Farbton und seine eigene Schraffur.',
      'unit-title': 'Die genähte Einheit: {finished} fertig, auf {trimTo} zurückschneiden',
      'shape-title': 'Die Form mit ihrer Nahtzugabe: {finished} fertig',
      'unit-description':
        'Die Einheit mit Nahtzugabe und ihren {patches} Teilen, die fertige Kante eine Nahtzugabe weiter innen.',
      'cut-title': 'Zuschneiden: {count} à {size}',
      'cut-description':
        'Ein Teil mit seinem Maß. Auf durchgezogenen Linien wird geschnitten, auf dünnen genäht. Die Schritte sagen, in welcher Reihenfolge.',
      'template-title': 'Die Schablone „{piece}“: {size} mit Nahtzugabe',
      'template-description':
        'Die durchgezogene Linie ist die Schnittkante, auf der gestrichelten wird genäht; die Mitte des Bogens ist markiert.',
    },
    table: {
      'cut-center': 'Die Mitte {size} groß zuschneiden, Stoff {fabric}.',
      'sew-strip-set':
        'Einen Stoffstreifen von {centerWidth} (Stoff {centerFabric}) der Länge nach an einen Stoffstreifen von {width} (Stoff {fabric}) nähen und die Nahtzugabe zu diesem hin bügeln.',
      'subcut-strip-set':
        'Vom Streifenset je {length} abschneiden: Jedes Stück ist eine Mitte mit Streifen {order} an der Seite „{side}“.',
      'sew-log':
        'Streifen {order}, {width} mal {length}, Stoff {fabric}, an die Seite „{side}“ nähen.',
      'sew-to-strip':
        'Den Block mit der Seite „{side}“ an einen Stoffstreifen von {width} (Stoff {fabric}) nähen und diesen {extra} hinter dem Block abschneiden: Streifen {order}.',
      'sew-cornerstone':
        'Zuerst ein Eckquadrat von {size}, Stoff {fabric}, an das Ende „{side}“ von Streifen {order} nähen.',
      press: 'Jede Nahtzugabe von der Mitte weg bügeln, bevor der nächste Streifen angenäht wird.',
      'lay-block': 'Den Block so hinlegen, dass seine Seite „{side}“ nach oben zeigt.',
      'turn-block-half': 'Den Block um 180 Grad drehen.',
      'turn-block-quarter':
        'Den Block um 90 Grad drehen, sodass seine Seite „{side}“ nach oben zeigt.',
      'turn-mat-half': 'Die Matte um 180 Grad drehen; der Block bleibt darauf liegen.',
      'turn-mat-quarter':
        'Die Matte um 90 Grad drehen, sodass die Seite „{side}“ des Blocks nach oben zeigt; der Block bleibt darauf liegen.',
      'trim-side':
        'Die Seite „{side}“ an der Linealkante „{at}“ zurückschneiden: die Linie {centerSeam} auf der Mittelnaht, die Linie {lastSeam} auf der letzten Naht.',
      'trim-to-edge':
        'Die Seite „{side}“ an der Linealkante „{at}“ zurückschneiden: die Linie {size} auf der schon geschnittenen Kante, die Linie {centerSeam} auf der Mittelnaht, die Linie {lastSeam} auf der letzten Naht.',
      'check-diagonal':
        'Die 45-Grad-Linie des Lineals läuft durch die Ecke der Mitte, {distance} von beiden Kanten entfernt.',
      'check-size': 'Runde {round} misst {size}.',
      'ruler-too-short':
        'Ab Runde {round} ist ein Schnitt {needed} lang: Ein Lineal von {ruler} reicht nicht darüber.',
      'mat-too-small':
        'Ab Runde {round} brauchen der noch nicht zurückgeschnittene Block und der Auslauf der Klinge {needed}: Eine Matte von {mat} ist zu klein.',
    },
    seam: {
      'seam-true': 'Die Nahtzugabe misst {seam}, wie sie soll.',
      'seam-deep':
        'Die Nahtzugabe misst {seam}, das ist {by} mehr als {wanted}: Jeder Streifen zeigt weniger.',
      'seam-scant':
        'Die Nahtzugabe misst {seam}, das ist {by} weniger als {wanted}: Jeder Streifen zeigt mehr.',
      'oversize-short':
        'Stoffstreifen ({kind}), mit {cut} zugeschnitten, werden um {oversize} zurückgeschnitten, und diese Naht braucht {needed}: mit {better} zuschneiden.',
      'coping-narrow':
        'Ausgleichsstreifen mit Fertigmaß {finished} sind schmaler als {least}. Bei Blöcken mit Fertigmaß {better} sind sie {least} breit.',
    },
    fit: {
      ratio: 'Zuerst die, deren breit : schmal dem gewünschten Verhältnis am nächsten ist.',
      center: 'Zuerst die, deren Mitte der gewünschten am nächsten ist.',
      'thin-parts':
        'Dann die mit den wenigsten Arten von Teilen, die schmaler sind als zwei Nahtzugaben.',
      'center-like-round': 'Dann die, deren Mitte dem am nächsten ist, was eine Runde hinzufügt.',
      fabric: 'Dann die, die am wenigsten Stoff brauchen.',
      size: 'Dann der kleinere Block und die kleinere Mitte.',
      'fits-left-out':
        'Es gibt {total} solche Blöcke. Die besten {shown} sind genannt, {leftOut} sind weggelassen.',
      'sizes-left-out':
        'Es sind zu viele Blöcke, um jeden anzusehen. Angesehen wurden die mit Fertigmaß von {least} bis {most}; für die anderen die Grenzen enger setzen.',
      'relax-least': 'Es geht auf, wenn „{part}“ schon ab {value} erlaubt ist statt ab {limit}.',
      'relax-most': 'Es geht auf, wenn „{part}“ bis {value} erlaubt ist statt bis {limit}.',
      'relax-strip': 'Es geht auf mit Stoffstreifen ({part}) von {value} statt {limit}.',
      'relax-least-trim':
        'Es geht auf, wenn das Zurückschneiden mindestens {value} wegnimmt statt {limit}.',
      'relax-rounds': 'Es geht auf, wenn die Zahl der Runden {value} ist statt {limit}.',
      'relax-grid': 'Es geht auf mit einem Raster von {value} statt {limit}.',
    },
    sheet: {
      'measure-first':
        'Mit 100 % drucken. Vor dem Gebrauch dieses Quadrat nachmessen: Seine kleine Ecke ist 1 Zoll, das Ganze 5 cm. Stimmt das nicht, ist das Blatt falsch.',
      'never-cut-against':
        'Nie am Papier entlang schneiden: Es dient zum Prüfen und Nachzeichnen oder wird unter ein Acryllineal geklebt.',
      join: 'Die Kreuze zweier Blätter aufeinanderlegen: Buchstabe auf Buchstabe.',
      page: 'Seite {page} von {pages}: Reihe {row}, Spalte {column}',
    },
    unit: {
      cut: 'Stoff {fabric}: {count} à {size} zuschneiden.',
      'cut-strips': 'Stoff {fabric}: Streifen von {width} Breite zuschneiden, insgesamt {count}.',
      trim: 'Bügeln und auf {trimTo} zurückschneiden.',
      'narrow-unit':
        'Ein Teil mit Fertigmaß {finished} ist schmaler als zwei Nahtzugaben: Die Zugaben liegen übereinander.',
      'trim-off-grid':
        'Die Einheit wird auf {trimTo} zurückgeschnitten; das liegt um {by} über einer Linie des Rasters von {grid}.',
      'bias-outside':
        'Die Außenkanten liegen im schrägen Fadenlauf und dehnen sich: wenig anfassen und beim Bügeln nicht ziehen.',
      'mirror-pairs':
        'Liegen die Stofflagen links auf links, entstehen Spiegelbilder. Den Stoff auffalten, alle Lagen mit der rechten Seite nach oben.',
      'left-over': 'Der Zuschnitt ergibt {leftOver} mehr als die verlangten {count}.',
      'mark-diagonal':
        'Auf die linke Stoffseite des helleren Quadrats jedes Paares eine Diagonale zeichnen.',
      'mark-diagonals':
        'Auf die linke Stoffseite des helleren Quadrats jedes Paares beide Diagonalen zeichnen.',
      'sew-both-sides': 'Rechts auf rechts beiderseits der Linie nähen, {seam} von ihr entfernt.',
      'sew-both-lines':
        'Rechts auf rechts beiderseits beider Linien nähen, {seam} von ihnen entfernt.',
      'sew-round': 'Rechts auf rechts ringsum nähen, {seam} von der Kante entfernt.',
      'cut-on-line': 'Auf der Linie schneiden, aufklappen und bügeln.',
      'cut-diagonals': 'Auf beiden Diagonalen schneiden, aufklappen und bügeln.',
      'cut-quarters':
        'In der Mitte längs und quer schneiden, dann auf beiden Diagonalen; aufklappen und bügeln.',
      'cut-once': 'Jedes Quadrat einmal von Ecke zu Ecke durchschneiden.',
      'cut-twice': 'Jedes Quadrat zweimal von Ecke zu Ecke durchschneiden.',
      'sew-triangles':
        'Die Dreiecke an den langen Kanten zusammennähen, {seam} von der Kante entfernt.',
      'sew-short-edges':
        'Die Dreiecke paarweise an einer kurzen Kante zusammennähen, dann die Paare an der langen.',
      'cross-pairs':
        'Die Halbquadrat-Einheiten paarweise rechts auf rechts legen, verschiedene Stoffe aufeinander, die Nähte ineinandergreifend.',
      'lay-plain-square':
        'Jede Halbquadrat-Einheit rechts auf rechts auf ein ungeteiltes Quadrat legen.',
      'mark-across': 'Die Diagonale zeichnen, die die Naht kreuzt.',
      'sew-to-half': 'Jedes Paar kleiner Dreiecke an der langen Kante an ein großes Dreieck nähen.',
      'trim-diagonal': 'Auf {trimTo} zurückschneiden, die 45-Grad-Linie des Lineals auf der Naht.',
      'trim-crossing':
        'Auf {trimTo} zurückschneiden: Die Nähte kreuzen sich in der Mitte, {middle} von jeder Kante, und laufen auf den 45-Grad-Linien.',
      'geese-first':
        'Zwei kleine Quadrate auf gegenüberliegende Ecken des großen legen und die Diagonale durch beide zeichnen.',
      'geese-second':
        'Auf jede Hälfte ein kleines Quadrat auf die freie Ecke legen und seine Diagonale zeichnen; ebenso nähen, schneiden und bügeln.',
      'geese-triangles': 'An jede kurze Kante der Gans ein Himmelsdreieck nähen.',
      'trim-point':
        'Auf {trimTo} zurückschneiden: Die Spitze liegt {seam} unter der Kante und {middle} von jeder Seite.',
      'round-triangles':
        'An zwei gegenüberliegende Seiten ein Eckdreieck nähen, bügeln, dann an die anderen zwei; zurückschneiden und mit der nächsten Runde weitermachen.',
      'trim-rounds':
        'Jede Runde {seam} außerhalb der Spitzen zurückschneiden, die letzte auf {trimTo}.',
      'setting-trim':
        'Die Reihe nähen, dann {seam} außerhalb der Blockecken zurückschneiden. Genau gerechnet würde ein Quadrat von {least} reichen.',
      'mirror-half': 'Die Hälfte der Einheiten wird zu Spiegelbildern der anderen.',
      'seam-not-in-corner':
        'Die Naht läuft nicht in die Ecken der Einheit mit Nahtzugabe: Sie läuft durch die Punkte {seam} innerhalb davon.',
      'cut-one-way': 'Jedes Rechteck einmal von Ecke zu Ecke durchschneiden, alle gleich.',
      'cut-both-ways':
        'Die Hälfte der Rechtecke in der einen Richtung von Ecke zu Ecke durchschneiden, die andere Hälfte in der anderen.',
      'cut-isosceles': 'Jede Gans von der Mitte oben zu beiden unteren Ecken schneiden.',
      'trim-seam':
        'Auf {trimTo} zurückschneiden, sodass die Naht durch die Punkte {seam} innerhalb ihrer zwei Ecken läuft.',
      'set-in-seams':
        'Die Teile treffen sich in eingesetzten Nähten: {seam} vor der Kante aufhören zu nähen.',
      'mark-small-squares':
        'Auf die linke Stoffseite der kleinen Quadrate eine Diagonale zeichnen.',
      'flip-corner':
        'Ein kleines Quadrat rechts auf rechts auf eine Ecke legen, auf der Linie nähen, {seam} außerhalb abschneiden, die Ecke umklappen und bügeln.',
      'flip-other': 'An der anderen Ecke ebenso.',
      'flip-each': 'An jeder der {corners} Ecken ebenso.',
      'no-point':
        'Eine Gans von {width} mal {height} ist mehr als doppelt so breit wie hoch: Ihre Ecken treffen sich nicht in einer Spitze, sondern enden {apart} voneinander entfernt.',
      bonus:
        'Vor dem Abschneiden zusammengenäht, ergeben die Ecken Halbquadrat-Dreiecke, fertig bis zu {finished}.',
      'first-angle': 'Das Ende des Streifens im Winkel von {angle} Grad abschneiden.',
      'next-angle':
        'Für jeden weiteren Schnitt die Linie {line} des Lineals an die geschnittene Kante legen: {perStrip} aus einem Streifen.',
      'alternate-angles':
        'Mit {angle} Grad abwechselnd zur einen und zur anderen Seite schneiden, {edge} an der langen Kante: {perStrip} aus einem Streifen.',
      'hexagon-points':
        'Die zwei spitzen Enden jeder Raute abschneiden: rechtwinklig zur langen Diagonale, auf beiden Seiten {half} von der Mitte.',
      'sew-halves':
        'Die Hälften zu Reihen nähen, dann die Reihen aneinander: Es gibt keine eingesetzten Nähte.',
      'half-triangles': 'Jedes Rechteck einmal von Ecke zu Ecke durchschneiden.',
      'strip-off-grid':
        'Ein Streifen ist genau {exact} breit. Wird er mit {cut} zugeschnitten, so wird, was daraus entsteht, um {adds} größer.',
      'piece-off-grid':
        'Ein Teil ist genau {exact} lang. Mit {cut} zugeschnitten, wird es um {adds} länger.',
      'sew-strip-set':
        'Die Streifen an den langen Kanten zusammennähen, {seam} von der Kante, und bügeln: {set} breit.',
      subcut:
        'Das Ende begradigen und quer zu den Nähten je {subcut} abschneiden: {perSet} aus einem Set.',
      'sew-two':
        'Zwei Abschnitte zusammennähen, einen davon gedreht, die Nähte ineinandergreifend.',
      'sew-three':
        'Je drei Abschnitte zusammennähen, den abweichenden in der Mitte, die Nähte ineinandergreifend.',
      'sew-squares':
        'Die Quadrate zu Reihen nähen und die Reihen aneinander, die Nähte ineinandergreifend.',
      'angle-approximate':
        'Der Sinus von {angle} Grad lässt sich nicht genau angeben: Die Längen sind nach außen gerundet.',
      'cut-round-template': 'Die Bögen um die Schablonen herum schneiden.',
      'mark-middles': 'Beide Bögen zur Hälfte falten und die Mitten markieren.',
      'sew-curve':
        'Mitten und Enden aufeinanderlegen und {seam} von der Kante nähen, den Innenbogen oben.',
      'curve-measure': 'Der genähte Bogen misst {most}, wenn die Naht stimmt.',
      'pi-approximate': 'Was der Bogen misst, enthält Pi; darum ist es mit zwei Grenzen angegeben.',
    },
    pattern: {
      'directional-turned':
        'Das Muster von {fabric} hat ein Oben und ein Unten, und Blöcke, in denen es liegt, sind gedreht: Es dreht sich mit.',
      'directional-sides':
        'Das Muster von {fabric} hat ein Oben und ein Unten, und im Block {block} läuft es an allen Seiten, an denen es vorkommt, längs: Gleich zugeschnittene Streifen stehen an einigen Seiten aufrecht und liegen an anderen quer.',
      'directional-borders':
        'Das Muster von {fabric} hat ein Oben und ein Unten: Im Rand {border} stehen gleich zugeschnittene Streifen an zwei Seiten aufrecht und liegen an den beiden anderen quer.',
      'fabric-unused': 'Aus {fabric} wird in dieser Größe nichts geschnitten.',
    },
    layout: {
      'finished-off-grid':
        'Das Top misst fertig {finished}; das liegt zwischen zwei Linien des Rasters von {grid}. Vor dem Zuschneiden von Rändern, Einfassung und Rückseite nachmessen.',
      'prints-turn':
        'Blöcke sind gedreht, und ein gerichtetes Muster dreht sich mit: auf der Seite {sideways}, auf dem Kopf {upsideDown}.',
      'narrow-sash':
        'Zwischenstreifen mit Fertigmaß {finished} sind schmaler als zwei Nahtzugaben: Jede Naht fasst die Zugaben der vorigen mit.',
      'prints-lean':
        'Auf die Spitze gestellte Blöcke stehen auf einer Ecke, und ein gerichtetes Muster steht in ihnen schief. In Seiten- und Eckdreiecken, die aus Quadraten geschnitten sind, läuft es in zwei Richtungen.',
    },
    borders: {
      'measured-differs':
        'Das Top misst {measured} und sollte {planned} messen. Ränder werden nach dem gemessenen Maß geschnitten, und das Top wird eingehalten.',
      'wide-border':
        'Ein Rand mit Fertigmaß {width} auf jeder Seite ist insgesamt breiter als der Quilt darin, {quilt}.',
      'narrow-border':
        'Ein Rand mit Fertigmaß {width} ist schmaler als zwei Nahtzugaben: Seine Nähte geraten übereinander.',
    },
    binding: {
      'several-squares':
        'Ein einziges Quadrat wäre breiter als der Stoff, {fabricWidth}: {squares} Quadrate von {square} werden geschnitten und ihre Schrägstreifen aneinandergenäht.',
      'customary-short':
        'Die übliche Regel, Seite mal Seite durch Breite, verlangt nur ein Quadrat von {customary}. Ganze Streifen und Nähte geben daraus {length}, und {needed} werden gebraucht.',
    },
    backing: {
      'near-miss':
        'Mit {less} weniger Überstand auf jeder Seite, {overhang} statt {asked}, genügen {length} vom {width} breiten Stoff statt {full}: {yards} weniger zu kaufen.',
    },
    kits: {
      'sold-below-cost': 'Eine Packung kostet mehr, als sie einbringt.',
      'no-price': '{fabric} hat keinen Preis; deshalb ist nicht bekannt, was eine Packung kostet.',
    },
    cutting: {
      'square-up': 'Das Ende des Stoffs begradigen.',
      'cut-strip': '1 Streifen von {width} über die Stoffbreite schneiden; daraus {subcuts}.',
      'cut-strips':
        '{strips} Streifen von {width} über die Stoffbreite schneiden; aus jedem {subcuts}.',
      'stack-strips':
        '{strips} Streifen von {width} über die Stoffbreite schneiden; bis zu {layers} aufeinanderlegen und aus jedem {subcuts}.',
      'subcut-one': '1 Teil von {length}',
      'subcut-several': '{count} Teile von {length}',
      'subcut-turned': '{subcut} (gedreht)',
      'subcut-end': '1 Endstück von {length}, geteilt in {rows}',
      'subcut-ends': '{count} Endstücke von {length}, jedes geteilt in {rows}',
      'subcut-row': '1 Reihe von {width} mit {subcuts}',
      'subcut-rows': '{count} Reihen von {width}, jede mit {subcuts}',
      'not-proven':
        'Dieser Plan braucht {length} Stoff. Mindestens {lowerBound} sind nötig; ob weniger reichen würde, ließ sich mit diesem Rechenaufwand nicht klären.',
    },
    pack: {
      'take-one': 'Ein Stoffrechteck von {width} mal {height} nehmen.',
      'take-several':
        '{count} Stoffrechtecke von {width} mal {height} nehmen und alle gleich zuschneiden.',
      'cut-rows': 'Das Rechteck von {width} mal {height} quer schneiden, von oben: {parts}.',
      'cut-columns':
        'Das Rechteck von {width} mal {height} von oben nach unten schneiden, von links: {parts}.',
      'cut-pieces':
        'Das Rechteck von {width} mal {height} in {count} Teile von {across} mal {down} schneiden.',
    },
    join: {
      'cut-block':
        'Das Ende des Stoffs begradigen und für die Teile, die der Länge nach geschnitten werden, ein Stück von {length} Länge abschneiden.',
      'join-straight':
        '{strips} Streifen von {width} Breite mit geraden Nähten von {seam} aneinandernähen: ein Stück von {total}.',
      'join-diagonal':
        '{strips} Streifen von {width} Breite mit schrägen Nähten aneinandernähen, die Enden rechtwinklig übereinander, und {seam} neben den Nähten abschneiden: ein Stück von {total}.',
      'cut-length-one': 'Davon 1 Teil von {length} abschneiden.',
      'cut-length-several': 'Davon {count} Teile von {length} abschneiden.',
      'join-at-cut':
        'Ansatznähte, die dort liegen, wo zwei Teile getrennt werden: {count}. Die Teile in anderer Reihenfolge schneiden oder zuerst ein wenig abschneiden, wenn dort keine Naht liegen darf.',
      'lies-along':
        'Das Teil {piece} ist länger, als der Stoff breit ist, und wird der Länge nach geschnitten: Ein gerichtetes Muster liegt darauf anders herum.',
      'length-not-proven':
        'Dieser Plan braucht {length} Stoff. Mindestens {lowerBound} sind nötig; ob weniger reichen würde, ist nicht bewiesen.',
    },
    precut: {
      'find-edge':
        'Die Kanten vorgeschnittener Stoffe sind oft gezackt: nachmessen, ob {width} mal {height} bis zu den Spitzen oder bis in die Täler reicht, und dort anlegen. Nicht vorher begradigen.',
      'does-not-fit':
        'Aus einem Stück, von dem {width} mal {height} nutzbar sind, lässt sich kein Teil {piece} schneiden. Weggelassen: {count}.',
      'fewer-not-ruled-out':
        'Diese Teile lassen sich aus {needed} Stücken schneiden. Mindestens {fewest} sind nötig; ob weniger als {needed} reichen würden, ist nicht bewiesen.',
    },
    onHand: {
      'cut-apart':
        'Bei Stoff {piece} fehlt eine Ecke: in ein Rechteck von {first} und eines von {second} zerschneiden.',
      'not-cut': 'Für {count}-mal Teil {piece} reicht der vorhandene Stoff nicht.',
      'more-not-ruled-out':
        'Ob mehr dieser Teile aus dem vorhandenen Stoff geschnitten werden könnten, ist nicht bewiesen.',
      'blocks-not-proven':
        'Der Stoff reicht für {blocks} Blöcke und für höchstens {bound}; ob mehr als {blocks} möglich sind, ist nicht bewiesen.',
    },
  },

  errors: {
    'length-syntax':
      '„{text}“ ist keine Länge. Längen sehen so aus: 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd oder 26,5 cm.',
    'length-syntax empty':
      'Hier steht keine Länge. Längen sehen so aus: 10 1/2, 10,5, 10½ oder 26,5 cm.',
    'length-syntax unfinished':
      '„{text}“ hört auf, bevor die Länge vollständig ist. Längen sehen so aus: 10 1/2, 10,5 oder 26,5 cm.',
    'length-syntax syntax':
      '„{text}“ ist keine Länge: Ab dem Zeichen {at} ist sie nicht zu lesen. Längen sehen so aus: 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd oder 26,5 cm.',
    'length-syntax too-long': 'Dieser Text ist länger als 1000 Zeichen. Eine Länge ist kürzer.',
    'length-syntax not-finite': '„{text}“ ist keine Zahl, die sich messen lässt.',
    'length-syntax zero-denominator':
      '„{text}“ teilt durch null. Brüche sehen so aus: 1/2, 3/8, 10 1/2.',
    'length-syntax exponent': '„{text}“ ist zu groß oder zu klein für eine Länge.',
    'length-syntax thousands':
      '„{text}“ lässt sich auf zwei Arten lesen: 1000 schreiben für tausend oder 1,0 für eins.',
    'length-syntax spaced-slash':
      '„{text}“ lässt sich auf zwei Arten lesen: einen Bruch ohne Leerzeichen schreiben.',
    'length-syntax spaced-hyphen':
      '„{text}“ lässt sich auf zwei Arten lesen: 10 1/2 schreiben für zehneinhalb.',
    'length-syntax unit-order':
      '„{text}“ muss die größere Einheit zuerst nennen, und jede nur einmal.',
    'length-syntax wrong-kind': 'Eine Länge ist ein Text, eine Zahl oder ein Bruch.',
    'length-divisor': 'Ein Teiler ist eine Zahl ungleich 0 und ohne Wurzel, nicht {divisor}.',
    'length-root':
      'Eine Quadratwurzel wird aus einer Zahl von mindestens 0 und ohne Wurzel gezogen, nicht aus {radicand}.',
    'length-step': 'Ein Raster ist eine Länge über 0 ohne Wurzel, etwa 1/8, nicht {step}.',
    'not-positive': 'Diese Länge muss größer als 0 sein, nicht {value}.',
    'This length must be at least 0, not {value}.':
      'Diese Länge muss mindestens 0 sein, nicht {value}.',
    'not-a-count': 'Hier wird eine ganze Zahl von {least} bis {most} gebraucht.',
    'The ruler is laid {most} times in this round; there is no placement {value}.':
      'Das Lineal wird in dieser Runde {most}-mal angelegt; eine Lage {value} gibt es nicht.',
    'unknown-choice': '„{value}“ ist hier nicht bekannt. Möglich sind: {choices}.',
    'The block has no logs from strips “{value}”. Its strips are: {choices}.':
      'Der Block hat keine Streifen aus Stoffstreifen „{value}“. Seine Stoffstreifen sind: {choices}.',
    'unknown-field': 'Ein Feld „{name}“ gibt es hier nicht. Die Felder sind: {known}.',
    'missing-field': 'Hier fehlt die Angabe „{name}“.',
    'A length is needed here.': 'Hier wird eine Länge gebraucht.',
    'conflicting-fields':
      '„{one}“ und „{other}“ schließen einander aus. Eine der beiden Angaben weglassen.',
    'A block that is never trimmed has no oversize. Trim it after each round or log, or leave “{other}” out.':
      'Ein Block, der nie zurückgeschnitten wird, hat kein Übermaß. Nach jeder Runde oder jedem Streifen zurückschneiden oder „{other}“ weglassen.',
    'The strips’ widths already say how much is trimmed away. Leave “{one}” or “{other}” out.':
      'Die Breiten der Stoffstreifen sagen schon, wie viel wegfällt. „{one}“ oder „{other}“ weglassen.',
    'wrong-kind': 'Diese Angabe ist von der falschen Art. Gebraucht wird: {expected}.',
    'A fabric needs a name here.': 'Ein Stoff braucht hier einen Namen.',
    'Give at least one length that the shop cuts in, such as {expected}.':
      'Mindestens eine Länge angeben, in der der Laden schneidet, etwa {expected}.',
    'list-length': 'Diese Liste hat {entries} Einträge, gebraucht werden {needed}.',
    'This list has {entries} entries where {needed} are needed: one for each round, or one for all.':
      'Diese Liste hat {entries} Einträge, gebraucht werden {needed}: einer für jede Runde oder einer für alle.',
    'sides-not-adjacent':
      'Breite Seiten liegen nebeneinander, etwa rechts und unten; {one} und {other} tun das nicht.',
    'strip-too-narrow':
      'Ein Streifen mit Fertigmaß {log} braucht einen Stoffstreifen von mindestens {needed}, nicht {strip}.',
    'center-not-positive':
      'Die Streifen ergeben zusammen {logs}; für die Mitte eines Blocks mit Fertigmaß {finished} bleibt {center}. Schmalere Streifen, weniger Runden oder einen größeren Block nehmen.',
    'sizes-disagree':
      'Mitte und Streifen ergeben zusammen {sum}, angegeben ist aber das Fertigmaß {finished}. Eines davon ändern oder die Mitte weglassen; dann wird sie berechnet.',
    'strip-not-exact':
      'Ein Block, der nie zurückgeschnitten wird, braucht Stoffstreifen von genau {exact}, nicht {strip}. Nach jeder Runde zurückschneiden oder genau zuschneiden.',
    'limits-cross':
      'Das Kleinste ist {least} und das Größte {most}: Dazwischen liegt nichts. Die beiden tauschen oder eines weglassen.',
    'Wide logs may be {most} at most and narrow ones {least} at least: no wide log would be wider than a narrow one.':
      'Breite Streifen dürfen höchstens {most} und schmale müssen mindestens {least} breit sein: Kein breiter wäre breiter als ein schmaler.',
    'widths-vary':
      'Die Streifen „{kind}“ sind nicht in jeder Runde gleich. Eine einzige Breite angeben.',
    'no-arc':
      'Innerhalb dieser Grenzen ergibt keine Wahl der Breiten einen gebogenen Block dieser Größe: Zusammen sind es mindestens {least} und höchstens {most}, auf einem Raster von {grid}. Größe, Mitte, Runden oder Grenzen ändern.',
    'not-curved':
      'Ein Block mit Streifen von nur einer Art hat keinen Bogen. An zwei Seiten breite und an den anderen schmale Streifen nehmen.',
    'odd-count': 'Die Anzahl muss gerade sein, {fewer} oder {more}, nicht {value}.',
    'too-many-pages':
      'Das wären {pages} Blätter, höchstens {most} sind möglich. Einen kleineren Block, einen schmaleren Rand oder eine Runde nach der anderen nehmen.',
    'piece-too-long':
      'Ein Teil von {length} Länge passt nicht über einen Stoff von {width} Breite. Höchstens {width} nehmen, es drehen oder aus kürzeren zusammensetzen.',
    'A piece {length} wide and longer than that does not fit on fabric {width} wide, neither across nor along. Make it at most {width} wide, or piece it from narrower ones.':
      'Ein Teil von {length} Breite, das noch länger ist, passt nicht auf einen Stoff von {width} Breite, weder quer noch längs. Höchstens {width} breit nehmen oder aus schmaleren zusammensetzen.',
    'A piece of fabric of {value} is more than can be planned. Give a size up to {most}, its usable part.':
      'Ein Stück Stoff von {value} ist größer, als sich planen lässt. Den nutzbaren Teil mit einem Maß bis {most} angeben.',
    'A missing corner is smaller than the fabric: less than {most}, not {value}.':
      'Eine fehlende Ecke ist kleiner als der Stoff: weniger als {most}, nicht {value}.',
    'no-pieces': 'Es ist nichts zuzuschneiden. Mindestens ein Teil mit einer Anzahl angeben.',
    'too-many-pieces':
      'Das sind {total} Teile. Ein Plan fasst bis zu {most}: mehrere Pläne machen.',
    'too-many-sizes':
      'Diese Teile haben {different} verschiedene Maße. Ein Plan fasst bis zu {most}: mehrere Pläne machen.',
    'several-fabrics':
      'Ein Plan gilt für einen Stoff, und diese Teile sind aus „{one}“ und „{other}“. Für jeden Stoff einen Plan machen.',
    'not-a-fraction':
      'Ein Zuschnittmaß liegt auf den Linien eines Lineals, {value} nicht. Auf ein Raster aufrunden, etwa auf Achtelzoll.',
    'no-common-grid':
      'Die Längen dieser Teile haben kein gemeinsames Raster, auf dem sich planen lässt. Längen auf einem Raster nehmen, etwa auf Achtelzoll.',
    'not-a-shrinkage':
      'Das Einlaufen ist ein Teil der Länge, von 0 bis unter 1 (0,05 für 5 %) oder in Prozent, nicht {value}.',
    'seam-too-wide':
      'Ein Teil mit Fertigmaß {finished} braucht eine kleinere Nahtzugabe als {seam}.',
    'not-square': 'Hier wird eine einzige Länge gebraucht, nicht {width} mal {height}.',
    'Only a square block can be turned by a quarter; this one finishes {width} by {height}.':
      'Nur ein quadratischer Block lässt sich um eine Vierteldrehung drehen; dieser misst fertig {width} mal {height}.',
    'length-with-root': 'Hier wird eine Länge ohne Wurzel gebraucht, etwa 3 1/2, nicht {value}.',
    'out-of-range': 'Hier wird eine Länge von {least} bis {most} gebraucht, nicht {value}.',
    'A length of at most {most} is needed here.':
      'Hier wird eine Länge von höchstens {most} gebraucht.',
    'The long edge must be more than {least} for this height and angle, not {value}.':
      'Die lange Kante muss bei dieser Höhe und diesem Winkel länger als {least} sein, nicht {value}.',
    'Strips that were cut {most} in all cannot measure {value} when they are sewn. Measure across all of them, pressed flat.':
      'Streifen, die zusammen mit {most} zugeschnitten wurden, können genäht nicht {value} messen. Quer über alle messen, nach dem Bügeln.',
    'angle-out-of-range':
      'Hier wird ein Winkel von {least} bis {most} Grad gebraucht, nicht {value}.',
    'goose-ratio':
      'Mit dieser Methode entstehen keine Gänse von {width} mal {height}. Möglich sind {wider} mal {height} oder {width} mal {lower}. Sonst Dreiecke zuschneiden.',
    'even-sum':
      'In dieser Anordnung, auf die Spitze gestellt, müssen die Blöcke in der Breite und in der Höhe zusammen eine ungerade Zahl ergeben; {across} und {down} tun das nicht. Einen mehr oder weniger nehmen.',
    'repeat-does-not-fit':
      'Ein Rapport von {unit} geht in {side} nicht auf. Es passen {fewer} zu {fewerUnit} oder {more} zu {moreUnit}, oder Zwischenstreifen von {spacer}.',
    'block-size-differs':
      'Dieser Block hat das Fertigmaß {block}, die Anordnung ist aber für Blöcke von {layout}.',
    'strip-too-wide':
      'Streifen von {strip} Breite lassen sich aus {width} breitem Stoff nicht schräg zuschneiden oder verbinden. Schmalere Streifen oder breiteren Stoff nehmen.',
    'not-money':
      '„{value}“ ist kein Geldbetrag. Einen Betrag ab 0 mit Dezimalpunkt und ohne Währungszeichen schreiben, etwa {example}.',
    'unknown-currency':
      'Eine Währung wird mit ihrem Kürzel aus drei Großbuchstaben genannt, etwa EUR, nicht „{value}“.',
    'several-currencies':
      'Beträge in {one} und in {other} lassen sich nicht zusammenzählen. Alle in einer Währung angeben.',
    'too-much-money': 'Das ergibt mehr als {most} {currency}. Bis zu diesem Betrag wird gerechnet.',
    'not-a-margin':
      'Die Handelsspanne ist der Teil des Preises, der übrig bleibt, von 0 bis unter 1 (0,4 für 40 %), nicht {value}.',
    'This text has more than {most} characters. A recipe of up to that is read.':
      'Dieser Text hat mehr als {most} Zeichen. Eine Anleitung wird bis zu dieser Länge gelesen.',
    'There is no pattern here yet: the page gives one in a script of type application/json inside this element, or names its address in “src”.':
      'Hier ist noch keine Anleitung: Die Seite gibt sie in einem Skript vom Typ application/json in diesem Element an oder nennt ihre Adresse in „src“.',
    'A number of quilts is needed here, or blocks such as {expected}.':
      'Hier wird eine Anzahl Quilts gebraucht oder Blöcke wie {expected}.',
    'not-json': 'Das ist kein JSON: {reason}.',
    'not-loaded': 'Von {address} war keine Anleitung zu laden: Die Antwort war {status}.',
    'No recipe could be fetched from {address}: nothing answered.':
      'Von {address} war keine Anleitung zu laden: Es kam keine Antwort.',
    'text-too-long': 'Dieser Text hat {characters} Zeichen. Gelesen werden bis zu {most}.',
    'not-a-text': 'Hier wird ein Text von höchstens {most} Zeichen gebraucht.',
    'not-an-id':
      'Hier wird ein Name wie nacht-himmel gebraucht, nicht „{value}“: ein Buchstabe, dann Buchstaben, Ziffern, Binde- oder Unterstriche.',
    'not-a-share':
      'Hier wird ein Anteil von 0 bis unter 1 gebraucht (0,05 für 5 %), nicht {value}.',
    'not-a-list': 'Hier wird eine Liste mit {least} bis {most} Einträgen gebraucht.',
    'listed-twice':
      '„{value}“ steht hier ein zweites Mal. Jeder Eintrag braucht einen eigenen Namen.',
    'block-not-rectangular':
      'Blöcke und ihre Teile sind Rechtecke; {unit} nicht. Eine Einheit nehmen, die fertig rechteckig ist.',
    'blocks-differ':
      'Die Blöcke eines Tops haben alle dasselbe Fertigmaß. Dieser hat {size}, die anderen {needed}.',
    'pieces-do-not-fill':
      'Die Teile dieses Blocks ergeben fertig zusammen {pieces} Quadratzoll, der Block {block}. Beides muss gleich sein.',
    'piece-outside':
      'Dieses Teil ragt über den Rand des Blocks mit Fertigmaß {block} hinaus. Es verschieben oder verkleinern.',
    'pieces-overlap':
      'Das Teil bei {x} von links und {y} von oben liegt auf einem anderen. Eines verschieben oder verkleinern.',
    'cut-too-small':
      'Mit dem Zuschnitt {cut} ist dieses Teil zu klein: Mit seinen Nähten muss es mindestens {needed} messen.',
    'bolt-too-short': 'Ein Ballen von {bolt} ist zu kurz: Für eine Packung sind {needed} nötig.',
    'strip-too-short':
      'Ein Streifen von {usable} Länge ist für ein einziges Teil zu kurz. Er muss mindestens {needed} lang sein.',
  },

  spoken: {
    fraction: spokenFractions('de', {
      inches: {
        whole: { one: '{whole} Zoll', other: '{whole} Zoll' },
        half: 'ein halber Zoll',
        wholeAndHalf: { one: '{whole} einhalb Zoll', other: '{whole} einhalb Zoll' },
        part: '{part} Zoll',
        wholeAndPart: { one: '{whole} und {part} Zoll', other: '{whole} und {part} Zoll' },
      },
      yards: {
        whole: { one: '{whole} Yard', other: '{whole} Yards' },
        half: 'ein halbes Yard',
        wholeAndHalf: { one: '{whole} einhalb Yards', other: '{whole} einhalb Yards' },
        part: '{part} Yard',
        wholeAndPart: { one: '{whole} und {part} Yards', other: '{whole} und {part} Yards' },
      },
      parts: {
        '3': { one: 'ein Drittel', other: '{above} Drittel' },
        '4': { one: 'ein Viertel', other: '{above} Viertel' },
        '5': { one: 'ein Fünftel', other: '{above} Fünftel' },
        '6': { one: 'ein Sechstel', other: '{above} Sechstel' },
        '8': { one: 'ein Achtel', other: '{above} Achtel' },
        '9': { one: 'ein Neuntel', other: '{above} Neuntel' },
        '10': { one: 'ein Zehntel', other: '{above} Zehntel' },
        '12': { one: 'ein Zwölftel', other: '{above} Zwölftel' },
        '16': { one: 'ein Sechzehntel', other: '{above} Sechzehntel' },
        '32': { one: 'ein Zweiunddreißigstel', other: '{above} Zweiunddreißigstel' },
        '64': { one: 'ein Vierundsechzigstel', other: '{above} Vierundsechzigstel' },
      },
      over: '{above} durch {below}',
    }),
    minus: 'minus {length}',
    about: 'etwa {length}',
  },
};
