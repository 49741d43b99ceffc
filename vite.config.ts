import { playwright } from '@vitest/browser-playwright';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { chromiumArgs, findChromium } from './.ci/chromium.mjs';
import { demoNotebook } from './.ci/demo-notebook.mjs';
import { pageLicences } from './.ci/licences.mjs';
import { LongFirst } from './.ci/long-first.mjs';
import { throughTerminal } from './tests/support/terminal-command.ts';

/** Packages that the browser tests need ready before they start, so that no reload happens in mid-run. */
const heavy = [
  'lit',
  'lit/decorators.js',
  'lit/directives/repeat.js',
  'lit/directives/class-map.js',
  'lit/directives/style-map.js',
  'lit/directives/live.js',
  'lit/directives/ref.js',
  '@tanstack/lit-virtual',
  'culori/fn',
  'd3-scale',
  'd3-color',
  'chroma-js',
  'chroma-js/src/generator/mix.js',
  'chroma-js/src/interpolator/oklab.js',
  'chroma-js/src/io/hex/index.js',
  'chroma-js/src/io/rgb/index.js',
  'chroma-js/src/ops/alpha.js',
  'chroma-js/src/utils/contrast.js',
  'idb',
  'fflate',
  'utif2',
  'libheif-js/libheif-wasm/libheif.js',
  'valibot',
  'pdf-lib',
  '@pdf-lib/fontkit',
  'axe-core',
];

/**
 * What the first page and a part that is fetched later both need stands in one file: cut into many small ones, it
 * packs worse by a twentieth.
 */
const shared = {
  name: 'shared',
  test: /\/(reference-data|src\/(colour|files|sheet|harmony|cutting|drawing|drawer))\/|node_modules\/(lit|@lit|lit-[a-z]+|culori|d3-[a-z]+|internmap|chroma-js)\//,
  minShareCount: 2,
};

const licences = pageLicences();

export default defineConfig({
  base: './',
  publicDir: 'components/shell/static',
  build: {
    target: 'es2022',
    // Browsers that run the page preload modules by themselves.
    modulePreload: { polyfill: false },
    outDir: 'dist',
    emptyOutDir: false,
    chunkSizeWarningLimit: 600,
    rolldownOptions: { input: { main: 'index.html' }, output: { codeSplitting: { groups: [shared] } } },
  },
  worker: { format: 'es', plugins: () => [licences.worker] },
  server: { host: '127.0.0.1', port: 5173 },
  preview: { host: '127.0.0.1', port: 5173 },
  plugins: [
    demoNotebook(),
    licences.page,
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['icon.svg'],
      manifest: {
        name: 'Quirewise',
        short_name: 'Quirewise',
        description: 'A colour-harmony workbench for people who make pages out of patterned paper.',
        display: 'standalone',
        background_color: '#b2b2b2',
        theme_color: '#b2b2b2',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2,woff,wasm,txt}'],
        globIgnores: ['engine/**', 'cli/**'],
        maximumFileSizeToCacheInBytes: 6 * 1024 * 1024,
        navigateFallback: 'index.html',
      },
    }),
  ],
  test: {
    reporters: ['default', './.ci/closing-line.mjs'],
    // The default leaves one of two cores idle.
    maxWorkers: 2,
    sequence: { sequencer: LongFirst },
    coverage: { provider: 'v8', include: ['src/**/*.ts'], reporter: ['text-summary', 'json-summary'] },
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          include: ['tests/unit/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/fault/**/*.test.ts'],
          testTimeout: 30_000,
          // Modules are read once a worker and not once a file, which took as long as the tests.
          isolate: false,
        },
      },
      {
        extends: true,
        optimizeDeps: { include: heavy },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 30_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: { executablePath: findChromium() ?? '/usr/bin/chromium', args: chromiumArgs },
            }),
            instances: [{ browser: 'chromium' }],
            commands: { throughTerminal },
          },
        },
      },
      {
        extends: true,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/e2e/**/*.test.ts'],
          globalSetup: ['tests/support/built-page.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
