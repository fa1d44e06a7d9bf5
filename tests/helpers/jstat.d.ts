/** What the tests use of jstat, which brings no types. */
declare module 'jstat' {
  const jStat: {
    readonly normal: { inv(p: number, mean: number, deviation: number): number }
    readonly beta: { inv(p: number, alpha: number, beta: number): number }
  }
  export default jStat
}
