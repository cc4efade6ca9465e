// The types that @crhio/offset lacks.

declare module '@crhio/offset' {
  interface CrhioVertex {
    readonly x: number;
    readonly y: number;
    readonly bulge: number;
  }
  type CrhioOffset = (line: { vertexes: readonly CrhioVertex[]; isClosed: boolean }, delta: number, sharpCorners: boolean) => readonly { readonly vertexes: readonly CrhioVertex[] }[];
  const offset: CrhioOffset | { readonly default: CrhioOffset };
  export default offset;
}
