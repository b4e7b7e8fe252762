// One tag for a whole site: loads an element's file when a page has the element, the panels of a log
// cabin when its numbers are shown, and a language when the page speaks it. Not for a page whose
// policy names single files: there, `eighths.js` holds everything.
import { langOf } from '../base/languages.js';

type Load = () => Promise<unknown>;

const ELEMENTS: Readonly<Record<string, Load>> = {
  fabric: () => import('./fabric.js'),
  'log-cabin': () => import('./log-cabin.js'),
  quilt: () => import('./quilt.js'),
  unit: () => import('./unit.js'),
};

const LANGUAGES: Readonly<Record<string, Load>> = {
  de: () => import('../lang/de.js'),
  es: () => import('../lang/es.js'),
  fr: () => import('../lang/fr.js'),
  ja: () => import('../lang/ja.js'),
};

const asked = new Set<Load>();

/** Once only: what is being loaded is not asked for again, and a file that is missing is told once. */
const load = (what: Load | undefined): void => {
  if (what === undefined || asked.has(what)) return;
  asked.add(what);
  void what();
};

const panels: Load = async () => {
  await customElements.whenDefined('eighths-log-cabin');
  // The numbers come first.
  await new Promise(requestAnimationFrame);
  await import('./log-cabin-workshop.js');
};

/** Loads what the page has, and has not loaded. */
function look(): void {
  for (const [name, element] of Object.entries(ELEMENTS)) {
    const found = document.querySelectorAll(`eighths-${name}, [data-eighths="${name}"]`);
    for (const each of found) {
      load(element);
      load(LANGUAGES[langOf(each).slice(0, 2).toLowerCase()]);
      const wanted = each.getAttribute('panels') ?? each.getAttribute('data-panels');
      if (name === 'log-cabin' && wanted !== 'none') load(panels);
    }
  }
}

let waiting = false;

/** However much of the page changes, it is looked over once a frame. */
function lookSoon(): void {
  if (waiting) return;
  waiting = true;
  requestAnimationFrame(() => {
    waiting = false;
    look();
  });
}

// Where pages are made on a server there is none to look over.
if (typeof document !== 'undefined') {
  look();
  new MutationObserver(lookSoon).observe(document, {
    childList: true,
    subtree: true,
    attributeFilter: ['lang', 'panels'],
  });
}
