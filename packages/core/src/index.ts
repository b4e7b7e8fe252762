// Lengths
export { Length, length, squareRoot } from './length/length.js';
export type { FractionInput, LengthInput, Rounding } from './length/length.js';
export type { ReadOptions } from './length/read.js';
export type { LengthUnit } from './length/units.js';
export { formatLength } from './length/format.js';
export type { FormatOptions, WrittenUnit } from './length/format.js';

// Errors, and the sentences that plans speak in
export { EighthsError } from './errors/error.js';
export type { ErrorCode, ErrorValues, LengthFault } from './errors/codes.js';
export { fillSentence } from './errors/sentence.js';
export type { SentenceValue, SentenceValues } from './errors/sentence.js';

// What all plans share
export type { Notice, Sentences, Step, Warning } from './plan/notice.js';
export type { Piece, PieceInput } from './plan/piece.js';
export { SIDES } from './plan/side.js';
export type { PerSide, Side } from './plan/side.js';
export type { Size, SizeInput } from './plan/size.js';

// Log cabin blocks
export { logCabin } from './block/logCabin.js';
export type {
  CurvedLogCabinSpec,
  Direction,
  Layout,
  LogCabinFabrics,
  LogCabinSpec,
  LogKind,
  PerRound,
  PlainLogCabinSpec,
  TrimAfter,
} from './block/spec.js';
export type {
  Cornerstone,
  Log,
  LogCabin,
  LogCabinPiece,
  LogCabinRound,
  LogSize,
  StripTotal,
} from './block/plan.js';
export { logCabinSentences } from './block/sentences.js';
export type { LogCabinWarningCode } from './block/sentences.js';

// The log cabin family: find a size
export { findLogCabins, fitLogCabin } from './block/fitLogCabin.js';
export type { LogCabinFindings } from './block/fitLogCabin.js';
export type { FitKind, FitLimits, LogCabinFitRequest } from './block/fitRequest.js';
export type {
  CurvedLogCabinFit,
  FitRanking,
  FitStrip,
  LogCabinFit,
  PlainLogCabinFit,
} from './block/fitAnswer.js';
export type { FitRelaxation } from './block/fitRelax.js';
export { fitSentences } from './block/fitSentences.js';
export type { FitCriterion, FitNoteCode } from './block/fitSentences.js';
export { reachableSizes } from './block/fitSizes.js';
export type { ReachableSize, ReachableSizesRequest } from './block/fitSizes.js';
export { resizeLogCabin, sizesSideBySide } from './block/fitResize.js';
export type { ResizeOptions, SideBySide, SideBySideOptions } from './block/fitResize.js';
export { fitArc } from './block/arcFit.js';
export type { ArcCornerFit, ArcFit, ArcRequest } from './block/arcFit.js';
export { fabricShares, logCabinCurve } from './block/curve.js';
export type { CurveCorner, FabricShare, LogCabinCurve } from './block/curve.js';
export { leastSquaresCircle } from './block/curveCircle.js';
export type { CurveCircle, CurvePoint } from './block/curveCircle.js';
export { compareLogCabins } from './block/compareLogCabins.js';
export type { LogCabinComparison } from './block/compareLogCabins.js';
export { BLOCK_SETTINGS, blockTurns } from './block/turns.js';
export type { BlockSetting, BlockTurns, QuarterTurns } from './block/turns.js';
export { logCabinSteps } from './block/tableSteps.js';
export type { CuttingMat, SewingMethod, TableOptions, TableStep } from './block/tableSteps.js';
export { layeredCuts, trimTools } from './block/tableTools.js';
export type { LayeredCuts, ToolOptions, TrimTools } from './block/tableTools.js';
export { tableSentences } from './block/tableSentences.js';
export type { TableStepCode, ToolWarningCode } from './block/tableSentences.js';
export { seamTest } from './block/seamTest.js';
export type { SeamTest, SeamTestInput } from './block/seamTest.js';
export { seamDrift } from './block/seamDrift.js';
export type { SeamDrift } from './block/seamDrift.js';
export { rescueBlocks } from './block/seamRescue.js';
export type { BlockRescue, CopingStrip, RescuedQuilt, RescueInput } from './block/seamRescue.js';
export { seamSentences } from './block/seamSentences.js';
export type { SeamNoteCode } from './block/seamSentences.js';
export { blocksFromStrips } from './quilt/blocksFromStrips.js';
export type {
  BlocksFromStrips,
  BlocksFromStripsRequest,
  StripShare,
  StripsOnHand,
} from './quilt/blocksFromStrips.js';

