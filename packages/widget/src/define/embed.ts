// What `embed.html` runs, for hosts that allow frames and no script: it makes the element that the
// address names, and tells the page around it how high it is.

/** The elements that an address may name. */
const ELEMENTS = ['log-cabin', 'fabric', 'quilt', 'unit'];

const query = new URLSearchParams(location.search);
const named = query.get('element');
const known = ELEMENTS.find((each) => each === named) ?? 'log-cabin';
const element = document.createElement(`eighths-${known}`);
for (const [attribute, value] of query) {
  // An address is no program: what begins with “on” would be one in some pages, and is none here.
  if (/^(?!on)[a-z][a-z-]*$/.test(attribute) && attribute !== 'element') {
    element.setAttribute(attribute, value);
  }
}
document.documentElement.lang = query.get('lang') ?? 'en';
document.body.append(element);

new ResizeObserver(() => {
  const height = Math.ceil(document.documentElement.getBoundingClientRect().height);
  parent.postMessage({ eighths: 'height', height }, '*');
}).observe(document.body);

export {};
