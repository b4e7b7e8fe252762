import { ja } from '../messages/ja.js';
import { speak } from './speak.js';

speak('ja', ja);