// Quilts: layouts, borders, binding, backing, batting, beds
export { quiltLayout } from './quilt/layout/quiltLayout.js';
export type { QuiltLayoutSpec, QuiltSetting, SashingSpec } from './quilt/layout/spec.js';
export type {
  Cell,
  CellKind,
  LayoutCounts,
  LayoutPart,
  QuiltLayout,
  QuiltPart,
} from './quilt/layout/plan.js';
export { layoutSentences } from './quilt/layout/sentences.js';
export type { LayoutWarningCode } from './quilt/layout/sentences.js';
export { quiltBorders } from './quilt/borders/quiltBorders.js';
export type {
  BorderGrain,
  BorderSpec,
  BorderStyle,
  QuiltBordersSpec,
} from './quilt/borders/spec.js';
export type { BorderPart, QuiltBorder, QuiltBorders, StripSize } from './quilt/borders/plan.js';
export { borderSentences } from './quilt/borders/sentences.js';
export type { BorderWarningCode } from './quilt/borders/sentences.js';
export type { JoinedStrips } from './quilt/joinedStrips.js';
export { binding } from './quilt/binding/binding.js';
export type { BindingCut, BindingSpec } from './quilt/binding/spec.js';
export type {
  BiasStripBinding,
  Binding,
  ContinuousBiasBinding,
  StraightBinding,
} from './quilt/binding/plan.js';
export { bindingSentences } from './quilt/binding/sentences.js';
export type { BindingWarningCode } from './quilt/binding/sentences.js';
export { backing } from './quilt/backing/backing.js';
export type { BackingSpec } from './quilt/backing/spec.js';
export type { Backing, BackingNearMiss, BackingWay } from './quilt/backing/plan.js';
export { backingSentences } from './quilt/backing/sentences.js';
export type { BackingNoteCode } from './quilt/backing/sentences.js';
export { batting } from './quilt/batting/batting.js';
export { BATTING_PACKAGES } from './quilt/batting/packages.js';
export type { BattingSpec } from './quilt/batting/spec.js';
export type {
  Batting,
  BattingNearMiss,
  BattingPackage,
  BattingRoll,
} from './quilt/batting/plan.js';
export { bedQuilt } from './quilt/bed/bedQuilt.js';
export { MATTRESSES } from './quilt/bed/mattresses.js';
export type { Mattress, MattressName } from './quilt/bed/mattresses.js';
export type { BedQuiltSpec, DropInput } from './quilt/bed/spec.js';
export type { BedCandidate, BedQuilt } from './quilt/bed/plan.js';

// Whole quilts from recipes
export { quilt, quiltInParts } from './quilt/quilt.js';
export type { QuiltOptions, QuiltProgress } from './quilt/quilt.js';
export { readRecipe } from './quilt/recipe/readRecipe.js';
export type {
  QuiltRecipe,
  QuiltSize,
  RecipeBlock,
  RecipeBorder,
  RecipeFabric,
} from './quilt/recipe/schema.js';
export type {
  QuiltBlockCount,
  QuiltCell,
  QuiltFabric,
  QuiltPlan,
  QuiltWarningCode,
} from './quilt/pattern/plan.js';
export type { BlockRectangle, BlockUnit, QuiltBlock } from './quilt/pattern/block.js';
export type { PatternCut, PatternPart } from './quilt/pattern/cut.js';
export type { FabricOptions } from './quilt/pattern/planFabrics.js';
export { patternSentences } from './quilt/pattern/sentences.js';
export type { PatternWarningCode } from './quilt/pattern/sentences.js';
export { precutsFor, precutsForInParts } from './quilt/precut/precutsFor.js';
export type {
  PrecutChoice,
  PrecutFabric,
  PrecutsForSpec,
  PrecutsProgress,
} from './quilt/precut/precutsFor.js';

