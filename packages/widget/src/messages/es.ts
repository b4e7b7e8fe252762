import type { Catalog } from './catalog.js';
import { spokenFractions } from './fractions.js';

/** Every word on every element, in Spanish. */
export const es: Catalog = {
  texts: {
    common: {
      // Units and numbers
      inches: 'Pulgadas',
      centimeters: 'Centímetros',
      by: '{width} por {height}',
      inInches: '{length} pulg.',
      comma: ', ',

      // The block
      sizes: 'Medidas',
      finished: 'Medida final',
      center: 'Centro',
      rounds: 'Vueltas',
      blocks: 'Bloques',
      kind: 'Tiras',
      plain: 'Todos los lados iguales',
      curved: 'Anchas y estrechas (curva)',
      log: 'Tira',
      wide: 'Tira ancha',
      narrow: 'Tira estrecha',
      'strips-log': 'Tiras cortadas a',
      'strips-wide': 'Tiras anchas cortadas a',
      'strips-narrow': 'Tiras estrechas cortadas a',
      'trim-oversize': 'Exceso para recortar',
      seam: 'Margen de costura',
      extra: 'Largo extra por tira',
      more: 'Costura, recorte y medidas',
      layout: 'Disposición',
      spiral: 'Espiral',
      courthouse: 'Escalones del juzgado',
      quarter: 'Cuarto',
      direction: 'Sentido de costura',
      clockwise: 'Horario',
      counterclockwise: 'Antihorario',
      first: 'Primero en cada vuelta',
      'first-wide': 'El par ancho',
      'first-narrow': 'El par estrecho',
      'trim-after': 'Recortar',
      'trim-usual': 'Según el corte de las tiras',
      'trim-round': 'Tras cada vuelta',
      'trim-log': 'Tras cada tira',
      'trim-never': 'Nunca',
      units: 'Medidas en',
      hand: 'Mano que corta',
      'hand-right': 'Derecha',
      'hand-left': 'Izquierda',
      cornerstones: 'Cuadrados de esquina',
      solved: 'se calcula',
      usual: 'exacto',
      fractions: 'Insertar una fracción',
      less: 'Un paso menos',
      greater: 'Un paso más',

      // What can be done with the answer
      actions: 'Con este resultado',
      copyText: 'Copiar como texto',
      saveTables: 'Guardar las tablas (CSV)',
      saveDrawing: 'Guardar el dibujo (SVG)',
      printThis: 'Imprimir',
      copyLink: 'Copiar el enlace',
      copied: 'Copiado.',
      copyByHand: 'La página no tiene acceso al portapapeles: copiar este texto a mano.',

      // The answer
      headline: 'Medida final {finished}, recortar a {unfinished}',
      stale: 'Estas cifras todavía no corresponden a las medidas de arriba.',
      nothing: 'No hay nada que mostrar hasta que se puedan leer las medidas de arriba.',
      summary:
        'Medida final {finished}, recortar a {unfinished}. Centro: {center}. Vueltas: {rounds}.',
      show: 'Qué se dibuja',
      wholeBlock: 'Bloque entero',
      roundOf: 'Vuelta {round} de {rounds}',
      cuts: 'cortes {cuts}',
      back: 'Atrás',
      next: 'Siguiente',
      turnedHalf:
        'Girar el bloque media vuelta. Poner los bordes recortados sobre la línea de la medida con costuras.',
      turnedQuarter:
        'Girar el bloque para que el lado que se recorta quede junto a la mano que corta.',
      facing: 'El bloque está como se cosió. Poner las líneas de la regla sobre las costuras.',

      trimChart: 'Tabla de recorte',
      round: 'Vuelta',
      trimTo: 'recortar a {size}',
      sewnSize: 'sin recortar {size}',
      side: 'Lado',
      allSides: 'todos los lados',
      centerSeamToEdge: 'De la costura central al borde',
      lastSeamToEdge: 'De la última costura al borde',
      trimAway: 'Se quita',
      exactChart: 'Medidas tras cada vuelta',

      cutList: 'Lista de corte',
      part: 'Pieza',
      fabric: 'Tela',
      cut: 'Corte',
      forOne: 'Para 1 bloque',
      forBlocks: 'Para {blocks} bloques',
      pieceCenter: 'Centro',
      pieceLogs: 'Tira {orders}',
      pieceCornerstone: 'Cuadrado de esquina',
      stripList: 'Tiras para cortar',
      stripWidth: 'Ancho',
      stripLength: 'Largo para 1 bloque',
      stripLengths: 'Largo para {blocks} bloques',

      warnings: 'Antes de cortar',
      caution:
        'Un cúter rotatorio es una cuchilla al descubierto: cerrarlo tras cada corte, cortar alejándolo del cuerpo y mantener los dedos lejos del borde de la regla. Seguir las instrucciones del fabricante.',
    },

    logCabin: {
      workshop: 'Qué más hacer con este bloque',
      panelNeedsPlan: 'Primero hay que escribir arriba medidas que formen un bloque.',
      use: 'Usar {number}',
      any: 'cualquiera',
      none: 'ninguna',

      // Find a size
      panelFinder: 'Buscar medidas que cuadren',
      findFinished: 'Medida final (o 8 a 10)',
      findBoth: 'Las dos clases',
      findGrid: 'Todo en una cuadrícula de',
      findWishRatio: 'Proporción ancha : estrecha deseada',
      findWishCenter: 'Centro deseado',
      findLimits: 'Límites',
      findCenter: 'Centro (o 1 to 2)',
      findLog: 'Tira (o 1 to 2)',
      findWide: 'Ancha (o 1 to 2)',
      findNarrow: 'Estrecha (o 1 to 2)',
      findStrips: 'Tiras ya cortadas',
      findLeastTrim: 'Recortar al menos',
      fits: 'Bloques que cuadran exactamente',
      fitOrder: 'Primero los mejores, por este orden:',
      fitBlock: 'Bloque',
      closestFits: 'Los más próximos que cuadran',
      reachable: 'Medidas posibles',
      fitWays: 'Maneras',
      fitLogs: 'Tira',
      fitWideNarrow: 'Ancha, estrecha',
      fitStrips: 'Tiras cortadas a',
      fitTrims: 'Se quita',
      fitFabric: 'Tela, pulgadas cuadradas',
      fitFabricMetric: 'Tela, cm²',
      showAllFits: 'Mostrar hasta 100',
      noFit: 'Nada cuadra exactamente dentro de estos límites.',
      noSize: 'Ninguna medida es posible dentro de estos límites.',

      // The same block in another size
      panelResize: 'El mismo aspecto en otra medida',
      resizeTo: 'Medida final deseada',
      resized: 'El bloque en esa medida, primero el más próximo',
      sideBySide: 'Medidas que casan con este bloque en un quilt',
      rowOf: 'En una fila',
      rowMeets: '{own} de este, {others} de aquel: {span}',

      // How many blocks
      panelStrips: 'Cuántos bloques salen de mis tiras',
      stripsOf: 'Tiras de «{fabric}» cortadas a {width}',
      stripLengthUsable: 'Largo útil de una tira',
      blocksMade: 'Bloques que salen: {blocks}.',
      blocksMadeAtLeast: 'Bloques que salen: al menos {blocks}.',
      blocksOf: 'Bloques que salen',
      useBlocks: 'Calcular la lista de corte para {blocks}',

      // An arc
      panelArc: 'Curvar la línea de color en arco',
      arcAbout:
        'Las tiras son las mismas en todas las vueltas; solo cambia lo que se recorta. Las esquinas donde la tira ancha toca la estrecha quedan así tan cerca de un círculo como permite la cuadrícula.',
      arcFinished: 'Medida final',
      arcWidths: 'Anchos vuelta por vuelta',
      arcOff: 'Distancia al arco',
      arcCenter: 'Centro',
      arcRadius: 'Medida final del centro: {center}. El arco tiene un radio de {radius}.',
      arcStraight: 'Medida final del centro: {center}. Lo más próximo es una línea recta.',
      arcGreatest: 'La esquina más alejada queda a {arc}; en el bloque de arriba, a {own}.',
      arcGreatestAlone: 'La esquina más alejada queda a {arc}.',
      useArc: 'Usar estos anchos',

      // Side by side
      panelCompare: 'Comparar con otro bloque',
      otherBlock: 'El otro bloque',
      keepBlock: 'Guardar el bloque de arriba como el otro',
      swapBlocks: 'Intercambiar',
      comparison: 'Comparación',
      figure: 'Dato',
      thisBlock: 'Este bloque',
      compareUnfinished: 'Recortar a',
      shareOf: 'Superficie visible de «{fabric}»',
      squareInches: '{area} pulg.²',
      squareCentimeters: '{area} cm²',
      compareFabric: 'Tela cortada',
      compareStrips: 'Tiras de «{fabric}»',
      stripsCut: '{length} de largo, {width} de ancho',
      comparePieces: 'Piezas para cortar',
      compareTrims: 'Cortes para recortar',
      compareBend: 'Quiebre en el centro',
      compareRadius: 'Radio del círculo más próximo',
      compareOff: 'Esquina más alejada de él',
      degrees: '{number}°',
      spokenDegrees: '{number} grados',
      percent: '{number} %',
      spokenPercent: '{number} por ciento',
      roughInches: '{number} pulg.',
      spokenRoughInches: '{number} pulgadas',
      roughCentimeters: '{number} cm',
      spokenRoughCentimeters: '{number} centímetros',
      roughMillimeters: '{number} mm',
      spokenRoughMillimeters: '{number} milímetros',

      // Settings
      panelSettings: 'Ver el top del quilt',
      setting: 'Disposición',
      across: 'Bloques a lo ancho',
      down: 'Bloques a lo alto',
      quiltTop: 'Bloques: {blocks}. Medida final del top: {finished}.',
      turnsWarning: 'Un estampado direccional gira con su bloque.',

      // At the table
      panelTable: 'En la mesa, paso a paso',
      sewing: 'Tiras',
      'cut-first': 'Cortadas antes a su largo',
      'to-strip': 'Cosidas a la tira entera',
      'strip-set': 'Primera costura con conjunto de tiras',
      mat: 'Base de corte',
      'mat-fixed': 'Queda fija',
      'mat-turning': 'Se gira',
      rulerOnHand: 'Regla cuadrada disponible',
      matOnHand: 'Base disponible',
      layers: 'Capas por corte',
      tools: 'Lo que hace falta',
      toolsNeeded: 'Una regla cuadrada de al menos {ruler} y una base de al menos {mat}.',
      toolsNone: 'No se recorta nada, así que no hace falta regla cuadrada.',
      layerCuts: 'Cortes. Capas: {layers}; bloques: {blocks}',
      pieces: 'Piezas',
      cutsMade: 'Cortes',
      tableBegin: 'Para empezar',
      tableRound: 'Vuelta {round}',

      // Seam
      panelSeam: 'Mi costura y bloques desiguales',
      seamAbout: 'Coser tres tiras juntas como siempre, plancharlas y medir el ancho de las tres.',
      seamStrip: 'Cada tira se cortó a',
      seamStrips: 'Tiras',
      seamMeasured: 'Miden',
      seamExpected: 'Con la costura de este bloque medirían {expected}.',
      drift: 'Efecto de esta costura en este bloque',
      driftHow: 'Cómo se recorta',
      driftUntrimmed: 'Nunca',
      driftLast: 'Desde la última costura',
      driftCenter: 'Desde la costura central',
      driftShort: 'Le falta',
      driftLarge: 'Le sobra',
      driftOversize:
        'Si se recorta desde la costura central no se desvía, siempre que cada tira sea {oversize} más ancha de lo exacto.',
      driftCovered: 'Las tiras de este bloque lo son.',
      rescueMeasured: 'Los bloques miden, con costuras',
      rescueFinished: 'Medida final que debían tener',
      rescue: 'Dos soluciones',
      rescueWay: 'Solución',
      rescueTrim: 'Recortar todos al más pequeño',
      rescueCope: 'Coser tiras alrededor de cada uno y recortar',
      rescueTrimTo: 'Recortar a',
      rescueQuilt: 'Top del quilt',
      copingStrips: 'Tiras de compensación',
      copingCut: 'Cortarlas todas a {cut}, y recortar.',
      copingMeasured: 'El bloque mide',
      copingFinished: 'Ancho final de la tira',

      // Sheets
      panelSheets: 'Imprimir la tabla y hojas a tamaño real',
      sheetKind: 'Hojas',
      'sheets-trim': 'Plantillas de recorte',
      'sheets-foundation': 'Para coser sobre papel',
      sheetRound: 'Vueltas',
      everyRound: 'Todas las vueltas',
      paper: 'Papel',
      letter: 'Carta',
      a4: 'A4',
      sheetCount:
        'Páginas: {pages}. Imprimir al 100 %, sin escalar, y medir el cuadrado de cada una.',
      sheetUse:
        'Sirven para comprobar, para calcar o para pegarlas bajo una regla acrílica. Nunca usar el papel como guía de corte.',
      foundationUse:
        'El dibujo está invertido: coser por el lado impreso, en el orden de los números.',
      firstSheet: 'La primera página, reducida',
      printChart: 'Imprimir la tabla',
      printSheets: 'Imprimir las hojas',
      saveSheets: 'Guardar las hojas en un archivo',
      printed: 'Hojas para imprimir',
    },

    fabric: {
      pieces: 'Piezas para cortar',
      piece: 'Pieza {number}',
      count: 'Cuántas',
      'strip-width': 'Ancho de tira',
      'piece-length': 'Largo',
      'piece-fabric': 'Tela',
      'piece-may': 'Puede ir',
      'may-': 'tal cual',
      'may-turned': 'girada',
      'may-joined': 'unida',
      'add-piece': 'Añadir una pieza',
      'remove-piece': 'Quitar la pieza {number}',
      remove: 'Quitar',
      width: 'Ancho útil de la tela',
      precut: 'Formato de compra',
      'precut-': 'Tela por metros',
      'precut-fat-quarter': 'Fat quarters',
      'precut-fat-eighth': 'Fat eighths',
      'precut-strip-2-1/2': 'Tiras de 2 1/2 pulgadas',
      'precut-square-5': 'Cuadrados de 5 pulgadas',
      'precut-square-10': 'Cuadrados de 10 pulgadas',
      'pack-of': 'Se vende en paquetes de',
      increment: 'La tienda corta en',
      'increment-eighths': 'Octavos de yarda',
      'increment-thirds': 'Octavos y tercios',
      'increment-tenths': 'Décimas de metro',
      method: 'Corte',
      'method-': 'Con menos tela que comprar',
      'method-plain': 'Sencillo: un ancho por tira',
      'method-thrifty': 'Ahorrador: aprovecha extremos y gira piezas',
      join: 'Las tiras se unen',
      'join-diagonal': 'En diagonal',
      'join-straight': 'Rectas',
      straightening: 'Para escuadrar',
      spare: 'De reserva',
      'spare-usual': 'una tira',
      shrinkage: 'Encoge al lavar',
      layers: 'Capas por corte',
      'more-fabric': 'Lavado, escuadrado, capas, medidas',
      'on-hand': 'Tela disponible',
      'on-hand-piece': 'Tela {number}',
      'on-hand-width': 'Ancho útil',
      'on-hand-length': 'Largo útil',
      'on-hand-corner': 'Esquina que falta',
      'add-on-hand': 'Añadir tela disponible',
      'remove-on-hand': 'Quitar la tela {number}',

      buy: 'Comprar {yards}',
      buyFabric: 'Comprar {yards} de {fabric}',
      meters: 'o {meters}',
      need: 'Tiras {bare}, reserva {spare}, escuadrar {straightening}, lavado {shrinkage}: {need} en total.',
      proven: 'Ningún plan de un ancho por tira gasta menos.',
      provenThrifty: 'Ningún plan, sencillo o ahorrador, gasta menos.',
      purchaseProven: 'Con ningún plan de un ancho por tira se compra menos.',
      purchaseProvenThrifty: 'Con ningún plan, sencillo o ahorrador, se compra menos.',
      unproven: 'Hace falta al menos {lowerBound}; no está demostrado si bastaría con menos.',
      purchaseUnproven: 'No está demostrado si con un plan ahorrador se compraría menos.',
      thriftySaves:
        'El plan ahorrador ahorra {saved}: {cuts} cortes, frente a {plainCuts} del sencillo.',
      thriftySame:
        'Con el plan ahorrador se compra lo mismo. Sus tiras gastan {saved} menos: {cuts} cortes, frente a {plainCuts} del sencillo.',
      thriftyNothing: 'El plan ahorrador no ahorra nada aquí.',
      leftOver: 'Sobra: {leftOver}.',
      share: 'Las piezas son el {percent} % de las tiras.',
      steps: 'Cómo cortar',
      row: 'Fila {row} de {rows}',
      moreRows: 'Las filas siguientes se cortan como dicen los pasos.',
      block: 'Cortar a lo largo',
      beside: 'Junto a las piezas queda: {rests}.',
      joins: 'Dónde caen las uniones',
      joinsIn: 'Pieza {number}, ejemplar {copy}: a {places} del comienzo.',
      moreJoins: 'Las demás uniones siguen del mismo modo.',
      handAll: 'Todo se puede cortar de la tela disponible',
      handAllFabric: 'Todo lo de {fabric} se puede cortar de la tela disponible',
      handSome: 'De la tela disponible: {cut} de {pieces} piezas. Todavía faltan:',
      missing: '{count} de la pieza {number}, {size}',
      sets: 'Juegos completos de la lista que salen de la tela disponible: {sets}.',
      setsUnproven:
        'Juegos completos de la lista que salen de la tela disponible: {sets}, y como mucho {bound}.',
      precutsNeeded: '{kind}: {count}',
      precutsNeededFabric: '{kind}, {fabric}: {count}',
      packs: 'Paquetes de {packOf}: {packs}; sobran {spare}',
      usableSize: 'De cada uno se aprovechan {size}.',
      precutsProven: 'No bastaría con menos.',
      unfit: 'De ellos no se pueden cortar:',
      alike: '{count} que se cortan igual',
      working: 'Calculando la menor cantidad de tela…',
    },

    quilt: {
      choices: 'El quilt',
      size: 'Tamaño',
      ownSize: 'A medida, {across} por {down} bloques',
      across: 'Bloques a lo ancho',
      down: 'Bloques a lo alto',
      moreQuilt: 'Ancho de la tela, corte, medidas',
      'fabric-width': 'Ancho útil de la tela',
      method: 'Corte',
      'method-plain': 'Menos cortes',
      'method-thrifty': 'Menos tela',
      colors: 'Pulsar la muestra de una tela para probar otro color en el dibujo.',
      colorOf: 'Color de {fabric}',
      pageColors: 'Colores originales',
      fetching: 'Cargando el patrón…',
      working: 'Calculando el corte…',
      recipeFault: 'Este patrón no se puede mostrar.',
      tooManyCells: 'Hay demasiados bloques para dibujarlos.',
      quiltHeadline: 'Medida final {finished}',
      patternSize: '{name}, {size}',
      inRows: '{across} por {down} bloques en filas',
      onPoint: '{across} por {down} bloques en punta',
      quiltSummary: '{size}: medida final {finished}. {buys}',
      buyOne: '{fabric}: {yards}',
      toBuy: 'Qué comprar',
      buyAmount: 'Cantidad',
      usableWidth: '{width} de ancho',
      orAmount: 'o {amount}',
      price: 'Precio',
      perYard: '{money} la yarda',
      perMeter: '{money} el metro',
      allFabrics: 'Todas las telas',
      forBacking: 'trasera',
      batting: 'Guata',
      atLeast: 'al menos {size}',
      package: '1 paquete de {size}',
      ofRoll: '{amount} de un rollo de {width} de ancho',
      howToCut: 'Cómo cortar',
      cutFabric: '{fabric}: {yards}',
      piece: 'Pieza',
      howMany: 'Cuántas',
      pieceOf: '{block}, {piece}',
      cutOnce: 'un corte en diagonal',
      cutTwice: 'dos cortes en diagonal',
      steps: 'Cómo cortar {fabric}',
      backingSteps: 'Cómo cortar la trasera de {fabric}',
      cutWhole: 'Cortar {strips} tiras de {width} a lo ancho de la tela.',
      cutWholeOne: 'Cortar 1 tira de {width} a lo ancho de la tela.',
      row: 'Fila {row} de {rows}',
      moreRows: 'Las filas siguientes se cortan como dicen los pasos.',
      piecesNumbered:
        'Los números son los de las piezas de la tabla, y en los círculos los de los pasos.',
      partSash: 'tira de separación',
      partCornerstone: 'cuadrado de cruce',
      partSideTriangle: 'triángulo lateral',
      partCornerTriangle: 'triángulo de esquina',
      partBorder: 'borde {border}',
      partBorderCorner: 'borde {border}, esquina',
      partBinding: 'ribete',
      blocksTitle: 'Bloques',
      makeBlocks: 'Hacer {count}: medida final {finished}, {unfinished} con costuras.',
      forBorders: 'De ellos, {count} son para los bordes.',
      topTitle: 'El top',
      topSize: 'Los bloques unidos dan una medida final de {finished}.',
      rowsBlocks: 'Fila por fila desde arriba, cada una desde la izquierda',
      rowsTurns:
        'Cuartos de vuelta en sentido horario, fila por fila desde arriba, cada una desde la izquierda',
      rowNumber: 'Fila',
      rowBlocks: 'Bloques',
      rowTurns: 'Giros',
      turned: '{block}, girado {turns}/4',
      times: '{count} × {block}',
      between: 'Entre los bloques y alrededor',
      finishedSize: 'Medida final',
      bordersTitle: 'Bordes',
      bordersCaption: 'Cortar según el top medido; estas son las medidas del plan',
      borderStrips: '{border}, {strips}',
      strips: 'Tiras',
      sides: 'lados',
      topAndBottom: 'arriba y abajo',
      corners: 'cuadrados de esquina',
      unitsEach: '{count} bloques por tira',
      thenFinishes: 'medida final del quilt: {finished}',
      finishingTitle: 'Acabado',
      backingOne: 'Trasera: al menos {target}, un paño de {panel} de largo.',
      backingVertical:
        'Trasera: al menos {target}; {panels} paños de {panel} de largo, costuras verticales.',
      backingHorizontal:
        'Trasera: al menos {target}; {panels} paños de {panel} de largo, costuras horizontales.',
      battingFact: 'Guata: al menos {target}.',
      bindingStraight:
        'Ribete: {strips} tiras de {strip} de ancho, unidas en diagonal, dan {length}; se necesita {needed}.',
      bindingBias:
        'Ribete: {strips} tiras al bies de {strip} de ancho, cortadas de {fabric} de tela, dan {length}; se necesita {needed}.',
      bindingContinuous:
        'Ribete: bies continuo de {strip} de ancho, de cuadrados de {square} ({squares} en total): da {length}; se necesita {needed}.',
      kits: 'Kits para una clase',
      people: 'Personas',
      each: 'Cada persona hace',
      eachCount: 'Cuántos',
      eachQuilts: 'quilts enteros',
      eachBlocks: 'bloques: {block}',
      spares: 'Kits de reserva',
      onBolt: 'Largo de un rollo',
      kitPrice: 'Precio de venta de un kit',
      kitMargin: 'O margen, %',
      kitsNone: 'Indicar cuántas personas hay para ver qué lleva y cuánto cuesta cada kit.',
      kitsWorking: 'Calculando los kits…',
      kitsHeadline: 'Kits: {kits}',
      kitMakes: 'Cada uno da {made}.',
      kitsTable: 'Para el mostrador de corte, cada largo de una pieza',
      kitLength: 'Un kit',
      kitsSeparate: 'Todos los kits',
      kitsPooled: 'De un solo largo',
      kitsSaves: '{amount} menos',
      bolts: 'Rollos',
      kitsPerBolt: 'kits por rollo: {kits}',
      boltRemnant: 'sobra {amount}',
      costTable: 'Cuánto cuesta un kit',
      costPart: 'Parte',
      cost: 'Coste',
      oneKit: 'Un kit',
      allKits: 'Los {kits} kits',
      soldFor: 'Precio de venta de un kit',
      leftOfKit: 'De él queda: {percent} %',
      leftOfAll: 'Queda de {people} vendidos, pagada la reserva',
      pooledNote:
        'Cortados todos de un solo largo, los kits gastarían menos tela, pero la de cada kit ya no iría en una pieza.',
    },

    unit: {
      unit: 'Unidad',
      method: 'Método',
      count: 'Cuántas',
      unitSizes: 'Unidad y medidas',
      'more-unit': 'Costura, exceso y medidas',
      'finished-width': 'Ancho final',
      'finished-height': 'Alto final',

      headlineTrim: 'Medida final {finished}, recortar a {trimTo}',
      headlineCut: '{meaning} {finished}, cortar a {cut}',
      headlineStrip: '{meaning} {finished}, tiras cortadas a {cut}',
      headlineSet: '{meaning} {finished}, conjunto de tiras cortado cada {cut}',
      asSewn: 'La unidad',
      cutOf: 'Corte {number} de {cuts}',
      trimHow:
        'Poner las líneas de la regla sobre las marcas. Cortar los dos bordes, girar la unidad media vuelta, cortar los otros dos.',
      shapeHow: 'Se cose por la línea discontinua.',
      cutHow: '{label}: {count} por juego de cortes, tela «{fabric}».',
      saveTemplate: 'Guardar esta plantilla a tamaño real (SVG)',
      templateSheet:
        'La hoja mide {size}, con cuadrados de 1 pulgada y 5 cm para medir antes de usarla.',

      cutSize: 'Corte',
      exactly: 'exacto {size}',
      forSet: 'Un juego (salen {made})',
      forUnits: 'Para {count}',
      diagonalOnce: 'una vez de esquina a esquina',
      diagonalTwice: 'dos veces de esquina a esquina',
      fromTop: 'del medio del lado superior a las dos esquinas inferiores',
      roundTemplate: 'siguiendo la plantilla',
      atAngle: 'en ángulo desde una tira',

      unitSteps: 'Cómo se hace',
      trimMarks: 'Marcas de recorte',
      mark: 'Marca',
      fromLeft: 'Desde la izquierda',
      fromTopEdge: 'Desde arriba',
      span: 'de {from} a {to}',

      facts: 'Rendimiento, bies e hilo',
      yields: 'Un juego de cortes da {made}. Juegos para {count}: {sets}; sobran {leftOver}.',
      perStrip: 'Una tira de {width} por {usable} da {perStrip}.',
      perSet: 'Un conjunto de tiras de {width} por {usable} da {perStrip} cortes.',
      firstCut: 'El primer corte en ángulo quita {first} de su extremo.',
      biasEdges: 'Bordes al bies en una unidad: {outside} por fuera, {seams} en las costuras.',
      sewnFirst: 'Los de las costuras se cosen antes de cortarlos.',
      grainStraight: 'Hilo a lo largo de los bordes: {fabrics}.',
      grainDiagonal: 'Hilo en diagonal respecto a los bordes: {fabrics}.',
      bonus:
        'De las esquinas recortadas salen {count} triángulos de medio cuadrado, de medida final hasta {finished}.',

      compare: 'Comparación de métodos, para {count}',
      figure: 'Dato',
      cuts: 'Cortes de un juego',
      countOf: '{count} de {size}',
      makes: 'Un juego da',
      sets: 'Juegos',
      leftOver: 'Sobra',
      fabricArea: 'Tela, pulgadas cuadradas',
      fabricAreaMetric: 'Tela, cm²',
      wasteArea: 'De ella, en costuras y desperdicio',
      biasHandled: 'Bordes al bies manipulados',
      biasOutside: 'Bordes al bies por fuera',
      seams: 'Costuras',
      trims: 'Recortes',
      chosen: 'elegido',
      refused: '{method}: {reason}',
    },
  },

  words: {
    finished: 'final',
    'trim to': 'recortar a',
    center: 'centro',
    'center seam': 'costura central',
    'last seam': 'última costura',
    'trimmed edge': 'borde recortado',
    hold: 'sujetar',
    'selvage to selvage': 'de orillo a orillo',
    top: 'superior',
    right: 'derecho',
    bottom: 'inferior',
    left: 'izquierdo',
    wide: 'ancha',
    narrow: 'estrecha',
    log: 'tira',
    cornerstone: 'cuadrado de esquina',
    ratio: 'proporción',
    'inside curve': 'curva interior',
    'outside curve': 'curva exterior',
    '1 inch': '1 pulgada',
    '5 cm': '5 cm',
    'Print at 100 %.': 'Imprimir al 100 %.',
    'Measure both squares first.': 'Medir primero los dos cuadrados.',
    'Never cut against paper.': 'Nunca usar el papel como guía.',

    // Settings of a quilt top
    'straight-furrows': 'Surcos rectos',
    'barn-raising': 'Construcción del granero',
    'streak-of-lightning': 'Relámpago',
    'sunshine-and-shadow': 'Sol y sombra',
    circles: 'Círculos',

    // Units
    'unit half-square-triangles': 'Triángulos de medio cuadrado',
    'unit quarter-square-triangles': 'Triángulos de cuarto de cuadrado',
    'unit split-quarter-squares': 'Medio cuadrado con dos cuartos',
    'unit flying-geese': 'Gansos voladores',
    'unit square-in-square': 'Cuadrado en un cuadrado',
    'unit snowball': 'Bola de nieve',
    'unit half-rectangle-triangles': 'Triángulos de medio rectángulo',
    'unit setting-triangles': 'Triángulos de montaje',
    'unit diamond': 'Rombo',
    'unit eight-pointed-star': 'Estrella de ocho puntas',
    'unit parallelogram': 'Paralelogramo',
    'unit trapezoid': 'Trapecio',
    'unit equilateral-triangle': 'Triángulo equilátero',
    'unit sixty-degree-half-triangles': 'Medios triángulos de 60 grados',
    'unit hexagon': 'Hexágono',
    'unit four-patch': 'Cuatro parches',
    'unit nine-patch': 'Nueve parches',
    'unit rail-fence': 'Cerca de rieles',
    'unit strip-set': 'Conjunto de tiras',
    'unit drunkards-path': 'Camino del borracho',

    // Methods
    'two-at-a-time': 'Dos a la vez',
    'four-at-a-time': 'Cuatro a la vez',
    'eight-at-a-time': 'Ocho a la vez',
    'cut-triangles': 'Cortar triángulos',
    'single-triangles': 'Triángulos sueltos',
    'stitch-and-flip': 'Coser y voltear',
    'from-strips': 'A partir de tiras',
    'half-hexagons': 'Medios hexágonos',
    'strip-set': 'Conjunto de tiras',
    'cut-squares': 'Cortar cuadrados',
    templates: 'Plantillas',

    // Inputs and choices
    'input side': 'Lado final',
    'input long edge': 'Lado largo final',
    'input height': 'Alto final',
    'input block': 'Bloque final',
    'input subcut': 'Ancho final de un corte',
    'input usable': 'Ancho útil de la tela',
    'input corner': 'Esquina final',
    'input center': 'Centro final',
    'input strips': 'Anchos finales de las tiras',
    'input radius': 'Radio final',
    'input angle': 'Ángulo en grados',
    'input direction': 'Costura o inclinación',
    'input rails': 'Tiras por unidad',
    'input oversize': 'Exceso para recortar',
    'input rounds': 'Vueltas',
    'input corners': 'Esquinas',
    'input triangle': 'Triángulo',
    'input slants': 'Inclinaciones',
    'direction falling': 'descendente',
    'direction rising': 'ascendente',
    'direction both': 'ambas',
    'direction right': 'a la derecha',
    'direction left': 'a la izquierda',
    'triangle side': 'de lado',
    'triangle corner': 'de esquina',
    'slants both': 'ambas',
    'slants right': 'derecha',
    'slants left': 'izquierda',
    'named side': 'Lado final',
    'named size': 'Medida final',
    'named long edge': 'Lado largo final',
    'named height': 'Alto final',
    'named block': 'Bloque final',
    'named subcut': 'Corte final',
    'mark diagonal': 'Costura a 45 grados',
    'mark seam': 'Costura',
    'mark center': 'Línea central',
    'mark point': 'Punta',
    'mark crossing': 'Cruce de costuras',
    'sixty-degree': '60 grados',
    'long edge': 'lado largo',
    subcut: 'corte',

    // Parts and fabrics
    dark: 'oscura',
    light: 'clara',
    square: 'cuadrado',
    rectangle: 'rectángulo',
    'large triangle': 'triángulo grande',
    goose: 'ganso',
    sky: 'cielo',
    corner: 'esquina',
    'second corner': 'segunda esquina',
    base: 'cuadrado base',
    side: 'lado',
    strip: 'tira',
    rail: 'riel',
    setting: 'triángulo de montaje',
    diamond: 'rombo',
    background: 'fondo',
    parallelogram: 'paralelogramo',
    trapezoid: 'trapecio',
    triangle: 'triángulo',
    hexagon: 'hexágono',
    'first strip set': 'primer conjunto de tiras',
    'second strip set': 'segundo conjunto de tiras',
  },

  sentences: {
    logCabin: {
      'narrow-log':
        'Unas tiras de ancho final {finished} son más estrechas que dos márgenes de costura: cada costura pillará los márgenes de la anterior.',
      'narrow-center':
        'Un centro de medida final {finished} es más estrecho que dos márgenes de costura: sus costuras se pillarán entre sí.',
      'log-off-grid':
        'El corte exacto de una tira de ancho final {finished} es {exact}. Cortada a {cut}, añade {adds} a un bloque que no se recorta.',
      'strip-off-grid':
        'Una tira de {exact} de ancho cae entre dos líneas de la cuadrícula: se corta a {cut}, y el recorte quita la diferencia.',
      'center-off-grid':
        'El corte exacto del centro es {exact}. Cortado a {cut}, añade {adds} al bloque si no se recorta antes.',
      'finished-off-grid':
        'La medida final del bloque es {finished}: {by} más que una línea de la cuadrícula de {grid}.',
      'trim-off-grid':
        'En la vuelta {rounds} una línea de recorte cae entre dos líneas de la cuadrícula de {grid}, {by} más allá de una.',
    },
    drawing: {
      'block-title': 'El bloque cosido: medida final {finished}, recortar a {unfinished}',
      'block-description':
        'Un centro de medida final {center} y {logs} tiras, numeradas en el orden de costura. Vueltas: {rounds}. La lista de corte da cada medida.',
      'trim-title': 'Vuelta {round}, posición {placement} de {placements}: recortar a {trimTo}',
      'trim-description':
        'El bloque bajo una regla cuadrada, con su borde en la línea de recorte del lado {sides}. La tabla de recorte da cada distancia.',
      'turns-title': 'Un top de {across} por {down} bloques, medida final {finished}: {setting}',
      'turns-description':
        'Bloques de medida final {finished}, cada uno girado por cuartos de vuelta, en la disposición {setting}.',
      'round-template-title': 'Vuelta {round}: recortar a {trimTo}',
      'round-template-description':
        'La línea exterior es el borde recortado, el cuadrado grueso la costura central, las líneas finas las últimas costuras.',
      'foundation-title':
        'Patrón para coser sobre papel un bloque de medida final {finished}, invertido',
      'foundation-description':
        'Coser por el lado impreso, sobre las líneas, en el orden de los números, desde el centro. La línea discontinua es el borde final; cortar por la línea exterior, un margen de costura más allá.',
      'cutting-title': 'Tela de {from} a {to} de {length}',
      'cutting-description':
        'Tiras a lo ancho de la tela: {strips}, cada una con el número de su paso; las cifras en las piezas son sus lugares en la lista.',
      'packing-title': 'Tela de {width} por {length}',
      'packing-description':
        'Piezas que se cortan de ella: {pieces}, cada una con su lugar en la lista; lo rayado sobra.',
      'packing-corner-description':
        'Piezas que se cortan de ella: {pieces}, cada una con su lugar en la lista; lo rayado sobra. Falta una esquina de {corner}.',
      'quilt-title': 'Un quilt de {across} por {down} bloques, medida final {finished}',
      'quilt-on-point-title':
        'Un quilt de {across} por {down} bloques en punta, medida final {finished}',
      'quilt-description':
        'Bloques de medida final {block}: {blocks}. Bordes: {borders}. Cada tela tiene su tono y su rayado.',
      'unit-title': 'La unidad cosida: medida final {finished}, recortar a {trimTo}',
      'shape-title': 'La forma con su margen de costura: medida final {finished}',
      'unit-description':
        'La unidad con costuras y sus piezas, {patches} en total, y el borde final un margen de costura hacia dentro.',
      'cut-title': 'Para cortar: {count} de {size}',
      'cut-description':
        'Una pieza con su medida. Por las líneas gruesas se corta, por las finas se cose. Los pasos dicen en qué orden.',
      'template-title': 'Plantilla de la pieza «{piece}»: {size} con su margen de costura',
      'template-description':
        'La línea continua es el borde de corte, por la discontinua se cose; el medio de la curva está marcado.',
    },
    table: {
      'cut-center': 'Cortar el centro de {size}, tela «{fabric}».',
      'sew-strip-set':
        'Coser a lo largo una tira de {centerWidth} (tela «{centerFabric}») a una tira de {width} (tela «{fabric}»), y planchar hacia esta última.',
      'subcut-strip-set':
        'Cortar el conjunto de tiras cada {length}: cada trozo es un centro con la tira {order} en el lado {side}.',
      'sew-log': 'Coser la tira {order}, {width} por {length}, tela «{fabric}», al lado {side}.',
      'sew-to-strip':
        'Coser el lado {side} del bloque a una tira entera de {width} (tela «{fabric}»), y cortarla {extra} más allá del bloque: tira {order}.',
      'sew-cornerstone':
        'Coser primero un cuadrado de esquina de {size}, tela «{fabric}», al extremo {side} de la tira {order}.',
      press: 'Planchar cada margen de costura hacia fuera antes de coser la tira siguiente.',
      'lay-block': 'Poner el bloque con su lado {side} en la parte de arriba.',
      'turn-block-half': 'Girar el bloque media vuelta.',
      'turn-block-quarter':
        'Girar el bloque un cuarto de vuelta, con su lado {side} en la parte de arriba.',
      'turn-mat-half': 'Girar la base media vuelta; el bloque queda donde está.',
      'turn-mat-quarter':
        'Girar la base un cuarto de vuelta, con el lado {side} del bloque en la parte de arriba; el bloque queda donde está.',
      'trim-side':
        'Recortar el lado {side} por el borde {at} de la regla: la línea {centerSeam} sobre la costura central, la línea {lastSeam} sobre la última costura.',
      'trim-to-edge':
        'Recortar el lado {side} por el borde {at} de la regla: la línea {size} sobre el borde ya recortado, la línea {centerSeam} sobre la costura central, la línea {lastSeam} sobre la última costura.',
      'check-diagonal':
        'La línea de 45 grados de la regla pasa por la esquina del centro, a {distance} de los dos bordes.',
      'check-size': 'La vuelta {round} mide {size}.',
      'ruler-too-short':
        'Desde la vuelta {round}, un corte mide {needed}: una regla de {ruler} no alcanza.',
      'mat-too-small':
        'Desde la vuelta {round}, el bloque sin recortar y el recorrido de la cuchilla necesitan {needed}: una base de {mat} es demasiado pequeña.',
    },
    seam: {
      'seam-true': 'La costura mide {seam}, como debe ser.',
      'seam-deep': 'La costura mide {seam}, {by} más que {wanted}: de cada tira se ve menos.',
      'seam-scant': 'La costura mide {seam}, {by} menos que {wanted}: de cada tira se ve más.',
      'oversize-short':
        'Las tiras de clase «{kind}» cortadas a {cut} se recortan {oversize}, y esta costura necesita {needed}: cortarlas a {better}.',
      'coping-narrow':
        'Unas tiras de compensación de ancho final {finished} son más estrechas que {least}. Con bloques de medida final {better} miden {least}.',
    },
    fit: {
      ratio: 'Primero los de proporción ancha : estrecha más próxima a la deseada.',
      center: 'Primero los de centro más próximo al deseado.',
      'thin-parts':
        'Luego los que tienen menos clases de piezas más estrechas que dos márgenes de costura.',
      'center-like-round': 'Luego los de centro más próximo a lo que añade una vuelta.',
      fabric: 'Luego los que gastan menos tela.',
      size: 'Luego el bloque más pequeño, y el centro más pequeño.',
      'fits-left-out':
        'Hay {total} bloques así. Se muestran los {shown} mejores y se omiten {leftOut}.',
      'sizes-left-out':
        'Hay demasiados bloques para examinarlos todos. Se examinaron los de medida final de {least} a {most}; para los otros, estrechar los límites.',
      'relax-least': 'Cuadra si el mínimo de «{part}» baja a {value}, en vez de {limit}.',
      'relax-most': 'Cuadra si el máximo de «{part}» sube a {value}, en vez de {limit}.',
      'relax-strip': 'Cuadra con tiras de clase «{part}» cortadas a {value}, en vez de {limit}.',
      'relax-least-trim': 'Cuadra si el recorte quita al menos {value}, en vez de {limit}.',
      'relax-rounds': 'Cuadra si el número de vueltas es {value} en vez de {limit}.',
      'relax-grid': 'Cuadra en una cuadrícula de {value} en vez de {limit}.',
    },
    sheet: {
      'measure-first':
        'Imprimir al 100 %. Antes de usarla, medir este cuadrado: su esquina pequeña mide 1 pulgada; el total, 5 cm. Si no es así, la hoja no sirve.',
      'never-cut-against':
        'Nunca usar el papel como guía de corte: sirve para comprobar, para calcar o para pegarlo bajo una regla acrílica.',
      join: 'Superponer las cruces de dos hojas: letra sobre letra.',
      page: 'Página {page} de {pages}: fila {row}, columna {column}',
    },
    unit: {
      cut: 'Tela «{fabric}»: cortar {count} de {size}.',
      'cut-strips': 'Tela «{fabric}»: cortar tiras de {width} de ancho, {count} en total.',
      trim: 'Planchar y recortar a {trimTo}.',
      'narrow-unit':
        'Una pieza de medida final {finished} es más estrecha que dos márgenes de costura: los márgenes quedarán uno sobre otro.',
      'trim-off-grid':
        'La unidad se recorta a {trimTo}, {by} más que una línea de la cuadrícula de {grid}.',
      'bias-outside':
        'Los bordes exteriores están al bies y ceden: manipularlos poco y planchar sin tirar.',
      'mirror-pairs':
        'Las capas revés con revés dan imágenes invertidas. Desdoblar la tela y poner todas las capas con el derecho hacia arriba.',
      'left-over': 'Los cortes dan {leftOver} más de las {count} pedidas.',
      'mark-diagonal': 'En el revés del cuadrado más claro de cada par, trazar una diagonal.',
      'mark-diagonals':
        'En el revés del cuadrado más claro de cada par, trazar las dos diagonales.',
      'sew-both-sides': 'Derecho con derecho, coser a {seam} de la línea por ambos lados.',
      'sew-both-lines': 'Derecho con derecho, coser a {seam} de las dos líneas por ambos lados.',
      'sew-round': 'Derecho con derecho, coser todo alrededor a {seam} del borde.',
      'cut-on-line': 'Cortar por la línea, abrir y planchar.',
      'cut-diagonals': 'Cortar por las dos diagonales, abrir y planchar.',
      'cut-quarters':
        'Cortar por el medio en los dos sentidos, luego por las dos diagonales; abrir y planchar.',
      'cut-once': 'Cortar cada cuadrado una vez de esquina a esquina.',
      'cut-twice': 'Cortar cada cuadrado dos veces de esquina a esquina.',
      'sew-triangles': 'Coser los triángulos por su lado largo, a {seam} del borde.',
      'sew-short-edges':
        'Coser los triángulos por pares en un lado corto, luego los pares por el lado largo.',
      'cross-pairs':
        'Poner las unidades de medio cuadrado por pares, derecho con derecho, telas distintas enfrentadas, costuras encajadas.',
      'lay-plain-square':
        'Poner cada unidad de medio cuadrado sobre un cuadrado liso, derecho con derecho.',
      'mark-across': 'Trazar la diagonal que cruza la costura.',
      'sew-to-half': 'Coser cada par de triángulos pequeños a uno grande por el lado largo.',
      'trim-diagonal': 'Recortar a {trimTo}, la línea de 45 grados de la regla sobre la costura.',
      'trim-crossing':
        'Recortar a {trimTo}: las costuras se cruzan en el centro, a {middle} de cada borde, y siguen las líneas de 45 grados.',
      'geese-first':
        'Poner dos cuadrados pequeños en esquinas opuestas del grande y trazar la diagonal por ambos.',
      'geese-second':
        'En cada mitad, poner un cuadrado pequeño en la esquina libre y trazar su diagonal; coser, cortar y planchar igual.',
      'geese-triangles': 'Coser un triángulo de cielo a cada lado corto del ganso.',
      'trim-point':
        'Recortar a {trimTo}: la punta queda a {seam} bajo el borde y a {middle} de cada lado.',
      'round-triangles':
        'Coser un triángulo de esquina a dos lados opuestos, planchar, luego a los otros dos; recortar y pasar a la vuelta siguiente.',
      'trim-rounds': 'Recortar cada vuelta a {seam} más allá de las puntas, la última a {trimTo}.',
      'setting-trim':
        'Coser la fila, luego recortar a {seam} más allá de las esquinas de los bloques. En rigor, bastaría un cuadrado de {least}.',
      'mirror-half': 'La mitad de las unidades sale como imagen invertida de la otra mitad.',
      'seam-not-in-corner':
        'La costura no llega a las esquinas de la unidad con costuras: pasa por los puntos a {seam} hacia dentro.',
      'cut-one-way':
        'Cortar cada rectángulo una vez de esquina a esquina, todos en el mismo sentido.',
      'cut-both-ways':
        'Cortar la mitad de los rectángulos de esquina a esquina en un sentido y la otra mitad en el otro.',
      'cut-isosceles':
        'Cortar cada ganso del medio del lado superior a las dos esquinas inferiores.',
      'trim-seam':
        'Recortar a {trimTo}, de modo que la costura pase por los puntos a {seam} dentro de sus dos esquinas.',
      'set-in-seams': 'Las piezas se unen con costuras en Y: dejar de coser a {seam} del borde.',
      'mark-small-squares': 'En el revés de los cuadrados pequeños, trazar una diagonal.',
      'flip-corner':
        'Poner un cuadrado pequeño en una esquina, derecho con derecho, coser por la línea, cortar a {seam} más allá, abrir la esquina y planchar.',
      'flip-other': 'Hacer lo mismo en la otra esquina.',
      'flip-each': 'Hacer lo mismo en cada una de las {corners} esquinas.',
      'no-point':
        'Un ganso de {width} por {height} es más del doble de ancho que de alto: sus esquinas no se unen en punta, sino que quedan a {apart} una de otra.',
      bonus:
        'Cosidas entre sí antes de recortarlas, las esquinas dan triángulos de medio cuadrado de medida final hasta {finished}.',
      'first-angle': 'Cortar el extremo de la tira a {angle} grados.',
      'next-angle':
        'Para cada corte siguiente, poner la línea {line} de la regla sobre el borde cortado: {perStrip} por tira.',
      'alternate-angles':
        'Cortar a {angle} grados alternando hacia un lado y hacia el otro, {edge} en el lado largo: {perStrip} por tira.',
      'hexagon-points':
        'Cortar las dos puntas agudas de cada rombo: a escuadra con la diagonal larga, a {half} del centro por ambos lados.',
      'sew-halves': 'Coser las mitades en filas, luego las filas: no hay costuras en Y.',
      'half-triangles': 'Cortar cada rectángulo una vez de esquina a esquina.',
      'strip-off-grid':
        'Una tira mide exactamente {exact} de ancho. Cortada a {cut}, lo que sale de ella es {adds} mayor.',
      'piece-off-grid':
        'Una pieza mide exactamente {exact} de largo. Cortada a {cut}, sale {adds} más larga.',
      'sew-strip-set':
        'Coser las tiras por sus lados largos, a {seam} del borde, y planchar: {set} de ancho.',
      subcut:
        'Escuadrar el extremo y cortar a través de las costuras cada {subcut}: {perSet} por conjunto.',
      'sew-two': 'Coser dos cortes, uno de ellos girado, con las costuras encajadas.',
      'sew-three':
        'Coser los cortes de tres en tres, el distinto en medio, con las costuras encajadas.',
      'sew-squares':
        'Coser los cuadrados en filas y las filas entre sí, con las costuras encajadas.',
      'angle-approximate':
        'El seno de {angle} grados no es exacto: los largos se redondean hacia fuera.',
      'cut-round-template': 'Cortar las curvas siguiendo las plantillas.',
      'mark-middles': 'Doblar las dos curvas por la mitad y marcar el medio de cada una.',
      'sew-curve':
        'Casar los medios y los extremos y coser a {seam} del borde, la curva interior encima.',
      'curve-measure': 'La curva cosida mide {most}, si la costura es exacta.',
      'pi-approximate': 'Lo que mide la curva contiene pi; por eso se da entre dos límites.',
    },
    pattern: {
      'directional-turned':
        'El estampado de {fabric} es direccional y hay bloques girados que lo llevan: gira con ellos.',
      'directional-sides':
        'El estampado de {fabric} es direccional y en el bloque {block} sigue todos los lados en que está: las tiras cortadas en un solo sentido quedan de pie en unos y tumbadas en otros.',
      'directional-borders':
        'El estampado de {fabric} es direccional: en el borde {border}, las tiras cortadas en un solo sentido quedan de pie en dos lados y tumbadas en los otros dos.',
      'fabric-unused': 'De {fabric} no se corta nada en este tamaño.',
    },
    layout: {
      'finished-off-grid':
        'La medida final del top, {finished}, cae entre dos líneas de la cuadrícula de {grid}. Medirlo antes de cortar bordes, ribete y trasera.',
      'prints-turn':
        'Hay bloques girados, y un estampado direccional gira con ellos: {sideways} quedan de lado, {upsideDown} boca abajo.',
      'narrow-sash':
        'Unas tiras de separación de ancho final {finished} son más estrechas que dos márgenes de costura: cada costura pillará los márgenes de la anterior.',
      'prints-lean':
        'Los bloques en punta se apoyan en una esquina, y un estampado direccional queda inclinado. En los triángulos cortados de cuadrados va en dos sentidos.',
    },
    borders: {
      'measured-differs':
        'El top mide {measured} y debía medir {planned}. Los bordes se cortan a la medida tomada, y el top se embebe en ellos.',
      'wide-border':
        'Un borde de ancho final {width} en cada lado es en total más ancho que el quilt que rodea, {quilt}.',
      'narrow-border':
        'Un borde de ancho final {width} es más estrecho que dos márgenes de costura: sus costuras se pillarán entre sí.',
    },
    binding: {
      'several-squares':
        'Un solo cuadrado sería más ancho que la tela, {fabricWidth}: se cortan {squares} cuadrados de {square} y se unen sus tiras al bies.',
      'customary-short':
        'La regla habitual, lado por lado entre ancho, pide solo un cuadrado de {customary}. Con tiras y costuras enteras, este da {length}, y se necesita {needed}.',
    },
    backing: {
      'near-miss':
        'Con {less} menos de sobrante en cada lado, {overhang} en vez de {asked}, la tela de {width} de ancho gasta {length} en vez de {full}: {yards} menos que comprar.',
    },
    kits: {
      'sold-below-cost': 'Un kit cuesta más de lo que se cobra por él.',
      'no-price': '{fabric} no tiene precio, así que no se sabe cuánto cuesta un kit.',
    },
    cutting: {
      'square-up': 'Escuadrar el extremo de la tela.',
      'cut-strip': 'Cortar 1 tira de {width} a lo ancho de la tela; de ella sacar {subcuts}.',
      'cut-strips':
        'Cortar {strips} tiras de {width} a lo ancho de la tela; de cada una sacar {subcuts}.',
      'stack-strips':
        'Cortar {strips} tiras de {width} a lo ancho de la tela; apilar hasta {layers}, y de cada una sacar {subcuts}.',
      'subcut-one': '1 pieza de {length}',
      'subcut-several': '{count} piezas de {length}',
      'subcut-turned': '{subcut} (en el otro sentido)',
      'subcut-end': '1 extremo de {length}, cortado en {rows}',
      'subcut-ends': '{count} extremos de {length}, cada uno cortado en {rows}',
      'subcut-row': '1 fila de {width} con {subcuts}',
      'subcut-rows': '{count} filas de {width}, cada una con {subcuts}',
      'not-proven':
        'Este plan gasta {length} de tela. Hace falta al menos {lowerBound}; no se pudo determinar con este cálculo si bastaría con menos.',
    },
    pack: {
      'take-one': 'Tomar un rectángulo de tela de {width} por {height}.',
      'take-several':
        'Tomar {count} rectángulos de tela de {width} por {height} y cortar todos igual.',
      'cut-rows': 'Cortar el rectángulo de {width} por {height} a lo ancho, desde arriba: {parts}.',
      'cut-columns':
        'Cortar el rectángulo de {width} por {height} de arriba abajo, desde la izquierda: {parts}.',
      'cut-pieces':
        'Cortar el rectángulo de {width} por {height} en {count} piezas de {across} por {down}.',
    },
    join: {
      'cut-block':
        'Escuadrar el extremo de la tela y cortar un trozo de {length} de largo para las piezas que se cortan a lo largo.',
      'join-straight':
        'Unir {strips} tiras de {width} de ancho por los extremos, con costuras rectas de {seam}: un largo de {total}.',
      'join-diagonal':
        'Unir {strips} tiras de {width} de ancho con costuras en diagonal, con los extremos cruzados en ángulo recto, y recortar a {seam} de las costuras: un largo de {total}.',
      'cut-length-one': 'De ese largo cortar 1 pieza de {length}.',
      'cut-length-several': 'De ese largo cortar {count} piezas de {length}.',
      'join-at-cut':
        'Uniones que caen donde se separan dos piezas: {count}. Cortar las piezas en otro orden, o cortar antes un poco, si la costura no debe estar ahí.',
      'lies-along':
        'La pieza {piece} es más larga que el ancho de la tela y se corta a lo largo: un estampado direccional queda en el otro sentido.',
      'length-not-proven':
        'Este plan gasta {length} de tela. Hace falta al menos {lowerBound}; no está demostrado si bastaría con menos.',
    },
    precut: {
      'find-edge':
        'Los bordes de los precortados suelen ser dentados: medir si {width} por {height} llega a las puntas o a los valles, y alinear ahí. No recortarlos antes.',
      'does-not-fit':
        'De un precortado con {width} por {height} útiles no se puede cortar ninguna pieza {piece}. Se dejan fuera {count}.',
      'fewer-not-ruled-out':
        'Estas piezas se pueden cortar de {needed} precortados. Hacen falta al menos {fewest}; no está demostrado si bastaría con menos de {needed}.',
    },
    onHand: {
      'cut-apart':
        'A la tela {piece} le falta una esquina: cortarla en un rectángulo de {first} y otro de {second}.',
      'not-cut': 'En la tela disponible faltan {count} de la pieza {piece}.',
      'more-not-ruled-out':
        'No está demostrado si se podrían cortar más de estas piezas de la tela disponible.',
      'blocks-not-proven':
        'Hay tela para {blocks} bloques, y como mucho para {bound}; no está demostrado si se pueden cortar más de {blocks}.',
    },
  },

  errors: {
    'length-syntax':
      '«{text}» no es una longitud. Las longitudes se escriben así: 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd o 26,5 cm.',
    'length-syntax empty':
      'Aquí no hay ninguna longitud. Las longitudes se escriben así: 10 1/2, 10,5, 10½ o 26,5 cm.',
    'length-syntax unfinished':
      '«{text}» termina antes de que la longitud esté completa. Las longitudes se escriben así: 10 1/2, 10,5 o 26,5 cm.',
    'length-syntax syntax':
      '«{text}» no es una longitud: no se puede leer desde el carácter {at}. Las longitudes se escriben así: 10 1/2, 10,5, 10½, 3 ft 4 in, 1 1/2 yd o 26,5 cm.',
    'length-syntax too-long': 'Este texto pasa de 1000 caracteres. Una longitud es más corta.',
    'length-syntax not-finite': '«{text}» no es un número que se pueda medir.',
    'length-syntax zero-denominator':
      '«{text}» divide entre cero. Las fracciones se escriben así: 1/2, 3/8, 10 1/2.',
    'length-syntax exponent': '«{text}» es demasiado grande o pequeño para una longitud.',
    'length-syntax thousands':
      '«{text}» se puede leer de dos maneras: escribir 1000 para mil o 1,0 para uno.',
    'length-syntax spaced-slash':
      '«{text}» se puede leer de dos maneras: escribir la fracción sin espacios.',
    'length-syntax spaced-hyphen':
      '«{text}» se puede leer de dos maneras: escribir 10 1/2 para diez y medio.',
    'length-syntax unit-order':
      '«{text}» debe nombrar primero la unidad mayor, y cada unidad una sola vez.',
    'length-syntax wrong-kind': 'Una longitud es un texto, un número o una fracción.',
    'length-divisor': 'Un divisor es un número distinto de 0 y sin raíz, no {divisor}.',
    'length-root':
      'La raíz cuadrada se saca de un número de al menos 0 y sin raíz, no de {radicand}.',
    'length-step': 'Una cuadrícula es una longitud mayor que 0 y sin raíz, como 1/8, no {step}.',
    'not-positive': 'Esta longitud debe ser mayor que 0, no {value}.',
    'This length must be at least 0, not {value}.':
      'Esta longitud debe ser al menos 0, no {value}.',
    'not-a-count': 'Aquí hace falta un número entero de {least} a {most}.',
    'The ruler is laid {most} times in this round; there is no placement {value}.':
      'La regla se pone {most} veces en esta vuelta; no existe la posición {value}.',
    'unknown-choice': '«{value}» no vale aquí. Usar una de estas opciones: {choices}.',
    'The block has no logs from strips “{value}”. Its strips are: {choices}.':
      'El bloque no tiene tiras «{value}». Sus tiras son: {choices}.',
    'unknown-field': 'Aquí no hay ningún campo «{name}». Los campos son: {known}.',
    'missing-field': 'Aquí falta «{name}».',
    'A length is needed here.': 'Aquí hace falta una longitud.',
    'conflicting-fields': '«{one}» y «{other}» se excluyen. Omitir uno de los dos.',
    'A block that is never trimmed has no oversize. Trim it after each round or log, or leave “{other}” out.':
      'Un bloque que nunca se recorta no tiene exceso. Recortarlo tras cada vuelta o tira, u omitir «{other}».',
    'The strips’ widths already say how much is trimmed away. Leave “{one}” or “{other}” out.':
      'Los anchos de las tiras ya dicen cuánto se quita. Omitir «{one}» o «{other}».',
    'wrong-kind': 'Este dato no es del tipo debido. Hace falta: {expected}.',
    'A fabric needs a name here.': 'Aquí la tela necesita un nombre.',
    'Give at least one length that the shop cuts in, such as {expected}.':
      'Dar al menos una longitud en la que corta la tienda, como {expected}.',
    'list-length': 'Esta lista tiene {entries} entradas y debe tener {needed}.',
    'This list has {entries} entries where {needed} are needed: one for each round, or one for all.':
      'Esta lista tiene {entries} entradas y debe tener {needed}: una por vuelta, o una para todas.',
    'sides-not-adjacent':
      'Los lados anchos deben ser contiguos, como el derecho y el inferior; {one} y {other} no lo son.',
    'strip-too-narrow':
      'Una tira de ancho final {log} necesita un corte de al menos {needed}, no de {strip}.',
    'center-not-positive':
      'Las tiras suman {logs}, lo que deja {center} para el centro de un bloque de medida final {finished}. Usar tiras más estrechas, menos vueltas o un bloque mayor.',
    'sizes-disagree':
      'El centro y las tiras suman {sum}, pero la medida final indicada es {finished}. Cambiar una, u omitir el centro para que se calcule.',
    'strip-not-exact':
      'Un bloque que nunca se recorta necesita tiras cortadas exactamente a {exact}, no {strip}. Recortarlo tras cada vuelta, o cortar exacto.',
    'limits-cross':
      'El mínimo es {least} y el máximo {most}: no hay nada entre ellos. Intercambiarlos, u omitir uno.',
    'Wide logs may be {most} at most and narrow ones {least} at least: no wide log would be wider than a narrow one.':
      'Las tiras anchas miden {most} como mucho y las estrechas {least} al menos: ninguna ancha sería más ancha que una estrecha.',
    'widths-vary':
      'Las tiras de clase «{kind}» no son iguales en todas las vueltas. Dar un solo ancho.',
    'no-arc':
      'Dentro de estos límites ningún ancho da un bloque curvo de esta medida: suman de {least} a {most}, en una cuadrícula de {grid}. Cambiar la medida, el centro, las vueltas o los límites.',
    'not-curved':
      'Un bloque con tiras de una sola clase no tiene curva. Ponerle tiras anchas en dos lados y estrechas en los otros.',
    'odd-count': 'El número debe ser par, {fewer} o {more}, no {value}.',
    'too-many-pages':
      'Serían {pages} hojas, y el máximo es {most}. Usar un bloque más pequeño, un margen de página más estrecho o una sola vuelta cada vez.',
    'piece-too-long':
      'Una pieza de {length} de largo no cabe en una tela de {width} de ancho. Hacerla de {width} como mucho, girarla o unirla de otras más cortas.',
    'A piece {length} wide and longer than that does not fit on fabric {width} wide, neither across nor along. Make it at most {width} wide, or piece it from narrower ones.':
      'Una pieza de {length} de ancho, y aún más larga, no cabe en una tela de {width} de ancho, ni a lo ancho ni a lo largo. Hacerla de {width} de ancho como mucho, o unirla de otras más estrechas.',
    'A piece of fabric of {value} is more than can be planned. Give a size up to {most}, its usable part.':
      'Un trozo de tela de {value} es más de lo que se puede planificar. Dar una medida de hasta {most}, la parte útil.',
    'A missing corner is smaller than the fabric: less than {most}, not {value}.':
      'Una esquina que falta es menor que la tela: menos de {most}, no {value}.',
    'no-pieces': 'No hay nada que cortar. Dar al menos una pieza con un número.',
    'too-many-pieces': 'Son {total} piezas. Un plan admite {most}: hacer varios.',
    'too-many-sizes':
      'Estas piezas tienen {different} medidas distintas. Un plan admite {most}: hacer varios.',
    'several-fabrics':
      'Un plan es para una tela, y estas piezas son de «{one}» y «{other}». Hacer un plan por tela.',
    'not-a-fraction':
      'Una medida de corte debe caer en las líneas de una regla; {value} no cae. Redondearla hacia arriba, por ejemplo a octavos de pulgada.',
    'no-common-grid':
      'Las longitudes de estas piezas no tienen una cuadrícula común para hacer un plan. Usar longitudes en una cuadrícula, como octavos de pulgada.',
    'not-a-shrinkage':
      'El encogimiento es una parte del largo, de 0 a menos de 1 (0,05 por cinco de cada cien), o un porcentaje, no {value}.',
    'seam-too-wide':
      'Una pieza de medida final {finished} necesita un margen de costura menor que {seam}.',
    'not-square': 'Aquí hace falta una sola longitud, no {width} por {height}.',
    'Only a square block can be turned by a quarter; this one finishes {width} by {height}.':
      'Solo un bloque cuadrado se puede girar un cuarto de vuelta; la medida final de este es {width} por {height}.',
    'length-with-root': 'Aquí hace falta una longitud sin raíz, como 3 1/2, no {value}.',
    'out-of-range': 'Aquí hace falta una longitud de {least} a {most}, no {value}.',
    'A length of at most {most} is needed here.':
      'Aquí hace falta una longitud de {most} como mucho.',
    'The long edge must be more than {least} for this height and angle, not {value}.':
      'Con esta altura y este ángulo, el lado largo debe pasar de {least}, no {value}.',
    'Strips that were cut {most} in all cannot measure {value} when they are sewn. Measure across all of them, pressed flat.':
      'Unas tiras cortadas a {most} en total no pueden medir {value} una vez cosidas. Medir a través de todas, bien planchadas.',
    'angle-out-of-range': 'Aquí hace falta un ángulo de {least} a {most} grados, no {value}.',
    'goose-ratio':
      'Este método no da gansos de {width} por {height}. Hacerlos de {wider} por {height} o de {width} por {lower}, o cortar triángulos.',
    'even-sum':
      'En punta, esta disposición pide que los bloques a lo ancho y a lo alto sumen un número impar; {across} y {down} no. Poner uno más o uno menos.',
    'repeat-does-not-fit':
      'Un motivo de {unit} no cabe justo en {side}. Caben {fewer} de {fewerUnit} o {more} de {moreUnit}, o se añaden tiras de separación de {spacer}.',
    'block-size-differs':
      'La medida final de este bloque es {block}, y la disposición es para bloques de {layout}.',
    'strip-too-wide':
      'Unas tiras de {strip} no se pueden cortar ni unir al bies con tela de {width} de ancho. Usar tiras más estrechas o tela más ancha.',
    'not-money':
      '«{value}» no es una cantidad de dinero. Escribir una de al menos 0, con punto y sin signo, como {example}.',
    'unknown-currency':
      'Una moneda se nombra con su código de tres mayúsculas, como EUR, no «{value}».',
    'several-currencies':
      'Cantidades en {one} y en {other} no se pueden sumar. Darlas todas en una moneda.',
    'too-much-money': 'Esto pasa de {most} {currency}. Se calcula hasta esa cantidad.',
    'not-a-margin':
      'El margen es la parte del precio que queda, de 0 a menos de 1 (0,4 por cuarenta de cada cien), no {value}.',
    'This text has more than {most} characters. A recipe of up to that is read.':
      'Este texto tiene más de {most} caracteres. Un patrón se lee hasta esa longitud.',
    'There is no pattern here yet: the page gives one in a script of type application/json inside this element, or names its address in “src”.':
      'Aquí no hay todavía ningún patrón: la página lo da en un script de tipo application/json dentro de este elemento, o nombra su dirección en «src».',
    'A number of quilts is needed here, or blocks such as {expected}.':
      'Aquí hace falta un número de quilts, o bloques como {expected}.',
    'not-json': 'Esto no es JSON: {reason}.',
    'not-loaded': 'No se pudo cargar ningún patrón de {address}: respondió {status}.',
    'No recipe could be fetched from {address}: nothing answered.':
      'No se pudo cargar ningún patrón de {address}: no hubo respuesta.',
    'text-too-long': 'Este texto tiene {characters} caracteres. Se leen hasta {most}.',
    'not-a-text': 'Aquí hacen falta palabras, de {most} caracteres como mucho.',
    'not-an-id':
      'Aquí hace falta un nombre como cielo-nocturno, no «{value}»: una letra, luego letras, cifras, guiones o guiones bajos.',
    'not-a-share':
      'Aquí hace falta una parte de 0 a menos de 1 (0,05 por cinco de cada cien), no {value}.',
    'not-a-list': 'Aquí hace falta una lista de {least} a {most} entradas.',
    'listed-twice': '«{value}» está aquí por segunda vez. Cada uno necesita un nombre propio.',
    'block-not-rectangular':
      'Los bloques y sus piezas son rectángulos, y {unit} no. Usar una unidad rectangular una vez terminada.',
    'blocks-differ':
      'Los bloques de un top tienen una sola medida final. La de este es {size}, la de los otros {needed}.',
    'pieces-do-not-fill':
      'Las piezas de este bloque suman, terminadas, {pieces} pulgadas cuadradas, y el bloque {block}. Deben ser iguales.',
    'piece-outside':
      'Esta pieza pasa del borde del bloque, de medida final {block}. Moverla o hacerla menor.',
    'pieces-overlap':
      'La pieza a {x} de la izquierda y {y} de arriba está sobre otra. Mover una o hacerla menor.',
    'cut-too-small':
      'Cortada a {cut}, esta pieza es demasiado pequeña: con sus costuras debe medir al menos {needed}.',
    'bolt-too-short': 'Un rollo de {bolt} no alcanza: para un kit hacen falta {needed}.',
    'strip-too-short':
      'Una tira de {usable} no alcanza ni para una pieza. Debe medir al menos {needed}.',
  },

  spoken: {
    fraction: spokenFractions('es', {
      inches: {
        whole: { one: '{whole} pulgada', other: '{whole} pulgadas' },
        half: 'media pulgada',
        wholeAndHalf: { one: '{whole} pulgada y media', other: '{whole} pulgadas y media' },
        part: '{part} de pulgada',
        wholeAndPart: { one: '{whole} pulgada y {part}', other: '{whole} pulgadas y {part}' },
      },
      yards: {
        whole: { one: '{whole} yarda', other: '{whole} yardas' },
        half: 'media yarda',
        wholeAndHalf: { one: '{whole} yarda y media', other: '{whole} yardas y media' },
        part: '{part} de yarda',
        wholeAndPart: { one: '{whole} yarda y {part}', other: '{whole} yardas y {part}' },
      },
      parts: {
        '3': { one: 'un tercio', other: '{above} tercios' },
        '4': { one: 'un cuarto', other: '{above} cuartos' },
        '5': { one: 'un quinto', other: '{above} quintos' },
        '6': { one: 'un sexto', other: '{above} sextos' },
        '8': { one: 'un octavo', other: '{above} octavos' },
        '9': { one: 'un noveno', other: '{above} novenos' },
        '10': { one: 'un décimo', other: '{above} décimos' },
        '12': { one: 'un doceavo', other: '{above} doceavos' },
        '16': { one: 'un dieciseisavo', other: '{above} dieciseisavos' },
        '32': { one: 'un treintaidosavo', other: '{above} treintaidosavos' },
        '64': { one: 'un sesentaicuatroavo', other: '{above} sesentaicuatroavos' },
      },
      over: '{above} sobre {below}',
    }),
    minus: 'menos {length}',
    about: 'aproximadamente {length}',
  },
};
