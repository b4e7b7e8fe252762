import { es } from '../messages/es.js';
import { speak } from './speak.js';

speak('es', es);
