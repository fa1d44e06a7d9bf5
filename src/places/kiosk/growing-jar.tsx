/** A jar seen from above: islands on the tea grow together, and the film on it thickens slowly. */
export function GrowingJar() {
  return (
    <svg class="growing-jar" viewBox="0 0 400 400" aria-hidden="true">
      <radialGradient id="tea-depth">
        <stop offset="0.55" stop-color="#c98a3c" />
        <stop offset="1" stop-color="#a96a22" />
      </radialGradient>
      <clipPath id="mouth">
        <circle cx="200" cy="200" r="170" />
      </clipPath>
      <circle cx="200" cy="200" r="193" class="growing-jar-rim" />
      <g clip-path="url(#mouth)">
        <circle cx="200" cy="200" r="170" fill="url(#tea-depth)" />
        <g class="growing-jar-strands">
          <path d="M118 262q14-20 4-42t10-40M282 288q-16-22-6-46t-8-36M236 118q12 18 2 40" />
        </g>
        <g class="growing-jar-islands">
          {ISLANDS.map(([shape, x, y]) => (
            <path key={shape} d={shape} style={{ transformOrigin: `${x}px ${y}px` }} />
          ))}
        </g>
        <path class="growing-jar-film" d={FILM} />
        <path class="growing-jar-skin" d={SKIN} />
        <g class="growing-jar-folds">
          <path d="M96 226q34 22 78 14M236 92q40 10 58 44M262 268q30-6 46-32M128 128q18-20 44-26" />
          <path d="M170 300q34 12 66 0M300 176q6 26-6 48" />
        </g>
        <path class="growing-jar-gleam" d="M82 158q18-52 74-74" />
        <path class="growing-jar-gleam" d="M72 190q1-8 3-14" />
      </g>
      <circle cx="200" cy="200" r="170" class="growing-jar-mouth" />
    </svg>
  )
}

/** Each with the point from which it grows. */
const ISLANDS: readonly (readonly [string, number, number])[] = [
  ['M112 152q-8-34 28-40t44 20q10 30-20 44t-52-24z', 146, 146],
  ['M232 214q-12-40 30-52t62 20q14 40-22 58t-70-26z', 276, 204],
  ['M128 270q-14-30 18-44t50 14q8 34-24 46t-44-16z', 160, 256],
  ['M226 116q0-22 24-22t24 24q-4 20-24 18t-24-20z', 250, 116],
  ['M226 306q-4-24 22-28t32 18q2 24-22 28t-32-18z', 252, 300],
  ['M80 214q-4-16 12-18t20 12q2 16-14 18t-18-12z', 96, 210]
]
const FILM =
  'M354 200C356 225 346 255 333 277C320 299 298 320 276 332C254 344 225 352 200 350C175 349 151 336 129 323C107 311 83 295 70 275C57 254 51 225 50 200C49 175 53 144 65 122C77 100 101 78 123 67C146 56 175 53 200 54C225 55 253 60 274 72C295 84 311 107 325 128C338 149 353 175 354 200z'
const SKIN =
  'M360 200C360 227 352 257 338 280C324 302 301 323 278 335C255 347 226 352 200 352C174 353 143 350 120 338C97 326 76 302 62 279C49 256 37 226 37 200C37 174 48 143 63 121C77 99 100 79 123 67C146 54 174 44 200 44C226 44 254 53 277 66C301 78 328 96 341 118C355 141 361 173 360 200z'
