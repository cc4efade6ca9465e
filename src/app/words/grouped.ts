/** A whole number with its thousands set apart: "10,108". Not by the browser's rules of languages, which take long to look up the first time. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
