import { defineConfig } from 'vitest/config';
import { inventedServer } from './test/mock/server.ts';

// `npm run dev` shows a running RangeMap server's data; `npm run mock` needs no server and invents its own.
export default defineConfig(({ mode }) => ({
  plugins: mode === 'mock' ? [inventedServer()] : [],
  server: { proxy: mode === 'mock' ? {} : { '/api': 'http://localhost:5080' } },
  // No test measures time; a busy machine may take what it needs.
  test: { testTimeout: 120_000, hookTimeout: 120_000 },
  build: { rollupOptions: { input: ['index.html', 'desk.html', 'export.html'] }, target: 'es2022', sourcemap: false, chunkSizeWarningLimit: 700 },
}));
