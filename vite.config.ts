import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vite';

/**
 * The page as files with relative addresses, for a strict content policy: nothing inline, no
 * address outside, no polyfill that would be written into the page.
 */
export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [svelte({ configFile: '../svelte.config.js' })],
  build: {
    outDir: '../dist/page',
    emptyOutDir: true,
    target: 'chrome120',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1000,
  },
});
