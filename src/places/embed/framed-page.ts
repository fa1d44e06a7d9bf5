/** The page that holds nothing but the element: what its address asks for is what it shows. */
const asked = new URLSearchParams(location.search)
const walk = document.querySelector('jarside-walk')
const lang = asked.get('lang')
if (lang) walk?.setAttribute('lang', lang)
walk?.setAttribute('tree', asked.get('tree') ?? '')
walk?.setAttribute('data-framed', '')

// The policy allows no style in the page, and one more file for two lines would be too many.
const bare = new CSSStyleSheet()
bare.replaceSync('body { margin: 0 } html { font-family: system-ui, sans-serif }')
document.adoptedStyleSheets = [bare]

export {}
