import './define/fabric.js';
import './define/log-cabin.js';
