/** What is printed by itself. */
export interface Printing {
  /** The name that the browser offers for it. */
  readonly title: string;
  readonly css: string;
  /** Puts the contents into an empty page. */
  readonly fill: (page: Document) => void;
}

/**
 * Prints something by itself, whatever page it stands on: from an empty frame inside the element, so
 * that paper and margins can be set and nothing else of the page is printed. The frame goes when the
 * dialog has closed.
 */
export function printAlone(
  root: ShadowRoot,
  { title, css, fill }: Printing,
  instead: () => void,
): void {
  const { ownerDocument } = root;
  for (const left of root.querySelectorAll('.print-frame')) left.remove();
  const frame = ownerDocument.createElement('iframe');
  frame.className = 'print-frame unseen';
  frame.title = title;
  frame.tabIndex = -1;
  frame.setAttribute('aria-hidden', 'true');
  const onLoad = (): void => {
    const page = frame.contentDocument;
    const view = page?.defaultView;
    // A page in a sandbox may not look into its own frames.
    if (!page || !view) {
      frame.remove();
      instead();
      return;
    }
    const sheet = new view.CSSStyleSheet();
    sheet.replaceSync(css);
    page.adoptedStyleSheets = [sheet];
    page.title = title;
    page.documentElement.lang = ownerDocument.documentElement.lang || 'en';
    fill(page);
    view.addEventListener('afterprint', () => frame.remove());
    view.focus();
    view.print();
  };
  // Firefox fills an empty frame a moment later, others at once.
  frame.addEventListener('load', onLoad, { once: true });
  root.append(frame);
}
