/** Every page that is served, by the name of its file; the first is the public's own. */
export const PAGES = [
  ...(['index', 'desk', 'kiosk', 'workbench', 'look-alikes'] as const),
  ...(['how-to', 'contacts', 'practice', 'frame'] as const)
]