// Classes and kits
export { kits, kitsInParts } from './quilt/kits/kits.js';
export type { KitsProgress } from './quilt/kits/kits.js';
export type { BlocksEach, KitsSpec } from './quilt/kits/spec.js';
export type { KitBolts, KitExtra, KitFabric, KitPrice, Kits } from './quilt/kits/plan.js';
export { kitSentences } from './quilt/kits/sentences.js';
export type { KitWarningCode } from './quilt/kits/sentences.js';

// Money
export { formatMoney, money } from './quilt/money/money.js';
export type { Money, MoneyInput } from './quilt/money/money.js';
export { sumMoney } from './quilt/money/sums.js';
export { fabricCost } from './quilt/money/fabricCost.js';
export type { FabricPrice, PricedBy } from './quilt/money/fabricCost.js';
export { marginOf, priceForMargin } from './quilt/money/margin.js';
export type { Margin } from './quilt/money/margin.js';

// Plans as text
export { toCsv, toHtml, toMarkdown } from './quilt/output/toText.js';
export type { HtmlOptions } from './quilt/output/toText.js';
export type { WritingOptions } from './quilt/output/writing.js';

// Pieced units
export { halfSquareTriangles } from './unit/halfSquareTriangles.js';
export type { HalfSquareSpec } from './unit/halfSquareTriangles.js';
export { halfSquareFromSquare } from './unit/halfSquareFromSquare.js';
export type { HalfSquareFromSquare } from './unit/halfSquareFromSquare.js';
export type { HalfSquareMethod } from './unit/halfSquareMethod.js';
export { quarterSquareTriangles } from './unit/quarterSquareTriangles.js';
export type { QuarterSquareMethod, QuarterSquareSpec } from './unit/quarterSquareTriangles.js';
export { splitQuarterSquares } from './unit/splitQuarterSquares.js';
export type { SplitQuarterMethod, SplitQuarterSpec } from './unit/splitQuarterSquares.js';
export { flyingGeese } from './unit/flyingGeese.js';
export type { FlyingGeeseMethod, FlyingGeeseSpec } from './unit/flyingGeese.js';
export { squareInSquare } from './unit/squareInSquare.js';
export type {
  SquareInSquare,
  SquareInSquareMethod,
  SquareInSquareRound,
  SquareInSquareSpec,
} from './unit/squareInSquare.js';
export { snowball } from './unit/snowball.js';
export type { SnowballSpec } from './unit/snowball.js';
export { halfRectangleTriangles } from './unit/halfRectangleTriangles.js';
export type { HalfRectangleSpec, SeamDirection } from './unit/halfRectangleTriangles.js';
export { settingTriangles } from './unit/settingTriangles.js';
export type { SettingTrianglesSpec } from './unit/settingTriangles.js';
export { diamond } from './unit/diamond.js';
export type { DiamondSpec } from './unit/diamond.js';
export { eightPointedStar } from './unit/eightPointedStar.js';
export type { EightPointedStarSpec } from './unit/eightPointedStar.js';
export { parallelogram } from './unit/parallelogram.js';
export type { ParallelogramSpec } from './unit/parallelogram.js';
export { trapezoid } from './unit/trapezoid.js';
export type { TrapezoidSpec } from './unit/trapezoid.js';
export { equilateralTriangle } from './unit/equilateralTriangle.js';
export type { EquilateralTriangleSpec } from './unit/equilateralTriangle.js';
export { sixtyDegreeHalfTriangles } from './unit/sixtyDegreeHalfTriangles.js';
export type { SixtyDegreeHalfSpec } from './unit/sixtyDegreeHalfTriangles.js';
export { hexagon } from './unit/hexagon.js';
export type { HexagonMethod, HexagonSpec } from './unit/hexagon.js';
export { fourPatch } from './unit/fourPatch.js';
export type { FourPatchSpec } from './unit/fourPatch.js';
export { ninePatch } from './unit/ninePatch.js';
export type { NinePatchSpec } from './unit/ninePatch.js';
export { railFence } from './unit/railFence.js';
export type { RailFenceSpec } from './unit/railFence.js';
export { stripSet } from './unit/stripSet.js';
export type { StripSetSpec } from './unit/stripSet.js';
export { drunkardsPath } from './unit/drunkardsPath.js';
export type { DrunkardsPath, DrunkardsPathSpec } from './unit/drunkardsPath.js';
export type {
  BiasEdges,
  BonusTriangles,
  CurveTemplate,
  CutLabel,
  CutShape,
  Enclosure,
  StripCuts,
  TrimLine,
  TrimMark,
  TrimPoint,
  UnitArc,
  UnitCut,
  UnitPatch,
  UnitPlan,
} from './unit/plan.js';
export type { UnitPoint } from './unit/point.js';

