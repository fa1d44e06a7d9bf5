declare module 'dmn-moddle' {
  interface Row {
    readonly annotationEntry?: readonly { readonly text?: string }[]
  }
  interface Element {
    readonly $type: string
    readonly $descriptor: { readonly ns: { readonly name: string } }
    readonly name?: string
    readonly decisionLogic?: {
      readonly hitPolicy?: string
      readonly rule?: readonly Row[]
      readonly annotation?: readonly { readonly name?: string }[]
    }
  }
  /** Parses DMN files (bpmn.io, MIT). The package has no types of its own: this is what the tests use. */
  export class DmnModdle {
    fromXML(
      xml: string,
      type: string
    ): Promise<{
      readonly rootElement: Element & { readonly drgElement: readonly Element[] }
      readonly warnings: readonly unknown[]
    }>
  }
}
