declare module 'vt-pbf' {
  interface Feature { type: number; tags: Record<string, string | number>; geometry: number[][][] }
  const vtpbf: { fromGeojsonVt(layers: Record<string, { features: Feature[] }>, options: { version: number; extent: number }): Uint8Array };
  export default vtpbf;
}
