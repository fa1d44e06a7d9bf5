/** A line that is a label elsewhere, ended as a sentence. */
export const sentence = (text: string): string =>
  /[.!?。！？؟]$/.test(text) ? text : text + (/[\u2e80-\u9fff]$/.test(text) ? '。' : '.')
