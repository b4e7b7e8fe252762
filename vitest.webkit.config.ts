import { defineConfig, mergeConfig } from 'vitest/config';
import config from './vitest.config.js';

// The same tests’ runner, for what is run in WebKit.
export default mergeConfig(
  { ...config, test: { ...config.test, include: [] } },
  defineConfig({ test: { include: ['tests/webkit/*.webkit.ts'] } }),
);
