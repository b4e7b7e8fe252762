import { de } from '../messages/de.js';
import { speak } from './speak.js';

speak('de', de);
