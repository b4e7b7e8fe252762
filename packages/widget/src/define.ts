import './define/fabric.js';
import './define/log-cabin.js';
import './define/unit.js';
