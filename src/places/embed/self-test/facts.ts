/** Something of ours that the site's policy refused. */
export interface Violation {
  /** The directive that refused it, such as `script-src-elem`. */
  readonly directive: string
  /** The address refused, or a word such as `inline`. */
  readonly blocked: string
  /** The whole policy that holds it. */
  readonly policy: string
}

/** What a server answers for a file; null where no answer could be read. */
export interface ServerAnswer {
  readonly status: number
  /** The kind of file without its parameters, such as `text/javascript`. */
  readonly kind: string
  readonly headers: Readonly<Record<'x-frame-options' | 'content-security-policy', string>>
}

/** What was measured on a site. Nothing is judged here. */
export interface SiteFacts {
  /** The site's own origin, and the one that the files come from. */
  readonly origin: string
  readonly filesOrigin: string
  readonly violations: readonly Violation[]
  readonly script: {
    readonly answer: ServerAnswer | null
    /** Whether the page has a line of its own that loads the script, and how it is wrong. */
    readonly line: 'none' | 'fits' | 'no-module'
    /** Whether that line alone loaded it. */
    readonly byLine: boolean
    /** Whether it ran, by that line or when asked for once more. */
    readonly ran: boolean
    readonly address: string
  }
  /** Null where the line has no integrity value. */
  readonly integrity: {
    readonly written: string
    /** The right value in the same way of reckoning; null where this page may not reckon it. */
    readonly right: string | null
  } | null
  readonly element: {
    readonly defined: boolean
    /** Whether the browser can do all that the element needs. */
    readonly ableBrowser: boolean
    readonly shows: 'question' | 'trouble' | 'nothing'
    readonly styled: boolean
    /** The seconds that a question was waited for. */
    readonly waited: number
  }
  readonly office: { readonly answer: ServerAnswer | null; readonly isPack: boolean }
  readonly frame: {
    readonly answer: ServerAnswer | null
    /** `unseen`: it comes from another site, which no page can look into. */
    readonly inside: 'question' | 'no-question' | 'empty' | 'unseen'
  }
  readonly plain: {
    readonly answer: ServerAnswer | null
    readonly styled: boolean
    readonly address: string
  }
  /** How the element stands in the page; null where it has drawn nothing. */
  readonly theme: {
    /** The first box, from the element outward, that hides it, and by what. */
    readonly hiddenBy: { readonly box: string; readonly rule: string } | null
    /** The first box that makes it larger or smaller than it is, and by what. */
    readonly scaledBy: { readonly box: string; readonly rule: string } | null
    /** In CSS pixels, as they are seen. */
    readonly width: number
    readonly height: number
    readonly textSize: number
  } | null
  /** Whether the page refuses text as HTML. */
  readonly trustedTypes: boolean
}
