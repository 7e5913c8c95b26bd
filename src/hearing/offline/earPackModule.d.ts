/** Made by the build: where the offline ear's pack is and what it must be. */
declare module 'virtual:ear-pack' {
  export const url: string;
  export const sha256: string;
  export const bytes: number;
}
