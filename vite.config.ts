import preact from "@preact/preset-vite";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";

/**
 * What the page may load, said twice: as a tag in the built page, so that any plain https host is safe, and as a header from our own server.
 * Nothing comes from anywhere but this address: promise 12, "nothing leaves the tablet", is held by the browser too.
 */
const pageRules = [
  "default-src 'self'",
  // WebAssembly is compiled from our own file only; the voice is made of it.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const headers = {
  // A tag cannot forbid framing, only a header can.
  "Content-Security-Policy": `${pageRules}; frame-ancestors 'none'`,
  "Permissions-Policy":
    "microphone=(self), camera=(self), screen-wake-lock=(self), fullscreen=(self), autoplay=(self), geolocation=(), payment=(), usb=()",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
  "Cross-Origin-Opener-Policy": "same-origin",
};

/** Only in the built page: the development server puts styles into the page by script, which these rules forbid. */
const pageRulesTag: Plugin = {
  name: "page-rules-tag",
  apply: "build",
  transformIndexHtml(html) {
    // Right after the character set, which must come first, and before anything that loads.
    const charset = '<meta charset="utf-8" />';
    if (!html.includes(charset)) throw new Error(`index.html has no ${charset}: the page rules found no place.`);
    return html.replace(charset, `${charset}\n    <meta http-equiv="Content-Security-Policy" content="${pageRules}" />`);
  },
};

/** Everything is kept on the tablet at the first visit. A new version waits until app/ asks for it, which it never does while a walk is open. */
const offline = VitePWA({
  registerType: "prompt",
  injectRegister: null,
  strategies: "generateSW",
  workbox: {
    globPatterns: ["**/*.{js,css,html,svg,png,woff2,json,wasm,bin,txt,tsv}"],
    // The voice and the ear's nets are the largest files.
    maximumFileSizeToCacheInBytes: 8_000_000,
    skipWaiting: false,
    clientsClaim: true,
    cleanupOutdatedCaches: true,
  },
  manifest: {
    id: "./",
    name: "Tablebell",
    short_name: "Tablebell",
    description: "Walks a person through one insulin injection at a time, aloud and in very large letters.",
    lang: "en",
    start_url: "./",
    scope: "./",
    display: "standalone",
    background_color: "#ffffff",
    theme_color: "#ffffff",
    icons: [
      { src: "icon-192.png", sizes: "192x192", type: "image/png" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png" },
      { src: "icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  },
});

/** No test is timed: a busy machine only takes longer. */
const patient = 180_000;

/** Tests in real Chromium, on the built app. */
const inBrowser = (name: string, how: { include: string[]; maxWorkers: number; sequence: { groupOrder: number } }) => ({
  test: {
    name,
    root: ".",
    environment: "node" as const,
    globalSetup: ["tests/vitest.e2e.ts"],
    testTimeout: patient,
    hookTimeout: patient,
    // A browser on a processor that it shares may miss a beat: what is at fault fails twice.
    retry: 1,
    ...how,
  },
});

export default defineConfig({
  root: "src",
  publicDir: "../public",
  base: "./",
  plugins: [preact(), pageRulesTag, offline],
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    // Small pictures stay files: the page rules refuse data addresses for most things.
    assetsInlineLimit: 0,
    // Every browser we know of fetches early by itself, and without it nothing is lost but a moment.
    modulePreload: { polyfill: false },
    // All that the first screen needs in one script: pressed together they are smaller than apart.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: "kitchen", test: /\/src\/main\.tsx$/ }] } } },
  },
  // Of the same release, but for browsers with module scripts, which ours are: 2 kB gzipped less.
  resolve: { alias: [{ find: /^dexie$/, replacement: "dexie/dist/modern/dexie.mjs" }] },
  // The tablet talks to itself: only 127.0.0.1 counts as a safe address without a certificate, and without one there is no voice and no offline.
  server: { host: "127.0.0.1", strictPort: false },
  preview: { host: "127.0.0.1", strictPort: false, headers },
  test: {
    root: ".",
    projects: [
      {
        test: {
          name: "unit",
          root: ".",
          environment: "node",
          include: ["tests/unit/**/*.test.ts"],
          testTimeout: patient,
          maxWorkers: "100%",
        },
      },
      {
        plugins: [preact()],
        test: {
          name: "component",
          root: ".",
          environment: "jsdom",
          include: ["tests/component/**/*.test.{ts,tsx}"],
          setupFiles: ["tests/vitest.component.ts"],
          testTimeout: patient,
          maxWorkers: "100%",
        },
      },
      // One at a time: two browsers on two processors tear each other's walks (tried: two of a hundred had to be run again).
      inBrowser("e2e", { include: ["tests/e2e/*.test.ts", "tests/e2e/kit/*.test.ts"], maxWorkers: 1, sequence: { groupOrder: 1 } }),
      // Real sound on the real clock: whatever else runs would tear it.
      inBrowser("sound", { include: ["tests/e2e/sound/*.test.ts"], maxWorkers: 1, sequence: { groupOrder: 2 } }),
    ],
  },
});
