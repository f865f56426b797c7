export { type Co2Chart, chartCo2 } from './charts/chart-co2.js';
export { chartDecay, type DecayChart } from './charts/chart-decay.js';
export { chartHours, type HoursChart } from './charts/chart-hours.js';
export { chartLevels, type LevelSeries, type LevelsChart } from './charts/chart-levels.js';
export { chartModes, type ModesChart } from './charts/chart-modes.js';
export { chartResponse, type ResponseChart } from './charts/chart-response.js';
export { chartShares, type SharesChart } from './charts/chart-shares.js';
export { chartTemperature, type TemperatureChart } from './charts/chart-temperature.js';
export { chartTransmissionLoss, type TransmissionLossChart } from './charts/chart-transmission-loss.js';
export { encodeBase64 } from './charts/encode-base64.js';
export { type ChartSize, hoverSize } from './charts/frame.js';
export { palette } from './charts/palette.js';
export { svgToMarkdownImage } from './charts/svg-to-markdown-image.js';
export { renderComparisonMarkdown } from './compare/render-comparison-markdown.js';
export { renderComparisonText } from './compare/render-comparison-text.js';
export { sinceWords } from './compare/since-words.js';
export { drawElevation } from './drawings/draw-elevation.js';
export { drawLayerSection } from './drawings/draw-layer-section.js';
export { drawLengths } from './drawings/draw-lengths.js';
export { drawPanels } from './drawings/draw-panels.js';
export { drawPlan } from './drawings/draw-plan.js';
export { drawRoomPlan } from './drawings/draw-room-plan.js';
export { drawSheets } from './drawings/draw-sheets.js';
export {
  type Drawing,
  type DrawingKind,
  type DrawingOptions,
  type DrawingTable,
  isDrawn,
  type NotDrawn,
} from './drawings/drawing.js';
export { type DrawnFrom, drawingsOf } from './drawings/drawings-of.js';
export { type ExplodedOptions, explodedView } from './drawings/exploded-view.js';
export { heatHover, moistureHover, sessionAirHover, supplyHover } from './hover/air-hovers.js';
export { type AssemblyHoverContext, assemblyHover } from './hover/assembly-hover.js';
export { type BoothHoverContext, boothHover } from './hover/booth-hover.js';
export { budgetHover, itemHover } from './hover/budget-hover.js';
export { cautionHover } from './hover/caution-hover.js';
export { type AssumedDefault, defaultHover } from './hover/default-hover.js';
export { defaultsWithin } from './hover/defaults-within.js';
export { equipmentHover } from './hover/equipment-hover.js';
export { evidenceText, originText } from './hover/evidence-text.js';
export { floorHover, massHover } from './hover/floor-hover.js';
export { hoursHover } from './hover/hours-hover.js';
export type { HoverContext } from './hover/hover-context.js';
export { keywordHover } from './hover/keyword-hover.js';
export { code, escapeMarkdown } from './hover/markdown.js';
export { materialHover } from './hover/material-hover.js';
export { microphoneFactHover, microphoneHover } from './hover/microphone-hover.js';
export { mountsHover } from './hover/mounts-hover.js';
export { mouthHover, reflectionHover } from './hover/mouth-hover.js';
export { neighbourHover } from './hover/neighbour-hover.js';
export { openingHover } from './hover/opening-hover.js';
export { panelsHover, wayHover } from './hover/panels-hover.js';
export { pathShareHover } from './hover/path-share-hover.js';
export { obstacleHover, placeHover, roofHover, swingHover } from './hover/place-hover.js';
export { requirementHover, requirementReasons, requirementVerdict } from './hover/requirement-hover.js';
export { roomSoundHover } from './hover/room-sound-hover.js';
export { type SourceHoverContext, sourceHover } from './hover/source-hover.js';
export { variantHover } from './hover/variant-hover.js';
export { fanHover, ventAirHover, ventPartHover } from './hover/vent-air-hover.js';
export { voiceHover } from './hover/voice-hover.js';
export { assemblyLabel } from './inlay/assembly-label.js';
export { boothLabel } from './inlay/booth-label.js';
export { budgetLabel } from './inlay/budget-label.js';
export { defaultLabel } from './inlay/default-label.js';
export { itemLabel } from './inlay/item-label.js';
export { layerLabel } from './inlay/layer-label.js';
export { microphoneLabel } from './inlay/microphone-label.js';
export { mountsLabel } from './inlay/mounts-label.js';
export { mouthLabel } from './inlay/mouth-label.js';
export { neighbourLabel } from './inlay/neighbour-label.js';
export { obstacleLabel } from './inlay/obstacle-label.js';
export { openingLabel } from './inlay/opening-label.js';
export { panelsLabel } from './inlay/panels-label.js';
export { requirementLabel } from './inlay/requirement-label.js';
export { sessionLabel } from './inlay/session-label.js';
export { sourceLabel } from './inlay/source-label.js';
export { variantLabel } from './inlay/variant-label.js';
export { ventAirLabel } from './inlay/vent-air-label.js';
export { wayLabel } from './inlay/way-label.js';
export { boothLens } from './lens/booth-lens.js';
export { variantLens } from './lens/variant-lens.js';
export { verdictSign } from './lens/verdict-sign.js';
export { bandName, formatFrequency } from './numbers/format-frequency.js';
export { formatFigures, formatNumber } from './numbers/format-number.js';
export { formatDifference, formatQuantity, shownUnit } from './numbers/format-quantity.js';
export { type DisplayUnits, lengthFigure, lengthText } from './numbers/length-text.js';
export { materialFigures } from './numbers/material-figures.js';
export { type PathShare, pathShares } from './numbers/path-shares.js';
export { requirementName, verdictText } from './numbers/requirement-words.js';
export {
  type RatingName,
  ratingNames,
  type Shown,
  showing,
  shownAtFirst,
} from './numbers/shown.js';
export { tradeForm } from './numbers/trade-form.js';
export {
  airSpeedText,
  areaText,
  forceText,
  surfaceMassText,
  temperatureDifferenceText,
  temperatureText,
  thicknessText,
  volumeText,
} from './numbers/trade-units.js';
export { partsCsv } from './parts/parts-csv.js';
export { renderPartsText } from './parts/render-parts-text.js';
export { type ReportHtmlOptions, renderReportHtml } from './report/render-report-html.js';
export { renderReportMarkdown } from './report/render-report-markdown.js';
export type { ReportInput } from './report/report-input.js';
export { reportOf } from './report/report-of.js';
export { type ReportPage, reportPages } from './report/report-page-style.js';
export { renderSarif, type SarifInput } from './sarif/render-sarif.js';
export type { SarifLevel, SarifLog, SarifResult, SarifRule } from './sarif/sarif-log.js';
export { elementAt, type SheetCursor, type SheetElement } from './sheet/element-at.js';
export { type HeadlineFact, headlineFacts } from './sheet/headline-facts.js';
export { lossSection } from './sheet/sections/loss.js';
export { type SheetInput, sheetSize } from './sheet/sheet-input.js';
export { sheetOf } from './sheet/sheet-of.js';
export type { SheetSection, SheetSectionId } from './sheet/sheet-section.js';
export { lineAndColumn, type TextPlace } from './text/line-and-column.js';
export { printable } from './text/printable.js';
export { renderCheckText } from './text/render-check-text.js';
export { renderFigures } from './text/render-figures.js';
export { renderProblems } from './text/render-problems.js';
export { paint, type TextStyle } from './text/text-style.js';