// All units by name: for forms, tables and comparisons
export { UNITS } from './unit/units.js';
export type { UnitName } from './unit/units.js';
export { commonInputs } from './unit/basics.js';
export type {
  FinishedMeaning,
  UnitDefinition,
  UnitInput,
  UnitMethod,
} from './unit/definition.js';
export type { UnitBasics, UnitSpec } from './unit/spec.js';
export { planUnit, unitNames } from './unit/planUnit.js';
export { compareMethods } from './unit/compareMethods.js';
export type { MethodComparison, MethodRefusal, UnitComparison } from './unit/compareMethods.js';
export { unitSentences } from './unit/sentences/all.js';
export type { UnitSentence } from './unit/sentences/all.js';

// Trimming with a ruler
export { trimCuts } from './block/trimCuts.js';
export type { Hand, RulerLine, RulerPlacement, TrimCut } from './block/trimCuts.js';

// Cutting plans and yardage
export { cuttingPlan, cuttingPlanInParts } from './fabric/cuttingPlan.js';
export type { CuttingProgress } from './fabric/cuttingPlan.js';
export type { CuttingMethod, CuttingSpec } from './fabric/spec.js';
export type { CuttingPlan, EndRow, Strip, StripCut, StripEnd } from './fabric/plan.js';
export { placementsOf } from './fabric/placements.js';
export type { PlacedPlan, Placement } from './fabric/placements.js';
export { cuttingStepText } from './fabric/steps.js';
export { cuttingSentences } from './fabric/sentences.js';
export type { CuttingStepCode, CuttingWarningCode, SubcutWording } from './fabric/sentences.js';
export { checkCertificate } from './fabric/checkCertificate.js';
export type {
  BoundCertificate,
  CertificateCheck,
  CertifiedPlan,
  WorthCertificate,
} from './fabric/certificate.js';
export { checkPlan } from './fabric/checkPlan.js';
export type { CheckablePlan, PlanFault } from './fabric/checkPlan.js';
export { yardage, yardageInParts } from './fabric/yardage.js';
export type { Yardage, YardageAlternative, YardageOptions } from './fabric/yardage.js';
export { howManyFrom } from './fabric/howManyFrom.js';
export type { OnHand, OnHandSpec } from './fabric/howManyFrom.js';
export { byFabric } from './fabric/byFabric.js';
export type { FabricPieces } from './fabric/byFabric.js';

// Joined strips, pieces along the length, precuts, fabric on hand, odd shapes
export { fabricPlan } from './fabric/joined/fabricPlan.js';
export type { FabricPlan, FabricSpec } from './fabric/joined/fabricPlan.js';
export type { FabricPlacement } from './fabric/joined/drafts.js';
export { fabricYardage } from './fabric/joined/fabricYardage.js';
export type { FabricYardage } from './fabric/joined/fabricYardage.js';
export type { Join } from './fabric/joined/join.js';
export { joinStrips } from './fabric/joined/joinStrips.js';
export type {
  JoinedLengths,
  JoinedRun,
  JoinSpec,
  StripJoin,
} from './fabric/joined/joinStrips.js';
export { lengthwise } from './fabric/joined/lengthwise.js';
export type { Lengthwise, LengthwiseSpec } from './fabric/joined/lengthwise.js';
export { joinSentences } from './fabric/joined/sentences.js';
export type {
  FabricWarningCode,
  JoinStepCode,
  JoinWarningCode,
} from './fabric/joined/sentences.js';
export { precuts } from './fabric/precut/precuts.js';
export type { Precuts, PrecutSpec } from './fabric/precut/precuts.js';
export { PRECUT_NAMES, precutKind } from './fabric/precut/kinds.js';
export type {
  PrecutKind,
  PrecutName,
  PrecutSize,
  PrecutSizeInput,
} from './fabric/precut/kinds.js';
export { precutSentences } from './fabric/precut/sentences.js';
export type { PrecutStepCode, PrecutWarningCode } from './fabric/precut/sentences.js';
export { cutFromHand } from './fabric/onHand/cutFromHand.js';
export type { CutFromHand, CutFromHandSpec } from './fabric/onHand/cutFromHand.js';
export { howManyBlocks } from './fabric/onHand/howManyBlocks.js';
export type { BlocksOnHand, BlocksOnHandSpec } from './fabric/onHand/howManyBlocks.js';
export type { FabricOnHand } from './fabric/onHand/readOnHand.js';
export { onHandSentences } from './fabric/onHand/sentences.js';
export type { OnHandStepCode, OnHandWarningCode } from './fabric/onHand/sentences.js';
export type { CutRectangle, FabricRectangle } from './fabric/pack/packFabric.js';
export { packSentences } from './fabric/pack/sentences.js';
export type { PackStepCode } from './fabric/pack/sentences.js';
export { packStepText } from './fabric/pack/steps.js';
export type { UncutPiece } from './fabric/pack/uncut.js';
export { shapesFromFabric, shapesFromStrips } from './fabric/oddShapes/shapesFromStrips.js';
export type {
  ShapeCuts,
  ShapesFromStrips,
  ShapesSpec,
} from './fabric/oddShapes/shapesFromStrips.js';

