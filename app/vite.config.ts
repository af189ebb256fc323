import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const server = 'http://localhost:4680';

export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    react(),
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
        navigateFallbackDenylist: [/^\/api\//, /^\/sync/, /^\/film\/sampled-/],
      },
    }),
  ],
  build: { outDir: 'dist', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1200 },
  worker: { format: 'es' },
  server: {
    proxy: {
      '/api': server,
      '^/film/sampled-': server,
      '/sync': { target: server, ws: true },
    },
  },
});
