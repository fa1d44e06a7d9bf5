/// <reference types="vite-plugin-pwa/vanillajs" />

/** Put in at build: the package's version, and the day on which the content last changed. */
declare const __JARSIDE_VERSION__: string
declare const __JARSIDE_CONTENT_DATE__: string
