import type { MarkRole } from './marks.js';

/** SVG presentation attributes: they look right alone, and any style sheet overrides them. */
export type Look = Readonly<Record<string, string | number>>;

/** Beside the block lines and words take the page's color; on its light tints they stay dark. */
const INK = 'currentColor';
const INK_ON_FABRIC = '#1d1d1b';
const ACCENT = '#b3261e';
const line = (stroke: string, width: number): Look => ({
  fill: 'none',
  stroke,
  'stroke-width': width,
  'vector-effect': 'non-scaling-stroke',
});

/** Fabrics on white paper; each also has a hatch of its own. */
export const TINTS: readonly string[] = [
  '#f3e3c3',
  '#b8cbd9',
  '#edc9bd',
  '#c9d6b5',
  '#d6c6de',
  '#f2dfa0',
  '#b5d6cf',
  '#d9d3ca',
];

export const pathLooks: Readonly<Record<MarkRole, Look>> = {
  fabric: { stroke: INK_ON_FABRIC, 'stroke-width': 1, 'vector-effect': 'non-scaling-stroke' },
  hatch: { ...line(INK_ON_FABRIC, 0.6), opacity: 0.35 },
  waste: { fill: '#fff', opacity: 0.75 },
  outline: line(INK, 1.5),
  ruler: {
    fill: ACCENT,
    'fill-opacity': 0.06,
    stroke: ACCENT,
    'stroke-width': 1,
    'vector-effect': 'non-scaling-stroke',
  },
  'raw-edge': line(INK, 1.5),
  'finished-edge': { ...line(INK_ON_FABRIC, 1), 'stroke-dasharray': '5 3' },
  seam: line(INK_ON_FABRIC, 1),
  'center-seam': line(INK_ON_FABRIC, 2.5),
  'trim-line': line(ACCENT, 2.5),
  'ruler-line': line(ACCENT, 1.25),
  diagonal: { ...line(ACCENT, 1), 'stroke-dasharray': '2 3' },
  selvage: { ...line(INK, 3), 'stroke-dasharray': '1 4' },
  measure: line(INK, 0.9),
  extension: { ...line(INK, 0.6), opacity: 0.5 },
  scale: line(INK, 0.8),
  order: line(INK_ON_FABRIC, 1),
  cut: { ...line(ACCENT, 1.5), fill: '#fff' },
  hold: { ...line(ACCENT, 1), fill: '#fff', 'stroke-dasharray': '3 3' },
};

/** The color of a role's text. */
export function textColor(role: MarkRole): string {
  if (role === 'cut' || role === 'hold') return ACCENT;
  return role === 'order' ? INK_ON_FABRIC : INK;
}
