/** A phone number as a link to call it; digits keep their order in any script. */
export function Phone({ number }: { number: string }) {
  return (
    <a class="phone" href={`tel:${number.replace(/[^+\d]/g, '')}`}>
      <bdi>{number}</bdi>
    </a>
  )
}
