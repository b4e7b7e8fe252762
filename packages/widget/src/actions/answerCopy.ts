/** What a page sets an element’s look by: its copy has to look the same. */
const LOOKS = [
  '--eighths-accent',
  ...[1, 2, 3, 4, 5, 6, 7, 8].map((fabric) => `--eighths-fabric-${fabric}`),
];

/** Paper is left as the printer likes it. */
export const paperCss = 'body{margin:0}';

/** A copy of what an element shows, with its style sheet, in another page. */
export function copyInto(page: Document, host: HTMLElement, css: string): void {
  const shown = host.shadowRoot?.querySelector('.root');
  const view = page.defaultView;
  if (!shown || !view) return;
  const copy = page.createElement('div');
  const root = copy.attachShadow({ mode: 'open' });
  const sheet = new view.CSSStyleSheet();
  sheet.replaceSync(css);
  root.adoptedStyleSheets = [sheet];
  root.append(page.importNode(shown, true));
  const look = getComputedStyle(host);
  copy.style.setProperty('font-family', look.fontFamily);
  for (const name of LOOKS) {
    const value = look.getPropertyValue(name);
    if (value !== '') copy.style.setProperty(name, value);
  }
  page.body.append(copy);
}