// Drawings: data first, then marks, then SVG
export { drawLogCabin } from './drawing/logCabinDrawing.js';
export type { LogCabinDrawingOptions } from './drawing/logCabinDrawing.js';
export { cuttingRows, drawCuttingPlan } from './drawing/cuttingDrawing.js';
export type { CuttingDrawingOptions } from './drawing/cuttingDrawing.js';
export { drawPacking } from './drawing/packingDrawing.js';
export type { PackingDrawingOptions, PackingToDraw } from './drawing/packingDrawing.js';
export { drawBlockTurns } from './drawing/turnsDrawing.js';
export { drawQuilt } from './drawing/quiltDrawing.js';
export { drawQuiltPlan, quiltBlockFace } from './drawing/quiltPlanDrawing.js';
export type { QuiltDrawingSpec, QuiltFabrics } from './drawing/quiltDrawingSpec.js';
export { logCabinFace, plainFace, unitFace } from './drawing/blockFace.js';
export type { BlockFace } from './drawing/blockFace.js';
export { drawRoundTemplate } from './drawing/roundTemplateDrawing.js';
export { drawFoundation } from './drawing/foundationDrawing.js';
export { foundationSheets, trimSheets } from './drawing/trimSheets.js';
export type { TrimSheet, TrimSheetOptions } from './drawing/trimSheets.js';
export type { SheetPage, SheetWriting } from './drawing/sheetPages.js';
export type { Paper, SheetOptions } from './drawing/sheetPaper.js';
export { sheetSentences } from './drawing/sheetSentences.js';
export type { SheetNoteCode } from './drawing/sheetSentences.js';
export { drawTrim } from './drawing/trimDrawing.js';
export type { TrimDrawingOptions } from './drawing/trimDrawing.js';
export { drawUnit } from './drawing/unitDrawing.js';
export type { UnitDrawingOptions } from './drawing/unitDrawing.js';
export { drawUnitCut } from './drawing/unitCutDrawing.js';
export type { UnitCutDrawingOptions } from './drawing/unitCutDrawing.js';
export { drawTemplate } from './drawing/templateDrawing.js';
export type { TemplateDrawingOptions } from './drawing/templateDrawing.js';
export type {
  Area,
  AreaRole,
  Dimension,
  Drawing,
  DrawingWord,
  Label,
  Line,
  LineRole,
  Point,
  Scale,
  Shape,
} from './drawing/drawing.js';
export { blockDrawingSentences } from './drawing/blockSentences.js';
export { drawingSentences } from './drawing/sentences.js';
export type { DrawingSentence } from './drawing/sentences.js';
export { paint } from './drawing/paint.js';
export type { PaintOptions } from './drawing/paint.js';
export type { Mark, MarkRole, Painting, PathMark, TextMark } from './drawing/marks.js';
export type { ScaleUnit } from './drawing/scale.js';
export { toSvg } from './drawing/svg.js';
export type { SvgNode, SvgOptions } from './drawing/svg.js';
