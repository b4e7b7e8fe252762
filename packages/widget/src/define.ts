import './define/fabric.js';
import './define/log-cabin-workshop.js';
import './define/quilt.js';
import './define/unit.js';
