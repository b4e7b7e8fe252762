// What the command line needs: the elements in every language, without registering them, and how they
// are written out.
import { addCatalog } from '../base/languages.js';
import { de } from '../messages/de.js';
import { es } from '../messages/es.js';
import { fr } from '../messages/fr.js';
import { ja } from '../messages/ja.js';

for (const [language, catalog] of Object.entries({ de, es, fr, ja })) addCatalog(language, catalog);

export { EighthsFabric } from '../fabric/element.js';
export { EighthsLogCabin } from '../log-cabin/element.js';
export { EighthsQuilt } from '../quilt/element.js';
export { EighthsUnit } from '../unit/element.js';
export { renderTag } from './render.js';
