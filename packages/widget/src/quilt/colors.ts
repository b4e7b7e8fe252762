/** The custom property of a fabric's tint: they count from 1. */
const propertyOf = (tint: number): string => `--eighths-fabric-${tint + 1}`;

const RGB = /^rgb\((\d+), (\d+), (\d+)\)$/;

const hex = (parts: readonly number[]): string =>
  `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`;

/** A color as an input of colors takes it, whatever a style sheet calls it. */
function hexOf(color: string): string {
  const [, ...parts] = RGB.exec(color) ?? [];
  if (parts.length > 0) return hex(parts.map(Number));
  const canvas = document.createElement('canvas');
  canvas.width = 1;
  canvas.height = 1;
  const pen = canvas.getContext('2d');
  if (pen === null) return '#808080';
  pen.fillStyle = color;
  pen.fillRect(0, 0, 1, 1);
  return hex([...pen.getImageData(0, 0, 1, 1).data.slice(0, 3)]);
}

/** The colors that a reader has chosen for the drawing, by the fabrics' tints. */
export class DrawingColors {
  readonly #chosen = new Map<number, string>();

  get any(): boolean {
    return this.#chosen.size > 0;
  }

  /** Takes effect on the element that all drawings stand in; says whether it is the first. */
  choose(tint: number, color: string, root: ParentNode): boolean {
    const first = !this.any;
    this.#chosen.set(tint, color);
    root.querySelector<HTMLElement>('.root')?.style.setProperty(propertyOf(tint), color);
    return first;
  }

  reset(root: ParentNode): void {
    const style = root.querySelector<HTMLElement>('.root')?.style;
    for (const tint of this.#chosen.keys()) style?.removeProperty(propertyOf(tint));
    this.#chosen.clear();
  }

  /** Lets the inputs show the colors that the drawings have. */
  show(root: ParentNode): void {
    for (const input of root.querySelectorAll<HTMLInputElement>('[data-tint]')) {
      const tint = Number(input.dataset.tint);
      const swatch = root.querySelector(`.swatch.tint-${tint}`);
      const color = this.#chosen.get(tint);
      if (color !== undefined) input.value = color;
      else if (swatch !== null) input.value = hexOf(getComputedStyle(swatch).backgroundColor);
    }
  }
}
