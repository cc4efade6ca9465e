// A sentence on the slip whose dotted words can be changed by touching them.

import { Fragment, type ReactNode } from 'react';
import type { Spoken } from '../../../session/sheet/spoken.ts';
import { Said } from '../../words/Said.tsx';

export interface SpokenLineProps<Word extends string> {
  readonly parts: Spoken<Word>;
  /** What stands for a word that can be changed: something to press that says the text. */
  readonly word: (word: Word, text: string) => ReactNode;
}

export function SpokenLine<Word extends string>({ parts, word }: SpokenLineProps<Word>) {
  return (
    <p className="sentence spoken">
      {parts.map((part, i) => <Fragment key={i}>{part.word === undefined ? <Said>{part.text}</Said> : word(part.word, part.text)}</Fragment>)}
    </p>
  );
}
