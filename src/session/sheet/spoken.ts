// Sentences in parts: plain words, and words that can be changed by touching them.

export interface SpokenPart<Word extends string> {
  readonly text: string;
  /** What changing these words would change; plain words when left out. */
  readonly word?: Word;
}

export type Spoken<Word extends string> = readonly SpokenPart<Word>[];

/** A whole sentence as one text. */
export function spokenText(parts: Spoken<string>): string {
  return parts.map(({ text }) => text).join('');
}

/** The sentence cut where the marked words stand; marks that do not stand in it after one another are left out. */
export function marked<Word extends string>(sentence: string, marks: readonly { readonly text: string; readonly word: Word }[]): Spoken<Word> {
  const parts: SpokenPart<Word>[] = [];
  let done = 0;
  for (const { text, word } of marks) {
    const at = text === '' ? -1 : sentence.indexOf(text, done);
    if (at < 0) continue;
    if (at > done) parts.push({ text: sentence.slice(done, at) });
    parts.push({ text, word });
    done = at + text.length;
  }
  if (done < sentence.length) parts.push({ text: sentence.slice(done) });
  return parts;
}
