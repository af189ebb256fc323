import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const server = 'http://localhost:4680';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    react(),
    leaveHandoutAlone(),
    VitePWA({
      registerType: 'autoUpdate',
      // An own file: the policy of the server lets no script stand in the page.
      injectRegister: 'script-defer',
      manifest: {
        name: 'Icewright',
        short_name: 'Icewright',
        description: 'Film, ice, drill, practice, next game: one bench for the staff of one team.',
        theme_color: '#F2F5F6',
        background_color: '#F2F5F6',
        display: 'standalone',
        start_url: '/',
        icons: [{ src: '/icewright.svg', sizes: 'any', type: 'image/svg+xml' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2,woff}'],
        maximumFileSizeToCacheInBytes: 6_000_000,
        navigateFallback: '/index.html',
        // `/film` and `/film/<game>` are pages; only a film's bytes, named by their hash, belong to the server.
        // A handout is a page of its own, and is not kept.
        navigateFallbackDenylist: [/^\/api\//, /^\/sync/, /^\/film\/sampled-/, /^\/handout\//],
        globIgnores: ['handout.html'],
      },
    }),
  ],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    chunkSizeWarningLimit: 1200,
    rolldownOptions: {
      input: {
        index: `${import.meta.dirname}/index.html`,
        // The page of a player: without the documents, the line to the server and the other places.
        handout: `${import.meta.dirname}/handout.html`,
      },
    },
  },
  worker: { format: 'es' },
  server: {
    proxy: {
      '/api': server,
      '^/film/sampled-': server,
      '^/handout/[^/]+/drill.json': server,
      '/sync': { target: server, ws: true },
    },
  },
});

/** The page of a player keeps nothing on his phone: no worker, no manifest of the workbench. */
function leaveHandoutAlone(): Plugin {
  return {
    name: 'leave-handout-alone',
    enforce: 'post',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const page = bundle['handout.html'];
        if (page?.type !== 'asset') return;
        page.source = String(page.source).replace(
          /<link rel="manifest"[^>]*>|<script id="vite-plugin-pwa[^>]*><\/script>/g,
          '',
        );
      },
    },
  };
}
