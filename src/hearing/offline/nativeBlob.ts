/** Stands in for a polyfill the decoder's package asks for: every browser it runs in has its own. */
export const { Blob } = globalThis;
