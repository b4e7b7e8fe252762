import { fr } from '../messages/fr.js';
import { speak } from './speak.js';

speak('fr', fr);
