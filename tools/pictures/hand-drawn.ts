const COVER = 'A cloth falls and a wire clamps by eye: no parameter gives the folds their weight.'
const PLANT = 'A flower and a tea bag come up in no other picture, so a parameter would serve once.'
const LOOK = 'An eye is a face: a tenth of a unit changes its mood.'
const MARK = 'A sign, not a sight: it stands for answers that cannot be seen, and was set by eye.'

/** The pictures that were drawn by hand and stay as they are, each with the reason. */
export const HAND_DRAWN: Readonly<Record<string, string>> = {
  'cover-airtight-lid': COVER,
  'cover-loose-weave': COVER,
  'cover-none': COVER,
  'cover-tight-cloth': COVER,
  'ingredient-added': PLANT,
  'ingredient-not-added': PLANT,
  'look-first': LOOK,
  'look-second': LOOK,
  'mark-container': MARK,
  'mark-day': MARK,
  'mark-jar': MARK,
  'mark-none': MARK,
  'mark-people': MARK,
  'mark-ph': MARK,
  'mark-smell': MARK,
  'mark-starter': MARK,
  'mark-unsure': MARK
}
