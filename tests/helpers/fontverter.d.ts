/** What the tests use of fontverter, which brings no types. */
declare module 'fontverter' {
  const fontverter: {
    /** A font file in another format. */
    convert(font: Uint8Array, to: 'sfnt' | 'woff' | 'woff2'): Promise<Uint8Array>
  }
  export default fontverter
}
