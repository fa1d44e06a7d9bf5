import { Component, type ComponentChildren } from 'preact'

interface BoundaryProps {
  /** What stands in place of the children once one of them threw. */
  readonly fallback: ComponentChildren
  readonly onTrouble?: () => void
  readonly children: ComponentChildren
}

/** Ends a screen that cannot be shown: half of one would be worse than the fallback. */
export class Boundary extends Component<BoundaryProps, { broken: boolean }> {
  override state = { broken: false }

  static override getDerivedStateFromError = () => ({ broken: true })

  override componentDidCatch(error: unknown) {
    console.error(error)
    this.props.onTrouble?.()
  }

  override render() {
    return this.state.broken ? this.props.fallback : this.props.children
  }
}
